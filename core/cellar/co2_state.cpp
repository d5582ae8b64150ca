// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 at the moment against its range, where it is going, and when a burst has
// to be ended.
#include <algorithm>

#include "core/cellar/keg_moment.h"
#include "core/physics/equilibrium.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

// A tenth of a volume over the range is less than a psi on the dial, and nobody
// tastes it: not worth venting for.
constexpr double let_pass_above = 0.1;

// A planned time is told to the half hour; the model does not know it better.
Instant to_half_hour(Instant t) {
  constexpr std::chrono::minutes step{30};
  return std::chrono::floor<std::chrono::minutes>(t + step / 2) -
         std::chrono::floor<std::chrono::minutes>(t + step / 2).time_since_epoch() % step;
}

units::Co2Volumes middle(const Co2Range& range) {
  return units::volumes_of_co2((range.low.count() + range.high.count()) / 2);
}

// The pressure that would hold the middle of the range where the keg stands now.
std::optional<GaugePressure> serving_pressure(const Moment& m) {
  if (!m.keg.range || !m.keg.warmth || !m.keg.ambient) return std::nullopt;
  const auto p = physics::equilibrium_gauge(middle(*m.keg.range), m.keg.warmth->place_now().value(),
                                            m.keg.ambient->value(), m.status.gas.co2);
  if (!p || units::in_pascals(*p) <= 0) return std::nullopt;
  return *p;
}

// How far off it is, by the place's temperature, the weather and the equation.
std::vector<units::Contribution> serving_pressure_errors(const Moment& m) {
  const auto p = physics::equilibrium_gauge_estimate(
      units::Estimate<units::Co2Volumes>(middle(present(m.keg.range))),
      present(m.keg.warmth).place_now(), present(m.keg.ambient), {"equilibrium equation"},
      m.status.gas.co2);
  return p ? p->contributions() : std::vector<units::Contribution>{};
}

// A burst is gas well above what would hold the range: it has to come down in time.
void plan_drop(Moment& m) {
  const Co2State& co2 = m.status.co2;
  if (m.keg.stage != Stage::full || !m.status.gas.on || !m.status.gas.should_be) return;
  if (!co2.overshoots || co2.verdict == Co2Verdict::above) return;
  if (m.keg.gas.purpose != GasPurpose::burst && m.keg.gas.purpose != GasPurpose::seat_lid) return;
  const CarbonationTrack& track = m.keg.co2;
  const auto serving = units::Estimate<GaugePressure>(*m.status.gas.should_be);
  const auto plan =
      physics::drop_plan(present(track.model), middle(*m.keg.range), serving, track.time_of(m.now));
  if (!plan) return;
  const auto when = track.on_calendar(plan->drop);
  if (!when) return;
  Window told = *when;
  told.likely = to_half_hour(told.likely);
  m.drop = DropTime{*m.status.gas.should_be, told, plan->if_not_vented};
}

// What the story tells from its start holds from now on while it lies ahead.
// Only where it has happened already (and the keg has since come back) is the
// model asked again.
template <class Ask>
std::optional<Window> from_now(const std::optional<Window>& from_start, Instant now, Ask&& ask) {
  if (!from_start) return std::nullopt;
  if (from_start->likely <= now) return ask();
  Window w = *from_start;
  w.earliest = std::max(w.earliest, now);
  return w;
}

void forecast(Moment& m) {
  const CarbonationTrack& track = m.keg.co2;
  const Co2Range& range = present(m.keg.range);
  Co2State& co2 = m.status.co2;
  const units::Duration t = track.time_of(m.now);
  if (co2.verdict == Co2Verdict::below) {
    co2.in_range = from_now(track.enters, m.now, [&] {
      return track.on_calendar(track.model->time_to_reach(range.low, t));
    });
  } else if (co2.verdict == Co2Verdict::within && track.enters && track.enters->likely <= m.now) {
    m.reached = track.enters->likely;
  }
  if (co2.verdict != Co2Verdict::above) {
    co2.overshoots = from_now(track.leaves, m.now, [&] {
      return track.on_calendar(track.model->time_leaving(range.high, t));
    });
  }
}

}  // namespace

void tell_co2(Moment& m) {
  Co2State& co2 = m.status.co2;
  if (m.keg.range) {
    co2.target_low = m.keg.range->low;
    co2.target_high = m.keg.range->high;
  }
  m.status.gas.should_be = serving_pressure(m);
  if (m.status.gas.should_be) m.status.gas.should_be_errors = serving_pressure_errors(m);
  if (!m.full()) return;
  const CarbonationTrack& track = m.keg.co2;
  co2.cant_tell = track.cant_tell;
  if (!track.model) return;
  co2.now = track.at(m.now);
  if (!co2.now) {
    co2.cant_tell = message(MessageKey::co2_too_long_ago);
    return;
  }
  co2.uptake = track.uptake;
  co2.readings = track.readings;
  co2.marks = track.marks;
  const Co2Estimate settles = track.model->equilibrium_end();
  co2.settles_at = settles.value();
  co2.settles_errors = settles.contributions();
  if (!m.keg.range) return;
  const units::Co2Volumes now = co2.now->value();
  const double over = now.count() - m.keg.range->high.count();
  co2.verdict = now < m.keg.range->low  ? Co2Verdict::below
                : over > let_pass_above ? Co2Verdict::above
                                        : Co2Verdict::within;
  forecast(m);
  plan_drop(m);
}

}  // namespace ullage::cellar
