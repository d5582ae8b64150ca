// SPDX-License-Identifier: GPL-3.0-or-later
//
// What all charts share: a plot that fills the widget and leaves mouse and keyboard to
// what is around it, drawn anew when its size or the theme changes, with quiet axes in
// the person's numbers. A chart says when it has something to show, and draws it.
#pragma once

#include <QWidget>

#include "core/cellar/time.h"
#include "core/report/say.h"
#include "ui/theme/theme.h"

class QCPErrorBars;
class QCPGraph;
class QCustomPlot;

namespace ullage::ui {

class PlotWidget : public QWidget {
  Q_OBJECT
 public:
  explicit PlotWidget(QWidget* parent);
  // The colour of what the chart lies on; a surface unless said otherwise.
  void lie_on(QColor Theme::* ground) { ground_ = ground; }

 protected:
  void changeEvent(QEvent*) override;
  void resizeEvent(QResizeEvent*) override;

  // For a screen reader: what the chart is, and what it shows.
  void set_name(const QString& name);
  void set_in_words(const QString& words);

  // Clears the plot, and draws what there is to show.
  void redraw();
  [[nodiscard]] virtual bool has_plot() const = 0;
  virtual void draw_plot() = 0;

  // Small quiet numbers and level lines only.
  void dress_axes(const units::NumberStyle&);
  // The cellar's days along the bottom, `least_px` apart or more, and about four numbers
  // at the left with the decimals that they need.
  void mark_days(cellar::Instant from, cellar::Instant to, int least_px, const report::Speaker&);
  // A range along the bottom, shaded between the data of its two edges.
  struct Band {
    QCPGraph* upper;
    QCPGraph* lower;
    void add(double x, double low, double high) const;
  };
  [[nodiscard]] Band add_band(QColor, float opacity);
  // Where the values should be, all along, under everything.
  void draw_wanted(double low, double high);
  // What was read: rings with an error bar each, to be filled in the same order.
  struct ReadPoints {
    QCPGraph* rings;
    QCPErrorBars* errors;
    void add(double x, double value, double half_width) const;
  };
  [[nodiscard]] ReadPoints add_read_points();
  // A time as the bottom axis counts it.
  [[nodiscard]] static double along(cellar::Instant at);

  QCustomPlot* plot_;

 private:
  QColor Theme::* ground_;
};

}  // namespace ullage::ui
