// SPDX-License-Identifier: GPL-3.0-or-later
//
// Equations behind answers of the slate alone; otherwise as laws.h, and in
// all_laws() like those.
#pragma once

#include "core/report/laws.h"

namespace ullage::report::laws {

inline constexpr Law rescue{
    "A vent takes what the headspace holds and no more; shut, headspace and beer come to rest "
    "again with what CO₂ is left.",
    "physics-rescue.md", "Rescue of over-carbonated beer",
    "Closed mass balance with a real gas; that beer gives off gas as slowly as it takes it up is "
    "assumed",
    Certainty::common_practice};
inline constexpr Law learned_rate{
    "A reading and the history agree by how fast the keg goes: each rate counts by how well it "
    "tells the reading, all other errors allowed for.",
    "physics-carbonation.md", "Posterior",
    "Bayes’ rule on a grid; the prior is practice, not measured", Certainty::common_practice};
inline constexpr Law closed_keg{
    "Shut, headspace and beer keep their CO₂ between them and come to rest where the beer is in "
    "balance with what is above it.",
    "physics-rescue.md", "Rescue of over-carbonated beer",
    "Closed mass balance with a real gas and the default equilibrium", Certainty::verified};
inline constexpr Law blends{
    "Beer feels the CO₂’s share of the absolute pressure: c (a + air) − air is the pure CO₂ that "
    "does the same.",
    "physics-lines.md", "Balance and blends",
    "A trade handbook’s appendix: symbols and inputs seen, the formula from memory",
    Certainty::from_memory};
inline constexpr Law line_calibration{
    "The bore at which the line would have poured just so; friction goes with the bore to the "
    "power 4.75.",
    "physics-lines.md", "A timed pour", "Darcy and Weisbach, Colebrook, solved for the bore",
    Certainty::verified};
inline constexpr Law priming{
    "Sugar makes the CO₂ that beer and headspace hold at the target, less what fermentation left.",
    "physics-sugar.md", "Priming sugar",
    "Mass balance; stoichiometric yields less what feeds the yeast", Certainty::verified};
inline constexpr Law cheapest_purge{
    "Every way that reaches the target, by the equations of purging, the one that takes least gas "
    "first.",
    "physics-purge.md", "Purging",
    "Branan; Crowl and Louvar (perfect mixing); the mixing itself is assumed",
    Certainty::common_practice};
inline constexpr Law bottles{
    "While there is liquid a bottle stands at saturation, whatever is left in it; only gas alone "
    "falls with what is drawn.",
    "physics-gas.md", "Bottles", "Span and Wagner 1996, coefficients from memory",
    Certainty::from_memory};
inline constexpr Law steady_release{
    "What leaks in, less what the fresh air carries off, in a room taken as evenly mixed: it rises "
    "by G / (n V) (1 − exp(−n t)).",
    "physics-gas.md", "Room air",
    "Mass balance of a well-mixed room; a machine manual’s example recomputed",
    Certainty::verified};
inline constexpr Law level_fusion{
    "Every piece of evidence counts by how well it tells, what was drawn between them allowed "
    "for. What can’t be true beside the rest is told and not averaged in.",
    "physics-level.md", "Level from mixed evidence",
    "A Kalman filter; how well each way tells is practice", Certainty::common_practice};

}  // namespace ullage::report::laws
