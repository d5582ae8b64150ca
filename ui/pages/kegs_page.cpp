// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/kegs_page.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/context.h"
#include "ui/pages/keg_panel.h"
#include "ui/pages/keg_row_reasons.h"
#include "ui/pages/kegs_bar.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/keg_table_view.h"
#include "ui/widgets/life_legend.h"

namespace ullage::ui {

namespace {

constexpr int narrow_below = 1000;
constexpr int panel_width = 348;

std::vector<LifeTick> week_ticks(cellar::Instant now, const report::Speaker& speaker) {
  std::vector<LifeTick> ticks;
  for (const int week : {-2, -1, 0, 1, 2}) {
    const cellar::Instant at = now + std::chrono::weeks(week);
    const QString label = week == 0 ? KegsPage::tr("Today")
                                    : q(report::say_date(speaker.calendar->date_of(at), speaker));
    ticks.push_back({at, label, week == 0});
  }
  return ticks;
}

PhaseNames phase_names(const report::Speaker& speaker) {
  PhaseNames names;
  for (std::size_t i = 0; i < names.size(); ++i) {
    names.at(i) = q(report::say(static_cast<cellar::Phase>(i), speaker)).toLower();
  }
  return names;
}

}  // namespace

KegsPage::KegsPage(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      model_(new KegTableModel(this)),
      bar_(new KegsBar(this)),
      splitter_(new QSplitter(Qt::Horizontal, this)) {
  setObjectName("kegs_page");
  setAccessibleName(tr("Kegs"));
  build();
  connect_bar();
  connect_table();
  restore_view();
  connect(&context_.preferences, &Preferences::changed, this, &KegsPage::refresh);
  subscription_ = context_.cellar.on_change([this](const cellar::Change&) { refresh(); });
  minute_.setInterval(std::chrono::minutes(1));
  connect(&minute_, &QTimer::timeout, this, &KegsPage::refresh);
  minute_.start();
  fill();  // before anybody sees it: what stands in it is laid out once
}

KegsPage::~KegsPage() = default;

void KegsPage::build() {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(splitter_);
  splitter_->setChildrenCollapsible(false);
  splitter_->setHandleWidth(1);
  splitter_->addWidget(build_table_side());
  panel_ = new KegPanel(context_, this);
  connect(panel_, &KegPanel::work_out_wanted, this, &KegsPage::work_out_wanted);
  panel_->setMinimumWidth(300);
  splitter_->addWidget(panel_);
  splitter_->setStretchFactor(0, 1);
  splitter_->setStretchFactor(1, 0);
}

QWidget* KegsPage::build_table_side() {
  auto* side = new QWidget(splitter_);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(bar_);
  stack_ = new QStackedWidget(side);
  table_ = new KegTableView(*model_, stack_);
  new KegRowReasons(*table_, context_);
  no_kegs_ = new EmptyState(
      Icon::keg, tr("No kegs yet"),
      tr("Register your kegs and say what is in them now. What you don’t know can stay open."),
      stack_);
  no_match_ = new EmptyState(Icon::search, tr("No keg matches"), {}, stack_);
  for (QWidget* each : {static_cast<QWidget*>(table_), static_cast<QWidget*>(no_kegs_),
                        static_cast<QWidget*>(no_match_)}) {
    stack_->addWidget(each);
  }
  auto* inset = new QVBoxLayout;
  inset->setContentsMargins(space::l, 0, space::s, 0);
  inset->addWidget(stack_);
  column->addLayout(inset, 1);
  foot_ = new QWidget(side);
  auto* foot = new QHBoxLayout(foot_);
  foot->setContentsMargins(space::xl + 3, 2, space::l, 4);
  foot->setSpacing(space::l);
  shown_count_ = new InkLabel({}, TextRole::small, Ink::secondary, foot_);
  shown_count_->setObjectName("shown_count");
  legend_ = new LifeLegend(foot_);
  foot->addWidget(shown_count_);
  foot->addStretch(1);
  foot->addWidget(legend_);
  column->addWidget(foot_);
  return side;
}

void KegsPage::connect_bar() {
  connect(bar_, &KegsBar::filter_chosen, this, [this](KegFilter filter) {
    model_->set_filter(filter);
    after_listing();
  });
  connect(bar_, &KegsBar::order_chosen, this, &KegsPage::set_order);
  connect(bar_, &KegsBar::text_changed, this, [this](const QString& text) {
    model_->set_text(text);
    after_listing();
  });
  connect(bar_, &KegsBar::compact_chosen, this,
          [this](bool on) { context_.preferences.set_compact_rows(on); });
  connect(bar_, &KegsBar::panel_wanted, this, &KegsPage::set_panel_shown);
  connect(bar_, &KegsBar::status_sheet_wanted, this,
          [this] { context_.navigator.open_status_sheet(); });
  connect(bar_, &KegsBar::transfer_wanted, this,
          [this] { context_.navigator.open_task({"transfer", {}, {}}); });
  connect(bar_, &KegsBar::stock_taking_wanted, this,
          [this] { context_.navigator.open_task({"stock_take", {}, {}}); });
  bar_->search()->installEventFilter(this);
  stack_->installEventFilter(this);
  auto* find = new QShortcut(QKeySequence::Find, this);
  find->setContext(Qt::WidgetWithChildrenShortcut);
  connect(find, &QShortcut::activated, this, [this] {
    bar_->search()->setFocus();
    bar_->search()->selectAll();
  });
}

void KegsPage::connect_table() {
  connect(model_, &QAbstractItemModel::modelAboutToBeReset, this, [this] { listing_ = true; });
  connect(model_, &QAbstractItemModel::modelReset, this, [this] { listing_ = false; });
  connect(table_, &KegTableView::chosen_changed, this, [this] {
    if (listing_) return;
    wanted_ = table_->chosen();
    show_chosen();
  });
  connect(table_, &KegTableView::opened, this, [this] {
    set_panel_shown(true);
    if (!narrow()) panel_->setFocus();
  });
  connect(table_, &KegTableView::typed, this, &KegsPage::start_search);
  connect(&table_->header(), &QHeaderView::sectionClicked, this, [this](int section) {
    for (const KegOrder order : all_keg_orders) {
      if (column_of(order) == static_cast<KegColumn>(section)) set_order(order);
    }
  });
  connect(table_, &KegTableView::widths_dragged, this, [this] {
    QVariantList widths;
    for (const int width : table_->dragged_widths()) widths << width;
    context_.preferences.remember("kegs/column_widths", widths);
  });
  connect(panel_, &KegPanel::close_wanted, this, [this] {
    if (narrow()) set_panel_shown(false);
    table_->setFocus();
  });
  connect(no_kegs_->add_action(tr("Register your kegs…")), &QPushButton::clicked, this,
          [this] { context_.navigator.open_task({"register_kegs", {}, {}}); });
  connect(no_match_->add_action(tr("Show all kegs")), &QPushButton::clicked, this, [this] {
    bar_->search()->clear();
    bar_->set_filter(KegFilter::all);
    model_->set_filter(KegFilter::all);
    after_listing();
    table_->setFocus();
  });
}

void KegsPage::set_order(KegOrder order) {
  model_->set_order(order);
  bar_->set_order(order);
  context_.preferences.remember("kegs/order", static_cast<int>(order));
  after_listing();
}

void KegsPage::restore_view() {
  const int order = context_.preferences.remembered("kegs/order").toInt();
  if (order >= 0 && order < static_cast<int>(all_keg_orders.size())) {
    model_->set_order(static_cast<KegOrder>(order));
    bar_->set_order(model_->order());
  }
  const QVariantList saved = context_.preferences.remembered("kegs/column_widths").toList();
  if (saved.size() == keg_column_count) {
    KegTableView::Widths widths{};
    for (int i = 0; i < keg_column_count; ++i) {
      widths.at(static_cast<std::size_t>(i)) = std::clamp(saved[i].toInt(), 0, 2000);
    }
    table_->set_dragged_widths(widths);
  }
  panel_shown_wide_ = context_.preferences.remembered("kegs/panel", true).toBool();
}

void KegsPage::refresh() {
  if (isVisible()) {
    fill();
  } else {
    stale_ = true;
  }
}

void KegsPage::fill() {
  stale_ = false;
  const int scrolled = table_->verticalScrollBar()->value();
  status_ = context_.cellar.status();
  refresh_words();
  model_->show(*status_, context_.speaker());
  after_listing();
  table_->verticalScrollBar()->setValue(scrolled);
}

void KegsPage::refresh_words() {
  const report::Speaker speaker = context_.speaker();
  const PhaseNames names = phase_names(speaker);
  table_->set_phase_names(names);
  legend_->set_phase_names(names);
  const bool compact = context_.preferences.compact_rows();
  bar_->set_compact(compact);
  if (compact != table_->compact()) table_->set_compact(compact);
  table_->header().set_dates(week_ticks(status_->now, speaker));
}

void KegsPage::after_listing() {
  std::vector<std::size_t> counts;
  counts.reserve(std::size(all_keg_filters));
  for (const KegFilter filter : all_keg_filters) counts.push_back(model_->count(filter));
  bar_->set_counts(counts);
  table_->header().set_co2_name(tr("CO₂, %1").arg(model_->co2_scale().name));
  table_->header().set_ordered_by(column_of(model_->order()));
  const int shown = model_->rowCount();
  const auto in_all = static_cast<int>(model_->kegs_in_all());
  bar_->set_any_kegs(in_all > 0);
  if (status_) bar_->set_uncounted(model_->uncounted());
  foot_->setVisible(in_all > 0);
  shown_count_->setText(shown == in_all ? tr("%n kegs", nullptr, in_all)
                                        : tr("%1 of %2 kegs").arg(shown).arg(in_all));
  if (in_all == 0) {
    stack_->setCurrentWidget(no_kegs_);
  } else if (shown == 0) {
    const QString text = bar_->search()->text().trimmed();
    no_match_->set_text(tr("No keg matches"),
                        text.isEmpty()
                            ? tr("No keg is “%1” just now.").arg(filter_name(model_->filter()))
                            : tr("Nothing with “%1” among the kegs shown.").arg(text));
    stack_->setCurrentWidget(no_match_);
  } else {
    stack_->setCurrentWidget(table_);
  }
  if (wanted_ && model_->row_of(*wanted_)) {
    if (table_->chosen() != wanted_) table_->choose(*wanted_);
  } else if (shown > 0) {
    const std::optional<cellar::KegId> kept = wanted_;
    listing_ = true;
    table_->choose(model_->row_at(0).keg);
    listing_ = false;
    wanted_ = kept ? kept : table_->chosen();
  }
  show_chosen();
  if (isVisible()) lay_out_panel();
}

void KegsPage::show_chosen() {
  if (status_) panel_->show_keg(*status_, table_->chosen());
}

bool KegsPage::narrow() const { return width() < narrow_below; }

void KegsPage::set_panel_shown(bool on) {
  if (narrow()) {
    panel_shown_narrow_ = on;
  } else {
    panel_shown_wide_ = on;
    context_.preferences.remember("kegs/panel", on);
  }
  lay_out_panel();
  if (on && narrow()) panel_->setFocus();
  if (!on) table_->setFocus();
}

void KegsPage::lay_out_panel() {
  const bool over = narrow();
  const bool shown = (over ? panel_shown_narrow_ : panel_shown_wide_) && model_->rowCount() > 0;
  bar_->set_panel_shown(shown);
  panel_->set_closable(over);
  if (over && splitter_->indexOf(panel_) >= 0) panel_->setParent(this);
  if (!over && splitter_->indexOf(panel_) < 0) splitter_->addWidget(panel_);
  if (over != was_narrow_) {
    was_narrow_ = over;
    splitter_->setStretchFactor(0, 1);
  }
  panel_->setVisible(shown);
  if (!shown) return;
  if (over) {
    const int wide = std::min(width() - 220, panel_width + 40);
    const int top = stack_->mapTo(this, QPoint(0, 0)).y();
    panel_->setGeometry(width() - wide, top, wide, height() - top);
    panel_->raise();
  } else if (splitter_->sizes().value(1) < panel_->minimumWidth() ||
             splitter_->width() != width()) {
    splitter_->setSizes({width() - panel_width, panel_width});
  }
}

void KegsPage::show_keg(cellar::KegId keg) {
  wanted_ = keg;
  if (stale_) refresh();
  if (!model_->row_of(keg)) {
    bar_->search()->clear();
    bar_->set_filter(KegFilter::all);
    model_->set_filter(KegFilter::all);
  }
  after_listing();
  set_panel_shown(true);
}

void KegsPage::start_search(const QString& text) {
  QLineEdit* search = bar_->search();
  search->setFocus();
  search->setText(text);
}

void KegsPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) refresh();
  lay_out_panel();
  if (focusWidget() == nullptr) table_->setFocus();
}

void KegsPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  lay_out_panel();
}

void KegsPage::keyPressEvent(QKeyEvent* event) {
  const QString text = event->text();
  const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
  if (plain && !text.isEmpty() && text.front().isLetterOrNumber() && model_->kegs_in_all() > 0) {
    start_search(text);
    return;
  }
  QWidget::keyPressEvent(event);
}

bool KegsPage::eventFilter(QObject* watched, QEvent* event) {
  // Laid over the table, the panel hangs below the head, whatever that has to say. To and
  // from its place beside it goes only when the page is resized: the splitter, which moves
  // its parts just now, must neither lose nor gain one.
  const bool lies_over = narrow() && splitter_->indexOf(panel_) < 0;
  if (watched == stack_ && event->type() == QEvent::Move && lies_over) lay_out_panel();
  if (watched == bar_->search() && event->type() == QEvent::KeyPress) {
    switch (static_cast<QKeyEvent*>(event)->key()) {
      case Qt::Key_Down:
      case Qt::Key_Return:
      case Qt::Key_Enter:
        if (model_->rowCount() > 0) table_->setFocus();
        return true;
      case Qt::Key_Escape:
        bar_->search()->clear();
        table_->setFocus();
        return true;
      default:
        break;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace ullage::ui
