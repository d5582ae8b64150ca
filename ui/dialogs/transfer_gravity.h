// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far a batch has fermented, for the first step of a transfer: what was stated
// with the batch and read since.
#pragma once

#include <QString>
#include <optional>

#include "core/cellar/journal.h"
#include "core/cellar/status.h"
#include "core/units/printing.h"

namespace ullage::ui {

struct BatchGravity {
  std::optional<cellar::SpecificGravity> original, now;
  // The reading that `now` stands on; none where it was stated with the batch.
  std::optional<cellar::PreparationStep> read;
};

[[nodiscard]] BatchGravity gravity_of(cellar::BatchId, const cellar::Journal&);

// "From 1.048 to 1.011: 4.9 % alcohol, apparent extract 2.8 °P"; empty while one of
// the two is open, or where they can't be a beer's.
[[nodiscard]] QString fermented_words(const BatchGravity&, const units::Printer&);

}  // namespace ullage::ui
