// SPDX-License-Identifier: GPL-3.0-or-later
//
// How one line of an entry is put together. Used by say_entry alone.
#pragma once

#include <cmath>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "core/report/names.h"
#include "core/report/say.h"

namespace ullage::report {

// "acid_sanitiser" as people write it.
[[nodiscard]] std::string spaced(std::string_view word);

struct EntryTeller {
  const cellar::CellarStatus& names;
  const Speaker& speaker;

  [[nodiscard]] bool us() const { return speaker.words == RegionalWords::us; }
  // "Filled from batch 12, 18.6 L": the parts that say something, after commas.
  [[nodiscard]] std::string line(std::string what, std::initializer_list<std::string> parts) const;

  template <class Id>
  [[nodiscard]] std::string name(Id id) const {
    return name_of(cellar::subject(id), names);
  }
  template <class Id>
  [[nodiscard]] std::string name_if(std::optional<Id> id) const {
    return id ? name(*id) : std::string();
  }
  [[nodiscard]] std::string batch(cellar::BatchId id) const { return batch_with_beer(id, names); }

  template <class Quantity>
  [[nodiscard]] std::string print(const Quantity& q) const {
    return speaker.printer.print(q);
  }
  template <class Quantity>
  [[nodiscard]] std::string print(const std::optional<Quantity>& q) const {
    return q ? speaker.printer.print(*q) : std::string();
  }
  template <class Quantity>
  [[nodiscard]] std::string named(std::string_view what, const std::optional<Quantity>& q) const {
    return q ? std::string(what) + " " + speaker.printer.print(*q) : std::string();
  }
  [[nodiscard]] std::string count(std::int64_t n, std::string_view one) const;
  [[nodiscard]] std::string percent(std::optional<double>) const;
  // Regional words inside stored ones: foam/fob, sanitiser/sanitizer.
  [[nodiscard]] std::string foam(const std::string& words) const;
  [[nodiscard]] std::string sanitiser(const std::string& words) const;
};

// The register, stock and preparation: entry_words.cpp.
std::string words_of(const cellar::CellarDescribed&, const EntryTeller&);
std::string words_of(const cellar::KegRecord&, const EntryTeller&);
std::string words_of(const cellar::BeerRecord&, const EntryTeller&);
std::string words_of(const cellar::BatchRecord&, const EntryTeller&);
std::string words_of(const cellar::PlaceRecord&, const EntryTeller&);
std::string words_of(const cellar::LineRecord&, const EntryTeller&);
std::string words_of(const cellar::BottleRecord&, const EntryTeller&);
std::string words_of(const cellar::RegulatorRecord&, const EntryTeller&);
std::string words_of(const cellar::InstrumentRecord&, const EntryTeller&);
std::string words_of(const cellar::Found&, const EntryTeller&);
std::string words_of(const cellar::Received&, const EntryTeller&);
std::string words_of(const cellar::Moved&, const EntryTeller&);
std::string words_of(const cellar::Quarantined&, const EntryTeller&);
std::string words_of(const cellar::Cleared&, const EntryTeller&);
std::string words_of(const cellar::Lent&, const EntryTeller&);
std::string words_of(const cellar::Returned&, const EntryTeller&);
std::string words_of(const cellar::Wasted&, const EntryTeller&);
std::string words_of(const cellar::Inspected&, const EntryTeller&);
std::string words_of(const cellar::Cleaned&, const EntryTeller&);
std::string words_of(const cellar::Sanitised&, const EntryTeller&);
std::string words_of(const cellar::HoldReading&, const EntryTeller&);
std::string words_of(const cellar::Purged&, const EntryTeller&);

// Pieces of hose, rules and work: entry_words_routine.cpp.
std::string words_of(const cellar::SegmentRecord&, const EntryTeller&);
std::string words_of(const cellar::RuleRecord&, const EntryTeller&);
std::string words_of(const cellar::WorkDone&, const EntryTeller&);
std::string words_of(const cellar::WorkMoved&, const EntryTeller&);

}  // namespace ullage::report
