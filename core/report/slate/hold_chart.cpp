// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/hold_chart.h"

#include <cmath>

namespace ullage::report::slate {
namespace {

constexpr int hold_line_points = 60;

ChartLine no_leak_line(const std::vector<physics::HoldPoint>& points) {
  ChartLine line{.label = "no leak", .guide = true, .points = {}};
  for (const physics::HoldPoint& p : points) {
    line.points.emplace_back(p.at, p.tight);
    line.band.emplace_back(p.low, p.high);
  }
  return line;
}

ChartLine leak_line(const std::vector<physics::HoldPoint>& points, std::size_t law,
                    physics::LeakLaw by) {
  ChartLine line{.label = by == physics::LeakLaw::viscous ? "leak that fits, by a scratch"
                                                          : "leak that fits, by a hole",
                 .guide = false,
                 .points = {}};
  for (const physics::HoldPoint& p : points) line.points.emplace_back(p.at, p.leaking[law]);
  return line;
}

// A dial's bias is in each reading it gives; where two dials were read it parts them.
units::PressureDifference error_of_one_reading(const Inputs& in) {
  const auto repeats = in.get<units::PressureDifference>("repeat");
  if (in.choice("dials") == 0) return repeats;
  return units::pascals(std::hypot(units::in_pascals(repeats),
                                   units::in_pascals(in.get<units::PressureDifference>("dial"))));
}

}  // namespace

Chart hold_chart(const Inputs& in, const physics::HoldTest& test, const physics::HoldOutcome& o,
                 const std::optional<physics::BeerInside>& beer) {
  Chart chart;
  if (test.readings.size() < 2) return chart;
  chart.title = "Pressure since the first reading";
  chart.x_title = "After";
  chart.y_title = "Pressure";
  chart.dots = true;
  chart.points_label = "read";
  const auto own = error_of_one_reading(in);
  for (const physics::HoldReading& r : test.readings) {
    const units::GaugePressure p = r.pressure.value();
    chart.points.push_back({r.at, p - own, p, p + own});
  }
  const auto points = beer ? physics::hold_beer_lines(test, *beer, hold_line_points)
                           : physics::hold_lines(test, o, hold_line_points);
  if (!points || points->empty()) return chart;
  chart.lines.push_back(no_leak_line(*points));
  if (beer) return chart;
  for (std::size_t i = 0; i < o.laws.size(); ++i)
    chart.lines.push_back(leak_line(*points, i, o.laws[i].law));
  return chart;
}

}  // namespace ullage::report::slate
