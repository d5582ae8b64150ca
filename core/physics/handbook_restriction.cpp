// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/handbook_restriction.h"

#include <array>
#include <cmath>
#include <optional>
#include <utility>

namespace ullage::physics {

using namespace units;

namespace {

struct SourcesSpan {
  double least = 0, most = 0;
};

// In psi a foot; most sources agree on one value.
RestrictionFigure figure(HoseMaterial m, std::string_view size, double bore_inches, double usual,
                         std::optional<SourcesSpan> spread = {}) {
  return {m,
          size,
          inches(bore_inches),
          psi_per_foot(usual),
          psi_per_foot(spread ? spread->least : usual),
          psi_per_foot(spread ? spread->most : usual)};
}

// Stainless is sold by its outer diameter; its bore here is the one whose
// contents the same table prints (1/6, 1/3 and 1/2 fl oz a foot).
const std::array<RestrictionFigure, 13>& figures() {
  using enum HoseMaterial;
  static const std::array<RestrictionFigure, 13> all{
      figure(vinyl, "3/16 in", 3.0 / 16, 3.0, SourcesSpan{2.2, 3.0}),
      figure(vinyl, "1/4 in", 1.0 / 4, 0.85),
      figure(vinyl, "5/16 in", 5.0 / 16, 0.4),
      figure(vinyl, "3/8 in", 3.0 / 8, 0.13, SourcesSpan{0.07, 0.2}),
      figure(vinyl, "1/2 in", 1.0 / 2, 0.025),
      figure(barrier, "1/4 in", 1.0 / 4, 0.3),
      figure(barrier, "5/16 in", 5.0 / 16, 0.1),
      figure(barrier, "3/8 in", 3.0 / 8, 0.06),
      figure(polyethylene, "3/16 in", 3.0 / 16, 2.2),
      figure(polyethylene, "1/4 in", 1.0 / 4, 0.5),
      figure(stainless, "1/4 in outside", 3.0 / 16, 1.2),
      figure(stainless, "5/16 in outside", 1.0 / 4, 0.3),
      figure(stainless, "3/8 in outside", 5.0 / 16, 0.12),
  };
  return all;
}

}  // namespace

std::optional<RestrictionFigure> handbook_restriction(HoseMaterial material, Length bore) {
  const RestrictionFigure* nearest = nullptr;
  const auto off = [&](const RestrictionFigure& f) { return std::abs((f.bore - bore).value()); };
  for (const RestrictionFigure& f : figures()) {
    if (f.material != material || !(off(f) <= 0.35e-3)) continue;
    if (nearest == nullptr || off(f) < off(*nearest)) nearest = &f;
  }
  return nearest == nullptr ? std::nullopt : std::optional(*nearest);
}

Result<PressureGradient> friction_restriction(Length bore, const FlowingBeer& beer,
                                              Length roughness) {
  const auto line = LineFlow::make({Hose{metres(1), bore, roughness, metres(0)}}, beer);
  if (!line) return std::unexpected(line.error());
  const auto loss = line->loss_in(0, nominal_pour());
  if (!loss) return std::unexpected(loss.error());
  return *loss / metres(1);
}

Result<RestrictionCompared> compare_restriction(const RestrictionFigure& f,
                                                const FlowingBeer& beer) {
  const auto friction = friction_restriction(f.bore, beer);
  if (!friction) return std::unexpected(friction.error());
  const auto line =
      LineFlow::make({Hose{metres(1), f.bore, drawn_tube_roughness(), metres(0)}}, beer);
  if (!line) return std::unexpected(line.error());
  const auto bore = line->bore_for(0, GaugePressure(f.usual * metres(1)), nominal_pour());
  if (!bore) return std::unexpected(bore.error());
  return RestrictionCompared{f.usual, *friction, fraction(friction->value() / f.usual.value()),
                             BoreFactor(bore->value() / f.bore.value())};
}

Estimate<BoreFactor> bore_prior(HoseMaterial material, Length bore, const FlowingBeer& beer,
                                ErrorSource source) {
  auto unknown = Estimate<BoreFactor>(BoreFactor(1.0)).with(source, 0.08);
  const auto f = handbook_restriction(material, bore);
  if (!f) return unknown;
  const auto compared = compare_restriction(*f, beer);
  if (!compared) return unknown;
  const double implied = compared->implied_bore.count();
  return Estimate<BoreFactor>(BoreFactor(0.5 * (1.0 + implied)))
      .with(std::move(source), 0.5 * std::abs(1.0 - implied) + hose_drawn_to);
}

}  // namespace ullage::physics
