// SPDX-License-Identifier: GPL-3.0-or-later
//
// Everything here walks the payloads through their fields(), so a new kind or
// field needs nothing here.
#include "core/cellar/entry.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/cellar/field_walk.h"
#include "core/units/magnitude.h"

namespace ullage::cellar {

Payload::Payload() = default;
Payload::Payload(const Payload&) = default;
Payload::Payload(Payload&&) noexcept = default;
Payload& Payload::operator=(const Payload&) = default;
Payload& Payload::operator=(Payload&&) noexcept = default;
Payload::~Payload() = default;

namespace {

template <class T>
concept NamesSubject = requires(const T& id) {
  { subject(id) } -> std::same_as<SubjectRef>;
};

// Calls f with every id of a registered thing that the payload holds.
template <class F>
void for_each_registered(const Payload& payload, F&& f) {
  for_each_field(payload, [&]<class T>(std::string_view, const T& field) {
    if constexpr (NamesSubject<T>) {
      f(field);
    } else if constexpr (IsOptional<T>::value) {
      if constexpr (NamesSubject<typename T::value_type>) {
        if (field) f(*field);
      }
    }
  });
}

template <class T>
void add_once(std::vector<T>& to, const T& what) {
  if (std::find(to.begin(), to.end(), what) == to.end()) to.push_back(what);
}

// Two numbers that mean the same in a file: equal, or neither is a number.
bool same_number(double a, double b) { return a == b || (std::isnan(a) && std::isnan(b)); }

template <class T>
bool same_field(const T& a, const T& b) {
  if constexpr (IsOptional<T>::value) {
    return a.has_value() == b.has_value() && (!a || same_field(*a, *b));
  } else if constexpr (std::is_same_v<T, double>) {
    return same_number(a, b);
  } else if constexpr (units::Quantity<T>) {
    return same_number(units::to_magnitude(a), units::to_magnitude(b));
  } else {
    return a == b;
  }
}

template <class P, class... Others>
inline constexpr bool any_of_v = (std::is_same_v<P, Others> || ...);

}  // namespace

const std::vector<Payload>& blank_payloads() {
  static const std::vector<Payload> blanks = [] {
    std::vector<Payload> made;
    [&]<std::size_t... I>(std::index_sequence<I...>) {
      (made.emplace_back(boost::variant2::in_place_index_t<I>{}), ...);
    }(std::make_index_sequence<boost::variant2::variant_size<AnyPayload>::value>{});
    return made;
  }();
  return blanks;
}

std::string_view kind_of(const Payload& payload) {
  return visit([]<class P>(const P&) { return P::kind; }, payload);
}

void subjects_of(const Payload& payload, std::vector<SubjectRef>& into) {
  into.clear();
  if (holds_alternative<CellarDescribed>(payload)) {
    into.push_back(cellar_subject());
    return;
  }
  for_each_registered(payload, [&]<class T>(const T& id) {
    if constexpr (!std::is_same_v<T, InstrumentId>) add_once(into, subject(id));
  });
  if (const auto* record = get_if<InstrumentRecord>(&payload)) {
    into.push_back(subject(record->instrument));
  }
}

std::vector<SubjectRef> subjects_of(const Payload& payload) {
  std::vector<SubjectRef> subjects;
  subjects_of(payload, subjects);
  return subjects;
}

std::vector<InstrumentId> instruments_of(const Payload& payload) {
  std::vector<InstrumentId> instruments;
  if (holds_alternative<InstrumentRecord>(payload)) return instruments;
  for_each_registered(payload, [&]<class T>(const T& id) {
    if constexpr (std::is_same_v<T, InstrumentId>) add_once(instruments, id);
  });
  return instruments;
}

bool is_record(const Payload& payload) {
  return visit(
      []<class P>(const P&) {
        return any_of_v<P, CellarDescribed, KegRecord, BeerRecord, BatchRecord, PlaceRecord,
                        LineRecord, BottleRecord, RegulatorRecord, InstrumentRecord, SegmentRecord,
                        RuleRecord>;
      },
      payload);
}

bool is_of_register(const Payload& payload) {
  return is_record(payload) || holds_alternative<BottleChanged>(payload);
}

bool same(const Payload& a, const Payload& b) {
  if (a.index() != b.index()) return false;
  // Both are walked in the same order: remember where a's fields are, compare as b's come by.
  const std::vector<const void*> of_a = fields_of(a);
  bool equal = true;
  std::size_t i = 0;
  for_each_field(b, [&]<class T>(std::string_view, const T& field) {
    equal = equal && same_field(*static_cast<const T*>(of_a[i++]), field);
  });
  return equal;
}

bool same(const Entry& a, const Entry& b) {
  const auto header = [](const EntryHeader& h) {
    return std::tie(h.id, h.act, h.sequence, h.happened_at, h.recorded_at, h.utc_offset, h.by,
                    h.replaces, h.note);
  };
  return header(a.header) == header(b.header) && same(a.payload, b.payload);
}

std::optional<Payload> make_payload(std::string_view kind) {
  for (const Payload& blank : blank_payloads()) {
    if (kind_of(blank) == kind) return blank;
  }
  return std::nullopt;
}

}  // namespace ullage::cellar
