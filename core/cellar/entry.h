// SPDX-License-Identifier: GPL-3.0-or-later
//
// One journal entry: a header that all kinds share and a payload of one kind.
// Entries are never changed or erased. What happened is in the payload; when,
// by whom, in which act and in whose place (if it corrects another entry) is in
// the header.
#pragma once

#include <boost/variant2/variant.hpp>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/entries/any.h"
#include "core/cellar/entries/gas_supply.h"
#include "core/cellar/entries/keg_beer.h"
#include "core/cellar/entries/keg_gas.h"
#include "core/cellar/entries/keg_preparation.h"
#include "core/cellar/entries/keg_stock.h"
#include "core/cellar/entries/line.h"
#include "core/cellar/entries/place_and_batch.h"
#include "core/cellar/entries/routine.h"
#include "core/cellar/records.h"
#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

// Every kind there is. To add one, see DEVELOPERS.md.
using AnyPayload = boost::variant2::variant<
    CellarDescribed, KegRecord, BeerRecord, BatchRecord, PlaceRecord, LineRecord, BottleRecord,
    RegulatorRecord, InstrumentRecord, Found, Received, Moved, Quarantined, Cleared, Lent, Returned,
    Wasted, Inspected, Cleaned, Sanitised, HoldReading, Purged, Filled, Primed, HopsIn, HopsOut,
    LevelReading, CarbonationReading, Tapped, Untapped, Emptied, GasSet, GasOff, Vented, Rocked,
    LineLocked, LineCleaned, LineReleased, TimedPour, BottleWeighed, BottleChanged, GaugeRead,
    LeakTested, TemperatureRead, AlarmChecked, GravityRead, BestByChanged, BatchRecalled, Noted,
    Struck, Restored, SegmentRecord, RuleRecord, WorkDone, WorkMoved>;

// One of them. A class of its own so that copying, moving and destroying it, a function
// for every kind each, are compiled once and not wherever an entry is handed on.
class Payload : public AnyPayload {
 public:
  using AnyPayload::AnyPayload;
  Payload();
  Payload(const Payload&);
  Payload(Payload&&) noexcept;
  Payload& operator=(const Payload&);
  Payload& operator=(Payload&&) noexcept;
  ~Payload();
};

struct EntryHeader {
  EntryId id;
  ActId act;                  // entries logged together, undone together
  std::int64_t sequence = 0;  // the file's counter; 0 until the store has given one
  Instant happened_at{};
  Instant recorded_at{};
  UtcOffset utc_offset{};  // of the cellar's zone when it was recorded
  std::string by;          // initials
  std::optional<EntryId> replaces;
  std::string note;
};

struct Entry {
  EntryHeader header;
  Payload payload;
};

// What is to be logged as one act. Ids, sequence, recorded_at and offset are
// given by whoever logs it.
struct Draft {
  Payload payload;
  Instant happened_at{};
  std::string note;
  std::optional<EntryId> replaces;
};
struct Act {
  std::vector<Draft> drafts;
  std::string by;
};

[[nodiscard]] std::string_view kind_of(const Payload&);

// The registered things an entry is about, in field order, each once; and the
// instruments its readings name. An instrument is a subject of its own record
// only; strikes, restores and remarks on nothing in particular have no subject.
[[nodiscard]] std::vector<SubjectRef> subjects_of(const Payload&);
void subjects_of(const Payload&, std::vector<SubjectRef>& into);  // replaces what is in `into`
[[nodiscard]] std::vector<InstrumentId> instruments_of(const Payload&);

// Whether it says what the cellar or one of its things is.
[[nodiscard]] bool is_record(const Payload&);
// Whether it says what a thing is or how things are joined, rather than what was
// done or read: the records, the cellar's description, a bottle change.
[[nodiscard]] bool is_of_register(const Payload&);

[[nodiscard]] bool same(const Payload&, const Payload&);
[[nodiscard]] bool same(const Entry&, const Entry&);

// A default-made payload of every kind, in the order of Payload.
[[nodiscard]] const std::vector<Payload>& blank_payloads();

// A default-made payload of the named kind.
[[nodiscard]] std::optional<Payload> make_payload(std::string_view kind);

}  // namespace ullage::cellar
