// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line's hose and fittings out of the register, as the physics takes them:
// coupler, hose piece by piece, restrictor, shank, faucet.
//
// A line told by pieces (SegmentRecord) counts those; else its own length, bore,
// rise and material make one piece. A rise stated for the whole line only goes
// to the last piece. What a fitting takes is as registered at a nominal pour of
// 59 mL/s; where nothing is, coupler 0.3, shank 0.2 and faucet 0.5 psi (assumed:
// about the kinetic head of the beer in each, twice over).
#pragma once

#include <cstddef>
#include <expected>
#include <optional>
#include <vector>

#include "core/cellar/message.h"
#include "core/cellar/records_dispense.h"
#include "core/physics/draught_line.h"
#include "core/physics/handbook_restriction.h"

namespace ullage::cellar {

enum class LinePiece { coupler, hose, restrictor, shank, faucet };

struct PieceOfLine {
  LinePiece kind = LinePiece::hose;
  std::optional<SegmentId> segment;
  std::optional<PlaceId> place;  // what it runs through; empty: with the keg
  LineMaterial material = LineMaterial::vinyl;
  bool assumed = false;  // a fitting nobody has measured
};

struct LineSetUp {
  physics::LineParts parts;
  std::vector<PieceOfLine> pieces;  // one for each part
  std::size_t main_hose = 0;        // the longest piece, whose length is first to change

  [[nodiscard]] const physics::Hose& hose() const;
  [[nodiscard]] const PieceOfLine& hose_piece() const { return pieces[main_hose]; }
};

[[nodiscard]] physics::HoseMaterial hose_material(LineMaterial);

// Says what is missing where the hose is not known.
[[nodiscard]] std::expected<LineSetUp, Message> line_set_up(const LineRecord&,
                                                            const std::vector<SegmentRecord>&);

}  // namespace ullage::cellar
