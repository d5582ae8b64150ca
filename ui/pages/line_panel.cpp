// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/line_panel.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "core/cellar/pour_advice.h"
#include "ui/charts/profile_chart.h"
#include "ui/pages/line_advice.h"
#include "ui/pages/line_what_if.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

LinePanel::LinePanel(Context& context, QWidget* parent) : QScrollArea(parent), context_(context) {
  setObjectName("line_panel");
  setAccessibleName(tr("The chosen line"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setWidget(build());
}

QWidget* LinePanel::build() {
  auto* inside = new QWidget(this);
  inside->setBackgroundRole(QPalette::Base);
  auto* outer = new QVBoxLayout(inside);
  outer->setContentsMargins(space::l, space::l, space::l, space::l);
  nothing_ = new InkLabel(tr("Choose a line to see how it pours."), TextRole::body, Ink::secondary);
  nothing_->setWordWrap(true);
  outer->addWidget(nothing_);
  content_ = new QWidget;
  outer->addWidget(content_);
  outer->addStretch(1);

  auto* column = new QVBoxLayout(content_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  title_ = new InkLabel({}, TextRole::heading);
  title_->setObjectName("line_title");
  subtitle_ = new InkLabel({}, TextRole::small, Ink::secondary);
  subtitle_->setWordWrap(true);
  lock_ = new Banner(cellar::Severity::danger, {});
  lock_->setObjectName("line_lock");
  actions_ = new QWidget;
  new FlowLayout(actions_);
  advice_ = new LineAdvice;
  connect(advice_, &LineAdvice::task_asked, this, &LinePanel::open_task);
  no_pour_ = new InkLabel({}, TextRole::body, Ink::secondary);
  no_pour_->setObjectName("no_pour");
  no_pour_->setWordWrap(true);
  pour_ = new QWidget;
  build_pour(pour_);
  for (QWidget* each : {static_cast<QWidget*>(title_), static_cast<QWidget*>(subtitle_),
                        static_cast<QWidget*>(lock_), actions_, static_cast<QWidget*>(advice_),
                        static_cast<QWidget*>(no_pour_), pour_}) {
    column->addWidget(each);
  }
  return inside;
}

void LinePanel::build_pour(QWidget* parent) {
  auto* column = new QVBoxLayout(parent);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  column->addWidget(new InkLabel(tr("Pressure along the line"), TextRole::strong));
  chart_ = new ProfileChart;
  column->addWidget(chart_);
  column->addWidget(new InkLabel(tr("What if"), TextRole::strong));
  auto* quiet =
      new InkLabel(tr("Nothing is written until you apply it."), TextRole::small, Ink::secondary);
  column->addWidget(quiet);
  what_if_ = new LineWhatIf;
  connect(what_if_, &LineWhatIf::changed, this, &LinePanel::retry);
  connect(what_if_, &LineWhatIf::apply_asked, this, &LinePanel::apply);
  column->addWidget(what_if_);
  column->addWidget(new InkLabel(tr("Figures"), TextRole::strong));
  auto* box = new QWidget;
  facts_ = new QGridLayout(box);
  facts_->setContentsMargins(0, 0, 0, 0);
  facts_->setHorizontalSpacing(space::m);
  facts_->setVerticalSpacing(space::xs);
  facts_->setColumnStretch(1, 1);
  column->addWidget(box);
}

const cellar::LineStatus* LinePanel::line() const {
  return status_ && id_ ? status_->find(*id_) : nullptr;
}

void LinePanel::show_line(std::shared_ptr<const cellar::CellarStatus> status,
                          std::optional<cellar::LineId> id) {
  const bool another = id != id_;
  status_ = std::move(status);
  id_ = id;
  const cellar::LineStatus* shown = line();
  nothing_->setVisible(shown == nullptr);
  content_->setVisible(shown != nullptr);
  if (shown == nullptr) return;
  show_head(*shown);
  show_actions(*shown);
  show_pour(*shown, another);
}

void LinePanel::show_head(const cellar::LineStatus& line) {
  const report::Speaker speaker = context_.speaker();
  const LineWords w = line_words(line, *status_, speaker);
  title_->setText(tr("%1 · %2").arg(w.tap, w.beer));
  const units::Printer print = context_.printer();
  QStringList parts{w.name};
  if (!w.keg.isEmpty()) parts << w.keg;
  if (line.pour) {
    const physics::LineParts& hose = line.pour->setting.line.parts;
    parts << q(print.print(physics::total_length(hose)))
          << tr("%1 bore").arg(q(print.print_bore(line.pour->setting.line.hose().bore)))
          << tr("rises %1").arg(q(print.print(physics::total_rise(hose))));
  }
  if (!line.record.clean_source.empty()) parts << q(line.record.clean_source);
  subtitle_->setText(parts.join(QStringLiteral(" · ")));
  lock_->setVisible(line.do_not_serve());
  if (line.lock) {
    lock_->set(cellar::Severity::danger, tr("DO NOT SERVE"),
               tr("%1 in the line since %2, %3. Only a passed check releases it.")
                   .arg(q(line.lock->agent), q(report::say_time(line.lock->since, speaker)),
                        q(line.lock->by)));
  } else if (line.keg_lock) {
    lock_->set(cellar::Severity::danger, tr("DO NOT SERVE"),
               tr("%1: %2. Clear it or take it off.")
                   .arg(q(line.keg_lock->tag), q(report::say(line.keg_lock->why, speaker))));
  }
}

// A locked line offers its release and nothing that serves.
void LinePanel::show_actions(const cellar::LineStatus& line) {
  QList<std::pair<QString, const char*>> wanted;
  if (line.lock) {
    wanted = {{tr("Release by a check…"), "line_released"},
              {tr("Log the cleaning…"), "line_cleaned"}};
  } else if (line.keg_lock) {
    wanted = {{tr("Clear the keg…"), "cleared"},
              {tr("Keg change…"), "keg_change"},
              {tr("Lock to clean…"), "line_locked"}};
  } else {
    wanted = {{tr("Timed pour…"), "timed_pour"},
              {tr("Keg change…"), "keg_change"},
              {tr("Lock to clean…"), "line_locked"}};
  }
  wanted << std::pair<QString, const char*>{tr("Change the line…"), "line_record"}
         << std::pair<QString, const char*>{tr("Add a piece of hose…"), "segment_record"};
  QString key = q(line.record.name);
  for (const auto& [text, kind] : wanted) key += QLatin1Char(' ') + QLatin1String(kind);
  if (key == shown_actions_) return;
  shown_actions_ = key;
  while (QLayoutItem* old = actions_->layout()->takeAt(0)) {
    old->widget()->hide();
    old->widget()->deleteLater();
    delete old;
  }
  for (const auto& [text, kind] : wanted) {
    auto* button = new QPushButton(text);
    button->setObjectName(QString::fromLatin1(kind));
    button->setAccessibleName(tr("%1, %2").arg(text, q(line.record.name)));
    button->setEnabled(!context_.cellar.read_only());
    connect(button, &QPushButton::clicked, this, [this, kind] { open(QString::fromLatin1(kind)); });
    actions_->layout()->addWidget(button);
  }
}

void LinePanel::show_pour(const cellar::LineStatus& line, bool another) {
  pour_->setVisible(line.pour != nullptr);
  no_pour_->setVisible(line.pour == nullptr);
  const report::Speaker speaker = context_.speaker();
  if (!line.pour) {
    no_pour_->setText(line.no_pour ? q(report::say(*line.no_pour, speaker)) : QString());
    advice_->show_advice(line.advice, speaker);
    return;
  }
  what_if_->show_setting(line.pour->setting, speaker, another);
  what_if_->set_can_apply(!context_.cellar.read_only());
  retry();
}

cellar::WhatIf LinePanel::tried() const { return what_if_->change(); }

void LinePanel::retry() {
  const cellar::LineStatus* shown = line();
  if (shown == nullptr || !shown->pour) return;
  const report::Speaker speaker = context_.speaker();
  const cellar::PourState& now = *shown->pour;
  const cellar::WhatIf change = tried();
  if (change.empty()) {
    chart_->show_profile(now.outlook, now.setting, std::nullopt, speaker);
    what_if_->say({});
    show_facts(now.setting, now.outlook);
    std::vector<cellar::Advice> advice = shown->advice;
    std::erase_if(advice, [&](const cellar::Advice& a) {
      return shown->do_not_serve() && a.severity == cellar::Severity::danger;
    });
    for (const cellar::Advice& a : now.advice) {
      const bool there = std::any_of(advice.begin(), advice.end(), [&](const cellar::Advice& b) {
        return b.headline.key == a.headline.key;
      });
      if (!there) advice.push_back(a);
    }
    advice_->show_advice(advice, speaker);
    return;
  }
  const cellar::PourSetting setting = cellar::with(now.setting, change);
  const cellar::PourOutlook outlook = cellar::pour_outlook(setting);
  cellar::PourAdvice told = cellar::pour_advice(setting, outlook);
  std::vector<cellar::Advice> advice = std::move(told.also_of_keg);
  advice.insert(advice.end(), told.of_line.begin(), told.of_line.end());
  for (cellar::Advice& a : advice) a.action.reset();  // nothing to put right yet
  chart_->show_profile(now.outlook, setting, outlook, speaker);
  what_if_->say(tr("A glass would take %1.").arg(glass_words(outlook, speaker)));
  show_facts(setting, outlook);
  advice_->show_advice(advice, speaker);
}

void LinePanel::show_facts(const cellar::PourSetting& s, const cellar::PourOutlook& o) {
  const QList<LineFact> facts = pour_facts(s, o, context_.speaker());
  for (int row = 0; row < std::max<int>(facts_->rowCount(), static_cast<int>(facts.size()));
       ++row) {
    auto* what = facts_->itemAtPosition(row, 0)
                     ? static_cast<InkLabel*>(facts_->itemAtPosition(row, 0)->widget())
                     : nullptr;
    auto* value = facts_->itemAtPosition(row, 1)
                      ? static_cast<InkLabel*>(facts_->itemAtPosition(row, 1)->widget())
                      : nullptr;
    const bool used = row < facts.size();
    if (what == nullptr && used) {
      what = new InkLabel({}, TextRole::small, Ink::secondary);
      value = new InkLabel({}, TextRole::small);
      what->setWordWrap(true);
      value->setWordWrap(true);
      facts_->addWidget(what, row, 0, Qt::AlignTop);
      facts_->addWidget(value, row, 1, Qt::AlignTop);
    }
    if (what == nullptr) continue;
    what->setVisible(used);
    value->setVisible(used);
    if (!used) continue;
    what->setText(facts[row].what);
    value->setText(facts[row].value);
  }
}

// One act, undone as one.
void LinePanel::apply() {
  const cellar::LineStatus* shown = line();
  if (shown == nullptr) return;
  cellar::Act act;
  act.by = s(context_.preferences.initials());
  const report::Speaker speaker = context_.speaker();
  QStringList words;
  for (cellar::Payload& p : cellar::entries_for(tried(), *shown, *status_)) {
    words << q(report::say_entry(p, *status_, speaker));
    act.drafts.push_back({std::move(p), context_.cellar.now(), {}, {}});
  }
  if (act.drafts.empty()) return;
  const QString detail =
      words.join(QLatin1Char('\n')) +
      (tried().pressure ? tr("\nTurning a regulator down does not vent the keg.") : QString());
  if (!context_.prompts.confirm(this, tr("Log this as done now?"), detail, tr("Log it"))) return;
  const cellar::Outcome<cellar::ActId> outcome = context_.cellar.log(act);
  if (!outcome) {
    QStringList sentences;
    for (const cellar::Fault& f : outcome.error().faults)
      sentences << q(report::say(f.why, speaker));
    context_.prompts.tell(this, tr("Not logged yet."), sentences.join(QLatin1Char('\n')));
    return;
  }
  what_if_->reset();
  context_.navigator.announce(tr("Logged: %1").arg(words.join(QStringLiteral("; "))), true);
}

void LinePanel::open(const QString& kind) {
  const cellar::LineStatus* shown = line();
  if (shown == nullptr) return;
  if (kind == QLatin1String("cleared") && shown->keg_lock) {
    open_task({s(kind), cellar::subject(shown->keg_lock->keg), {}, {}});
    return;
  }
  open_task({s(kind), cellar::subject(shown->record.line), {}, {}});
}

void LinePanel::open_task(const cellar::SuggestedTask& asked) {
  const cellar::LineStatus* shown = line();
  if (shown == nullptr) return;
  cellar::SuggestedTask task = asked;
  if (task.kind == "line_record" && !task.prefill) {
    task.prefill =
        cellar::Payload(boost::variant2::in_place_type<cellar::LineRecord>, shown->record);
  } else if (task.kind == "segment_record" && !task.prefill) {
    cellar::SegmentRecord piece;
    piece.segment = context_.cellar.fresh<cellar::SegmentId>();
    piece.line = shown->record.line;
    piece.material = shown->record.material;
    for (const cellar::SegmentRecord& other : status_->segments)
      if (other.line == piece.line && other.in_use)
        piece.position = std::max(piece.position, other.position + 1);
    task.prefill = cellar::Payload(boost::variant2::in_place_type<cellar::SegmentRecord>, piece);
  }
  context_.navigator.open_task(task);
}

}  // namespace ullage::ui
