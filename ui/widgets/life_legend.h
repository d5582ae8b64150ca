// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the shapes on the life strips mean, in one line under the table.
#pragma once

#include <QWidget>
#include <vector>

#include "ui/widgets/life_strip.h"

namespace ullage::ui {

class LifeLegend final : public QWidget {
  Q_OBJECT
 public:
  explicit LifeLegend(QWidget* parent = nullptr);
  void set_phase_names(const PhaseNames&);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return {60, sizeHint().height()}; }

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  struct Key {
    cellar::Phase phase;
    bool forecast;
    QString word;
  };
  std::vector<Key> keys_;
};

}  // namespace ullage::ui
