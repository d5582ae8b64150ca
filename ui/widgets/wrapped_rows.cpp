// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/wrapped_rows.h"

#include <QHeaderView>
#include <QStyledItemDelegate>
#include <QTreeView>
#include <algorithm>

namespace ullage::ui {
namespace {

class WrappedRows final : public QStyledItemDelegate {
 public:
  WrappedRows(QTreeView& view, int least_height)
      : QStyledItemDelegate(&view), view_(view), least_height_(least_height) {
    connect(view.header(), &QHeaderView::sectionResized, this,
            [this] { emit sizeHintChanged(QModelIndex()); });
  }

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override {
    QStyleOptionViewItem within(option);
    // The view asks without a width; unbounded, the text takes a single line.
    within.rect = stretches(index) ? QRect(0, 0, room_for(index), least_height_) : QRect();
    QSize size = QStyledItemDelegate::sizeHint(within, index);
    size.setHeight(std::max(size.height(), least_height_));
    return size;
  }

 private:
  [[nodiscard]] bool stretches(const QModelIndex& index) const {
    return view_.header()->sectionResizeMode(index.column()) == QHeaderView::Stretch;
  }
  [[nodiscard]] int room_for(const QModelIndex& index) const {
    int room = view_.columnWidth(index.column());
    if (view_.header()->visualIndex(index.column()) != 0) return room;
    for (QModelIndex at = index.parent(); at.isValid(); at = at.parent()) {
      room -= view_.indentation();
    }
    return view_.rootIsDecorated() ? room - view_.indentation() : room;
  }

  QTreeView& view_;
  int least_height_;
};

}  // namespace

void wrap_rows(QTreeView& view, int least_height) {
  view.setUniformRowHeights(false);
  view.setWordWrap(true);
  view.setItemDelegate(new WrappedRows(view, least_height));
}

}  // namespace ullage::ui
