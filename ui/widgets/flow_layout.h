// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lays widgets side by side and goes to a new line where the width ends, like
// words in a paragraph.
#pragma once

#include <QLayout>
#include <vector>

namespace ullage::ui {

class FlowLayout final : public QLayout {
  Q_OBJECT
 public:
  explicit FlowLayout(QWidget* parent = nullptr, int gap = 8);
  ~FlowLayout() override;

  void addItem(QLayoutItem*) override;
  [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int) const override;
  QLayoutItem* takeAt(int) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect&) override;

 private:
  int place(const QRect&, bool move) const;
  std::vector<QLayoutItem*> items_;
  int gap_;
};

}  // namespace ullage::ui
