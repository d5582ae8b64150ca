// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/line_set_up.h"

#include "core/units/present.h"

namespace ullage::cellar {

namespace {

class LineParted {
 public:
  void fitting(LinePiece kind, const std::optional<PressureDifference>& stated,
               double assumed_psi) {
    const bool assumed = !stated;
    out.parts.emplace_back(physics::Fitting{stated.value_or(units::psi(assumed_psi))});
    out.pieces.push_back({kind, {}, {}, LineMaterial::other, assumed});
  }
  void hose(LinePiece kind, const SegmentRecord& s) {
    out.parts.emplace_back(physics::Hose{s.length, s.bore, physics::drawn_tube_roughness(),
                                         s.rise.value_or(units::metres(0))});
    std::optional<SegmentId> id;
    if (s.segment != SegmentId{}) id = s.segment;
    out.pieces.push_back({kind, id, s.place, s.material, false});
  }
  LineSetUp out;
};

SegmentRecord whole_line(const LineRecord& line) {
  SegmentRecord s;
  s.line = line.line;
  s.length = present(line.length);
  s.bore = present(line.bore);
  s.rise = line.rise;
  s.material = line.material;
  return s;
}

}  // namespace

const physics::Hose& LineSetUp::hose() const { return *get_if<physics::Hose>(&parts[main_hose]); }

physics::HoseMaterial hose_material(LineMaterial m) {
  switch (m) {
    case LineMaterial::vinyl:
      return physics::HoseMaterial::vinyl;
    case LineMaterial::barrier:
      return physics::HoseMaterial::barrier;
    case LineMaterial::polyethylene:
      return physics::HoseMaterial::polyethylene;
    case LineMaterial::stainless:
      return physics::HoseMaterial::stainless;
    case LineMaterial::other:
      break;
  }
  return physics::HoseMaterial::other;
}

std::expected<LineSetUp, Message> line_set_up(const LineRecord& line,
                                              const std::vector<SegmentRecord>& segments) {
  std::vector<SegmentRecord> hoses = segments;
  if (hoses.empty()) {
    if (!line.length || !line.bore) return std::unexpected(message(MessageKey::pour_no_hose));
    hoses.push_back(whole_line(line));
  }
  bool rises = false;
  for (const SegmentRecord& s : hoses) rises = rises || s.rise.has_value();
  if (!rises) hoses.back().rise = line.rise;

  LineParted parted;
  parted.fitting(LinePiece::coupler, line.coupler_loss, 0.3);
  for (const SegmentRecord& s : hoses) {
    if (s.length.value() <= 0) continue;
    parted.hose(LinePiece::hose, s);
  }
  if (line.restrictor_length && line.restrictor_bore && line.restrictor_length->value() > 0) {
    SegmentRecord restrictor;
    restrictor.length = *line.restrictor_length;
    restrictor.bore = *line.restrictor_bore;
    restrictor.place = hoses.back().place;
    parted.hose(LinePiece::restrictor, restrictor);
  }
  parted.fitting(LinePiece::shank, line.shank_loss, 0.2);
  parted.fitting(LinePiece::faucet, line.faucet_loss, 0.5);

  LineSetUp& out = parted.out;
  double longest = 0;
  for (std::size_t i = 0; i < out.parts.size(); ++i) {
    const auto* hose = get_if<physics::Hose>(&out.parts[i]);
    if (hose == nullptr || out.pieces[i].kind != LinePiece::hose) continue;
    if (hose->length.value() > longest) {
      longest = hose->length.value();
      out.main_hose = i;
    }
  }
  if (longest == 0) return std::unexpected(message(MessageKey::pour_no_hose));
  // What the physics refuses (a hose of 0.1 mm) is said before anything builds on it.
  if (!physics::LineFlow::make(out.parts, *physics::flowing_beer(units::celsius(4))))
    return std::unexpected(message(MessageKey::pour_hose_unlikely));
  return std::move(out);
}

}  // namespace ullage::cellar
