// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the logs over a period share: which entries belong to it, how one that no
// longer stands is shown, and facts as data. Used by the sheets of this folder
// alone.
#pragma once

#include <algorithm>
#include <functional>
#include <string>
#include <vector>

#include "core/cellar/record_at.h"
#include "core/report/names.h"
#include "core/report/table_sheet.h"

namespace ullage::report {

// Whom a log is told from, and to.
struct LogSource {
  const cellar::Journal& journal;
  const cellar::CellarStatus& names;  // of now: what things are called
  const Speaker& speaker;

  [[nodiscard]] cellar::Date day(const cellar::Entry& e) const {
    return day_of(e.header.happened_at);
  }
  [[nodiscard]] cellar::Date day_of(cellar::Instant t) const {
    return speaker.calendar->date_of(t);
  }
  [[nodiscard]] std::string clock(cellar::Instant t) const { return say_clock(t, speaker); }
  template <class Quantity>
  [[nodiscard]] std::string print(const std::optional<Quantity>& quantity) const {
    return quantity ? speaker.printer.print(*quantity) : std::string();
  }
};

// Every entry of the period that `wanted` says yes to, struck and corrected ones
// too, in the order in which they happened.
[[nodiscard]] std::vector<const cellar::Entry*> entries_within(
    const Period&, const LogSource&, const std::function<bool(const cellar::Payload&)>& wanted);

// Whether the row counts, and the sentence of what became of its entry.
void tell_standing(TableRow&, const cellar::Entry&, const LogSource&);

// "2026-11-24T19:20+00:00": local time with its offset (RFC 3339).
[[nodiscard]] std::string stamp_of(cellar::Instant, const Speaker&);
[[nodiscard]] std::string iso_day(cellar::Date);

// A number as data: to a thousandth, so that 18.6 L is not 18.599999999999998.
[[nodiscard]] Datum datum(double);
[[nodiscard]] Datum datum(const std::string&);  // nothing stated when empty
template <class T, class Read>
[[nodiscard]] Datum datum(const std::optional<T>& value, Read read) {
  return value ? datum(read(*value)) : Datum();
}

[[nodiscard]] Datum kilopascals(const std::optional<units::GaugePressure>&);

// A list of things as they are at the status' moment, with its heading filled in.
[[nodiscard]] TableSheet sheet_of_now(const char* title, const cellar::CellarStatus&,
                                      const Speaker&, const std::string& by);

// Texts that say something, one under the other.
[[nodiscard]] std::string stacked(std::initializer_list<std::string> lines);
[[nodiscard]] std::string listed(std::initializer_list<std::string> parts);  // after commas

// The pressure that would hold a keg's CO2, an estimate: "~11.5 ± 0.6 psi"; empty when it
// can't be told.
[[nodiscard]] std::string say_should_be(const cellar::KegStatus&, const Speaker&);

// Money from its smallest unit: "12.50". The cellar's currency is not known.
[[nodiscard]] std::string say_money(std::int64_t minor, const Speaker&);
// "CO2 30 % / N2 70 %", never a bare ratio.
[[nodiscard]] std::string say_gas(units::MoleFraction co2, const Speaker&);

}  // namespace ullage::report
