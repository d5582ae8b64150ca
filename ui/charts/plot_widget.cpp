// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/plot_widget.h"

#include <qcustomplot.h>

#include <QEvent>
#include <QResizeEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/charts/axis_decimals.h"
#include "ui/charts/day_ticks.h"

namespace ullage::ui {
namespace {

// A plot that has no room is not drawn: there is nothing to paint on.
class SizedPlot final : public QCustomPlot {
 public:
  using QCustomPlot::QCustomPlot;

 protected:
  void resizeEvent(QResizeEvent* event) override {
    if (!event->size().isEmpty()) QCustomPlot::resizeEvent(event);
  }
};

}  // namespace

PlotWidget::PlotWidget(QWidget* parent)
    : QWidget(parent), plot_(new SizedPlot(this)), ground_(&Theme::surface) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(plot_);
  plot_->setAttribute(Qt::WA_TransparentForMouseEvents);
  plot_->setFocusPolicy(Qt::NoFocus);
}

void PlotWidget::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && has_plot()) redraw();
}

void PlotWidget::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (has_plot()) redraw();
}

void PlotWidget::set_name(const QString& name) {
  setAccessibleName(name);
  plot_->setAccessibleName(name);
}

void PlotWidget::set_in_words(const QString& words) {
  setAccessibleDescription(words);
  plot_->setAccessibleDescription(words);
}

void PlotWidget::redraw() {
  plot_->clearPlottables();
  plot_->clearItems();
  if (!has_plot() || plot_->size().isEmpty()) return;
  plot_->setBufferDevicePixelRatio(devicePixelRatioF());
  plot_->setBackground(QBrush(theme_of(this).*ground_));
  draw_plot();
  // Painted with what else changes, once.
  plot_->replot(QCustomPlot::rpQueuedRefresh);
}

void PlotWidget::dress_axes(const units::NumberStyle& style) {
  const Theme& theme = theme_of(this);
  for (QCPAxis* axis : {plot_->xAxis, plot_->yAxis}) {
    axis->setTickLabelFont(font_of(TextRole::small));
    axis->setTickLabelColor(theme.text_secondary);
    axis->setLabelFont(font_of(TextRole::small));
    axis->setLabelColor(theme.text_secondary);
    axis->setBasePen(Qt::NoPen);
    axis->setTickPen(axis == plot_->xAxis ? QPen(theme.control_line, 1) : Qt::NoPen);
    axis->setSubTickPen(Qt::NoPen);
    axis->grid()->setPen(QPen(theme.line, 1));
    axis->grid()->setZeroLinePen(Qt::NoPen);
    axis->setNumberFormat("f");
  }
  plot_->xAxis->grid()->setVisible(false);
  plot_->setLocale(style.decimal_mark == ',' ? QLocale(QLocale::German) : QLocale(QLocale::C));
}

void PlotWidget::mark_days(cellar::Instant from, cellar::Instant to, int least_px,
                           const report::Speaker& speaker) {
  constexpr int numbers = 4;
  constexpr int label_padding = 5;
  dress_axes(speaker.printer.style);
  const QSharedPointer<QCPAxisTickerText> days(new QCPAxisTickerText);
  for (const DayTick& tick : day_ticks(from, to, std::max(2, width() / least_px), speaker))
    days->addTick(along(tick.at), tick.label);
  plot_->xAxis->setTicker(days);
  plot_->xAxis->setTickLabelPadding(label_padding);
  QCPAxis* y = plot_->yAxis;
  y->setTickLabelPadding(label_padding);
  y->ticker()->setTickCount(numbers);
  y->setNumberPrecision(axis_decimals(y->range().size(), numbers));
}

void PlotWidget::Band::add(double x, double low, double high) const {
  upper->addData(x, high);
  lower->addData(x, low);
}

PlotWidget::Band PlotWidget::add_band(QColor tint, float opacity) {
  const Band band{plot_->addGraph(), plot_->addGraph()};
  tint.setAlphaF(opacity);
  band.upper->setPen(Qt::NoPen);
  band.lower->setPen(Qt::NoPen);
  band.upper->setBrush(tint);
  band.upper->setChannelFillGraph(band.lower);
  return band;
}

void PlotWidget::draw_wanted(double low, double high) {
  QColor tint = theme_of(this).success;
  auto* wanted = new QCPItemRect(plot_);
  wanted->setPen(QPen(tint, 1));
  tint.setAlphaF(0.22F);
  wanted->setBrush(tint);
  wanted->topLeft->setCoords(plot_->xAxis->range().lower, high);
  wanted->bottomRight->setCoords(plot_->xAxis->range().upper, low);
  wanted->setLayer("grid");
}

void PlotWidget::ReadPoints::add(double x, double value, double half_width) const {
  rings->addData(x, value);
  errors->addData(half_width);
}

PlotWidget::ReadPoints PlotWidget::add_read_points() {
  const Theme& theme = theme_of(this);
  const ReadPoints points{plot_->addGraph(), new QCPErrorBars(plot_->xAxis, plot_->yAxis)};
  points.rings->setLineStyle(QCPGraph::lsNone);
  points.rings->setScatterStyle(
      QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(theme.text, 1.8), QBrush(theme.*ground_), 8));
  points.errors->setDataPlottable(points.rings);
  points.errors->setPen(QPen(theme.text, 1.2));
  points.errors->setWhiskerWidth(6);
  points.errors->setSymbolGap(8);
  return points;
}

double PlotWidget::along(cellar::Instant at) {
  return static_cast<double>(at.time_since_epoch().count());
}

}  // namespace ullage::ui
