// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/keg_table_view.h"

#include <QContextMenuEvent>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"
#include "ui/widgets/co2_gauge.h"
#include "ui/widgets/level_cell.h"

namespace ullage::ui {

namespace {

// The least width of each column, and its share of what is left over.
struct ColumnPlan {
  int least;
  double share;
};
using ColumnPlans = std::array<ColumnPlan, keg_column_count>;
constexpr ColumnPlans comfortable_plan = {
    {{58, 0}, {146, 0.2}, {134, 0}, {120, 0.05}, {190, 0.55}, {200, 0.2}}};
constexpr ColumnPlans compact_plan = {
    {{52, 0}, {146, 0.3}, {130, 0}, {180, 0}, {130, 0.35}, {214, 0.35}}};

constexpr int comfortable_row = 56;
constexpr int roomiest_compact_row = 28;

}  // namespace

KegTableView::KegTableView(KegTableModel& model, QWidget* parent)
    : QTableView(parent),
      model_(model),
      delegate_(new KegRowDelegate(model, this)),
      header_(new KegTableHeader(model, this)) {
  setObjectName("keg_table");
  setAccessibleName(tr("Kegs"));
  setModel(&model_);
  setItemDelegate(delegate_);
  setHorizontalHeader(header_);
  verticalHeader()->hide();
  verticalHeader()->setMinimumSectionSize(1);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setTabKeyNavigation(false);
  setShowGrid(false);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setMouseTracking(true);
  setAutoFillBackground(false);
  viewport()->setAutoFillBackground(false);
  connect(&model_, &QAbstractItemModel::modelReset, this, &KegTableView::lay_out_rows);
  connect(this, &QAbstractItemView::clicked, this, &KegTableView::opened);
  connect(header_, &QHeaderView::sectionResized, this, [this](int section, int, int width) {
    if (laying_out_) return;
    dragged_[static_cast<std::size_t>(section)] = width;
    lay_out_columns();
    emit widths_dragged();
  });
  // A double click on the edge gives the column back to the layout.
  connect(header_, &QHeaderView::sectionHandleDoubleClicked, this, [this](int section) {
    dragged_[static_cast<std::size_t>(section)] = 0;
    lay_out_columns();
    emit widths_dragged();
  });
  lay_out_rows();
}

void KegTableView::set_compact(bool on) {
  compact_ = on;
  delegate_->set_compact(on);
  header_->set_compact(on);
  lay_out_columns();
  lay_out_rows();
  if (currentIndex().isValid()) scrollTo(currentIndex());
}

std::optional<cellar::KegId> KegTableView::chosen() const {
  if (!currentIndex().isValid()) return std::nullopt;
  return model_.row_at(currentIndex().row()).keg;
}

void KegTableView::choose(cellar::KegId keg) {
  if (const std::optional<int> row = model_.row_of(keg)) {
    const int column = currentIndex().isValid() ? currentIndex().column() : 0;
    setCurrentIndex(model_.index(*row, column));
  }
}

void KegTableView::set_dragged_widths(const Widths& widths) {
  dragged_ = widths;
  lay_out_columns();
}

void KegTableView::lay_out_columns() {
  const ColumnPlans& plan = compact_ ? compact_plan : comfortable_plan;
  int taken = 0;
  double shares = 0;
  for (std::size_t i = 0; i < plan.size(); ++i) {
    taken += dragged_[i] > 0 ? dragged_[i] : plan[i].least;
    if (dragged_[i] == 0) shares += plan[i].share;
  }
  const int spare = std::max(0, viewport()->width() - taken);
  laying_out_ = true;
  int given = 0;
  for (std::size_t i = 0; i < plan.size(); ++i) {
    int width = dragged_[i];
    if (width == 0) {
      width = plan[i].least;
      if (shares > 0) width += static_cast<int>(spare * plan[i].share / shares);
    }
    const bool last = i + 1 == plan.size();
    if (last) width = std::max(width, viewport()->width() - given);
    header_->resizeSection(static_cast<int>(i), width);
    given += width;
  }
  laying_out_ = false;
}

void KegTableView::lay_out_rows() {
  int height = comfortable_row;
  if (compact_) {
    // As tall as lets all kegs fit, between a line of text and a comfortable target.
    const int least = static_cast<int>(std::ceil(QFontMetricsF(font_of(TextRole::small)).height()));
    const int rows = std::max(1, model_.rowCount());
    height = std::clamp(viewport()->height() / rows, least, roomiest_compact_row);
  } else {
    const QFontMetricsF metrics(font_of(TextRole::body));
    height = std::max(comfortable_row, static_cast<int>(metrics.height() * 3.2));
  }
  if (verticalHeader()->defaultSectionSize() != height) {
    verticalHeader()->setDefaultSectionSize(height);
  }
}

void KegTableView::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  lay_out_columns();
  lay_out_rows();
}

void KegTableView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (currentIndex().isValid()) emit opened();
    return;
  }
  if (event->key() == Qt::Key_Space) {
    if (currentIndex().isValid()) emit reasons_of_row(row_rect(currentIndex().row()));
    return;
  }
  QTableView::keyPressEvent(event);
}

void KegTableView::hover(int row) {
  if (row == hovered_) return;
  hovered_ = row;
  delegate_->set_hovered_row(row);
  viewport()->update();
}

void KegTableView::mouseMoveEvent(QMouseEvent* event) {
  const QPoint at = event->position().toPoint();
  hover(indexAt(at).row());
  viewport()->setCursor(number_under(at).isValid() ? Qt::PointingHandCursor : Qt::ArrowCursor);
  QTableView::mouseMoveEvent(event);
}

// A click on a number asks for its reasons; it chooses the row, but does not open it.
void KegTableView::mouseReleaseEvent(QMouseEvent* event) {
  const QModelIndex number = number_under(event->position().toPoint());
  if (event->button() != Qt::LeftButton || !number.isValid()) {
    QTableView::mouseReleaseEvent(event);
    return;
  }
  {
    const QSignalBlocker no_click(this);
    QTableView::mouseReleaseEvent(event);
  }
  emit reasons_of_number(static_cast<KegColumn>(number.column()), number_at(number));
}

void KegTableView::contextMenuEvent(QContextMenuEvent* event) {
  if (event->reason() == QContextMenuEvent::Mouse) {
    const QModelIndex under = indexAt(event->pos());
    if (!under.isValid()) return;
    setCurrentIndex(under);
    emit reasons_of_row(QRect(event->pos(), QSize(1, 1)));
  } else if (currentIndex().isValid()) {
    emit reasons_of_row(row_rect(currentIndex().row()));
  }
}

QRect KegTableView::row_rect(int row) const {
  return {0, rowViewportPosition(row), viewport()->width(), rowHeight(row)};
}

QRect KegTableView::number_at(const QModelIndex& index) const {
  const KegRow& row = model_.row_at(index.row());
  const CellStyle style = cell_style(theme_of(this), compact_);
  const QRectF cell(visualRect(index));
  QRectF number;
  if (index.column() == static_cast<int>(KegColumn::left)) {
    number = level_number_rect(cell, row.level, style);
  } else if (index.column() == static_cast<int>(KegColumn::co2)) {
    number = co2_number_rect(cell, row.co2, style);
  }
  return number.toAlignedRect();
}

QModelIndex KegTableView::number_under(const QPoint& point) const {
  const QModelIndex index = indexAt(point);
  return index.isValid() && number_at(index).contains(point) ? index : QModelIndex();
}

void KegTableView::underline_numbers(QPainter& painter, int row) const {
  if (row < 0 || row >= model_.rowCount()) return;
  QPen dots(theme_of(this).text_secondary, 1.2);
  dots.setDashPattern({1.5, 2});
  painter.setPen(dots);
  for (const KegColumn column : {KegColumn::left, KegColumn::co2}) {
    const QRect number = number_at(model_.index(row, static_cast<int>(column)));
    if (!number.isEmpty()) painter.drawLine(number.bottomLeft(), number.bottomRight());
  }
}

void KegTableView::leaveEvent(QEvent* event) {
  hover(-1);
  QTableView::leaveEvent(event);
}

void KegTableView::paintEvent(QPaintEvent* event) {
  QTableView::paintEvent(event);
  {
    QPainter numbers(viewport());
    underline_numbers(numbers, currentIndex().row());
    if (hovered_ != currentIndex().row()) underline_numbers(numbers, hovered_);
  }
  if (!hasFocus() || !currentIndex().isValid()) return;
  const int row = currentIndex().row();
  const QRectF ring(0, rowViewportPosition(row), viewport()->width(), rowHeight(row));
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  const qreal pen = compact_ ? 1 : 2;
  painter.setPen(QPen(theme_of(this).focus, pen));
  painter.drawRoundedRect(ring.adjusted(pen / 2, pen / 2, -pen / 2, -1 - (pen / 2)), 3, 3);
}

QModelIndex KegTableView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
  const int last = model_.rowCount() - 1;
  const int column = std::max(0, currentIndex().column());
  if (action == MoveHome) return model_.index(0, column);
  if (action == MoveEnd) return model_.index(last, column);
  return QTableView::moveCursor(action, modifiers);
}

void KegTableView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QTableView::currentChanged(current, previous);
  if (current.row() != previous.row()) {
    viewport()->update();
    emit chosen_changed();
  }
}

}  // namespace ullage::ui
