// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel_facts.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "core/cellar/uptake.h"
#include "core/units/present.h"
#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keep_count.h"
#include "ui/widgets/status_mark.h"

namespace ullage::ui {

namespace {

struct KegFactsText {
  Q_DECLARE_TR_FUNCTIONS(KegFactsText)
};

using KegReasons = report::Grounds (*)(const report::KegSubject&);

struct Fact {
  QString name, value;
  KegReasons reasons = nullptr;  // of a worked out number
};

QString joined(std::initializer_list<QString> parts) {
  QStringList kept;
  for (const QString& part : parts) {
    if (!part.isEmpty()) kept << part;
  }
  return kept.join(QStringLiteral(", "));
}

Fact gas_fact(const cellar::KegStatus& keg, const report::Speaker& speaker) {
  if (!keg.gas.on) return {KegFactsText::tr("Gas"), KegFactsText::tr("off")};
  const QString set = keg.gas.set ? q(speaker.printer.print(*keg.gas.set))
                                  : KegFactsText::tr("on, pressure not known");
  const QString since =
      keg.gas.since ? KegFactsText::tr("since %1").arg(q(report::say_time(*keg.gas.since, speaker)))
                    : QString();
  return {KegFactsText::tr("Gas"), joined({set, since}),
          keg.gas.set ? &report::gas_set_grounds : nullptr};
}

void add_beer_facts(std::vector<Fact>& facts, const cellar::KegStatus& keg,
                    const report::Speaker& speaker) {
  const units::Printer& print = speaker.printer;
  const cellar::Contents& beer = present(keg.contents);
  facts.push_back({beer.found          ? KegFactsText::tr("In it since")
                   : beer.filled_by_us ? KegFactsText::tr("Filled")
                                       : KegFactsText::tr("Received"),
                   q(report::say_time(beer.since, speaker))});
  if (keg.level.left) {
    facts.push_back(
        {KegFactsText::tr("Left"),
         joined({q(print.print(*keg.level.left)), q(print.print_glasses(keg.level.left->value())),
                 keg.level.measured_at ? KegFactsText::tr("told %1").arg(
                                             q(report::say_age(*keg.level.measured_at, speaker)))
                                       : QString()}),
         &report::level_grounds});
  } else {
    facts.push_back({KegFactsText::tr("Left"),
                     keg.level.cant_tell ? q(report::say(*keg.level.cant_tell, speaker))
                                         : KegFactsText::tr("can’t tell"),
                     &report::level_grounds});
  }
  if (keg.level.runs_out) {
    const auto words = cellar::message(cellar::MessageKey::level_runs_out, *keg.level.runs_out);
    facts.push_back(
        {KegFactsText::tr("Runs out"), q(report::say(words, speaker)), &report::run_out_grounds});
  }
  facts.push_back(gas_fact(keg, speaker));
  if (keg.gas.should_be) {
    facts.push_back({KegFactsText::tr("Should be"),
                     KegFactsText::tr("%1 to hold its CO₂").arg(q(print.print(*keg.gas.should_be))),
                     &report::serving_pressure_grounds});
  }
  if (keg.co2.uptake) {
    facts.push_back({KegFactsText::tr("Takes up CO₂"),
                     q(report::say(cellar::uptake_words(*keg.co2.uptake), speaker)),
                     &report::uptake_grounds});
  }
  if (keg.beer_temperature) {
    facts.push_back({KegFactsText::tr("Beer at"), q(print.print(*keg.beer_temperature)),
                     &report::temperature_grounds});
  }
  if (keg.cold_since) {
    facts.push_back(
        {KegFactsText::tr("In the cold"),
         KegFactsText::tr("since %1").arg(q(report::say_time(*keg.cold_since, speaker)))});
  }
  if (beer.best_by)
    facts.push_back({KegFactsText::tr("Best by"), q(report::say_date(*beer.best_by, speaker))});
}

std::vector<Fact> facts_of(const PanelSubject& subject) {
  const cellar::KegStatus& keg = subject.keg;
  const report::Speaker& speaker = subject.speaker;
  const units::Printer& print = speaker.printer;
  std::vector<Fact> facts;
  if (keg.contents) add_beer_facts(facts, keg, speaker);
  if (keg.line) {
    const QString word = speaker.words == report::RegionalWords::us ? KegFactsText::tr("Faucet")
                                                                    : KegFactsText::tr("Tap");
    facts.push_back({word, joined({q(keg.line->tap), q(keg.line->name)})});
  }
  if (!keg.contents && keg.phase_since) {
    facts.push_back(
        {KegFactsText::tr("Like this"),
         KegFactsText::tr("since %1").arg(q(report::say_time(*keg.phase_since, speaker)))});
  }
  if (keg.hold_result)
    facts.push_back({KegFactsText::tr("Hold test"), q(report::say(*keg.hold_result, speaker)),
                     &report::hold_result_grounds});
  if (keg.place) facts.push_back({KegFactsText::tr("Stands in"), q(keg.place->name)});
  facts.push_back({KegFactsText::tr("Holds"), KegFactsText::tr("%1, %2 to the brim")
                                                  .arg(q(print.print(keg.record.nominal)),
                                                       q(print.print(keg.record.brimful)))});
  if (keg.record.tare)
    facts.push_back({KegFactsText::tr("Empty weight"), q(print.print(*keg.record.tare))});
  if (keg.record.rated_pressure) {
    facts.push_back({KegFactsText::tr("Rated for"), q(print.print(*keg.record.rated_pressure))});
  }
  return facts;
}

class StepRow final : public QWidget {
 public:
  explicit StepRow(QWidget* parent) : QWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::s);
    mark_ = new StatusMark(Mark::ring, {}, this);
    words_ = new InkLabel({}, TextRole::small, Ink::text, this);
    words_->setWordWrap(true);
    result_ = new Figure(TextRole::small, Ink::text, this);
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    column->addWidget(words_);
    column->addWidget(result_);
    row->addWidget(mark_, 0, Qt::AlignTop);
    row->addLayout(column, 1);
  }
  // A result that is a number stands by itself, with its reasons.
  void show_step(const cellar::PreparationStep& step, const PanelSubject& subject) {
    const report::Speaker& speaker = subject.speaker;
    const bool number = !report::step_grounds({subject.cellar, subject.keg, speaker}, step).empty();
    const QString name = q(report::say_kind(step.kind, speaker));
    QString words;
    if (!step.done_at) {
      words = KegFactsText::tr("%1: not done").arg(name);
    } else {
      words = KegFactsText::tr("%1 %2").arg(name, q(report::say_age(*step.done_at, speaker)));
      if (step.result && !number)
        words += QStringLiteral(". ") + q(report::say(*step.result, speaker));
      if (!step.still_counts) words += KegFactsText::tr(" (no longer counts)");
    }
    mark_->set(step.done_at && step.still_counts ? Mark::dot
               : step.done_at                    ? Mark::half_ring
                                                 : Mark::ring,
               {});
    words_->setText(words);
    const Ink ink = step.done_at && step.still_counts ? Ink::text : Ink::secondary;
    words_->set_ink(ink);
    result_->setVisible(number);
    if (!number) return;
    result_->set_ink(ink);
    result_->show_number(name, q(report::say(present(step.result), speaker)),
                         reasons_of(subject, [step](const report::KegSubject& s) {
                           return report::step_grounds(s, step);
                         }));
  }

 private:
  StatusMark* mark_;
  InkLabel* words_;
  Figure* result_;
};

}  // namespace

KegFacts::KegFacts(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  setObjectName("facts");
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(space::m);
  grid_->setVerticalSpacing(6);
  grid_->setColumnMinimumWidth(0, 84);
  grid_->setColumnStretch(1, 1);
}

void KegFacts::show_keg(const PanelSubject& subject) {
  const std::vector<Fact> facts = facts_of(subject);
  while (rows_.size() < facts.size()) {
    auto* name = new InkLabel({}, TextRole::small, Ink::secondary, this);
    auto* words = new InkLabel({}, TextRole::small, Ink::text, this);
    words->setWordWrap(true);
    auto* number = new Figure(TextRole::small, Ink::text, this);
    const int row = static_cast<int>(rows_.size());
    grid_->addWidget(name, row, 0, Qt::AlignTop);
    grid_->addWidget(words, row, 1, Qt::AlignTop);
    grid_->addWidget(number, row, 1, Qt::AlignTop);
    rows_.push_back({name, words, number});
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    const bool used = i < facts.size();
    const bool reasoned = used && facts[i].reasons != nullptr;
    row.name->setText(used ? facts[i].name : QString());
    row.words->setText(used && !reasoned ? facts[i].value : QString());
    if (reasoned) {
      row.number->show_number(facts[i].name, facts[i].value, reasons_of(subject, facts[i].reasons));
    }
    row.name->setVisible(used);
    row.words->setVisible(used && !reasoned);
    row.number->setVisible(reasoned);
  }
}

KegPreparation::KegPreparation(QWidget* parent) : QWidget(parent), steps_(new QVBoxLayout(this)) {
  setObjectName("preparation");
  steps_->setContentsMargins(0, 0, 0, 0);
  steps_->setSpacing(6);
}

void KegPreparation::show_keg(const PanelSubject& subject) {
  const std::vector<cellar::PreparationStep>& steps = subject.keg.preparation;
  const auto rows = keep_count<StepRow>(*steps_, static_cast<qsizetype>(steps.size()),
                                        [this] { return new StepRow(this); });
  for (std::size_t i = 0; i < steps.size(); ++i) rows[i]->show_step(steps[i], subject);
}

}  // namespace ullage::ui
