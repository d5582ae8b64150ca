// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/day_ticks.h"

#include <QLocale>
#include <algorithm>
#include <array>

#include "ui/context.h"

namespace ullage::ui {

std::vector<DayTick> day_ticks(cellar::Instant from, cellar::Instant to, int at_most,
                               const report::Speaker& speaker) {
  std::vector<DayTick> ticks;
  if (speaker.calendar == nullptr || to <= from) return ticks;
  const cellar::LocalCalendar& calendar = *speaker.calendar;
  const cellar::Date first = calendar.date_of(from) + std::chrono::days(1);
  const cellar::Date last = calendar.date_of(to);
  const auto days = (last - first).count() + 1;
  constexpr std::array steps = {1, 2, 3, 7, 14, 28, 56, 91, 182, 364};
  const auto* step = std::find_if(steps.begin(), steps.end(),
                                  [&](int s) { return days / s <= std::max(1, at_most); });
  const std::chrono::days stride(step == steps.end() ? steps.back() : *step);
  // Names of days while each comes once; dates beyond that.
  const bool by_name = days <= 7;
  const auto label = [&](cellar::Date day) {
    if (!by_name) return q(report::say_date(day, speaker));
    const std::chrono::weekday weekday(day);
    return QLocale().dayName(static_cast<int>(weekday.iso_encoding()), QLocale::ShortFormat);
  };
  for (cellar::Date day = first; day <= last; day += stride) {
    // Where a spring change skips midnight the day starts an hour later.
    auto at = calendar.to_instant(cellar::LocalTime(day));
    if (!at) at = calendar.to_instant(cellar::LocalTime(day) + std::chrono::hours(1));
    if (at && *at <= to) ticks.push_back({*at, label(day)});
  }
  return ticks;
}

}  // namespace ullage::ui
