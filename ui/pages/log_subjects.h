// SPDX-License-Identifier: GPL-3.0-or-later
//
// The list of things an entry can be about, as rows of a combo box: "Anything",
// then kegs, lines, places, bottles, beers and batches by name.
#pragma once

#include <optional>

#include "core/cellar/status.h"

class QComboBox;

namespace ullage::ui {

// Fills the box anew, keeping what is chosen where it is still there.
void fill_subject_box(QComboBox& box, const cellar::CellarStatus& status);
[[nodiscard]] std::optional<cellar::SubjectRef> subject_in(const QComboBox& box);
void select_subject(QComboBox& box, cellar::SubjectRef subject);

}  // namespace ullage::ui
