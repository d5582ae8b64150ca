// SPDX-License-Identifier: GPL-3.0-or-later
//
// Shows the faults of editors; the first faulty one takes the keyboard, so that
// whoever is refused goes on where it is to be put right.
#pragma once

#include "ui/widgets/form_section.h"

namespace ullage::ui {

// True when one has a fault, or `already` when one above them has. Null is no editor.
template <class... Edits>
[[nodiscard]] bool faults_shown(bool already, Edits*... edits) {
  const auto judge = [&](auto* edit) {
    if (edit == nullptr) return;
    edit->show_fault();
    if (edit->fault().isEmpty()) return;
    if (!already) lead_to(edit);
    already = true;
  };
  (judge(edits), ...);
  return already;
}

}  // namespace ullage::ui
