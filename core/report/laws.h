// SPDX-License-Identifier: GPL-3.0-or-later
//
// The equations behind shown numbers, each in words with its source and its
// section in the docs. A new one: a constant here, a line in all_laws(), and a
// section with that heading in its document (a test looks it up).
#pragma once

#include <span>
#include <string_view>

namespace ullage::report {

enum class Certainty { verified, from_memory, common_practice, by_definition };
[[nodiscard]] std::string_view say(Certainty);

struct Law {
  std::string_view words;     // the equation in words
  std::string_view document;  // file under docs
  std::string_view section;   // heading in that file
  std::string_view source;
  Certainty certainty = Certainty::verified;
};

namespace laws {

inline constexpr Law equilibrium{
    "Beer at rest holds CO₂ in proportion to the absolute pressure of CO₂ above it; the colder it "
    "is, the more.",
    "physics.md", "Equilibrium",
    "A. J. deLange 2011, a fit to the brewers’ wall chart; coefficients from memory, checked "
    "against a printed chart (Miller 1994)",
    Certainty::verified};
inline constexpr Law carbonation{
    "Beer takes up CO₂ at a rate in proportion to how far it is from what its pressure and "
    "temperature would hold: dC/dt = k (Ceq − C).",
    "physics.md", "Carbonation over time",
    "The exponential approach is physics; how fast a resting keg goes has not been measured that "
    "we know of",
    Certainty::common_practice};
inline constexpr Law purging{
    "Each fill and vent thins the oxygen by the ratio of the absolute pressures; a sweep thins it "
    "with every volume passed. Real mixing is less than perfect.",
    "physics.md", "Purging",
    "Branan; Crowl and Louvar (perfect mixing); the mixing itself is assumed",
    Certainty::common_practice};
inline constexpr Law cooling{
    "Beer follows the air about it: the difference shrinks by the same share every hour.",
    "physics.md", "Cooling of a keg", "Newton’s law; the pace is what people see in refrigerators",
    Certainty::common_practice};
inline constexpr Law level{
    "Weight less the empty keg less the gas, over the beer’s density; or what went in less what "
    "was poured.",
    "physics.md", "Level", "Kell 1975 for water; heft, dew line and glasses by practice",
    Certainty::common_practice};
inline constexpr Law run_out{
    "What is left against what was drawn, with heavier days on Friday and Saturday, each day "
    "scattering.",
    "physics-level.md", "When it runs out", "How far days scatter is practice",
    Certainty::common_practice};
inline constexpr Law freshness{
    "Once beer is tapped each day takes its share of what it keeps at the temperature it stood at: "
    "about 45 days to 5.5 °C, 21 to 9 °C, 7 above. When the shares make one, it has kept.",
    "physics.md", "Freshness",
    "A US trade body for live beer in the cold, UK practice for the cellar, our own middle; that "
    "the shares add up is assumed",
    Certainty::common_practice};
inline constexpr Law gravity{
    "Extract by the brewing chemists’ polynomial; alcohol by Balling’s formula from original and "
    "final extract.",
    "physics.md", "Gravity and alcohol", "Balling; a duty office’s factor table beside it",
    Certainty::from_memory};
inline constexpr Law hold_test{
    "The gas in a tight keg keeps its amount: what is missing at the second reading, temperature "
    "allowed for, has leaked.",
    "physics.md", "Hold test", "Real-gas law (Weiss 1974)", Certainty::verified};
inline constexpr Law line_contents{"A line holds its cross-section times its length.", "physics.md",
                                   "Line contents", "Geometry", Certainty::by_definition};
inline constexpr Law line_flow{
    "What the keg’s pressure has over the lift is spent on friction in the hose and on the "
    "fittings; friction grows nearly with the square of the pour.",
    "physics-lines.md", "The pour", "Darcy and Weisbach, Colebrook; a hose’s true bore is assumed",
    Certainty::verified};
inline constexpr Law break_out{
    "At rest beer keeps its gas where the pressure on it, less the lift, is no less than its "
    "equilibrium at that place’s temperature. Pouring, the pressure falls by friction to the "
    "air’s.",
    "physics-lines.md", "Break-out",
    "The equilibrium and the friction of this program; no published limit for a pour was found",
    Certainty::common_practice};
inline constexpr Law handbook_lines{
    "The trade’s table of pressure lost by each length of hose, beside what pipe friction makes of "
    "the stated bore.",
    "physics-lines.md", "The handbook's figures beside it",
    "A trade handbook’s table, two cells of it seen in print", Certainty::from_memory};
inline constexpr Law gas_account{
    "What the scale says was used, less what the work on the kegs should have used, over the time "
    "between: what is left over is lost.",
    "physics-gas.md", "Gas account",
    "Mass balance by generalised least squares; the error of expected use is assumed",
    Certainty::common_practice};
inline constexpr Law isolation_wait{
    "Three times what the difference of two weighings may be off, over what is lost in a day; half "
    "a day at least.",
    "physics-gas.md", "One branch at a time",
    "Arithmetic on the scale’s own error; three times and half a day are assumed",
    Certainty::common_practice};
inline constexpr Law bottle_gauge{
    "Over liquid CO₂ the gauge shows how warm the bottle is. What is left tells on it only when "
    "the "
    "liquid is gone. The liquid fills the bottle where its density reaches the fill ratio.",
    "physics-gas.md", "Bottles", "Span and Wagner’s saturation line; mixed gas from memory",
    Certainty::from_memory};
inline constexpr Law work_rules{
    "The day it was last done and the days that the strictest rule in force allows.",
    "handbook-cleaning.md", "Rules", "The rule itself, with its own source",
    Certainty::by_definition};
inline constexpr Law as_logged{"As it was logged, with what its instrument may be off.",
                               "physics-uncertainty.md", "Instruments",
                               "The register of instruments", Certainty::by_definition};
inline constexpr Law gas_use{
    "The room that beer leaves fills with gas at the keg’s pressure; what the beer takes up comes "
    "out of the bottle too.",
    "physics-gas.md", "Gas used", "Real-gas law (Weiss 1974); its accuracy in use is assumed",
    Certainty::common_practice};
inline constexpr Law room_air{
    "The gas that escapes over the room’s net volume, as if it were evenly mixed.",
    "physics-gas.md", "Room air", "A trade insurer’s published basis", Certainty::verified};
inline constexpr Law published_limits{"A figure as it was published, not worked out here.",
                                      "physics-gas.md", "Room air", "The body that published it",
                                      Certainty::from_memory};
inline constexpr Law cleaning_solution{"The label’s strength times the volume.",
                                       "handbook-slate.md", "The slate: what if?",
                                       "The label on the cleaner", Certainty::by_definition};
inline constexpr Law unit_conversion{"Units by their definitions.", "physics.md", "Physics",
                                     "NIST SP 811; UK Weights and Measures Act",
                                     Certainty::by_definition};

}  // namespace laws

[[nodiscard]] std::span<const Law* const> all_laws();

}  // namespace ullage::report
