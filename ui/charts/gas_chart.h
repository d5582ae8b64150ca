// SPDX-License-Identifier: GPL-3.0-or-later
//
// A gas supply over time, as two curves: what the scale said, with its error,
// and what should be left by the work of the kegs, with its band. Where they
// part, gas is going that no keg explains. The same in words is the accessible
// description.
#pragma once

#include <memory>

#include "core/cellar/gas_account.h"
#include "core/report/say.h"
#include "ui/charts/plot_widget.h"

namespace ullage::ui {

class GasChart final : public PlotWidget {
  Q_OBJECT
 public:
  explicit GasChart(QWidget* parent = nullptr);

  void show_account(std::shared_ptr<const cellar::GasAccount>, const report::Speaker&);
  [[nodiscard]] bool has_curve() const;
  [[nodiscard]] QSize sizeHint() const override { return {340, 200}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {220, 170}; }

 private:
  [[nodiscard]] bool has_plot() const override { return has_curve(); }
  void draw_plot() override;
  void draw_axes();
  void draw_expected();
  void draw_weighings();
  [[nodiscard]] QString in_words() const;
  [[nodiscard]] double y_of(units::Mass) const;

  std::shared_ptr<const cellar::GasAccount> account_;
  report::Speaker speaker_;
};

}  // namespace ullage::ui
