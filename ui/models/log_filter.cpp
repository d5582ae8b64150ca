// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/log_filter.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace ullage::ui {
namespace {

using namespace std::string_view_literals;

// Kinds by the group under which somebody would look for them; a kind that is
// not named here is something done to a keg.
constexpr auto grouped_kinds = std::to_array<std::pair<std::string_view, EntryGroup>>({
    {"filled"sv, EntryGroup::beer},
    {"received"sv, EntryGroup::beer},
    {"found"sv, EntryGroup::beer},
    {"primed"sv, EntryGroup::beer},
    {"hops_in"sv, EntryGroup::beer},
    {"hops_out"sv, EntryGroup::beer},
    {"level_reading"sv, EntryGroup::beer},
    {"carbonation_reading"sv, EntryGroup::beer},
    {"gravity_read"sv, EntryGroup::beer},
    {"best_by_changed"sv, EntryGroup::beer},
    {"batch_recalled"sv, EntryGroup::beer},
    {"wasted"sv, EntryGroup::beer},
    {"gas_set"sv, EntryGroup::gas},
    {"gas_off"sv, EntryGroup::gas},
    {"vented"sv, EntryGroup::gas},
    {"rocked"sv, EntryGroup::gas},
    {"bottle_weighed"sv, EntryGroup::gas},
    {"bottle_changed"sv, EntryGroup::gas},
    {"gauge_read"sv, EntryGroup::gas},
    {"leak_tested"sv, EntryGroup::gas},
    {"line_locked"sv, EntryGroup::lines},
    {"line_cleaned"sv, EntryGroup::lines},
    {"line_released"sv, EntryGroup::lines},
    {"timed_pour"sv, EntryGroup::lines},
    {"temperature_read"sv, EntryGroup::places},
    {"alarm_checked"sv, EntryGroup::places},
    {"work_done"sv, EntryGroup::routine},
    {"work_moved"sv, EntryGroup::routine},
    {"struck"sv, EntryGroup::corrections},
    {"restored"sv, EntryGroup::corrections},
});

}  // namespace

EntryGroup group_of_kind(std::string_view kind) {
  if (kind.ends_with("_record") || kind == "cellar_described") return EntryGroup::the_register;
  const auto at = std::find_if(grouped_kinds.begin(), grouped_kinds.end(),
                               [&](const auto& known) { return known.first == kind; });
  return at == grouped_kinds.end() ? EntryGroup::kegs : at->second;
}

bool LogFilter::admits(const cellar::Entry& entry, const cellar::Journal& journal) const {
  const cellar::Instant at = entry.header.happened_at;
  if (from && at < *from) return false;
  if (to && at >= *to) return false;
  const std::string_view own_kind = cellar::kind_of(entry.payload);
  if (!kind.empty() && kind != own_kind) return false;
  const EntryGroup own = group_of_kind(own_kind);
  if (group != EntryGroup::all && own != group &&
      !(group == EntryGroup::corrections && entry.header.replaces)) {
    return false;
  }
  if (about) {
    const std::vector<cellar::SubjectRef> subjects = cellar::subjects_of(entry.payload);
    if (std::find(subjects.begin(), subjects.end(), *about) == subjects.end()) return false;
  }
  return with_struck || journal.standing(entry.header.id) == cellar::Standing::in_force;
}

}  // namespace ullage::ui
