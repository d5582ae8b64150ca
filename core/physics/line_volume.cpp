// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/line_volume.h"

#include <numbers>

namespace ullage::physics {

using namespace units;

Result<Volume> line_volume(Length bore, Length length) {
  if (auto bad = outside(Subject::bore, in_metres(bore), bore_range)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::length, in_metres(length), line_length_range))
    return std::unexpected(*bad);
  const double d = in_metres(bore);
  return cubic_metres(std::numbers::pi / 4.0 * d * d * in_metres(length));
}

Result<Estimate<Volume>> line_volume_estimate(const Estimate<Length>& bore,
                                              const Estimate<Length>& length) {
  return try_propagate([](Length b, Length l) { return line_volume(b, l); }, bore, length);
}

Estimate<Volume> as_hoses_hold(Volume held, const std::string& line) {
  // The volume goes with the square of the bore.
  return Estimate<Volume>(held)
      .with({line + ": bore"}, 2 * hose_drawn_to * to_magnitude(held))
      .with({line + ": length"}, hose_measured_to * to_magnitude(held));
}

}  // namespace ullage::physics
