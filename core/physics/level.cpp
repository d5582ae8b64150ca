// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/level.h"

#include <cmath>
#include <utility>

#include "core/physics/co2_gas.h"
#include "core/physics/density.h"
#include "core/physics/keg_cooling.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double heft_share = 0.15;
constexpr double condensation_share = 0.08;
constexpr double density_share = 0.002;
constexpr double fill_share = 0.05;
constexpr double loss_share = 0.05;
constexpr double loss_half_width = 0.05;
constexpr Range glass_range{0.05e-3, 5e-3};  // m3
constexpr Range unit_share{0.0, 1.0};

// An empty keg never weighs out at exactly nothing: within its own error the
// answer is the limit it passed, beyond that the reading is refused.
Result<Estimate<Volume>> within_vessel(const Estimate<Volume>& e, Volume brimful,
                                       const RangeError& below) {
  if (e.value() < litres(0)) {
    if (e.high() < litres(0)) return std::unexpected(below);
    return Estimate<Volume>(litres(0), e.contributions());
  }
  if (e.value() > brimful) {
    if (e.low() > brimful)
      return std::unexpected(RangeError{Subject::beer_volume, in_cubic_metres(e.value()), 0.0,
                                        in_cubic_metres(brimful)});
    return Estimate<Volume>(brimful, e.contributions());
  }
  return e;
}

Result<Estimate<Volume>> share_of_keg(Fraction share, Volume nominal, double half_width,
                                      ErrorSource source) {
  if (auto bad = outside(Subject::fraction, share.count(), unit_share))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::volume, in_cubic_metres(nominal), vessel_volume_range))
    return std::unexpected(*bad);
  return Estimate<Volume>(nominal * share.count())
      .with(std::move(source), in_cubic_metres(nominal) * half_width);
}

}  // namespace

Result<Estimate<Volume>> beer_from_weight(const Weighing& w) {
  const double gross = in_kilograms(w.gross.value());
  const double tare = in_kilograms(w.tare.value());
  if (auto bad = outside(Subject::mass, gross, gross_mass_range)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::mass, tare, tare_range)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::volume, in_cubic_metres(w.brimful), vessel_volume_range))
    return std::unexpected(*bad);
  const auto beer = beer_density(w.gravity, w.temperature);
  if (!beer) return std::unexpected(beer.error());
  const auto gas = co2_gas_density(w.headspace.at_ambient(w.ambient), w.temperature);
  if (!gas) return std::unexpected(gas.error());
  const Estimate<Volume> beer_volume = propagate(
      [&](Mass full, Mass empty) {
        return Volume((full - empty - *gas * w.brimful) / (*beer - *gas));
      },
      w.gross, w.tare);
  return within_vessel(
      beer_volume.with(ErrorSource{"beer density"},
                       density_share * std::abs(in_cubic_metres(beer_volume.value()))),
      w.brimful, RangeError{Subject::mass, gross, tare, gross_mass_range.high});
}

Result<Estimate<Volume>> beer_from_heft(Fraction of_full, Volume nominal, ErrorSource source) {
  return share_of_keg(of_full, nominal, heft_share, std::move(source));
}

Result<Estimate<Volume>> beer_from_condensation_line(Fraction of_height, Volume nominal,
                                                     ErrorSource source) {
  return share_of_keg(of_height, nominal, condensation_share, std::move(source));
}

Result<Estimate<Volume>> poured_by_glasses(const Glasses& g) {
  if (auto bad = outside(Subject::glasses, g.count, glasses_range)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::volume, in_cubic_metres(g.glass), glass_range))
    return std::unexpected(*bad);
  const Volume sold = g.count * g.glass;
  const double nominal = in_cubic_metres(sold);
  return Estimate<Volume>(sold * (1 + loss_share))
      .with(g.fill, nominal * fill_share * (1 + loss_share))
      .with(g.loss, nominal * loss_half_width);
}

Result<Estimate<Volume>> beer_after_glasses(const Estimate<Volume>& start, const Glasses& g) {
  if (auto bad =
          outside(Subject::volume, in_cubic_metres(start.value()), {0.0, vessel_volume_range.high}))
    return std::unexpected(*bad);
  const auto poured = poured_by_glasses(g);
  if (!poured) return poured;
  const Estimate<Volume> left =
      propagate([](Volume before, Volume gone) { return Volume(before - gone); }, start, *poured);
  return within_vessel(left, cubic_metres(vessel_volume_range.high),
                       RangeError{Subject::glasses, g.count, 0.0,
                                  in_cubic_metres(start.high()) / in_cubic_metres(g.glass)});
}

}  // namespace ullage::physics
