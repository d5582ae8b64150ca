// SPDX-License-Identifier: GPL-3.0-or-later
//
// How the runs behind a carbonation band are laid out: which sources the centre
// run moves, and along which independent directions the others go up and down.
// Without readings a direction is one source. With readings the first direction
// is the rate, along which the other sources go where the readings then want
// them; the rest are the columns of the triangular root of what the other
// sources may still do, each named after the source it mostly is. Internal to
// core/physics.
#pragma once

#include <vector>

#include "core/physics/plain_history.h"

namespace ullage::physics {

struct Conditioning {
  std::vector<Shift> centre;
  struct Direction {
    units::ErrorSource name;
    std::vector<Shift> up;    // whole, centre included
    std::vector<Shift> down;  // empty: as far down as `up` is up
  };
  std::vector<Direction> directions;
};

struct Learned {
  RatePosterior rate;
  Conditioning conditioning;  // of the prior, where the readings don't fit
};

// rate_posterior.h says how. The history must have been checked and hold at
// least one reading.
[[nodiscard]] Learned learn(const PlainHistory&, const std::vector<Co2Reading>&);
// No readings: each source up and down by itself.
[[nodiscard]] Conditioning unconditioned(const PlainHistory&);

}  // namespace ullage::physics
