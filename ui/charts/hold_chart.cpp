// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/hold_chart.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

#include "core/units/shown.h"
#include "ui/context.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr int hold_points_drawn = 121;

bool shared_with_others(const physics::HoldTest& test, std::size_t reading,
                        const units::ErrorSource& source) {
  for (std::size_t i = 0; i < test.readings.size(); ++i) {
    if (i == reading) continue;
    for (const units::Contribution& c : test.readings[i].pressure.contributions()) {
      if (c.source == source) return true;
    }
  }
  return false;
}

}  // namespace

units::PressureDifference own_error(const physics::HoldTest& test, std::size_t reading) {
  double sum = 0;
  for (const units::Contribution& c : test.readings[reading].pressure.contributions()) {
    if (!shared_with_others(test, reading, c.source)) sum += c.half_width * c.half_width;
  }
  return units::pascals(std::sqrt(sum));
}

HoldChart::HoldChart(QWidget* parent) : PlotWidget(parent) {
  setObjectName("hold_chart");
  set_name(tr("Hold test"));
}

void HoldChart::show_study(std::shared_ptr<const cellar::HoldStudy> study,
                           const report::Speaker& speaker) {
  study_ = std::move(study);
  speaker_ = speaker;
  lines_.clear();
  if (study_ && study_->outcome) {
    auto lines = study_->beer
                     ? physics::hold_beer_lines(study_->test, *study_->beer, hold_points_drawn)
                     : physics::hold_lines(study_->test, *study_->outcome, hold_points_drawn);
    if (lines) lines_ = std::move(*lines);
  }
  set_in_words(in_words());
  redraw();
}

bool HoldChart::has_readings() const { return study_ && study_->test.readings.size() >= 2; }

double HoldChart::x_of(units::Duration at) const { return along(study_->time_of(at)); }

double HoldChart::y_of(units::GaugePressure p) const {
  return units::shown(speaker_.printer.units, p).in(p);
}

void HoldChart::draw_plot() {
  draw_axes();
  if (has_lines()) draw_lines();
  draw_readings();
}

void HoldChart::draw_axes() {
  QCPAxis* x = plot_->xAxis;
  QCPAxis* y = plot_->yAxis;
  const auto& readings = study_->test.readings;
  double low = y_of(readings.front().pressure.value());
  double high = low;
  const auto take_in = [&](units::GaugePressure p) {
    low = std::min(low, y_of(p));
    high = std::max(high, y_of(p));
  };
  for (const physics::HoldPoint& p : lines_) {
    take_in(p.low);
    take_in(p.high);
  }
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const units::GaugePressure p = readings[i].pressure.value();
    const units::PressureDifference e = own_error(study_->test, i);
    take_in(p + e);
    take_in(p - e);
  }
  const double room = std::max(0.05, (high - low) * 0.12);
  y->setRange(low - room, high + room);
  const double begin = x_of(readings.front().at);
  const double end = x_of(readings.back().at);
  x->setRange(begin - 0.03 * (end - begin), end + 0.03 * (end - begin));
  mark_days(study_->time_of(readings.front().at), study_->time_of(readings.back().at), 70,
            speaker_);
}

void HoldChart::draw_lines() {
  const Theme& theme = theme_of(this);
  QCPGraph* tight = plot_->addGraph();
  const Band band = add_band(theme.success, 0.20F);
  QPen dashes(theme.success, 2);
  dashes.setDashPattern({4, 3});
  tight->setPen(dashes);
  std::vector<QCPGraph*> laws;
  for (std::size_t i = 0; i < lines_.front().leaking.size(); ++i) {
    QCPGraph* graph = plot_->addGraph();
    QPen pen(theme.accent, 2);
    if (i > 0) pen.setStyle(Qt::DotLine);
    graph->setPen(pen);
    laws.push_back(graph);
  }
  for (const physics::HoldPoint& p : lines_) {
    const double x = x_of(p.at);
    tight->addData(x, y_of(p.tight));
    band.add(x, y_of(p.low), y_of(p.high));
    for (std::size_t i = 0; i < laws.size(); ++i) laws[i]->addData(x, y_of(p.leaking[i]));
  }
}

void HoldChart::draw_readings() {
  const ReadPoints points = add_read_points();
  for (std::size_t i = 0; i < study_->test.readings.size(); ++i) {
    const physics::HoldReading& r = study_->test.readings[i];
    const double value = y_of(r.pressure.value());
    points.add(x_of(r.at), value, y_of(r.pressure.value() + own_error(study_->test, i)) - value);
  }
}

QString HoldChart::in_words() const {
  if (!has_readings()) return tr("No chart: a hold test takes two readings.");
  const units::Printer& print = speaker_.printer;
  const auto& readings = study_->test.readings;
  QStringList words;
  words << tr("%1 readings, from %2 on %3 to %4 on %5.")
               .arg(readings.size())
               .arg(q(print.print(readings.front().pressure.value())),
                    q(report::say_time(study_->origin, speaker_)),
                    q(print.print(readings.back().pressure.value())),
                    q(report::say_time(study_->time_of(readings.back().at), speaker_)));
  if (study_->outcome)
    words << tr("Without a leak it would read %1.").arg(q(print.print(study_->outcome->expected)));
  return words.join(' ');
}

}  // namespace ullage::ui
