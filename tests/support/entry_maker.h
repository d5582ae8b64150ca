// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entries for tests, in the order they are made: counted ids, rising sequences.
#pragma once

#include <chrono>
#include <cstdint>
#include <string>
#include <utility>

#include "core/cellar/entry.h"

namespace ullage::testing {

// Ids that differ from one another and are the same in every run.
class CountingIds final : public cellar::IdSource {
 public:
  explicit CountingIds(std::uint8_t family = 1) : family_(family) {}
  cellar::Uuid next() override {
    cellar::Uuid uuid;
    uuid.bytes[0] = family_;
    ++last_;
    for (std::size_t i = 0; i < 4; ++i) {
      uuid.bytes[15 - i] = static_cast<std::uint8_t>(last_ >> (8U * i));
    }
    return uuid;
  }
  template <class AnyId>
  AnyId make() {
    return AnyId{next()};
  }

 private:
  std::uint8_t family_;
  std::uint32_t last_ = 0;
};

// A moment some minutes into the time that tests play in.
inline cellar::Instant minute(int minutes) {
  return cellar::Instant(std::chrono::sys_days(std::chrono::year(2026) / 3 / 1)) +
         std::chrono::minutes(minutes);
}

class EntryMaker {
 public:
  cellar::Entry make(cellar::Instant happened_at, cellar::Payload payload) {
    cellar::Entry e;
    e.header.id = ids.make<cellar::EntryId>();
    e.header.act = ids.make<cellar::ActId>();
    e.header.sequence = ++last_sequence;
    e.header.happened_at = happened_at;
    e.header.recorded_at = minute(static_cast<int>(1'000'000 + last_sequence));
    e.header.by = "AB";
    e.payload = std::move(payload);
    return e;
  }
  cellar::Entry correction(const cellar::Entry& of, cellar::Instant happened_at,
                           cellar::Payload payload) {
    cellar::Entry e = make(happened_at, std::move(payload));
    e.header.replaces = of.header.id;
    return e;
  }
  cellar::Entry strike(const cellar::Entry& target, cellar::Instant when = minute(0)) {
    return make(when, cellar::Struck{.target = target.header.id, .reason = "typed twice"});
  }
  cellar::Entry restore(const cellar::Entry& target, cellar::Instant when = minute(0)) {
    return make(when, cellar::Restored{.target = target.header.id, .reason = "was right"});
  }

  CountingIds ids;
  std::int64_t last_sequence = 0;
};

}  // namespace ullage::testing
