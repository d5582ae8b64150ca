// SPDX-License-Identifier: GPL-3.0-or-later
//
// Made-up entries of every kind, through the payloads' own description of their
// fields, so that a new kind or field is covered without a line here. Values are
// possible ones (what the file's checks allow), not sensible ones.
//
// A Source decides: SeededSource is fast and repeatable; RapidSource draws from
// RapidCheck, so that failures shrink (include payload_generator_rapid.h).
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <type_traits>
#include <vector>

#include "core/cellar/entry.h"
#include "core/cellar/field_walk.h"
#include "core/units/magnitude.h"

namespace ullage::testing {

class SeededSource {
 public:
  explicit SeededSource(std::uint64_t seed) : engine_(seed) {}
  std::int64_t integer(std::int64_t low, std::int64_t high) {
    return std::uniform_int_distribution<std::int64_t>(low, high)(engine_);
  }
  // Any double between the two, all 53 bits in use.
  double real(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(engine_);
  }

 private:
  std::mt19937_64 engine_;
};

struct RealRange {
  double low = 0;
  double high = 1;
};

template <class T>
[[nodiscard]] RealRange range_of(std::string_view column) {
  if constexpr (std::is_same_v<T, units::Temperature>) {
    return {230, 400};
  } else if constexpr (std::is_same_v<T, units::GaugePressure>) {
    return {-9e4, 6e6};
  } else if constexpr (std::is_same_v<T, units::PressureDifference> ||
                       std::is_same_v<T, units::Duration>) {
    return {0, 1e6};
  } else if constexpr (std::is_same_v<T, units::SpecificGravity>) {
    return {0.99, 1.15};
  } else if constexpr (std::is_same_v<T, units::MoleFraction> ||
                       std::is_same_v<T, units::Fraction>) {
    return {0, 1};
  } else if constexpr (std::is_same_v<T, units::Length>) {
    return {0.001, 50};
  } else if constexpr (std::is_same_v<T, double>) {
    return {0, column.find("percent") != std::string_view::npos ? 100.0 : 40.0};
  } else {
    return {0, 20};
  }
}

template <class Source>
class PayloadMaker {
 public:
  explicit PayloadMaker(Source& source) : source_(source) {}

  [[nodiscard]] cellar::Uuid uuid() {
    cellar::Uuid made;
    for (auto& byte : made.bytes) byte = static_cast<std::uint8_t>(source_.integer(0, 255));
    return made;
  }

  // Trade words, quotes, other scripts, line breaks: whatever people type.
  [[nodiscard]] std::string text() {
    static const std::vector<std::string> pieces = {
        "K07", " ", "it's", "\"best\"", "Märzen", "麦酒", "\n", "\\", "5 °C", "🍺", "{}", "a"};
    std::string made = pieces[0];
    const std::int64_t count = source_.integer(0, 4);
    for (std::int64_t i = 0; i < count; ++i) {
      made += pieces[static_cast<std::size_t>(
          source_.integer(0, static_cast<std::int64_t>(pieces.size()) - 1))];
    }
    return made;
  }

  template <class T>
  void fill(std::string_view column, T& field) {
    if constexpr (cellar::IsOptional<T>::value) {
      if (source_.integer(0, 2) == 0) {
        field.reset();
      } else {
        fill(column, field.emplace());
      }
    } else if constexpr (std::is_same_v<T, cellar::EntryId>) {
      field = known_.at(static_cast<std::size_t>(
          source_.integer(0, static_cast<std::int64_t>(known_.size()) - 1)));
    } else if constexpr (requires { field.uuid; }) {
      field.uuid = uuid();
    } else if constexpr (std::is_same_v<T, bool>) {
      field = source_.integer(0, 1) == 1;
    } else if constexpr (std::is_same_v<T, std::int64_t>) {
      field = source_.integer(0, 1'000'000);
    } else if constexpr (std::is_same_v<T, std::string>) {
      field = text();
    } else if constexpr (cellar::WordedEnum<T>) {
      field = static_cast<T>(
          source_.integer(0, static_cast<std::int64_t>(cellar::EnumText<T>::words.size()) - 1));
    } else if constexpr (std::is_same_v<T, cellar::Instant>) {
      field = instant();
    } else if constexpr (std::is_same_v<T, cellar::Date>) {
      field = cellar::Date(std::chrono::days(source_.integer(10'000, 40'000)));
    } else if constexpr (std::is_same_v<T, double>) {
      field = real<T>(column);
    } else {
      field = units::from_magnitude<T>(real<T>(column));
    }
  }

  // A payload of the index-th kind of cellar::Payload.
  [[nodiscard]] cellar::Payload payload(std::size_t index) {
    cellar::Payload made = cellar::blank_payloads().at(index);
    cellar::for_each_field(made,
                           [&](std::string_view column, auto& field) { fill(column, field); });
    return made;
  }

  [[nodiscard]] static bool speaks_of_entries(std::size_t index) {
    bool speaks = false;
    cellar::for_each_field(cellar::blank_payloads().at(index),
                           [&]<class T>(std::string_view, const T&) {
                             speaks = speaks || std::is_same_v<T, cellar::EntryId>;
                           });
    return speaks;
  }

  // An entry without sequence. Its id can be struck or replaced by later ones.
  [[nodiscard]] cellar::Entry entry(std::size_t kind, cellar::ActId act) {
    cellar::Entry made;
    made.header.id.uuid = uuid();
    made.header.act = act;
    made.header.happened_at = instant();
    made.header.recorded_at = instant();
    made.header.utc_offset = cellar::UtcOffset(source_.integer(-14, 14) * 60);
    made.header.by = text();
    made.header.note = source_.integer(0, 1) == 0 ? "" : text();
    if (!known_.empty() && source_.integer(0, 9) == 0) made.header.replaces = known_.back();
    // The first entry has none before it to strike.
    made.payload = payload(known_.empty() && speaks_of_entries(kind) ? 0 : kind);
    known_.push_back(made.header.id);
    return made;
  }
  [[nodiscard]] cellar::Entry entry(std::size_t kind) { return entry(kind, cellar::ActId{uuid()}); }

  [[nodiscard]] std::size_t any_kind() {
    const auto last = static_cast<std::int64_t>(cellar::blank_payloads().size()) - 1;
    return static_cast<std::size_t>(source_.integer(0, last));
  }

  // One of every kind, in order.
  [[nodiscard]] std::vector<cellar::Entry> one_of_each() {
    std::vector<cellar::Entry> made;
    made.reserve(cellar::blank_payloads().size());
    for (std::size_t k = 0; k < cellar::blank_payloads().size(); ++k) {
      made.push_back(entry(k));
    }
    return made;
  }

  // `count` entries of random kinds in acts of up to `per_act`.
  [[nodiscard]] std::vector<cellar::Entry> entries(std::size_t count, int per_act = 6) {
    std::vector<cellar::Entry> made;
    cellar::ActId act;
    std::int64_t left = 0;
    for (std::size_t i = 0; i < count; ++i) {
      if (left-- <= 0) {
        act.uuid = uuid();
        left = source_.integer(0, per_act - 1);
      }
      made.push_back(entry(any_kind(), act));
    }
    return made;
  }

 private:
  template <class T>
  [[nodiscard]] double real(std::string_view column) {
    const RealRange range = range_of<T>(column);
    return source_.real(range.low, range.high);
  }
  [[nodiscard]] cellar::Instant instant() {
    return cellar::Instant(std::chrono::seconds(source_.integer(1'000'000'000, 3'000'000'000)));
  }

  Source& source_;
  std::vector<cellar::EntryId> known_;
};

}  // namespace ullage::testing
