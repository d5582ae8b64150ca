// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_panel.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>

#include "ui/charts/carbonation_chart.h"
#include "ui/context.h"
#include "ui/pages/advice_list.h"
#include "ui/pages/keg_panel_card.h"
#include "ui/pages/keg_panel_cards.h"
#include "ui/pages/keg_panel_entries.h"
#include "ui/pages/keg_panel_facts.h"
#include "ui/pages/keg_panel_head.h"
#include "ui/pages/keg_panel_hold.h"
#include "ui/pages/keg_panel_readiness.h"
#include "ui/pages/keg_panel_work_out.h"
#include "ui/theme/theme.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {

// A heading over its part, kept together so that both hide together.
QWidget* part(const QString& heading, QWidget* inside, QWidget* parent) {
  auto* box = new QWidget(parent);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  column->addWidget(new InkLabel(heading, TextRole::strong, Ink::text, box));
  column->addWidget(inside);
  return box;
}

QString carbonation_words(const PanelSubject& subject) {
  const cellar::Co2State& co2 = subject.keg.co2;
  const report::Speaker& speaker = subject.speaker;
  if (!co2.now) {
    const QString why = co2.cant_tell ? q(report::say(*co2.cant_tell, speaker)) : QString();
    return why.isEmpty() ? KegPanel::tr("Can’t tell yet.")
                         : KegPanel::tr("Can’t tell yet: %1").arg(why);
  }
  QStringList parts{KegPanel::tr("Now %1").arg(q(speaker.printer.print(*co2.now)))};
  if (co2.target_low && co2.target_high) {
    parts << KegPanel::tr("range %1")
                 .arg(q(speaker.printer.print_range(*co2.target_low, *co2.target_high)));
  }
  if (co2.settles_at) {
    parts << KegPanel::tr("settles at %1 like this").arg(q(speaker.printer.print(*co2.settles_at)));
  }
  return parts.join(QStringLiteral(" · "));
}

}  // namespace

KegPanel::KegPanel(Context& context, QWidget* parent) : QScrollArea(parent), context_(context) {
  setObjectName("keg_panel");
  setAccessibleName(tr("The chosen keg"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::StrongFocus);
  viewport()->setAutoFillBackground(false);
  QWidget* inside = build();
  setWidget(inside);
  inside->setAutoFillBackground(false);  // setWidget turned it on
}

QWidget* KegPanel::build() {
  auto* inside = new QWidget(this);
  auto* outer = new QVBoxLayout(inside);
  outer->setContentsMargins(space::l, space::l, space::l, space::l);
  nothing_ =
      new InkLabel(tr("Choose a keg to see it here."), TextRole::body, Ink::secondary, inside);
  nothing_->setWordWrap(true);
  outer->addWidget(nothing_);
  content_ = new QWidget(inside);
  outer->addWidget(content_);
  outer->addStretch(1);

  auto* column = new QVBoxLayout(content_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::l);
  head_ = new KegPanelHead(context_, content_);
  connect(head_, &KegPanelHead::close_wanted, this, &KegPanel::close_wanted);
  readiness_ = new KegPanelReadiness(content_);
  carbonation_ = new QWidget(content_);
  auto* carbonation = new QVBoxLayout(carbonation_);
  carbonation->setContentsMargins(0, 0, 0, 0);
  carbonation->setSpacing(space::xs);
  carbonation_title_ = new InkLabel({}, TextRole::strong, Ink::text, carbonation_);
  chart_ = new CarbonationChart(carbonation_);
  carbonation_words_ = new Figure(TextRole::small, Ink::secondary, carbonation_);
  carbonation_words_->setObjectName("carbonation_words");
  carbonation->addWidget(carbonation_title_);
  carbonation->addWidget(carbonation_words_);
  carbonation->addWidget(chart_);
  drift_ = new KegPanelCard(context_, QStringLiteral("drift"), {}, carbonation_);
  drift_->setAccessibleName(tr("CO₂ if nothing is changed"));
  carbonation->addWidget(drift_);
  advice_ = new AdviceList(content_);
  advice_->setObjectName(QStringLiteral("advice"));
  connect(advice_, &AdviceList::task_asked, this,
          [this](const cellar::SuggestedTask& task) { context_.navigator.open_task(task); });
  cards_ = new KegPanelCards(context_, content_);
  hold_ = new KegPanelHold(context_, content_);
  work_out_ = new KegPanelWorkOut(content_);
  connect(work_out_, &KegPanelWorkOut::wanted, this, &KegPanel::work_out_wanted);
  work_out_part_ = part(tr("Work it out"), work_out_, content_);
  facts_ = new KegFacts(content_);
  preparation_ = new KegPreparation(content_);
  preparation_part_ = part(tr("Made fit to fill"), preparation_, content_);
  entries_ = new KegPanelEntries(context_, content_);
  for (QWidget* each :
       {static_cast<QWidget*>(head_), static_cast<QWidget*>(readiness_), carbonation_,
        static_cast<QWidget*>(advice_), static_cast<QWidget*>(cards_), static_cast<QWidget*>(hold_),
        work_out_part_, part(tr("What is known"), facts_, content_), preparation_part_,
        part(tr("Latest entries"), entries_, content_)}) {
    column->addWidget(each);
  }
  return inside;
}

void KegPanel::set_closable(bool on) { head_->set_closable(on); }

void KegPanel::show_keg(const cellar::CellarStatus& cellar, std::optional<cellar::KegId> keg) {
  const cellar::KegStatus* status = keg ? cellar.find(*keg) : nullptr;
  const bool another = keg != keg_;
  keg_ = keg;
  nothing_->setVisible(status == nullptr);
  if (status == nullptr) {
    content_->hide();
    shows_nothing_ = true;
    return;
  }
  const int scrolled = verticalScrollBar()->value();
  const report::Speaker speaker = context_.speaker();
  const PanelSubject subject{cellar, *status, speaker};
  head_->show_keg(subject);
  readiness_->show_keg(subject);
  show_carbonation(subject);
  advice_->show_advice(subject.keg.advice, subject.speaker);
  cards_->show_keg(subject);
  hold_->show_keg(subject);
  work_out_->show_keg(subject);
  work_out_part_->setVisible(status->phase != cellar::Phase::unknown);
  facts_->show_keg(subject);
  preparation_->show_keg(subject);
  preparation_part_->setVisible(!status->preparation.empty());
  entries_->show_keg(subject);
  if (shows_nothing_) content_->show();  // laid out once, with all that stands in it
  shows_nothing_ = false;
  verticalScrollBar()->setValue(another ? 0 : scrolled);
}

void KegPanel::show_carbonation(const PanelSubject& subject) {
  carbonation_->setVisible(subject.keg.contents.has_value());
  if (!subject.keg.contents) return;
  carbonation_title_->setText(
      tr("CO₂ dissolved, %1").arg(q(units::unit_name(subject.speaker.printer.units.co2))));
  carbonation_words_->show_number(tr("CO₂"), carbonation_words(subject),
                                  reasons_of(subject, &report::co2_grounds));
  chart_->show_curve(context_.cellar.carbonation_curve(subject.keg.record.keg), subject.speaker);
  chart_->setVisible(chart_->has_curve());
  const cellar::Instant now = subject.speaker.now;
  const auto ahead = context_.cellar.carbonation_curve(subject.keg.record.keg, now,
                                                       cellar::after(now, report::drift_horizon()));
  drift_->show_card(report::drift_card({subject.cellar, subject.keg, subject.speaker}, ahead),
                    subject.speaker.printer);
}

void KegPanel::paintEvent(QPaintEvent* event) {
  const Theme& theme = theme_of(this);
  QPainter painter(viewport());
  painter.fillRect(viewport()->rect(), theme.surface);
  painter.fillRect(QRect(0, 0, 1, viewport()->height()), theme.line);
  QScrollArea::paintEvent(event);
}

void KegPanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    emit close_wanted();
    return;
  }
  QScrollArea::keyPressEvent(event);
}

}  // namespace ullage::ui
