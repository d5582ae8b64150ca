// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/keg_table_view.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

// The least width of each column, and its share of what is left over.
struct ColumnPlan {
  int least;
  double share;
};
using ColumnPlans = std::array<ColumnPlan, keg_column_count>;
constexpr ColumnPlans comfortable_plan = {
    {{58, 0}, {128, 0.2}, {138, 0}, {124, 0.05}, {170, 0.55}, {186, 0.2}}};
constexpr ColumnPlans compact_plan = {
    {{52, 0}, {150, 0.3}, {108, 0}, {156, 0.05}, {130, 0.35}, {230, 0.3}}};

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
  QTableView::keyPressEvent(event);
}

void KegTableView::hover(int row) {
  if (row == hovered_) return;
  hovered_ = row;
  delegate_->set_hovered_row(row);
  viewport()->update();
}

void KegTableView::mouseMoveEvent(QMouseEvent* event) {
  hover(indexAt(event->position().toPoint()).row());
  QTableView::mouseMoveEvent(event);
}

void KegTableView::leaveEvent(QEvent* event) {
  hover(-1);
  QTableView::leaveEvent(event);
}

void KegTableView::paintEvent(QPaintEvent* event) {
  QTableView::paintEvent(event);
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
