// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/answer_chart.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "ui/charts/axis_decimals.h"
#include "ui/context.h"
#include "ui/theme/theme.h"

namespace ullage::ui {
namespace {

using report::slate::ChartLine;
using report::slate::ChartPoint;
using report::slate::Count;
using report::slate::Value;

constexpr double drawn_in_hours_below = 3;  // days
constexpr double most_counted_ticks = 10;
constexpr double least_drawn_ppm = 0.1;  // a logarithm has no zero

const QColor& line_ink(const Theme& theme) { return theme.accent_ink; }

}  // namespace

AnswerChart::AnswerChart(QWidget* parent) : PlotWidget(parent) {
  setObjectName(QStringLiteral("answer_chart"));
  lie_on(&Theme::window);
  plot_->setAutoAddPlottableToLegend(false);
}

void AnswerChart::show_chart(report::slate::Chart chart, const units::Printer& printer) {
  chart_ = std::move(chart);
  printer_ = printer;
  set_name(q(chart_.title));
  set_in_words(in_words());
  redraw();
}

bool AnswerChart::in_hours() const {
  const Value& last = chart_.points.back().x;
  return boost::variant2::holds_alternative<units::Duration>(last) &&
         drawn_number(last, printer_.units) < drawn_in_hours_below;
}

double AnswerChart::x_of(const Value& value) const {
  return drawn_number(value, printer_.units) * (in_hours() ? 24 : 1);
}

double AnswerChart::y_of(const Value& value) const {
  const double y = drawn_number(value, printer_.units);
  return chart_.log_y ? std::max(y, least_drawn_ppm) : y;
}

void AnswerChart::draw_plot() {
  draw_axes();
  draw_wanted_band();
  draw_lines_beside();
  if (chart_.dots) {
    draw_dots();
  } else {
    draw_line();
  }
  draw_legend();
  draw_marks();
}

std::pair<double, double> AnswerChart::drawn_span() const {
  double low = y_of(chart_.points.front().low);
  double high = low;
  const auto take_in = [&](const Value& v) {
    low = std::min(low, y_of(v));
    high = std::max(high, y_of(v));
  };
  for (const ChartPoint& p : chart_.points) {
    for (const Value& v : {p.low, p.likely, p.high}) take_in(v);
  }
  for (const ChartLine& line : chart_.lines) {
    for (const auto& [x_at, y_at] : line.points) take_in(y_at);
    for (const auto& [from, to] : line.band) {
      take_in(from);
      take_in(to);
    }
  }
  if (chart_.band_low) take_in(*chart_.band_low);
  if (chart_.band_high) take_in(*chart_.band_high);
  return {low, high};
}

void AnswerChart::draw_axes() {
  QCPAxis* x = plot_->xAxis;
  QCPAxis* y = plot_->yAxis;
  const auto [low, high] = drawn_span();
  if (chart_.log_y) {
    y->setScaleType(QCPAxis::stLogarithmic);
    y->setTicker(QSharedPointer<QCPAxisTickerLog>(new QCPAxisTickerLog));
    y->setRange(low / 1.5, high * 1.5);
    y->setNumberFormat("f");
    y->setNumberPrecision(0);
  } else {
    y->setScaleType(QCPAxis::stLinear);
    y->setTicker(QSharedPointer<QCPAxisTicker>(new QCPAxisTicker));
    const double room = std::max((high - low) * 0.08, 0.05);
    y->setRange(low - room, high + room);
    y->ticker()->setTickCount(5);
    y->setNumberFormat("f");
    y->setNumberPrecision(axis_decimals(y->range().size(), 5));
  }
  const double first = x_of(chart_.points.front().x);
  const double last = x_of(chart_.points.back().x);
  const bool counted = boost::variant2::holds_alternative<Count>(chart_.points.back().x);
  const double edge = !chart_.dots ? 0 : counted ? 0.4 : 0.03 * (last - first);
  x->setRange(first - edge, last + edge);
  QSharedPointer<QCPAxisTicker> steps(new QCPAxisTicker);
  if (chart_.dots && counted) {  // whole ones only
    const QSharedPointer<QCPAxisTickerFixed> whole(new QCPAxisTickerFixed);
    whole->setTickStep(std::max(1.0, std::ceil((last - first) / most_counted_ticks)));
    steps = whole;
  }
  steps->setTickCount(6);
  x->setTicker(steps);
  x->setNumberFormat("f");
  x->setNumberPrecision(chart_.dots && counted ? 0 : axis_decimals(x->range().size(), 6));
  const auto with_unit = [](const std::string& title, const std::string& unit) {
    return unit.empty() ? q(title) : q(title) + QStringLiteral(", ") + q(unit);
  };
  const std::string x_unit =
      in_hours() ? "hours" : drawn_unit(chart_.points.back().x, printer_.units);
  x->setLabel(with_unit(chart_.x_title, x_unit));
  y->setLabel(with_unit(chart_.y_title, drawn_unit(chart_.points.back().likely, printer_.units)));
  dress_axes(printer_.style);
}

void AnswerChart::draw_wanted_band() {
  if (chart_.band_low && chart_.band_high)
    draw_wanted(y_of(*chart_.band_low), y_of(*chart_.band_high));
}

void AnswerChart::draw_line() {
  const Theme& theme = theme_of(this);
  const Band band = add_band(line_ink(theme), 0.24F);
  QCPGraph* likely = plot_->addGraph();
  likely->setPen(QPen(line_ink(theme), 2.2));
  for (const ChartPoint& p : chart_.points) {
    band.add(x_of(p.x), y_of(p.low), y_of(p.high));
    likely->addData(x_of(p.x), y_of(p.likely));
  }
}

void AnswerChart::draw_dots() {
  const Theme& theme = theme_of(this);
  // Beside lines the dots are what was read: in the ink of text, so as to stand out.
  const bool beside_lines = !chart_.lines.empty();
  const QColor ink = beside_lines ? theme.text : line_ink(theme);
  QCPGraph* dots = plot_->addGraph();
  dots->setName(q(chart_.points_label));
  dots->setLineStyle(QCPGraph::lsNone);
  dots->setPen(QPen(ink, 1.8));
  dots->setScatterStyle(beside_lines ? QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(ink, 1.8),
                                                       QBrush(theme.window), 8)
                                     : QCPScatterStyle(QCPScatterStyle::ssDisc, ink, 8));
  QCPErrorBars* errors = nullptr;
  const bool told = std::any_of(chart_.points.begin(), chart_.points.end(),
                                [](const ChartPoint& p) { return p.low != p.high; });
  if (told) {
    errors = new QCPErrorBars(plot_->xAxis, plot_->yAxis);
    errors->setDataPlottable(dots);
    errors->setPen(QPen(ink, 1.4));
    errors->setWhiskerWidth(6);
    errors->setSymbolGap(6);
  }
  for (const ChartPoint& p : chart_.points) {
    const double y = y_of(p.likely);
    dots->addData(x_of(p.x), y);
    if (errors != nullptr) errors->addData(y - y_of(p.low), y_of(p.high) - y);
  }
}

void AnswerChart::draw_band_about(const ChartLine& line) {
  if (line.band.size() != line.points.size() || line.band.empty()) return;
  const Theme& theme = theme_of(this);
  const Band band = add_band(line.guide ? theme.success : line_ink(theme), 0.20F);
  for (std::size_t i = 0; i < line.points.size(); ++i)
    band.add(x_of(line.points[i].first), y_of(line.band[i].first), y_of(line.band[i].second));
}

void AnswerChart::draw_lines_beside() {
  const Theme& theme = theme_of(this);
  bool another = false;
  for (const ChartLine& line : chart_.lines) {
    draw_band_about(line);
    QCPGraph* graph = plot_->addGraph();
    graph->setName(q(line.label));
    QPen pen(line.guide ? theme.success : line_ink(theme), 2);
    if (line.guide) {
      pen.setDashPattern({4, 3});
    } else if (std::exchange(another, true)) {
      pen.setStyle(Qt::DotLine);
    }
    graph->setPen(pen);
    for (const auto& [x, y] : line.points) graph->addData(x_of(x), y_of(y));
  }
}

// Beneath the axes, where it covers nothing. Made anew each time: an empty legend
// would hold the whole column to its own width.
void AnswerChart::draw_legend() {
  if (legend_ != nullptr) {
    plot_->plotLayout()->remove(legend_);
    plot_->plotLayout()->simplify();
    legend_ = nullptr;
  }
  if (chart_.lines.empty()) return;
  legend_ = new QCPLegend;
  plot_->plotLayout()->addElement(1, 0, legend_);
  plot_->plotLayout()->setRowStretchFactor(1, 0.001);
  legend_->setLayer(QStringLiteral("legend"));
  legend_->setFillOrder(QCPLayoutGrid::foColumnsFirst);
  legend_->setBorderPen(Qt::NoPen);
  legend_->setBrush(Qt::NoBrush);
  legend_->setMargins(QMargins(0, space::xs, 0, 0));
  legend_->setIconSize(18, 12);
  legend_->setFont(font_of(TextRole::small));
  legend_->setTextColor(theme_of(this).text);
  for (int i = 0; i < plot_->graphCount(); ++i) {
    if (!plot_->graph(i)->name().isEmpty()) plot_->graph(i)->addToLegend(legend_);
  }
}

void AnswerChart::draw_marks() {
  const Theme& theme = theme_of(this);
  for (const report::slate::ChartMark& mark : chart_.marks) {
    const double x = x_of(mark.x);
    const QCPRange range = plot_->xAxis->range();
    if (!range.contains(x)) continue;
    auto* upright = new QCPItemStraightLine(plot_);
    upright->point1->setCoords(x, plot_->yAxis->range().lower);
    upright->point2->setCoords(x, plot_->yAxis->range().upper);
    QPen pen(theme.text_secondary, 1.2);
    pen.setDashPattern({3, 3});
    upright->setPen(pen);
    auto* label = new QCPItemText(plot_);
    label->setText(q(mark.label));
    label->setFont(font_of(TextRole::small));
    label->setColor(theme.text);
    const bool left = x > range.center();
    label->setPositionAlignment((left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    label->setPadding(QMargins(4, 1, 4, 1));
    label->position->setTypeX(QCPItemPosition::ptPlotCoords);
    label->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
    label->position->setCoords(x, 0);
  }
}

QString AnswerChart::in_words() const {
  if (!has_chart()) return {};
  const auto tell = [this](const ChartPoint& p) {
    const bool counted = boost::variant2::holds_alternative<report::slate::Count>(p.x);
    const QString at = q(print(p.x, printer_));
    return tr("%1 at %2")
        .arg(q(print(p.likely, printer_)),
             counted ? at + QLatin1Char(' ') + q(chart_.x_title).toLower() : at);
  };
  QString words =
      tr("%1: from %2 to %3.")
          .arg(q(chart_.title), tell(chart_.points.front()), tell(chart_.points.back()));
  for (const ChartLine& line : chart_.lines) {
    if (line.points.empty()) continue;
    words +=
        QLatin1Char(' ') + tr("Line “%1”: %2 at its end.")
                               .arg(q(line.label), q(print(line.points.back().second, printer_)));
  }
  return words;
}

}  // namespace ullage::ui
