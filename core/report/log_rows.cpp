// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/log_rows.h"

#include <fmt/format.h>

#include <cmath>

namespace ullage::report {

namespace {

// Later than this, an entry was not made on the spot, and a log says so.
constexpr std::chrono::hours made_on_the_spot{24};

std::string struck_words(const cellar::Entry& by, const LogSource& from) {
  std::string words = fmt::format("struck {} by {}", from.clock(by.header.recorded_at),
                                  by.header.by.empty() ? "unknown" : by.header.by);
  if (const auto* strike = get_if<cellar::Struck>(&by.payload); strike && !strike->reason.empty()) {
    words += ": " + strike->reason;
  }
  return words;
}

std::string parted(std::initializer_list<std::string> parts, std::string_view between) {
  std::string all;
  for (const std::string& part : parts) {
    if (part.empty()) continue;
    if (!all.empty()) all += between;
    all += part;
  }
  return all;
}

}  // namespace

std::vector<const cellar::Entry*> entries_within(
    const Period& period, const LogSource& from,
    const std::function<bool(const cellar::Payload&)>& wanted) {
  std::vector<const cellar::Entry*> found;
  for (const cellar::Entry& e : from.journal.entries()) {
    if (wanted(e.payload) && period.holds(from.day(e))) found.push_back(&e);
  }
  std::stable_sort(found.begin(), found.end(), [](const cellar::Entry* a, const cellar::Entry* b) {
    return a->header.happened_at < b->header.happened_at;
  });
  return found;
}

void tell_standing(TableRow& row, const cellar::Entry& e, const LogSource& from) {
  const cellar::Standing standing = from.journal.standing(e.header.id);
  row.struck = standing != cellar::Standing::in_force;
  if (standing == cellar::Standing::struck) {
    const cellar::Entry* by = from.journal.struck_by(e.header.id);
    row.standing = by ? struck_words(*by, from) : "struck";
  } else if (standing == cellar::Standing::replaced) {
    const cellar::Entry* by = from.journal.replaced_by(e.header.id);
    row.standing = by ? fmt::format("corrected {} by {}", from.clock(by->header.recorded_at),
                                    by->header.by.empty() ? "unknown" : by->header.by)
                      : "corrected";
  } else if (e.header.replaces) {
    row.standing = "corrects an entry above or below";
  } else if (e.header.recorded_at - e.header.happened_at > made_on_the_spot) {
    row.standing = "entered later, " + from.clock(e.header.recorded_at);
  }
}

std::string iso_day(cellar::Date day) {
  const std::chrono::year_month_day d(day);
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(d.year()),
                     static_cast<unsigned>(d.month()), static_cast<unsigned>(d.day()));
}

std::string stamp_of(cellar::Instant t, const Speaker& speaker) {
  const auto offset = speaker.calendar->offset_at(t).count();
  std::string clock = say_clock(t, speaker);
  clock.at(10) = 'T';
  return fmt::format("{}{}{:02}:{:02}", clock, offset < 0 ? '-' : '+', std::abs(offset) / 60,
                     std::abs(offset) % 60);
}

Datum datum(double number) {
  return std::isfinite(number) ? Datum(std::round(number * 1000) / 1000) : Datum();
}
Datum datum(const std::string& text) { return text.empty() ? Datum() : Datum(text); }

Datum kilopascals(const std::optional<units::GaugePressure>& p) {
  return datum(p, [](units::GaugePressure each) { return units::in_pascals(each) / 1000; });
}

TableSheet sheet_of_now(const char* title, const cellar::CellarStatus& status,
                        const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_titled(title, status, speaker, by);
  sheet.period = "As of " + say_clock(status.now, speaker);
  return sheet;
}

std::string stacked(std::initializer_list<std::string> lines) { return parted(lines, "\n"); }
std::string listed(std::initializer_list<std::string> parts) { return parted(parts, ", "); }

std::string say_should_be(const cellar::KegStatus& keg, const Speaker& speaker) {
  if (!keg.gas.should_be) return {};
  return "~" + speaker.printer.print(units::Estimate<units::GaugePressure>(
                   *keg.gas.should_be, keg.gas.should_be_errors));
}

std::string say_money(std::int64_t minor, const Speaker& speaker) {
  return speaker.printer.number(static_cast<double>(minor) / 100, 2);
}

std::string say_gas(units::MoleFraction co2, const Speaker& speaker) {
  const double percent = co2.count() * 100;
  std::string words = fmt::format("CO₂ {} %", speaker.printer.number(percent, 0));
  if (percent < 99.5) words += fmt::format(" / N₂ {} %", speaker.printer.number(100 - percent, 0));
  return words;
}

}  // namespace ullage::report
