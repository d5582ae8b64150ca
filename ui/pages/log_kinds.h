// SPDX-License-Identifier: GPL-3.0-or-later
//
// The drop-down of the Log page that chooses kinds of entries: a whole group of them,
// or one kind, listed by its name below its group. Only kinds that the log holds are
// offered.
#pragma once

#include <set>
#include <string>
#include <string_view>

#include "core/report/say.h"
#include "ui/models/log_filter.h"

class QComboBox;

namespace ullage::ui {

struct KindChosen {
  EntryGroup group = EntryGroup::all;
  std::string kind;  // of that kind alone; any of the group when empty
};

// Keeps what is chosen, as long as it is still offered.
void fill_kind_box(QComboBox& box, const std::set<std::string_view>& in_the_log,
                   report::RegionalWords words);

[[nodiscard]] KindChosen kind_in(const QComboBox& box);

}  // namespace ullage::ui
