// SPDX-License-Identifier: GPL-3.0-or-later
//
// What feeds what, as a simple drawing: bottles on the left, the regulators they
// feed in the middle, a secondary set in under the one before it, the kegs on those
// to the right, with their pressures. Said in words to a screen reader. Names that are too long for
// a narrow window wrap.
#pragma once

#include <QWidget>
#include <cstddef>
#include <optional>
#include <vector>

namespace ullage::ui {

struct DrawnKeg {
  QString tag;
  QString pressure;
};
struct DrawnBranch {
  QString regulator;
  std::vector<DrawnKeg> kegs;
  // Which of the bottles it stands on; none for one that another branch feeds, nor
  // where nobody knows: then it is drawn from all of them.
  std::optional<std::size_t> bottle = {};
  // The branch that feeds it, which comes before it.
  std::optional<std::size_t> fed_by = {};
};
struct DrawnSupply {
  std::vector<QString> bottles;
  std::vector<DrawnBranch> branches;
};

class GasDrawing : public QWidget {
  Q_OBJECT
 public:
  explicit GasDrawing(QWidget* parent = nullptr);
  void show_supply(DrawnSupply);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  [[nodiscard]] int rows() const;
  [[nodiscard]] QString in_words() const;
  DrawnSupply supply_;
};

}  // namespace ullage::ui
