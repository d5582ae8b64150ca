// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/flow_layout.h"

#include <QWidget>
#include <algorithm>

namespace ullage::ui {

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout(parent), gap_(gap) {
  setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
  for (QLayoutItem* item : items_) delete item;
}

void FlowLayout::addItem(QLayoutItem* item) { items_.push_back(item); }

QLayoutItem* FlowLayout::itemAt(int i) const {
  return i >= 0 && i < count() ? items_[static_cast<std::size_t>(i)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int i) {
  if (i < 0 || i >= count()) return nullptr;
  QLayoutItem* item = items_[static_cast<std::size_t>(i)];
  items_.erase(items_.begin() + i);
  return item;
}

int FlowLayout::heightForWidth(int width) const { return place(QRect(0, 0, width, 0), false); }

QSize FlowLayout::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
  const QMargins edge = contentsMargins();
  return size + QSize(edge.left() + edge.right(), edge.top() + edge.bottom());
}

QSize FlowLayout::sizeHint() const {
  int width = 0;
  int height = 0;
  for (const QLayoutItem* item : items_) {
    if (item->isEmpty()) continue;
    width += item->sizeHint().width() + (width > 0 ? gap_ : 0);
    height = std::max(height, item->sizeHint().height());
  }
  const QMargins edge = contentsMargins();
  return {width + edge.left() + edge.right(), height + edge.top() + edge.bottom()};
}

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  place(rect, true);
}

int FlowLayout::place(const QRect& rect, bool move) const {
  const QMargins edge = contentsMargins();
  const QRect room = rect.marginsRemoved(edge);
  int x = room.left();
  int y = room.top();
  int line = 0;
  for (QLayoutItem* item : items_) {
    if (item->isEmpty()) continue;
    const QSize size = item->sizeHint();
    if (x > room.left() && x + size.width() > room.left() + room.width()) {
      x = room.left();
      y += line + gap_;
      line = 0;
    }
    if (move)
      item->setGeometry(
          QRect(QPoint(x, y), QSize(std::min(size.width(), room.width()), size.height())));
    x += size.width() + gap_;
    line = std::max(line, size.height());
  }
  return y + line - rect.top() + edge.bottom();
}

}  // namespace ullage::ui
