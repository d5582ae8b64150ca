// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/line_panel.h"

#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "core/cellar/due_work.h"
#include "core/cellar/pour_advice.h"
#include "core/cellar/suggest.h"
#include "core/report/cleaning_words.h"
#include "ui/charts/profile_chart.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/pages/advice_list.h"
#include "ui/pages/line_what_if.h"
#include "ui/theme/theme.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/fact_list.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {

constexpr const char* tag_action = "print_line_tag";  // no entry of the journal

}  // namespace

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
  advice_ = new AdviceList;
  advice_->setObjectName(QStringLiteral("line_advice"));
  connect(advice_, &AdviceList::task_asked, this, &LinePanel::open_task);
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
  column->addWidget(new InkLabel(tr("Figures"), TextRole::strong));
  facts_ = new FactList;
  facts_->setObjectName("line_facts");
  column->addWidget(facts_);
  return inside;
}

void LinePanel::build_pour(QWidget* parent) {
  auto* column = new QVBoxLayout(parent);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  profile_title_ = new Figure(TextRole::strong);
  profile_title_->setObjectName("profile_title");
  column->addWidget(profile_title_);
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
  order_tabs();
}

// From top to bottom, whatever was made first.
void LinePanel::order_tabs() {
  QWidget* before = nullptr;
  for (QWidget* part :
       std::initializer_list<QWidget*>{actions_, advice_, profile_title_, what_if_, facts_}) {
    QList<QWidget*> stops = part->findChildren<QWidget*>();
    stops.prepend(part);
    for (QWidget* stop : stops) {
      if ((stop->focusPolicy() & Qt::TabFocus) == 0 || stop->window() != window()) continue;
      if (before) setTabOrder(before, stop);
      before = stop;
    }
  }
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
  subtitle_->setText(parts.join(QStringLiteral(" · ")));
  lock_->setVisible(line.do_not_serve());
  if (line.lock) {
    lock_->set(cellar::Severity::danger, tr("DO NOT SERVE"),
               tr("%1 in the line since %2, %3. Only a passed check releases it.")
                   .arg(q(line.lock->agent), q(report::say_time(line.lock->since, speaker)),
                        q(line.lock->by)));
  } else if (line.keg_lock) {
    lock_->set(cellar::Severity::danger, tr("DO NOT SERVE"),
               (line.keg_lock->leaks
                    ? tr("%1: %2. Mend it and log a leak test that finds none, or take it off.")
                    : tr("%1: %2. Clear it or take it off."))
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
    wanted = {line.keg_lock->leaks ? std::pair(tr("Leak test…"), "leak_tested")
                                   : std::pair(tr("Clear the keg…"), "cleared"),
              {tr("Keg change…"), "keg_change"},
              {tr("Lock to clean…"), "line_locked"}};
  } else {
    wanted = {{tr("Timed pour…"), "timed_pour"},
              {tr("Keg change…"), "keg_change"},
              {tr("Lock to clean…"), "line_locked"}};
  }
  if (line.do_not_serve())
    wanted << std::pair<QString, const char*>{tr("Print a tag for the tap…"), tag_action};
  wanted << std::pair<QString, const char*>{tr("Change the line or its hose…"), "line_record"};
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
    button->setEnabled(!context_.cellar.read_only() || kind == tag_action);
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
    show_facts(line, nullptr);
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
    show_facts(*shown, std::make_shared<report::LineSubject>(
                           report::line_subject(*shown, *status_, speaker)));
    std::vector<cellar::Advice> advice = standing_advice(*shown);
    advice.insert(advice.end(), now.advice.begin(), now.advice.end());
    advice_->show_advice(advice, speaker);
    return;
  }
  const cellar::PourSetting setting = cellar::with(now.setting, change);
  const cellar::PourOutlook outlook = cellar::pour_outlook(setting);
  const cellar::KegStatus* keg = shown->keg ? status_->find(*shown->keg) : nullptr;
  cellar::PourAdvice told = cellar::pour_advice(setting, outlook, keg, status_->now);
  std::vector<cellar::Advice> tried = std::move(told.also_of_keg);
  tried.insert(tried.end(), told.of_line.begin(), told.of_line.end());
  const auto shared = cellar::shared_regulator_advice(*status_, *shown, setting, tried);
  tried.insert(tried.end(), shared.begin(), shared.end());
  for (cellar::Advice& a : tried) a.action.reset();  // nothing to put right yet
  std::vector<cellar::Advice> advice = standing_advice(*shown);
  advice.insert(advice.end(), tried.begin(), tried.end());
  chart_->show_profile(now.outlook, setting, outlook, speaker);
  what_if_->say(tr("A glass would take %1.").arg(glass_words(outlook, speaker)));
  report::LineSubject subject = report::line_subject(*shown, *status_, speaker);
  subject.setting = setting;
  subject.outlook = outlook;
  subject.tried = change;
  show_facts(*shown, std::make_shared<const report::LineSubject>(std::move(subject)));
  advice_->show_advice(advice, speaker);
}

// What no what-if moves: cleaning, and what else stands of the line itself.
std::vector<cellar::Advice> LinePanel::standing_advice(const cellar::LineStatus& line) const {
  std::vector<cellar::Advice> advice = line.advice;
  const std::vector<cellar::Advice>& pour = line.pour->advice;
  std::erase_if(advice, [&](const cellar::Advice& a) {
    if (line.do_not_serve() && a.severity == cellar::Severity::danger) return true;  // the banner
    return std::any_of(pour.begin(), pour.end(),
                       [&](const cellar::Advice& b) { return b.headline.key == a.headline.key; });
  });
  return advice;
}

void LinePanel::show_facts(const cellar::LineStatus& line,
                           std::shared_ptr<const report::LineSubject> subject) {
  shown_ = std::move(subject);
  std::vector<ListedFact> facts;
  const auto take = [&](const LineFact& f) { facts.push_back({f.what, f.value, f.reasons}); };
  if (shown_)
    for (const LineFact& f : pour_facts(shown_)) take(f);
  take(cleaning_fact(line));
  facts_->show_facts(facts);
  if (!shown_) return;
  profile_title_->show_number({}, tr("Pressure along the line"),
                              [subject = shown_] { return report::profile_grounds(*subject); });
}

// The day with the rule that calls for it; its reasons ask the journal when opened.
LineFact LinePanel::cleaning_fact(const cellar::LineStatus& line) const {
  const report::Speaker speaker = context_.speaker();
  const LineWords w = line_words(line, *status_, speaker);
  QString words = w.cleaned + QStringLiteral(", ") + w.due;
  const auto rule = cellar::line_cleaning_rule(line.record.line, *status_);
  if (rule) words += tr(" (%1)").arg(q(report::say_rule(*rule, speaker)));
  return {cleaning_fact_name(), words, [this, status = status_, id = line.record.line, speaker] {
            const auto due = cellar::due_line_cleaning(context_.cellar.journal(), *status,
                                                       context_.cellar.calendar());
            const auto its = std::find_if(due.begin(), due.end(), [&](const cellar::DueWork& row) {
              return row.about == cellar::subject(id);
            });
            const cellar::LineStatus* its_line = status->find(id);
            if (its_line == nullptr) return report::Grounds{};
            return report::line_cleaning_grounds(*its_line, its == due.end() ? nullptr : &*its,
                                                 speaker);
          }};
}

void LinePanel::explain(Shown what) {
  QString name = cleaning_fact_name();
  if (what != Shown::cleaning && !shown_) return;
  if (what == Shown::pressure) name = pressure_fact_name();
  if (what == Shown::glass) name = glass_fact_name(*shown_);
  Figure* figure = facts_->figure(name);
  if (figure == nullptr) return;
  ensureWidgetVisible(figure);
  figure->setFocus();
  figure->open_reasons();
}

void LinePanel::print_tag() {
  if (id_) TagPreview(context_, TagKind::warnings, window(), {}, id_).exec();
}

void LinePanel::open(const QString& kind) {
  const cellar::LineStatus* shown = line();
  if (shown == nullptr) return;
  if (kind == QLatin1String(tag_action)) return print_tag();
  if (kind == QLatin1String("cleared") && shown->keg_lock) {
    open_task({s(kind), cellar::subject(shown->keg_lock->keg), {}, {}});
    return;
  }
  if (kind == QLatin1String("leak_tested") && shown->keg_lock) {
    open_task(cellar::keg_task<cellar::LeakTested>(shown->keg_lock->keg));
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
  }
  context_.navigator.open_task(task);
}

}  // namespace ullage::ui
