// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo_story.h"

#include <algorithm>

#include "core/units/present.h"

namespace ullage::app {

using namespace std::chrono_literals;

DemoStory::DemoStory(cellar::Instant now, const cellar::LocalCalendar& calendar,
                     cellar::IdSource& ids)
    : now_(now), calendar_(calendar), ids_(ids) {}

cellar::Instant DemoStory::ago(int days, int hour, int minute) const {
  const cellar::LocalTime wall =
      date(-days) + std::chrono::hours(hour) + std::chrono::minutes(minute);
  // The hour that spring skips: an hour later is a real time again.
  const std::optional<cellar::Instant> at = calendar_.to_instant(wall);
  const cellar::Instant told = at ? *at : present(calendar_.to_instant(wall + 1h));
  return std::min(told, now_ - 5min);
}

cellar::Instant DemoStory::hours_ago(double hours) const {
  const auto seconds = std::chrono::seconds(static_cast<long long>(hours * 3600.0));
  return std::chrono::floor<std::chrono::minutes>(now_ - seconds);
}

cellar::Date DemoStory::date(int days_from_today) const {
  return calendar_.date_of(now_) + std::chrono::days(days_from_today);
}

std::vector<cellar::Act> DemoStory::take() {
  std::stable_sort(acts_.begin(), acts_.end(), [](const cellar::Act& a, const cellar::Act& b) {
    return a.drafts.front().happened_at < b.drafts.front().happened_at;
  });
  return std::move(acts_);
}

}  // namespace ullage::app
