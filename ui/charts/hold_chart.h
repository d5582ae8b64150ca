// SPDX-License-Identifier: GPL-3.0-or-later
//
// A hold test: what was read, what a tight keg would read, and the leak that fits.
// The bars of a reading are its own error only; what all readings share (a dial
// that reads high) moves them together and hides no leak. The band at the no-leak
// line is what water left inside may take up; with beer inside, how far what the beer
// does is not known. Readings that can't be right are drawn without lines. Axes are
// in the person's unit and the cellar's local time. The same in words is the
// accessible description.
#pragma once

#include <memory>
#include <vector>

#include "core/cellar/hold_test.h"
#include "core/report/say.h"
#include "ui/charts/plot_widget.h"

namespace ullage::ui {

class HoldChart final : public PlotWidget {
  Q_OBJECT
 public:
  explicit HoldChart(QWidget* parent = nullptr);

  void show_study(std::shared_ptr<const cellar::HoldStudy>, const report::Speaker&);
  [[nodiscard]] bool has_readings() const;  // two or more: then it shows
  [[nodiscard]] bool has_lines() const { return !lines_.empty(); }
  [[nodiscard]] QString in_words() const;
  [[nodiscard]] QSize sizeHint() const override { return {300, 190}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {200, 160}; }

 private:
  [[nodiscard]] bool has_plot() const override { return has_readings(); }
  void draw_plot() override;
  void draw_axes();
  void draw_lines();
  void draw_readings();
  [[nodiscard]] double x_of(units::Duration) const;
  [[nodiscard]] double y_of(units::GaugePressure) const;

  std::shared_ptr<const cellar::HoldStudy> study_;
  std::vector<physics::HoldPoint> lines_;
  report::Speaker speaker_;
};

// A reading's half-width by the causes it shares with no other reading.
[[nodiscard]] units::PressureDifference own_error(const physics::HoldTest&, std::size_t reading);

}  // namespace ullage::ui
