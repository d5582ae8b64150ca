// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/calendar_feed.h"

#include <fmt/format.h>
#include <libical/ical.h>

#include <algorithm>
#include <ctime>
#include <memory>

#include "core/cellar/beers_status.h"
#include "core/cellar/due_work.h"
#include "core/report/cleaning_words.h"
#include "core/report/log_rows.h"
#include "core/report/names.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

std::string uid_of(const Uuid& uuid, std::string_view work) {
  return fmt::format("{}-{}@ullage", to_text(uuid), work);
}

class ItemList {
 public:
  ItemList(const CellarStatus& status, const Journal& journal, const Speaker& speaker)
      : status_(status),
        journal_(journal),
        speaker_(speaker),
        today_(speaker.calendar->date_of(status.now)) {}

  std::vector<CalendarItem> all() {
    const auto work = due_work(journal_, status_, *speaker_.calendar);
    for (const DueWork& w : work) add_work(w);
    for (const BottleStatus& bottle : status_.bottles) add_bottle(bottle, work);
    for (const KegStatus& keg : status_.kegs) {
      if (keg.record.in_use) add_keg(keg);
    }
    std::stable_sort(items_.begin(), items_.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
    return std::move(items_);
  }

 private:
  // What was due before today is still to do: it stands on today, or on the day it
  // was put off to, and says since when.
  void due(const Uuid& uuid, std::string_view work, Date day, std::string what, std::string why,
           std::optional<Date> planned = {}) {
    items_.push_back({uid_of(uuid, work), std::max(planned.value_or(day), today_), std::move(what),
                      day < today_ ? fmt::format("Was due {}. {}", iso_day(day), why) : why, day,
                      why});
  }
  // As the cleaning page tells it.
  void add_work(const DueWork& w) {
    const std::string name = name_of(w.about, status_);
    switch (w.work) {
      case WorkKind::caustic:
        due(w.about.uuid, "clean", w.due, "Clean " + name, why(w), w.put_off_to);
        return;
      case WorkKind::bottle_retest:
        due(w.about.uuid, "retest", w.due, "Retest due: " + name, why(w), w.put_off_to);
        return;
      default:
        due(w.about.uuid, to_word(w.work), w.due, say(w.work, speaker_) + ": " + name, why(w),
            w.put_off_to);
    }
  }
  // Days as dates: the file is read on other days than it was made.
  std::string why(const DueWork& w) const {
    std::string words = say_rule(w.governing, speaker_);
    if (!w.governing.reason.empty() && !w.governing.source.empty()) {
      words += ", because: " + w.governing.reason;
    }
    if (w.last_done) {
      words += ", last done " + iso_day(speaker_.calendar->date_of(*w.last_done));
    }
    if (w.put_off_to) {
      words += fmt::format(", {} {}", say_moved(w), iso_day(*w.put_off_to));
      if (!w.put_off_because.empty()) words += ": " + w.put_off_because;
    }
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z') {
      words.front() = static_cast<char>(words.front() - 'a' + 'A');
    }
    return words;
  }
  // The stamped or certified date stands without a rule too.
  void add_bottle(const BottleStatus& bottle, const std::vector<DueWork>& work) {
    if (!bottle.record.in_use || !bottle.test_due) return;
    const SubjectRef about = subject(bottle.record.bottle);
    const bool by_rule = std::any_of(work.begin(), work.end(), [&](const DueWork& w) {
      return w.work == WorkKind::bottle_retest && w.about == about;
    });
    if (by_rule) return;
    due(bottle.record.bottle.uuid, "retest", *bottle.test_due, "Retest due: " + bottle.record.name,
        "The date certified at its last test decides, or else the one stamped on it.");
  }
  void add_keg(const KegStatus& keg) {
    const Uuid& uuid = keg.record.keg.uuid;
    if (keg.lent_to) add_lent(keg);
    if (!keg.contents) return;
    const std::string beer = listed({keg.record.tag, keg.contents->beer.name});
    if (keg.contents->best_by) {
      due(uuid, "use-by", *keg.contents->best_by, "Use by: " + beer,
          keg.contents->batch_record.name);
    }
    if (const auto hops = hops_in(keg, status_.now, journal_)) add_hops(*hops, beer);
    if (keg.readiness.kind == ReadinessKind::ready_at && keg.readiness.when) {
      items_.push_back({uid_of(uuid, "ready"),
                        speaker_.calendar->date_of(keg.readiness.when->likely), "Ready: " + beer,
                        window_words(*keg.readiness.when)});
    }
  }
  void add_hops(const HopsWait& hops, const std::string& beer) {
    const std::string why = fmt::format("{} in since {}. Two to ten days are usual; taste it.",
                                        hops.hops, iso_day(speaker_.calendar->date_of(hops.since)));
    const auto on = [&](std::chrono::days after) {
      return speaker_.calendar->date_of(hops.since + after);
    };
    if (on(hops_look) >= today_) {
      due(hops.keg.uuid, "hops-look", on(hops_look), "Taste for hops: " + beer, why);
    }
    due(hops.keg.uuid, "hops-out", on(hops_out_by), "Hops out: " + beer, why);
  }
  void add_lent(const KegStatus& keg) {
    std::optional<Date> back;
    for (const Entry* e : journal_.story(subject(keg.record.keg))) {
      if (e->header.happened_at > status_.now) break;
      if (const auto* lent = get_if<Lent>(&e->payload)) back = lent->due_back;
    }
    if (!back) return;
    due(keg.record.keg.uuid, "back", *back, "Keg due back: " + keg.record.tag,
        "Lent to " + present(keg.lent_to));
  }
  std::string window_words(const Window& w) const {
    const std::string from = iso_day(speaker_.calendar->date_of(w.earliest));
    if (!w.latest)
      return fmt::format("Likely; not before {}, perhaps never at these settings", from);
    return fmt::format("Likely; between {} and {}", from,
                       iso_day(speaker_.calendar->date_of(*w.latest)));
  }

  const CellarStatus& status_;
  const Journal& journal_;
  const Speaker& speaker_;
  Date today_;
  std::vector<CalendarItem> items_;
};

struct FreeComponent {
  void operator()(icalcomponent* c) const { icalcomponent_free(c); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

icaltimetype ical_day(Date day) {
  const std::chrono::year_month_day d(day);
  icaltimetype t = icaltime_null_date();
  t.year = static_cast<int>(d.year());
  t.month = static_cast<int>(static_cast<unsigned>(d.month()));
  t.day = static_cast<int>(static_cast<unsigned>(d.day()));
  t.is_date = 1;
  return t;
}

icaltimetype ical_moment(Instant t) {
  return icaltime_from_timet_with_zone(static_cast<std::time_t>(t.time_since_epoch().count()), 0,
                                       icaltimezone_get_utc_timezone());
}

icalcomponent* event_of(const CalendarItem& item, Instant made_at) {
  icalcomponent* event = icalcomponent_new_vevent();
  icalcomponent_add_property(event, icalproperty_new_uid(item.uid.c_str()));
  icalcomponent_add_property(event, icalproperty_new_dtstamp(ical_moment(made_at)));
  icalcomponent_add_property(event, icalproperty_new_dtstart(ical_day(item.day)));
  icalcomponent_add_property(event, icalproperty_new_summary(item.summary.c_str()));
  if (!item.description.empty()) {
    icalcomponent_add_property(event, icalproperty_new_description(item.description.c_str()));
  }
  // The day stays free for other things.
  icalcomponent_add_property(event, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
  return event;
}

}  // namespace

std::vector<CalendarItem> calendar_items(const CellarStatus& status, const Journal& journal,
                                         const Speaker& speaker) {
  return ItemList(status, journal, speaker).all();
}

std::string icalendar_of(const std::vector<CalendarItem>& items, const std::string& name,
                         Instant made_at) {
  const Component calendar(icalcomponent_new_vcalendar());
  icalcomponent_add_property(calendar.get(), icalproperty_new_version("2.0"));
  icalcomponent_add_property(calendar.get(), icalproperty_new_prodid("-//Ullage//Cellar//EN"));
  icalproperty* named = icalproperty_new_x(name.c_str());
  icalproperty_set_x_name(named, "X-WR-CALNAME");
  icalcomponent_add_property(calendar.get(), named);
  for (const CalendarItem& item : items) {
    icalcomponent_add_component(calendar.get(), event_of(item, made_at));
  }
  char* text = icalcomponent_as_ical_string_r(calendar.get());
  std::string file = text == nullptr ? std::string() : std::string(text);
  icalmemory_free_buffer(text);
  return file;
}

}  // namespace ullage::report
