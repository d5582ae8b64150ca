// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a new form starts with, taken from the journal: the thing it is about,
// the settings used the last time, the last readings to offer.
#pragma once

#include <optional>

#include "core/cellar/journal.h"
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

// Points the first id field of the subject's kind at it.
void make_about(cellar::Payload& payload, const cellar::SubjectRef& subject);

// The last entry in force of this kind: about `subject` when one is given.
[[nodiscard]] std::optional<cellar::Payload> last_of_kind(
    const cellar::Journal& journal, std::string_view kind,
    const std::optional<cellar::SubjectRef>& subject);

// Copies the fields that are to be remembered.
void remember(cellar::Payload& into, const cellar::Payload& last, const FormSpec& form);

// The first subject an entry is about, instruments apart.
[[nodiscard]] std::optional<cellar::SubjectRef> main_subject(const cellar::Payload& payload);

}  // namespace ullage::ui
