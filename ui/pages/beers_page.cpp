// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/beers_page.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/beers_status.h"
#include "ui/dialogs/forms/scrolled.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/recall.h"
#include "ui/dialogs/trace.h"
#include "ui/pages/beers_rows.h"
#include "ui/pages/kept_fresh.h"
#include "ui/pages/listed_row.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr std::chrono::days wastage_told{30};

}  // namespace

BeersPage::BeersPage(const Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("beers_page"));
  build();
  fresh_ = std::make_unique<KeptFresh>(*this, context_, [this] { refresh(); });
}

BeersPage::~BeersPage() = default;

void BeersPage::build() {
  const auto register_button = [this](const QString& text, const char* kind) {
    auto* button = new QPushButton(text, this);
    button->setObjectName(QStringLiteral("add_") + QString::fromLatin1(kind));
    button->setEnabled(!context_.cellar.read_only());
    connect(button, &QPushButton::clicked, this,
            [this, kind] { context_.navigator.open_task({kind, {}, {}, {}}); });
    return button;
  };
  auto* header = new QHBoxLayout;
  header->addWidget(new InkLabel(tr("Beers"), TextRole::title, Ink::text, this));
  summary_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
  header->addWidget(summary_);
  header->addStretch(1);
  auto* list = new QPushButton(tr("Print, save as CSV…"), this);
  list->setObjectName(QStringLiteral("batch_list"));
  connect(list, &QPushButton::clicked, this,
          [this] { LogPreview(context_, report::LogBook::batches, window()).exec(); });
  header->addWidget(list);
  header->addWidget(register_button(tr("Add a beer…"), "beer_record"));
  header->addWidget(register_button(tr("Add a batch…"), "batch_record"));
  auto* empty = new EmptyState(Icon::beers, tr("No batches yet"),
                               tr("Register a beer and a batch of it; kegs are filled from or "
                                  "received with a batch, and can be traced by it."));
  connect(empty->add_action(tr("Add a beer…")), &QPushButton::clicked, this,
          [this] { context_.navigator.open_task({"beer_record", {}, {}, {}}); });
  stack_ = new QStackedWidget(this);
  auto* scroll = scrolled();
  scroll->setWidget(build_sections());
  stack_->addWidget(scroll);
  stack_->addWidget(empty);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addLayout(header);
  all->addWidget(stack_, 1);
}

QWidget* BeersPage::build_sections() {
  auto* sections = new QWidget;
  tap_next_ = new ListedSection(
      tr("Tap next"), tr("Soonest best by first, then what has been ready longest."), sections);
  now_ = new ListedSection(tr("In kegs now"), {}, sections);
  cooling_ = new ListedSection(tr("Cooling"), {}, sections);
  clock_ = new ListedSection(tr("How fresh it is"),
                             tr("A tapped keg keeps about 45 days cold, 21 cool, 7 at cellar "
                                "temperature: practice, not a law. Taste it."),
                             sections);
  hops_ = new ListedSection(tr("Hops in"), {}, sections);
  wasted_ = new ListedSection(tr("Lost in the last 30 days"), {}, sections);
  away_ = new ListedSection(tr("Lent out, rented, the supplier’s"), {}, sections);
  gone_ = new ListedSection(tr("Batches in no keg"), {}, sections);
  auto* column = new QVBoxLayout(sections);
  column->setContentsMargins(0, 0, space::m, 0);
  column->setSpacing(space::l);
  for (ListedSection* each : {tap_next_, now_, cooling_, clock_, hops_, wasted_, away_, gone_}) {
    column->addWidget(each);
  }
  column->addStretch(1);
  return sections;
}

void BeersPage::refresh() {
  const auto status = context_.cellar.status();
  const cellar::Journal& journal = context_.cellar.journal();
  if (!past_ || past_->revision != journal.revision()) {
    past_ = cellar::beers_past(*status, journal);
  }
  const cellar::BeersStatus beers = cellar::beers_status(
      *status, journal, context_.cellar.calendar(), status->now - wastage_told, *past_);
  const BeersRows rows(
      context_, *status, beers,
      {[this](cellar::BatchId id) { trace(id); }, [this](cellar::BatchId id) { recall(id); }});
  tap_next_->show_rows(rows.tap_next());
  now_->show_rows(rows.batches(false));
  cooling_->show_rows(rows.cooling());
  clock_->show_rows(rows.fresh());
  hops_->show_rows(rows.hops());
  wasted_->show_rows(rows.wasted());
  away_->show_rows(rows.away());
  gone_->show_rows(rows.batches(true));
  const auto in_kegs = std::count_if(beers.batches.begin(), beers.batches.end(),
                                     [](const cellar::BatchStatus& b) { return !b.gone(); });
  summary_->setText(beers.batches.empty()
                        ? QString()
                        : tr("%1 batches, %2 in kegs").arg(beers.batches.size()).arg(in_kegs));
  stack_->setCurrentIndex(beers.batches.empty() && beers.away.empty() ? 1 : 0);
}

void BeersPage::trace(cellar::BatchId batch) {
  TraceDialog dialog(context_, batch, window());
  dialog.exec();
}

void BeersPage::recall(cellar::BatchId batch) {
  RecallDialog dialog(context_, batch, window());
  dialog.exec();
}

}  // namespace ullage::ui
