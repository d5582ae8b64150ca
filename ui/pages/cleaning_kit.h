// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaners and the time at hand, as the person keeps them: what the label
// says does not belong in the cellar's journal, it stands on the shelf.
#pragma once

#include <QString>
#include <array>

#include "core/cellar/cleaning_plan.h"

namespace ullage::ui {

class Preferences;

struct CleaningHabits {
  cellar::CleaningKit kit;
  units::Duration time_at_hand = units::minutes(180);
};
// Each of the kit's minutes: where it is kept, and how the dialog names it.
struct MinutesOfWork {
  const char* key;
  const char* label;  // of ullage::ui::KitDialog
  units::Duration cellar::WorkMinutes::* each;
};
extern const std::array<MinutesOfWork, 15> minutes_of_work;

// As remembered; what is usual where nothing is. A list that was begun keeps its
// own copy, under another key.
[[nodiscard]] CleaningHabits cleaning_habits(const Preferences&,
                                             const QString& under = QStringLiteral("cleaning"));
void remember(Preferences&, const CleaningHabits&,
              const QString& under = QStringLiteral("cleaning"));

}  // namespace ullage::ui
