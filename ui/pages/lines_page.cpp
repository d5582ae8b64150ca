// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/lines_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <QPushButton>
#include <QResizeEvent>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/dialogs/log_preview.h"
#include "ui/models/line_words.h"
#include "ui/pages/kept_fresh.h"
#include "ui/pages/line_panel.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/status_mark.h"

namespace ullage::ui {
namespace {

constexpr int side_by_side_from = 1020;
constexpr int row_padding = 14;

// Rows of two lines of text run into each other without a line between them.
class RuledRows : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override {
    QStyledItemDelegate::paint(painter, option, index);
    painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                      theme_of(option.palette).line);
  }
};

struct LineColumn {
  enum : int { tap, beer, pressure, glass, cleaning, state, count };
};

QIcon mark_icon(Mark mark, const QWidget* like) {
  const qreal ratio = like->devicePixelRatioF();
  QPixmap picture(QSize(small_icon, small_icon) * ratio);
  picture.setDevicePixelRatio(ratio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_mark(painter, QRectF(0, 0, small_icon, small_icon), mark, theme_of(like));
  return QIcon(picture);
}

}  // namespace

LinesPage::LinesPage(Context& context, QWidget* parent) : QWidget(parent), context_(context) {
  setObjectName(QStringLiteral("lines_page"));
  setAccessibleName(tr("Lines"));
  build();
  fresh_ = std::make_unique<KeptFresh>(*this, context_, [this] { refresh(); });
}

LinesPage::~LinesPage() = default;

void LinesPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

void LinesPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const bool beside = event->size().width() >= side_by_side_from;
  splitter_->setOrientation(beside ? Qt::Horizontal : Qt::Vertical);
  if (beside) {
    const int right = std::clamp(event->size().width() * 3 / 8, 420, 560);
    splitter_->setSizes({event->size().width() - right, right});
  }
  // The rows' heights follow from the columns' widths, which Qt sets only now.
  QTimer::singleShot(0, this, [this] {
    fit_rows();
    if (splitter_->orientation() == Qt::Horizontal) return;
    const int rows = table_->verticalHeader()->length() + table_->horizontalHeader()->height();
    const int top = std::min(rows + 2, height() * 2 / 5);
    splitter_->setSizes({top, std::max(200, height() - top - 80)});
  });
}

// The beer takes what its name needs up to a width, the state all the rest.
void LinesPage::fit_rows() {
  table_->resizeColumnToContents(LineColumn::beer);
  table_->setColumnWidth(LineColumn::beer,
                         std::clamp(table_->columnWidth(LineColumn::beer), 80, 180));
  table_->resizeRowsToContents();
  for (int row = 0; row < table_->rowCount(); ++row) {
    table_->setRowHeight(row, table_->rowHeight(row) + row_padding);
  }
}

void LinesPage::build() {
  auto* add = new QPushButton(tr("Add a line…"));
  add->setObjectName(QStringLiteral("add_line"));
  connect(add, &QPushButton::clicked, this, &LinesPage::add_line);
  auto* list = new QPushButton(tr("Print, save as CSV…"));
  list->setObjectName(QStringLiteral("line_list"));
  connect(list, &QPushButton::clicked, this,
          [this] { LogPreview(context_, report::LogBook::lines, window()).exec(); });
  summary_ = new InkLabel({}, TextRole::small, Ink::secondary);
  auto* header = new QHBoxLayout;
  header->addWidget(new InkLabel(tr("Lines"), TextRole::title));
  header->addWidget(summary_);
  header->addStretch(1);
  header->addWidget(list);
  header->addWidget(add);

  splitter_ = new QSplitter(Qt::Horizontal);
  splitter_->setChildrenCollapsible(false);
  splitter_->setHandleWidth(space::m);
  splitter_->addWidget(table_ = build_table());
  splitter_->addWidget(panel_ = new LinePanel(context_));
  splitter_->setStretchFactor(0, 3);
  splitter_->setStretchFactor(1, 2);
  auto* empty = new EmptyState(Icon::line, tr("No lines yet"),
                               tr("Register each tap with its hose: then cleaning days, locks and "
                                  "keg changes have a home."));
  connect(empty->add_action(tr("Add a line…")), &QPushButton::clicked, this, &LinesPage::add_line);
  stack_ = new QStackedWidget;
  stack_->addWidget(splitter_);
  stack_->addWidget(empty);

  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(space::xl, space::l, space::xl, space::l);
  all->setSpacing(space::m);
  all->addLayout(header);
  all->addWidget(stack_, 1);
}

QTableWidget* LinesPage::build_table() {
  auto* table = new QTableWidget(0, LineColumn::count);
  table->setObjectName(QStringLiteral("lines_table"));
  table->setAccessibleName(tr("Lines"));
  table->setHorizontalHeaderLabels(
      {tr("Tap"), tr("Beer"), tr("Pressure"), tr("A glass in"), tr("Cleaning"), tr("State")});
  table->verticalHeader()->hide();
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  table->setShowGrid(false);
  table->setWordWrap(true);
  table->setFrameShape(QFrame::NoFrame);
  table->setItemDelegate(new RuledRows(table));
  table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table->setIconSize(QSize(small_icon, small_icon));
  QHeaderView* head = table->horizontalHeader();
  head->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  head->setHighlightSections(false);
  head->setSectionResizeMode(QHeaderView::ResizeToContents);
  head->setSectionResizeMode(LineColumn::beer, QHeaderView::Fixed);
  head->setSectionResizeMode(LineColumn::state, QHeaderView::Stretch);
  head->setMinimumSectionSize(64);
  connect(table, &QTableWidget::currentCellChanged, this, [this](int row, int, int, int) {
    if (!refreshing_) choose(row);
  });
  // Enter or a double click on a number opens its reasons.
  connect(table, &QTableWidget::cellActivated, this, [this](int, int column) {
    if (column == LineColumn::pressure) panel_->explain(LinePanel::Shown::pressure);
    if (column == LineColumn::glass) panel_->explain(LinePanel::Shown::glass);
    if (column == LineColumn::cleaning) panel_->explain(LinePanel::Shown::cleaning);
  });
  return table;
}

void LinesPage::fill(int row, const cellar::LineStatus& line, const cellar::CellarStatus& status) {
  const LineWords w = line_words(line, status, context_.speaker());
  const auto put = [&](int column, const QString& first, const QString& second) {
    QTableWidgetItem* item = table_->item(row, column);
    if (item == nullptr) table_->setItem(row, column, item = new QTableWidgetItem);
    const QString text = second.isEmpty() ? first : first + QLatin1Char('\n') + second;
    item->setText(text);
    item->setData(Qt::AccessibleTextRole,
                  QString(text).replace(QLatin1Char('\n'), QLatin1String(", ")));
    return item;
  };
  put(LineColumn::tap, w.tap, w.name);
  put(LineColumn::beer, w.beer, w.keg == w.beer ? QString() : w.keg);
  put(LineColumn::pressure, w.set, w.should);
  put(LineColumn::glass, w.glass, w.range);
  put(LineColumn::cleaning, w.cleaned, w.due);
  put(LineColumn::state, w.state, {})->setIcon(mark_icon(mark_of(line), this));
  if (line.do_not_serve())
    table_->item(row, LineColumn::state)->setForeground(theme_of(this).danger_ink);
  else
    table_->item(row, LineColumn::state)->setForeground(theme_of(this).text);
}

void LinesPage::refresh() {
  const auto status = context_.cellar.status();
  refreshing_ = true;
  shown_.clear();
  int locked = 0;
  std::vector<const cellar::LineStatus*> lines;
  for (const cellar::LineStatus& line : status->lines) {
    if (!line.record.in_use) continue;
    lines.push_back(&line);
    shown_.push_back(line.record.line);
    if (line.do_not_serve()) ++locked;
  }
  const bool us = context_.preferences.words() == report::RegionalWords::us;
  table_->horizontalHeaderItem(LineColumn::tap)->setText(us ? tr("Faucet") : tr("Tap"));
  const int count = static_cast<int>(lines.size());
  table_->setRowCount(count);
  for (int row = 0; row < count; ++row) fill(row, *lines[static_cast<std::size_t>(row)], *status);
  fit_rows();
  auto at = chosen_ ? std::find(shown_.begin(), shown_.end(), *chosen_) : shown_.end();
  if (at == shown_.end()) at = shown_.begin();
  chosen_ = at == shown_.end() ? std::nullopt : std::optional(*at);
  if (chosen_) table_->setCurrentCell(static_cast<int>(at - shown_.begin()), 0);
  refreshing_ = false;
  panel_->show_line(status, chosen_);
  stack_->setCurrentIndex(count == 0 ? 1 : 0);
  summary_->setText(locked > 0  ? tr("%1 in use, %2 locked").arg(count).arg(locked)
                    : count > 0 ? tr("%1 in use").arg(count)
                                : QString());
}

void LinesPage::choose(int row) {
  if (row < 0 || row >= static_cast<int>(shown_.size())) return;
  chosen_ = shown_[static_cast<std::size_t>(row)];
  panel_->show_line(context_.cellar.status(), chosen_);
}

void LinesPage::show_line(cellar::LineId id) {
  const auto at = std::find(shown_.begin(), shown_.end(), id);
  if (at != shown_.end()) table_->setCurrentCell(static_cast<int>(at - shown_.begin()), 0);
}

void LinesPage::add_line() {
  cellar::LineRecord line{.line = context_.cellar.fresh<cellar::LineId>()};
  context_.navigator.open_task(
      {"line_record",
       {},
       cellar::Payload(boost::variant2::in_place_type<cellar::LineRecord>, line),
       {}});
}

}  // namespace ullage::ui
