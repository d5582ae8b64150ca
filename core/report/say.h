// SPDX-License-Identifier: GPL-3.0-or-later
//
// Messages in words. A Speaker holds everything that depends on the reader:
// units, decimal mark, the cellar's calendar, the words of the region and the
// moment "now" against which "Thu 14:00", "yesterday" and "3 d ago" are told.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/message.h"
#include "core/cellar/status.h"
#include "core/units/printing.h"

namespace ullage::report {

enum class RegionalWords { us, british };  // faucet/tap, foam/fob, tap a keg/put on ...

struct Speaker {
  units::Printer printer;
  const cellar::LocalCalendar* calendar = nullptr;
  RegionalWords words = RegionalWords::british;
  cellar::Instant now{};
};

[[nodiscard]] std::string say(const cellar::Message&, const Speaker&);

// Times as people say them: "Thu 14:00" within a week, "24 Nov" beyond it,
// "24 Feb 2027" in another year.
[[nodiscard]] std::string say_time(cellar::Instant, const Speaker&);  // with the hour
[[nodiscard]] std::string say_day(cellar::Instant, const Speaker&);   // without
[[nodiscard]] std::string say_date(cellar::Date, const Speaker&);
[[nodiscard]] std::string say_age(cellar::Instant, const Speaker&);    // "3 d ago", "just now"
[[nodiscard]] std::string say_clock(cellar::Instant, const Speaker&);  // "2026-11-24 19:20"
[[nodiscard]] std::string say_days(std::int64_t);                      // "1 day", "12 days"

// Names of things.
[[nodiscard]] std::string say(cellar::Phase, const Speaker&);
// The reason it was held back for, alone: "smells of vinegar". Empty when it is not.
[[nodiscard]] std::string held_back_because(const cellar::KegStatus&);
[[nodiscard]] std::string say(cellar::KegKind, const Speaker&);  // "Soda keg, ball lock, 19 L"
[[nodiscard]] std::string say_kind(std::string_view entry_kind, const Speaker&);  // "Filled"
// One line for an entry: "Pressure set to 30 psi", "Filled from batch 12, 18.6 L".
// `names` resolves ids through the status.
[[nodiscard]] std::string say_entry(const cellar::Payload&, const cellar::CellarStatus& names,
                                    const Speaker&);

}  // namespace ullage::report
