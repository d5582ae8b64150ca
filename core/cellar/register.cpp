// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/register.h"

#include <ranges>

#include "core/cellar/field_walk.h"

namespace ullage::cellar {

std::optional<SubjectRef> registers(const Payload& payload) {
  if (holds_alternative<CellarDescribed>(payload)) return cellar_subject();
  if (!is_record(payload)) return std::nullopt;
  // A record names itself in its first field.
  std::optional<SubjectRef> first;
  for_each_field(payload, [&](std::string_view, const auto& field) {
    if constexpr (requires { subject(field); }) {
      if (!first) first = subject(field);
    }
  });
  return first;
}

Register::Register(const Journal& journal) : journal_(journal) { refresh(); }

void Register::refresh() {
  if (seen_ == journal_.revision()) return;
  for (const SubjectRef& s : journal_.changed_since(seen_)) {
    records_.erase(s);
    const auto story = journal_.story(s);
    for (const Entry* entry : std::views::reverse(story)) {
      if (registers(entry->payload) != s) continue;
      records_.emplace(s, entry);
      break;
    }
  }
  seen_ = journal_.revision();
}

const Payload* Register::find(SubjectRef s) const {
  const auto found = records_.find(s);
  return found == records_.end() ? nullptr : &found->second->payload;
}

}  // namespace ullage::cellar
