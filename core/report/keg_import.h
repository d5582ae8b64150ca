// SPDX-License-Identifier: GPL-3.0-or-later
//
// A list of kegs from a CSV file: which column is what, and what would be
// registered. All or nothing: one line that can't be read refuses the whole file,
// and every fault is told with its line. Nothing here writes; the plan is shown,
// then logged as one act.
#pragma once

#include <array>
#include <expected>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/csv_reader.h"
#include "core/units/parsing.h"

namespace ullage::report {

enum class KegField { tag, kind, nominal, brimful, tare, rated, coupler, owner, deposit, place };
inline constexpr std::array keg_fields = {
    KegField::tag,   KegField::kind,    KegField::nominal, KegField::brimful, KegField::tare,
    KegField::rated, KegField::coupler, KegField::owner,   KegField::deposit, KegField::place};
[[nodiscard]] std::string say(KegField);  // "Number", "Empty weight"

// For each field the column it is read from; none when it is not in the file.
using KegColumns = std::array<std::optional<std::size_t>, keg_fields.size()>;
// By the headings: ours, those of csv_of(keg_list()), and words people use. A
// column is given to one field alone.
[[nodiscard]] KegColumns matched_columns(const CsvLine& header);

struct KegImportFault {
  std::size_t line = 0;  // 0: about the file as a whole
  std::string words;     // "Line 4: K07 is in the list twice, first in line 2."
};

// What a line becomes. The keg has no id yet: it gets one when it is logged.
struct PlannedKeg {
  std::size_t line = 0;
  cellar::KegRecord keg;
};

inline constexpr std::size_t most_import_faults = 50;

// Numbers without a unit are in the unit that their heading names ("tare_kg",
// "Tare (lb)"), else in the reader's. Kinds are named by their stored words
// ("ball_lock_19", "Ball lock 19", "custom") or told by a size, and a coupler, that
// one kind alone has; any other keg needs both volumes. Places must be registered.
[[nodiscard]] std::expected<std::vector<PlannedKeg>, std::vector<KegImportFault>> plan_kegs(
    const CsvFile&, const KegColumns&, const cellar::CellarStatus&, const units::Parser&);

}  // namespace ullage::report
