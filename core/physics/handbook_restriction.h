// SPDX-License-Identifier: GPL-3.0-or-later
//
// The trade's restriction figures, psi lost per foot of hose at the nominal pour
// of 2 US fl oz/s, beside what pipe friction gives for the same hose.
//
// They differ, and neither is hidden: for vinyl the friction of a smooth pipe of
// the stated bore explains 40 to 70 % of the table; for barrier hose the table
// asks less than friction gives. Stated bores are nominal, hoses swell and age,
// and the tables are old, rounded and disagree with one another (3/16 in vinyl is
// printed as 2.2, 2.7 and 3.0 psi/ft). Until a timed pour says better a hose's
// effective bore is taken to lie between what the two imply.
//
// Source: a brewers' trade handbook's table (from memory; two of its cells
// verified) and one line-care article (verified); tests/published/
// tubing_restriction.csv has each row.
#pragma once

#include <optional>
#include <string_view>

#include "core/physics/draught_line.h"
#include "core/physics/line_calibration.h"

namespace ullage::physics {

enum class HoseMaterial { vinyl, barrier, polyethylene, stainless, other };

struct RestrictionFigure {
  HoseMaterial material = HoseMaterial::vinyl;
  std::string_view size;  // "3/16 in"; stainless: its outer diameter, as sold
  units::Length bore = units::metres(0);
  units::PressureGradient usual = units::psi_per_foot(0);  // the handbook's table
  units::PressureGradient least = units::psi_per_foot(0);  // over all prints
  units::PressureGradient most = units::psi_per_foot(0);
};

// The figure for this hose: same material, bore within 0.35 mm; empty where the
// trade prints none.
[[nodiscard]] std::optional<RestrictionFigure> handbook_restriction(HoseMaterial,
                                                                    units::Length bore);

// What pipe friction alone loses per length at the nominal pour.
[[nodiscard]] Result<units::PressureGradient> friction_restriction(
    units::Length bore, const FlowingBeer&, units::Length roughness = drawn_tube_roughness());

struct RestrictionCompared {
  units::PressureGradient handbook;
  units::PressureGradient friction;
  units::Fraction explained;  // friction over handbook
  BoreFactor implied_bore;    // at which friction would give the handbook's figure
};
[[nodiscard]] Result<RestrictionCompared> compare_restriction(const RestrictionFigure&,
                                                              const FlowingBeer&);

// The effective bore of a hose nobody has timed yet: the middle between 1 and the
// handbook's implied factor, and a half-width that reaches 3 % of bore past both
// (assumed: hose is drawn to a few percent). Without a figure 1 +- 0.08.
[[nodiscard]] units::Estimate<BoreFactor> bore_prior(HoseMaterial, units::Length bore,
                                                     const FlowingBeer&, units::ErrorSource);

}  // namespace ullage::physics
