// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <iterator>
#include <numbers>
#include <string>
#include <utility>

#include "core/physics/carbonation_solver.h"
#include "core/physics/conditioning.h"
#include "core/physics/equilibrium.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/plain_history.h"
#include "core/physics/reading_spread.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double soda_keg_bore_m = 0.216;
constexpr double large_keg_bore_m = 0.381;
constexpr double soda_keg_largest_m3 = 0.025;
constexpr double soda_keg_beer_m3 = 0.01893;
constexpr Range surface_range{1e-3, 2.0};  // m2

double disc(double bore_m) { return std::numbers::pi / 4 * bore_m * bore_m; }

Duration end_of(const CarbonationHistory& history, Duration horizon) {
  return (history.steps.empty() ? seconds(0) : history.steps.back().at) + horizon;
}

struct TimeAndExcess {
  double at;
  double over;
};

// Where `over` came to nothing between a time when it was below and one when it was not,
// to the second; the later end.
template <class Over>
double reached_within_a_second(const Over& over, TimeAndExcess low, TimeAndExcess high) {
  if (low.over >= 0) return low.at;  // it was there at the very start
  std::uintmax_t looks = 100;
  const auto near_enough = [](double from, double to) { return to - from <= 1.0; };
  return boost::math::tools::toms748_solve(over, low.at, high.at, low.over, high.over, near_enough,
                                           looks)
      .second;
}

// What the other history names and this one did not.
void add_unknown_directions(Conditioning& conditioning, const PlainHistory& plain) {
  for (Conditioning::Direction& d : unconditioned(plain).directions) {
    const bool known =
        std::any_of(conditioning.directions.begin(), conditioning.directions.end(),
                    [&](const Conditioning::Direction& k) { return k.name == d.name; });
    if (known) continue;
    for (std::vector<Shift>* side : {&d.up, &d.down}) {
      if (!side->empty())
        side->insert(side->end(), conditioning.centre.begin(), conditioning.centre.end());
    }
    conditioning.directions.push_back(std::move(d));
  }
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

// The centre run, and for each direction of error a run a half-width up and down.
struct CarbonationModel::Members {
  CarbonationHistory history;
  CarbonationRates rates;
  Duration end{};
  std::optional<RatePosterior> learned;
  Conditioning conditioning;
  Trajectory centre;
  struct Source {
    ErrorSource source;
    Co2Run up;
    std::optional<Co2Run> down;  // empty: as far down as `up` is up
    // How far its two sides take the beer off the centre run's volumes.
    struct Sides {
      double up, down;
    };
    [[nodiscard]] Sides off(Duration t, double centre, LastAsked& last_up,
                            LastAsked& last_down) const {
      const double rise = up.volumes_at(t, last_up) - centre;
      return {rise, down ? down->volumes_at(t, last_down) - centre : -rise};
    }
    [[nodiscard]] double half_width_at_rest(double centre) const {
      const double rise = up.settles_at_volumes() - centre;
      return down ? 0.5 * (rise + centre - down->settles_at_volumes()) : rise;
    }
  };
  std::vector<Source> sources;
  ReadingSpread readings;

  struct Band {
    double low;
    double median;
    double high;
  };
  [[nodiscard]] std::vector<double> grid(double from) const;
};

// The model asked at one time after another.
class CarbonationModel::Asked {
 public:
  using Band = Members::Band;
  explicit Asked(const Members& members) : m_(members), runs_(2 * members.sources.size()) {}

  [[nodiscard]] double median(Duration t) { return m_.centre.volumes_at(t, centre_); }
  [[nodiscard]] Members::Source::Sides off(std::size_t source, Duration t, double median) {
    return m_.sources[source].off(t, median, runs_[2 * source], runs_[2 * source + 1]);
  }
  // Each source's two sides are kept apart, as the answer is not symmetric: sides
  // of one kind add as the root of the sum of squares.
  [[nodiscard]] Band band(Duration t) {
    const double middle = median(t);
    double below = std::pow(m_.readings.half_width(t), 2);
    double above = below;
    for (std::size_t s = 0; s < m_.sources.size(); ++s) {
      const auto [up, down] = off(s, t, middle);
      below += std::pow(std::min({up, down, 0.0}), 2);
      above += std::pow(std::max({up, down, 0.0}), 2);
    }
    return {std::max(0.0, middle - std::sqrt(below)), middle, middle + std::sqrt(above)};
  }
  [[nodiscard]] double edge(double Band::* which, Duration t) {
    return which == &Band::median ? median(t) : band(t).*which;
  }

 private:
  const Members& m_;
  LastAsked centre_;
  std::vector<LastAsked> runs_;
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
  members->end = end_of(history, horizon);
  const PlainHistory plain(history, rates);
  if (history.readings.empty()) {
    members->conditioning = unconditioned(plain);
  } else {
    Learned learned = learn(plain, history.readings);
    members->learned = learned.rate;
    members->conditioning = std::move(learned.conditioning);
  }
  return solved(std::move(members), plain);
}

Result<CarbonationModel> CarbonationModel::under(const CarbonationHistory& history,
                                                 Duration horizon) const {
  if (const auto bad = check_history(history, members_->rates, horizon))
    return std::unexpected(*bad);
  auto members = std::make_shared<Members>();
  members->history = history;
  members->rates = members_->rates;
  members->end = end_of(history, horizon);
  members->learned = members_->learned;
  members->conditioning = members_->conditioning;
  const PlainHistory plain(history, members->rates);
  add_unknown_directions(members->conditioning, plain);
  return solved(std::move(members), plain);
}

// The centre run, and for each direction one run up and one down.
CarbonationModel CarbonationModel::solved(std::shared_ptr<Members> members,
                                          const PlainHistory& plain) {
  const Offsets centre = plain.offsets(members->conditioning.centre);
  members->centre = Trajectory::solve(plain, centre, members->end);
  if (plain.pools()) members->readings = ReadingSpread(members->centre, pooled_steps(plain));
  std::vector<Offsets> shifted;
  for (const Conditioning::Direction& d : members->conditioning.directions) {
    shifted.push_back(plain.offsets(d.up));
    if (!d.down.empty()) shifted.push_back(plain.offsets(d.down));
  }
  std::vector<Co2Run> runs = Co2Run::solve(plain, shifted, members->end);
  auto next = runs.begin();
  for (const Conditioning::Direction& d : members->conditioning.directions) {
    Members::Source source{d.name, std::move(*next++), {}};
    if (!d.down.empty()) source.down = std::move(*next++);
    members->sources.push_back(std::move(source));
  }
  return CarbonationModel(std::move(members));
}

Result<CarbonationPoint> CarbonationModel::at(Duration t) const {
  if (auto bad = outside(Subject::duration, in_seconds(t), {0.0, in_seconds(members_->end)}))
    return std::unexpected(*bad);
  const Members::Band band = Asked(*members_).band(t);
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
  Asked asked(*members_);
  const double centre = asked.median(t);
  for (std::size_t s = 0; s < members_->sources.size(); ++s) {
    const auto [up, down] = asked.off(s, t, centre);
    out.push_back({members_->sources[s].source, (up - down) / 2});
  }
  if (!members_->readings.empty())
    out.push_back({repeatability_of_readings(), members_->readings.half_width(t)});
  return Estimate<Co2Volumes>(volumes_of_co2(centre), std::move(out));
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
  return times_to_reach(std::span(&target, 1), from).front();
}

std::vector<Window> CarbonationModel::times_to_reach(std::span<const Co2Volumes> targets,
                                                     Duration from) const {
  struct Search {  // for one edge of the band to reach one target
    double Members::Band::* edge;
    double wanted;
    std::optional<Duration>* found;
  };
  std::vector<Window> out(targets.size());
  std::vector<Search> searches;
  for (std::size_t i = 0; i < targets.size(); ++i) {
    const double wanted = targets[i].count();
    searches.push_back({&Members::Band::high, wanted, &out[i].earliest});
    searches.push_back({&Members::Band::median, wanted, &out[i].likely});
    searches.push_back({&Members::Band::low, wanted, &out[i].latest});
  }
  Asked asked(*members_);
  double previous = in_seconds(from);
  Members::Band before = asked.band(from);
  for (const double t : members_->grid(previous)) {
    const Members::Band here = asked.band(seconds(t));
    std::erase_if(searches, [&](const Search& s) {
      if (here.*s.edge < s.wanted) return false;
      const auto over = [&](double at) { return asked.edge(s.edge, seconds(at)) - s.wanted; };
      *s.found = seconds(reached_within_a_second(over, {previous, before.*s.edge - s.wanted},
                                                 {t, here.*s.edge - s.wanted}));
      return true;
    });
    if (searches.empty()) break;
    previous = t;
    before = here;
  }
  return out;
}

Window CarbonationModel::time_leaving(Co2Volumes high_target, Duration from) const {
  return time_to_reach(high_target, from);
}

Estimate<Co2Volumes> CarbonationModel::equilibrium_end() const {
  std::vector<Contribution> out;
  const double centre = members_->centre.settles_at().count();
  for (const Members::Source& s : members_->sources)
    out.push_back({s.source, s.half_width_at_rest(centre)});
  if (!members_->readings.empty())
    out.push_back({repeatability_of_readings(), members_->readings.half_width_at_rest()});
  return {members_->centre.settles_at(), std::move(out)};
}

Duration CarbonationModel::end() const { return members_->end; }
const std::optional<RatePosterior>& CarbonationModel::learned() const { return members_->learned; }
const CarbonationHistory& CarbonationModel::history() const { return members_->history; }
const CarbonationRates& CarbonationModel::rates() const { return members_->rates; }

}  // namespace ullage::physics
