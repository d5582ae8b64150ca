// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/zone_calendar.h"

#include <QByteArray>
#include <QDateTime>
#include <QTimeZone>
#include <algorithm>
#include <array>

namespace ullage::app {

namespace {

using std::chrono::sys_days;
using std::chrono::year;

constexpr cellar::Instant first_change{sys_days(year(1900) / 1 / 1)};
constexpr cellar::Instant last_change{sys_days(year(2200) / 1 / 1)};

QDateTime in_qt(cellar::Instant t) {
  return QDateTime::fromSecsSinceEpoch(t.time_since_epoch().count(), Qt::UTC);
}

// Local mean time, of before a zone had a law, counts seconds; the calendar's
// offsets are whole minutes.
cellar::UtcOffset rounded(int seconds) {
  return std::chrono::round<std::chrono::minutes>(std::chrono::seconds(seconds));
}

QTimeZone zone_named(const std::string& name) { return QTimeZone(QByteArray::fromStdString(name)); }

}  // namespace

ZoneCalendar::ZoneCalendar(const std::string& iana_name) { set_zone(iana_name); }

void ZoneCalendar::set_zone(const std::string& iana_name) {
  const QTimeZone zone = zone_named(iana_name);
  name_ = iana_name;
  known_ = zone.isValid();
  spans_.clear();
  if (!known_) {
    spans_.push_back({first_change, cellar::UtcOffset(0)});
    return;
  }
  spans_.push_back({first_change, rounded(zone.offsetFromUtc(in_qt(first_change)))});
  for (const auto& change : zone.transitions(in_qt(first_change), in_qt(last_change))) {
    const cellar::Instant at{std::chrono::seconds(change.atUtc.toSecsSinceEpoch())};
    const cellar::UtcOffset offset = rounded(change.offsetFromUtc);
    if (at > spans_.back().from && offset != spans_.back().offset) spans_.push_back({at, offset});
  }
}

cellar::UtcOffset ZoneCalendar::offset_at(cellar::Instant t) const {
  const auto next = std::upper_bound(spans_.begin(), spans_.end(), t,
                                     [](cellar::Instant a, const Span& s) { return a < s.from; });
  return next == spans_.begin() ? next->offset : std::prev(next)->offset;
}

std::optional<cellar::Instant> ZoneCalendar::to_instant(cellar::LocalTime local) const {
  // An offset lies within a day either way, so these are the only candidates.
  const cellar::Instant as_utc{local.time_since_epoch()};
  std::array<cellar::Instant, 2> candidates = {as_utc - offset_at(as_utc - std::chrono::days(1)),
                                               as_utc - offset_at(as_utc + std::chrono::days(1))};
  std::sort(candidates.begin(), candidates.end());
  for (const cellar::Instant t : candidates) {
    if (to_local(t) == local) return t;
  }
  return std::nullopt;
}

bool is_known_zone(const std::string& iana_name) {
  return !iana_name.empty() && zone_named(iana_name).isValid();
}

std::string system_zone() {
  const QTimeZone zone = QTimeZone::systemTimeZone();
  return zone.isValid() ? zone.id().toStdString() : "UTC";
}

}  // namespace ullage::app
