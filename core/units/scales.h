// SPDX-License-Identifier: GPL-3.0-or-later
//
// Trade scales and fractions as types that do not mix: dissolved CO2 as a mass
// concentration or as volumes, specific gravity and degrees Plato, alcohol by
// volume, mole fraction.
#pragma once

#include <compare>

namespace ullage::units {

// A number on a named scale. Two numbers of one scale compare and subtract to a
// plain difference on that scale; scales never convert into one another here
// (conversions that need physics are in core/physics).
template <class Tag>
class OnScale {
 public:
  constexpr OnScale() = default;
  constexpr explicit OnScale(double value) : value_(value) {}
  [[nodiscard]] constexpr double count() const { return value_; }
  friend constexpr auto operator<=>(OnScale a, OnScale b) = default;
  friend constexpr bool operator==(OnScale a, OnScale b) = default;

 private:
  double value_ = 0;
};

using Co2Concentration = OnScale<struct GramsOfCo2PerLitreTag>;  // g of CO2 in a litre of beer
using Co2Volumes = OnScale<struct Co2VolumesTag>;  // litres of CO2 at 0 C, 1 atm per litre of beer
using SpecificGravity = OnScale<struct SpecificGravity20Tag>;  // 20/20 C
using Plato = OnScale<struct DegreesPlatoTag>;                 // g of extract in 100 g of wort
using Abv = OnScale<struct PercentAbvTag>;                     // % alcohol by volume
using MoleFraction = OnScale<struct MoleFractionTag>;          // 0 to 1
using Fraction = OnScale<struct FractionTag>;                  // 0 to 1, of a keg, of a glass

[[nodiscard]] constexpr Co2Concentration grams_per_litre(double v) { return Co2Concentration(v); }
[[nodiscard]] constexpr Co2Volumes volumes_of_co2(double v) { return Co2Volumes(v); }
[[nodiscard]] constexpr SpecificGravity specific_gravity(double v) { return SpecificGravity(v); }
[[nodiscard]] constexpr Plato plato(double v) { return Plato(v); }
[[nodiscard]] constexpr Abv percent_abv(double v) { return Abv(v); }
[[nodiscard]] constexpr MoleFraction mole_fraction(double v) { return MoleFraction(v); }
[[nodiscard]] constexpr Fraction fraction(double v) { return Fraction(v); }

// One volume: the mass of CO2 gas in a litre at 0 C and 1 atm, real gas
// (Weiss 1974 virial coefficient; a gas producer's data booklet prints 1.977).
// This is the only place that states it.
inline constexpr double grams_per_litre_per_volume = 1.9768;

[[nodiscard]] constexpr Co2Volumes to_volumes(Co2Concentration c) {
  return Co2Volumes(c.count() / grams_per_litre_per_volume);
}
[[nodiscard]] constexpr Co2Concentration to_concentration(Co2Volumes v) {
  return Co2Concentration(v.count() * grams_per_litre_per_volume);
}

}  // namespace ullage::units
