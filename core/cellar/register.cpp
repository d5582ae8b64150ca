// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/register.h"

#include <type_traits>

namespace ullage::cellar {

namespace {

template <class... Records>
struct RecordKinds {
  template <class P>
  static constexpr bool contains = (std::is_same_v<P, Records> || ...);
};
using Registering =
    RecordKinds<KegRecord, BeerRecord, BatchRecord, PlaceRecord, LineRecord, BottleRecord,
                RegulatorRecord, InstrumentRecord, SegmentRecord, RuleRecord>;

}  // namespace

std::optional<SubjectRef> registers(const Payload& payload) {
  return visit(
      []<class P>(const P& p) -> std::optional<SubjectRef> {
        if constexpr (std::is_same_v<P, CellarDescribed>) {
          return cellar_subject();
        } else if constexpr (Registering::contains<P>) {
          // A record names itself in its first field.
          std::optional<SubjectRef> first;
          P::fields(p, [&]<class T>(std::string_view, const T& field) {
            if constexpr (requires { subject(field); }) {
              if (!first) first = subject(field);
            }
          });
          return first;
        } else {
          return std::nullopt;
        }
      },
      payload);
}

Register::Register(const Journal& journal) : journal_(journal) { refresh(); }

void Register::refresh() {
  if (seen_ == journal_.revision()) return;
  for (const SubjectRef& s : journal_.changed_since(seen_)) {
    records_.erase(s);
    const auto story = journal_.story(s);
    for (auto at = story.rbegin(); at != story.rend(); ++at) {
      if (registers((*at)->payload) != s) continue;
      records_.emplace(s, *at);
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
