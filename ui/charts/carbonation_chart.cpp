// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/carbonation_chart.h"

#include <qcustomplot.h>

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "core/units/shown.h"
#include "ui/context.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

QCPItemStraightLine* upright(QCustomPlot& plot, double x, const QPen& pen) {
  auto* line = new QCPItemStraightLine(&plot);
  line->point1->setCoords(x, 0);
  line->point2->setCoords(x, 1);
  line->setPen(pen);
  return line;
}

}  // namespace

CarbonationChart::CarbonationChart(QWidget* parent) : PlotWidget(parent) {
  setObjectName("carbonation_chart");
  set_name(tr("Carbonation over time"));
}

void CarbonationChart::show_curve(cellar::CarbonationCurveData curve,
                                  const report::Speaker& speaker) {
  curve_ = std::move(curve);
  speaker_ = speaker;
  set_in_words(in_words());
  redraw();
}

double CarbonationChart::y_of(units::Co2Volumes co2) const {
  return units::shown(speaker_.printer.units, co2).in(co2);
}

void CarbonationChart::draw_plot() {
  draw_axes();
  draw_band_and_line();
  draw_readings();
  draw_now();
  draw_marks();
}

void CarbonationChart::draw_axes() {
  QCPAxis* x = plot_->xAxis;
  QCPAxis* y = plot_->yAxis;
  double low = y_of(curve_.points.front().low);
  double high = y_of(curve_.points.front().high);
  const auto take_in = [&](units::Co2Volumes co2) {
    low = std::min(low, y_of(co2));
    high = std::max(high, y_of(co2));
  };
  for (const cellar::CurvePoint& p : curve_.points) {
    take_in(p.low);
    take_in(p.high);
  }
  for (const cellar::CurveReading& r : curve_.readings) {
    take_in(r.co2.low());
    take_in(r.co2.high());
  }
  if (curve_.target_low) take_in(*curve_.target_low);
  if (curve_.target_high) take_in(*curve_.target_high);
  const double room = std::max(0.1, (high - low) * 0.08);
  y->setRange(std::max(0.0, low - room), high + (curve_.marks.empty() ? room : room * 3));
  x->setRange(along(curve_.points.front().at), along(curve_.points.back().at));

  mark_days(curve_.points.front().at, curve_.points.back().at, 70, speaker_);
}

void CarbonationChart::draw_band_and_line() {
  const Theme& theme = theme_of(this);
  const PhaseLook& look = theme.phases[static_cast<std::size_t>(cellar::Phase::carbonating)];
  if (curve_.target_low && curve_.target_high)
    draw_wanted(y_of(*curve_.target_low), y_of(*curve_.target_high));
  const Band band = add_band(look.fill, 0.38F);
  QCPGraph* past = plot_->addGraph();
  QCPGraph* ahead = plot_->addGraph();
  past->setPen(QPen(look.ink, 2.2));
  QPen dashes(look.ink, 2.2);
  dashes.setDashPattern({3, 2});
  ahead->setPen(dashes);
  for (const cellar::CurvePoint& p : curve_.points) {
    const double x = along(p.at);
    band.add(x, y_of(p.low), y_of(p.high));
    if (p.at <= speaker_.now) {
      past->addData(x, y_of(p.likely));
      ahead->data()->clear();  // the dashes begin where the line ends
    }
    ahead->addData(x, y_of(p.likely));
  }
}

void CarbonationChart::draw_readings() {
  if (curve_.readings.empty()) return;
  const ReadPoints points = add_read_points();
  for (const cellar::CurveReading& r : curve_.readings) {
    const double value = y_of(r.co2.value());
    points.add(along(r.at), value, y_of(r.co2.high()) - value);
  }
}

void CarbonationChart::draw_now() {
  const Theme& theme = theme_of(this);
  const double now = along(speaker_.now);
  if (!plot_->xAxis->range().contains(now)) return;
  upright(*plot_, now, QPen(theme.text, 1.4));
  auto* label = new QCPItemText(plot_);
  label->setText(tr("now"));
  label->setFont(font_of(TextRole::small));
  label->setColor(theme.text);
  label->setPositionAlignment(Qt::AlignLeft | Qt::AlignBottom);
  label->setPadding(QMargins(4, 0, 2, 2));
  label->position->setTypeX(QCPItemPosition::ptPlotCoords);
  label->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
  label->position->setCoords(now, 1);
}

// Labels share up to three rows under the top edge; one that would run into
// another is left to its line and to the words.
void CarbonationChart::draw_marks() {
  const Theme& theme = theme_of(this);
  const QFont font = font_of(TextRole::small);
  const QFontMetricsF metrics(font);
  const QCPRange range = plot_->xAxis->range();
  const double pixels = std::max(1, width() - 40);
  std::array<double, 3> taken_to{-1e9, -1e9, -1e9};
  for (const cellar::CurveMark& mark : curve_.marks) {
    const double x = along(mark.at);
    if (!range.contains(x)) continue;
    QPen pen(mark.planned ? theme.accent : theme.control_line, mark.planned ? 1.4 : 1);
    pen.setDashPattern({3, 3});
    upright(*plot_, x, pen);
    const QString text = q(report::say(mark.label, speaker_));
    const double at = (x - range.lower) / range.size() * pixels;
    const double wide = metrics.horizontalAdvance(text) + 10;
    const bool leftwards = at + wide > pixels;
    const double from = leftwards ? at - wide : at;
    const auto row =
        std::find_if(taken_to.begin(), taken_to.end(), [&](double end) { return end <= from; });
    if (row == taken_to.end() || from < 0) continue;
    *row = from + wide;
    auto* label = new QCPItemText(plot_);
    label->setText(text);
    label->setFont(font);
    label->setColor(mark.planned ? theme.accent_ink : theme.text_secondary);
    label->setPositionAlignment((leftwards ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    label->setPadding(QMargins(4, 1, 4, 1));
    label->setBrush(theme.surface);  // the line of now does not cross the words
    label->position->setTypeX(QCPItemPosition::ptPlotCoords);
    label->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
    const double line = (metrics.height() + 1) / std::max(60, height() - 30);
    label->position->setCoords(x, static_cast<double>(row - taken_to.begin()) * line);
  }
}

QString CarbonationChart::in_words() const {
  if (!has_curve()) return tr("No curve: there is no estimate yet.");
  const units::Printer& print = speaker_.printer;
  const cellar::CurvePoint& first = curve_.points.front();
  const cellar::CurvePoint& last = curve_.points.back();
  QStringList words;
  words << tr("From %1 on %2 to %3 on %4.")
               .arg(q(print.print(first.likely)), q(report::say_time(first.at, speaker_)),
                    q(print.print_range(last.low, last.high)),
                    q(report::say_time(last.at, speaker_)));
  if (curve_.target_low && curve_.target_high) {
    words << tr("It should be served at %1.")
                 .arg(q(print.print_range(*curve_.target_low, *curve_.target_high)));
  }
  for (const cellar::CurveReading& r : curve_.readings) {
    words << tr("Read %1: %2.").arg(q(report::say_time(r.at, speaker_)), q(print.print(r.co2)));
  }
  for (const cellar::CurveMark& m : curve_.marks) {
    words << (m.planned ? tr("Planned %1: %2.") : tr("%1: %2."))
                 .arg(q(report::say_time(m.at, speaker_)), q(report::say(m.label, speaker_)));
  }
  return words.join(QLatin1Char(' '));
}

}  // namespace ullage::ui
