// SPDX-License-Identifier: GPL-3.0-or-later
//
// The chart of an answer on the slate: the likely line in its band (or dots with
// whiskers, for cycles and readings), lines beside it with a legend beneath, the
// range it should come into, and marks. Axes are in the person's units; the same
// in words is the accessible description.
#pragma once

#include <utility>

#include "core/report/slate/computation.h"
#include "ui/charts/plot_widget.h"

class QCPLegend;

namespace ullage::ui {

class AnswerChart final : public PlotWidget {
  Q_OBJECT
 public:
  explicit AnswerChart(QWidget* parent = nullptr);

  void show_chart(report::slate::Chart, const units::Printer&);
  [[nodiscard]] bool has_chart() const { return !chart_.empty(); }
  [[nodiscard]] QString in_words() const;
  [[nodiscard]] QSize sizeHint() const override { return {360, 240}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {220, 200}; }

 private:
  [[nodiscard]] bool has_plot() const override { return has_chart(); }
  void draw_plot() override;
  void draw_axes();
  void draw_line();
  void draw_dots();
  void draw_band_about(const report::slate::ChartLine&);
  void draw_lines_beside();
  void draw_legend();
  void draw_wanted_band();
  void draw_marks();
  [[nodiscard]] double x_of(const report::slate::Value&) const;
  [[nodiscard]] double y_of(const report::slate::Value&) const;
  // From the least to the greatest of all that is drawn, upright.
  [[nodiscard]] std::pair<double, double> drawn_span() const;
  [[nodiscard]] bool in_hours() const;

  QCPLegend* legend_ = nullptr;
  report::slate::Chart chart_;
  units::Printer printer_;
};

}  // namespace ullage::ui
