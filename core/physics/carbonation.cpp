// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <map>
#include <numbers>
#include <string>
#include <utility>

#include "core/physics/carbonation_solver.h"
#include "core/physics/equilibrium.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/reading_spread.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double soda_keg_bore_m = 0.216;
constexpr double large_keg_bore_m = 0.381;
constexpr double soda_keg_largest_m3 = 0.025;
constexpr double soda_keg_beer_m3 = 0.01893;
constexpr Range surface_range{1e-3, 2.0};  // m2
const ErrorSource single_readings{"repeatability of readings"};

double disc(double bore_m) { return std::numbers::pi / 4 * bore_m * bore_m; }

template <class Q>
void add_sources(const Estimate<Q>& e, std::vector<ErrorSource>& all) {
  for (const Contribution& c : e.contributions()) {
    if (c.half_width != 0) all.push_back(c.source);
  }
}

void add_sources(const LogEstimate<Duration>& e, std::vector<ErrorSource>& all) {
  if (e.factor() > 1) all.push_back(e.source());
}

// Where each source enters: in how many settings of gas and place, and whether
// anywhere else. What enters once only, in one setting, is one reading's own error.
struct Use {
  int settings = 0;
  bool elsewhere = false;
  double half_width = 0;
};
using Uses = std::map<ErrorSource, Use>;

template <class Q>
void add_setting(const Estimate<Q>& e, Uses& uses) {
  for (const Contribution& c : e.contributions()) {
    if (c.half_width == 0) continue;
    Use& use = uses[c.source];
    ++use.settings;
    use.half_width = c.half_width;
  }
}

template <class E>
void add_elsewhere(const E& e, Uses& uses) {
  std::vector<ErrorSource> all;
  add_sources(e, all);
  for (const ErrorSource& source : all) uses[source].elsewhere = true;
}

struct AddUses {
  Uses& uses;
  void operator()(const GasOn& s) const { add_setting(s.pressure, uses); }
  void operator()(const PlaceChanged& s) const { add_setting(s.temperature, uses); }
  void operator()(const BeerTemperatureRead& s) const { add_elsewhere(s.temperature, uses); }
  void operator()(const Co2Read& s) const { add_elsewhere(s.co2, uses); }
  void operator()(const GasOff&) const {}
  void operator()(const Vented&) const {}
  void operator()(const Rocked&) const {}
  void operator()(const BeerDrawn&) const {}
};

Uses uses_of(const CarbonationHistory& history, const CarbonationRates& rates) {
  Uses uses;
  uses[rates.equation].elsewhere = true;
  add_elsewhere(history.initial, uses);
  add_elsewhere(history.ambient, uses);
  add_elsewhere(history.start, uses);
  bool rocked = false;
  for (const Step& step : history.steps) {
    visit(AddUses{uses}, step.what);
    rocked = rocked || holds_alternative<Rocked>(step.what);
  }
  add_elsewhere(rates.resting, uses);
  if (rocked) add_elsewhere(rates.rocking, uses);
  add_elsewhere(rates.cooling, uses);
  return uses;
}

// Few readings are run each on its own; many are followed together.
constexpr std::ptrdiff_t single_readings_run = 6;

bool is_single_reading(const Use& use) { return use.settings == 1 && !use.elsewhere; }

bool pools(const Uses& uses) {
  return std::count_if(uses.begin(), uses.end(), [](const auto& u) {
           return is_single_reading(u.second);
         }) > single_readings_run;
}

template <class Q>
double pooled_square(const Estimate<Q>& e, const Uses& uses) {
  double sum = 0;
  for (const Contribution& c : e.contributions()) {
    const auto use = uses.find(c.source);
    if (use != uses.end() && is_single_reading(use->second)) sum += c.half_width * c.half_width;
  }
  return sum;
}

std::vector<PooledStep> pooled_steps(const CarbonationHistory& history, const Uses& uses) {
  std::vector<PooledStep> out;
  for (const Step& step : history.steps) {
    if (const auto* gas = get_if<GasOn>(&step.what))
      out.push_back({step.at, PooledStep::Kind::pressure, pooled_square(gas->pressure, uses)});
    if (const auto* place = get_if<PlaceChanged>(&step.what))
      out.push_back({step.at, PooledStep::Kind::place, pooled_square(place->temperature, uses)});
    if (holds_alternative<Co2Read>(step.what))
      out.push_back({step.at, PooledStep::Kind::co2_read, 0});
  }
  return out;
}

}  // namespace

Result<CarbonationRates> carbonation_priors(Volume brimful, Volume beer, std::string_view keg,
                                            std::optional<Area> surface) {
  const double vessel = in_cubic_metres(brimful);
  if (auto bad = outside(Subject::volume, vessel, vessel_volume_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::beer_volume, in_cubic_metres(beer), {vessel * 0.005, vessel}))
    return std::unexpected(*bad);
  const double free_surface =
      surface ? surface->value()
              : disc(vessel <= soda_keg_largest_m3 ? soda_keg_bore_m : large_keg_bore_m);
  if (auto bad = outside(Subject::length, free_surface, surface_range))
    return std::unexpected(*bad);
  const std::string name(keg);
  auto cooling = cooling_time_constant(brimful, ErrorSource{name + ": cooling rate"});
  if (!cooling) return std::unexpected(cooling.error());
  const double depth = in_cubic_metres(beer) / free_surface;
  const double soda_keg_depth = soda_keg_beer_m3 / disc(soda_keg_bore_m);
  return CarbonationRates{
      {days(4.0 * depth / soda_keg_depth), 2.0, ErrorSource{name + ": carbonation rate"}},
      {minutes(10.0), 3.3, ErrorSource{name + ": rocking rate"}},
      *std::move(cooling),
      ErrorSource{"equilibrium equation"}};
}

// The centre run, and for each source a run with it a half-width up and down.
struct CarbonationModel::Members {
  CarbonationHistory history;
  CarbonationRates rates;
  Duration end{};
  Trajectory centre;
  struct Source {
    ErrorSource source;
    Trajectory up;
    Trajectory down;
  };
  std::vector<Source> sources;
  ReadingSpread readings;

  struct Band {
    double low;
    double median;
    double high;
  };
  // Each source's two sides are kept apart, as the answer is not symmetric: sides
  // of one kind add as the root of the sum of squares.
  [[nodiscard]] Band band(Duration t) const {
    const double median = centre.at(t).co2.count();
    double below = std::pow(readings.half_width(t), 2);
    double above = below;
    for (const Source& s : sources) {
      const double up = s.up.at(t).co2.count() - median;
      const double down = s.down.at(t).co2.count() - median;
      below += std::pow(std::min({up, down, 0.0}), 2);
      above += std::pow(std::max({up, down, 0.0}), 2);
    }
    return {std::max(0.0, median - std::sqrt(below)), median, median + std::sqrt(above)};
  }
  [[nodiscard]] std::vector<double> grid(double from) const;
};

// Times at which to look for a crossing: the centre run's pieces, long ones cut
// by their own time constant.
std::vector<double> CarbonationModel::Members::grid(double from) const {
  std::vector<double> times{from};
  for (const KegPiece& p : centre.pieces()) {
    if (p.start_s + p.length_s <= from) continue;
    const int cuts = std::clamp(static_cast<int>(std::ceil(2 * p.lambda * p.length_s)), 1, 24);
    for (int i = 1; i <= cuts; ++i) {
      const double t = p.start_s + p.length_s * i / cuts;
      if (t > from) times.push_back(t);
    }
  }
  return times;
}

CarbonationModel::CarbonationModel(std::shared_ptr<const Members> members)
    : members_(std::move(members)) {}

Result<CarbonationModel> CarbonationModel::make(const CarbonationHistory& history,
                                                const CarbonationRates& rates, Duration horizon) {
  if (const auto bad = check_history(history, rates, horizon)) return std::unexpected(*bad);
  auto members = std::make_shared<Members>();
  members->history = history;
  members->rates = rates;
  members->end = (history.steps.empty() ? seconds(0) : history.steps.back().at) + horizon;
  members->centre = Trajectory::solve(history, rates, Shift{}, members->end);
  const Uses uses = uses_of(history, rates);
  const bool pooled = pools(uses);
  if (pooled) members->readings = ReadingSpread(members->centre, pooled_steps(history, uses));
  for (const auto& [source, use] : uses) {
    if (pooled && is_single_reading(use)) continue;
    members->sources.push_back(
        {source, Trajectory::solve(history, rates, Shift{source, 1}, members->end),
         Trajectory::solve(history, rates, Shift{source, -1}, members->end)});
  }
  return CarbonationModel(std::move(members));
}

Result<CarbonationPoint> CarbonationModel::at(Duration t) const {
  if (auto bad = outside(Subject::duration, in_seconds(t), {0.0, in_seconds(members_->end)}))
    return std::unexpected(*bad);
  const Members::Band band = members_->band(t);
  const KegState state = members_->centre.at(t);
  return CarbonationPoint{
      t,
      volumes_of_co2(band.low),
      volumes_of_co2(band.median),
      volumes_of_co2(band.high),
      GaugePressure::from_absolute(state.headspace, members_->history.ambient.value()),
      state.temperature};
}

Result<Estimate<Co2Volumes>> CarbonationModel::co2_at(Duration t) const {
  if (auto bad = outside(Subject::duration, in_seconds(t), {0.0, in_seconds(members_->end)}))
    return std::unexpected(*bad);
  std::vector<Contribution> out;
  for (const Members::Source& s : members_->sources) {
    out.push_back({s.source, (s.up.at(t).co2.count() - s.down.at(t).co2.count()) / 2});
  }
  if (!members_->readings.empty())
    out.push_back({single_readings, members_->readings.half_width(t)});
  return Estimate<Co2Volumes>(members_->centre.at(t).co2, std::move(out));
}

Result<std::vector<CarbonationPoint>> CarbonationModel::curve(Duration from, Duration to,
                                                              int count) const {
  if (auto bad = outside(Subject::cycles, count, {2.0, 100000.0})) return std::unexpected(*bad);
  std::vector<CarbonationPoint> points;
  points.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) {
    // The last one exactly, lest rounding step past the end.
    const Duration t = i + 1 == count ? to : from + (to - from) * (i / (count - 1.0));
    auto point = at(t);
    if (!point) return std::unexpected(point.error());
    points.push_back(*point);
  }
  return points;
}

Window CarbonationModel::time_to_reach(Co2Volumes target, Duration from) const {
  using Edge = double Members::Band::*;
  constexpr std::array<Edge, 3> edges{&Members::Band::high, &Members::Band::median,
                                      &Members::Band::low};
  std::array<std::optional<Duration>, 3> found;
  const double wanted = target.count();
  double previous = in_seconds(from);
  for (const double t : members_->grid(previous)) {
    const Members::Band here = members_->band(seconds(t));
    for (std::size_t i = 0; i < edges.size(); ++i) {
      if (found[i] || here.*edges[i] < wanted) continue;
      double low = previous;
      double high = t;
      while (high - low > 1.0) {
        const double mid = 0.5 * (low + high);
        (members_->band(seconds(mid)).*edges[i] < wanted ? low : high) = mid;
      }
      found[i] = seconds(high);
    }
    if (found[0] && found[1] && found[2]) break;
    previous = t;
  }
  return {found[0], found[1], found[2]};
}

Window CarbonationModel::time_leaving(Co2Volumes high_target, Duration from) const {
  return time_to_reach(high_target, from);
}

Estimate<Co2Volumes> CarbonationModel::equilibrium_end() const {
  std::vector<Contribution> out;
  for (const Members::Source& s : members_->sources) {
    out.push_back({s.source, (s.up.settles_at().count() - s.down.settles_at().count()) / 2});
  }
  if (!members_->readings.empty())
    out.push_back({single_readings, members_->readings.half_width_at_rest()});
  return {members_->centre.settles_at(), std::move(out)};
}

Duration CarbonationModel::end() const { return members_->end; }
const CarbonationHistory& CarbonationModel::history() const { return members_->history; }
const CarbonationRates& CarbonationModel::rates() const { return members_->rates; }

}  // namespace ullage::physics
