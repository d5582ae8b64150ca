// SPDX-License-Identifier: GPL-3.0-or-later
//
// Pressure along a beer line from keg to faucet: at rest, while pouring, and the
// equilibrium pressure of the beer in each place over it, so that break-out is
// seen where it happens. What is being tried stands over what is. Axes in the
// person's units; the same in words is the accessible description.
#pragma once

#include <optional>

#include "core/cellar/pour_state.h"
#include "core/report/say.h"
#include "ui/charts/plot_widget.h"

namespace ullage::ui {

class ProfileChart final : public PlotWidget {
  Q_OBJECT
 public:
  explicit ProfileChart(QWidget* parent = nullptr);

  // `tried` is drawn over `now` while a what-if is on.
  void show_profile(const cellar::PourOutlook& now, const cellar::PourSetting& setting,
                    const std::optional<cellar::PourOutlook>& tried, const report::Speaker&);
  [[nodiscard]] QString in_words() const;
  [[nodiscard]] QSize sizeHint() const override { return {380, 230}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {240, 200}; }

 private:
  [[nodiscard]] bool has_plot() const override { return shown_; }
  void draw_plot() override;
  [[nodiscard]] const cellar::PourOutlook& front() const { return tried_ ? *tried_ : now_; }
  [[nodiscard]] double x_of(units::Length) const;
  [[nodiscard]] double y_of(units::GaugePressure) const;
  void draw_axes();
  void draw_lines();
  void draw_equilibrium();
  void draw_legend();
  void draw_places();

  cellar::PourOutlook now_;
  cellar::PourSetting setting_;
  std::optional<cellar::PourOutlook> tried_;
  report::Speaker speaker_;
  bool shown_ = false;
};

}  // namespace ullage::ui
