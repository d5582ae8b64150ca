// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 in a keg over time: the likely line in its band, the range it should be
// served in, readings with their error, gas changes done and planned, and now.
// Axes are in the person's unit and the cellar's local time. The same in words
// is the accessible description.
#pragma once

#include <memory>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/say.h"
#include "ui/charts/plot_widget.h"

namespace ullage::ui {

class CarbonationChart final : public PlotWidget {
  Q_OBJECT
 public:
  explicit CarbonationChart(QWidget* parent = nullptr);

  void show_curve(cellar::CarbonationCurveData, const report::Speaker&);
  [[nodiscard]] bool has_curve() const { return !curve_.points.empty(); }
  [[nodiscard]] QSize sizeHint() const override { return {300, 200}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {200, 170}; }

 private:
  [[nodiscard]] bool has_plot() const override { return has_curve(); }
  void draw_plot() override;
  void draw_axes();
  void draw_band_and_line();
  void draw_readings();
  void draw_now();
  void draw_marks();
  [[nodiscard]] QString in_words() const;
  [[nodiscard]] double y_of(units::Co2Volumes) const;

  cellar::CarbonationCurveData curve_;
  report::Speaker speaker_;
};

}  // namespace ullage::ui
