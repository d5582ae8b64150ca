// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/hold.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/physics/co2_gas.h"
#include "core/physics/hold_check.h"
#include "core/physics/hold_fit.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double forward_days = 60.0;
constexpr double misfit_of_one_in_thousand_sd = 3.090;

// What a tight, dry keg reads at the second temperature.
Result<GaugePressure> tight_reading(const HoldTest& test, GaugePressure first, Temperature t1,
                                    Temperature t2) {
  const auto gas = gas_amount(first.at_ambient(test.ambient), test.gas_space, t1);
  if (!gas) return std::unexpected(gas.error());
  const auto later = gas_pressure(*gas, test.gas_space, t2);
  if (!later) return std::unexpected(later.error());
  return GaugePressure::from_absolute(*later, test.ambient);
}

Result<Estimate<PressureDifference>> change_of(const HoldTest& test) {
  const HoldReading& first = test.readings.front();
  const HoldReading& last = test.readings.back();
  auto change = try_propagate(
      [&](GaugePressure p1, Temperature t1, GaugePressure p2,
          Temperature t2) -> Result<PressureDifference> {
        const auto p = tight_reading(test, p1, t1, t2);
        if (!p) return std::unexpected(p.error());
        return PressureDifference(p2 - *p);
      },
      first.pressure, first.temperature, last.pressure, last.temperature);
  if (!change) return change;
  return change->with({"barometer"}, in_pascals(test.barometer));
}

Mass mass_per_day(LeakRate rate) { return co2_mass(moles(rate.value() * in_seconds(days(1)))); }
std::optional<Mass> mass_per_day(const std::optional<LeakRate>& rate) {
  return rate ? std::optional(mass_per_day(*rate)) : std::nullopt;
}

LeakRange scaled(const LeakRange& r, double by) {
  const auto times = [by](const std::optional<Mass>& m) {
    return m ? std::optional<Mass>(*m * by) : std::nullopt;
  };
  return {r.low * by, times(r.likely), times(r.high)};
}

LawFit law_fit(const HoldTest& test, const LeakFit& fit, LeakLaw law) {
  const HoldReading& first = test.readings.front();
  LawFit out;
  out.law = law;
  out.start = fit.start;
  out.misfit = fit.misfit;
  out.at_test = {mass_per_day(fit.low), mass_per_day(fit.likely), mass_per_day(fit.high)};
  const double at_test = leak_drive(law, first.pressure.value().at_ambient(test.ambient),
                                    first.temperature.value(), test.ambient);
  const double at_service = leak_drive(law, test.service.pressure.at_ambient(test.ambient),
                                       test.service.temperature, test.ambient);
  out.at_service = scaled(out.at_test, at_service / at_test);
  return out;
}

// The misfit of readings that one leak explains stays below this in all but 1 of
// 1000 tests (Wilson and Hilferty's cube root).
double most_misfit(std::size_t readings) {
  const double freedom = static_cast<double>(readings) - 2;
  if (freedom <= 0) return std::numeric_limits<double>::infinity();
  const double spread = 2 / (9 * freedom);
  return freedom * std::pow(1 - spread + misfit_of_one_in_thousand_sd * std::sqrt(spread), 3);
}

// The interval that both laws leave open.
struct BothLaws {
  double low = 0;  // kg a day
  std::optional<double> likely;
  std::optional<double> high;
  double misfit = 0;
};
BothLaws both(const std::vector<LawFit>& laws, LeakRange LawFit::* where) {
  BothLaws out;
  out.low = in_kilograms((laws.front().*where).low);
  out.misfit = laws.front().misfit;
  out.likely = 0;
  out.high = -1e9;
  for (const LawFit& f : laws) {
    const LeakRange& r = f.*where;
    out.low = std::min(out.low, in_kilograms(r.low));
    out.misfit = std::min(out.misfit, f.misfit);
    out.high = r.high && out.high ? std::optional(std::max(*out.high, in_kilograms(*r.high)))
                                  : std::nullopt;
    out.likely = r.likely && out.likely
                     ? std::optional(*out.likely +
                                     in_kilograms(*r.likely) / static_cast<double>(laws.size()))
                     : std::nullopt;
  }
  return out;
}

HoldOutcome::BottleLife bottle_life(const HoldTest& test, const std::vector<LawFit>& laws) {
  HoldOutcome::BottleLife out;
  if (!test.service.bottle) return out;
  const BothLaws leak = both(laws, &LawFit::at_service);
  const double content = in_kilograms(*test.service.bottle);
  if (leak.high && *leak.high > 0) out.soonest = days(content / *leak.high);
  if (leak.likely && *leak.likely > 0) out.likely = days(content / *leak.likely);
  return out;
}

// The last reading taken again: what it shares with the first (a bias) stays, the
// rest is new.
template <Quantity Q>
Estimate<Q> read_again(const Estimate<Q>& last, const Estimate<Q>& first) {
  Estimate<Q> out(last.value());
  for (const Contribution& c : last.contributions()) {
    const bool shared = std::any_of(first.contributions().begin(), first.contributions().end(),
                                    [&](const Contribution& f) { return f.source == c.source; });
    out = out.with(shared ? c.source : ErrorSource{c.source.name + " again"}, c.half_width);
  }
  return out;
}

// Bisects for the first time at which one more reading would settle it.
std::optional<Duration> when_to_read_again(const HoldTest& test, const BothLaws& leak,
                                           AbsolutePressure start, Mass limit) {
  const HoldReading& first = test.readings.front();
  const HoldReading& last = test.readings.back();
  const double bound = in_kilograms(limit);
  const double likely = std::clamp(leak.likely.value_or(0), 0.0, bound);
  const double room = std::max(bound - likely, likely);
  const auto decides = [&](double seconds_after) {
    HoldTest more = test;
    more.readings.push_back({seconds(seconds_after), read_again(last.pressure, first.pressure),
                             read_again(last.temperature, first.temperature)});
    const ReadingErrors errors(more);
    const LeakPath path(more, LeakLaw::viscous);
    const LeakRate assumed =
        LeakRate::from_value(likely / in_seconds(days(1)) / co2_kilograms_per_mole);
    return in_kilograms(mass_per_day(leak_half_width(path, errors, start, assumed))) < 0.97 * room;
  };
  double early =
      std::max(in_seconds(last.at) + 60, in_seconds(first.at) + hold_settle_minutes * 60);
  double late = in_seconds(first.at) + in_seconds(days(forward_days));
  if (late <= early || !decides(late)) return std::nullopt;
  if (decides(early)) return seconds(early);
  while (late - early > std::max(600.0, 0.01 * (late - in_seconds(last.at)))) {
    const double middle = (early + late) / 2;
    (decides(middle) ? late : early) = middle;
  }
  return seconds(late);
}

void fit_both(HoldOutcome& out, const HoldTest& test) {
  const ReadingErrors errors(test);
  double none = 0;
  for (const LeakLaw law : {LeakLaw::viscous, LeakLaw::orifice}) {
    const LeakPath path(test, law);
    const LeakFit fit = fit_leak(path, errors);
    out.laws.push_back(law_fit(test, fit, law));
    none = std::max(none, in_kilograms(mass_per_day(fit.half_width_at_none)));
    if (law == LeakLaw::orifice) continue;
    std::vector<Contribution> mean = fit.mean_errors;
    for (Contribution& c : mean) {
      c.half_width = in_kilograms(mass_per_day(LeakRate::from_value(c.half_width)));
    }
    out.leak_per_day = Estimate<Mass>(mass_per_day(fit.mean), std::move(mean));
  }
  out.smallest_visible_per_day = kilograms(surely_seen * none);
}

void judge_fitted(HoldOutcome& out, const HoldTest& test, Mass limit) {
  const BothLaws leak = both(out.laws, &LawFit::at_test);
  const double bound = in_kilograms(limit);
  const AbsolutePressure start = out.laws.front().start;
  if (in_seconds(out.lasted) < hold_settle_minutes * 60) {
    out.reason = HoldReason::too_soon;
    out.read_again_at = when_to_read_again(test, leak, start, limit);
  } else if (leak.misfit > most_misfit(test.readings.size())) {
    out.reason = HoldReason::contradictory;
  } else if (leak.high && *leak.high < 0) {
    out.reason = HoldReason::rose;
  } else if (leak.high && *leak.high < bound) {
    out.verdict = HoldVerdict::holds;
    out.proven_down_to = test.readings.front().pressure.value();
    for (const HoldReading& r : test.readings) {
      out.proven_down_to = std::min(*out.proven_down_to, r.pressure.value());
    }
  } else if (leak.low > 0) {
    out.verdict = HoldVerdict::leaks;
  } else {
    out.reason = HoldReason::within_errors;
    out.read_again_at = when_to_read_again(test, leak, start, limit);
  }
  out.bottle = bottle_life(test, out.laws);
}

}  // namespace

Result<HoldOutcome> judge_hold(const HoldTest& test, Mass limit) {
  if (const auto bad = check_hold(test, limit)) return std::unexpected(*bad);
  HoldOutcome out;
  out.expected = test.readings.front().pressure.value();
  if (test.readings.size() < 2) {
    out.reason = HoldReason::one_reading;
    return out;
  }
  const HoldReading& first = test.readings.front();
  const HoldReading& last = test.readings.back();
  out.lasted = last.at - first.at;
  const auto expected = tight_reading(test, first.pressure.value(), first.temperature.value(),
                                      last.temperature.value());
  if (!expected) return std::unexpected(expected.error());
  out.expected = *expected;
  auto change = change_of(test);
  if (!change) return std::unexpected(change.error());
  out.change = std::move(*change);
  if (in_psi(first.pressure.value()) < least_hold_psi) {
    out.reason = HoldReason::no_pressure;
    return out;
  }
  fit_both(out, test);
  judge_fitted(out, test, limit);
  return out;
}

}  // namespace ullage::physics
