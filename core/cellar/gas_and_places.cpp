// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas bottles by weighing, and places by their last reading.
#include <algorithm>

#include "core/cellar/cellar_status.h"
#include "core/cellar/gas_account.h"
#include "core/cellar/gas_given.h"

namespace ullage::cellar {

namespace {

constexpr double low_share = 0.15;  // of a full bottle
constexpr std::chrono::days stale_after{7};

void weigh(BottleStatus& out, const BottleWeighed& w, const Entry& entry, Lookup& lookup) {
  out.weighed_at = entry.header.happened_at;
  out.gas_left.reset();
  if (out.record.tare) out.gas_left = weighed_gas(out.record, w, entry.header.sequence, lookup);
}

}  // namespace

BottleStatus bottle_status(BottleId id, const Journal& journal, Reliance& relies_on) {
  Lookup lookup(journal);
  BottleStatus out;
  out.record.bottle = id;
  if (auto record = lookup.find(id)) out.record = *record;
  out.test_due = test_due(out.record, lookup);
  std::vector<RegulatorId> ever;
  for (const Entry* entry : lookup.story(subject(id))) {
    if (const auto* w = get_if<BottleWeighed>(&entry->payload)) {
      weigh(out, *w, *entry, lookup);
    } else if (const auto* c = get_if<BottleChanged>(&entry->payload)) {
      ever.push_back(c->regulator);
    } else if (const auto* r = get_if<RegulatorRecord>(&entry->payload)) {
      ever.push_back(r->regulator);
    }
  }
  for (const RegulatorId regulator : ever) {
    const bool here = bottle_behind(regulator, std::nullopt, lookup).bottle == id;
    const bool listed = std::find(out.feeds.begin(), out.feeds.end(), regulator) != out.feeds.end();
    if (here && !listed) out.feeds.push_back(regulator);
  }
  relies_on = lookup.relies_on();
  return out;
}

std::optional<Date> test_due(const BottleRecord& bottle, Lookup& lookup) {
  std::optional<Date> due = bottle.retest_due;
  for (const Entry* e : lookup.story(subject(bottle.bottle))) {
    const auto* work = get_if<WorkDone>(&e->payload);
    if (work && work->work == WorkKind::bottle_retest && work->complete && work->next_due)
      due = work->next_due;
  }
  return due;
}

RetestDue retest_due(std::optional<Date> due, Date today) {
  constexpr std::chrono::days warned{30};
  if (!due || *due >= today + warned) return RetestDue::not_yet;
  return *due < today ? RetestDue::overdue : RetestDue::soon;
}

Message retest_words(const std::string& bottle, Date due, RetestDue when) {
  return message(when == RetestDue::overdue ? MessageKey::adv_bottle_retest_over
                                            : MessageKey::adv_bottle_retest,
                 bottle, due);
}

void advise_bottle(const BottleStatus& bottle, Date today, std::vector<Advice>& out) {
  if (!bottle.record.in_use) return;
  const SubjectRef about = subject(bottle.record.bottle);
  if (bottle.gas_left && bottle.record.content &&
      bottle.gas_left->value() < low_share * *bottle.record.content) {
    Advice a;
    a.severity = Severity::advice;
    a.about = about;
    a.headline = message(MessageKey::adv_bottle_low, bottle.record.name, *bottle.gas_left);
    a.detail = message(MessageKey::adv_bottle_detail);
    a.action = SuggestedTask{"bottle_changed", about, std::nullopt};
    out.push_back(std::move(a));
  }
  if (const RetestDue due = retest_due(bottle.test_due, today); due != RetestDue::not_yet) {
    Advice a;
    a.severity = due == RetestDue::overdue ? Severity::warning : Severity::advice;
    a.about = about;
    a.headline = retest_words(bottle.record.name, *bottle.test_due, due);
    a.detail = message(MessageKey::adv_retest_detail);
    out.push_back(std::move(a));
  }
}

PlaceStatus place_status(const PlaceHistory& history, const CellarStatus& cellar) {
  PlaceStatus out;
  if (history.record) out.record = *history.record;
  if (history.last_read) {
    out.temperature = history.last_reading;
    out.read_at = history.last_read;
  } else if (!history.warmth.empty()) {
    out.temperature = history.warmth.back().temperature.value();
  }
  out.kegs = std::count_if(cellar.kegs.begin(), cellar.kegs.end(), [&](const KegStatus& k) {
    return k.registered_now && k.place && k.place->place == out.record.place;
  });
  return out;
}

void advise_place(const PlaceStatus& place, const PlaceHistory& history, const CellarStatus& cellar,
                  Instant now, std::vector<Advice>& out) {
  // Only where beer stands: an empty room's temperature is nobody's concern.
  const bool holds_beer =
      std::any_of(cellar.kegs.begin(), cellar.kegs.end(), [&](const KegStatus& k) {
        return k.contents && k.place && k.place->place == place.record.place;
      });
  if (!holds_beer) return;
  Advice a;
  a.about = subject(place.record.place);
  a.detail = message(MessageKey::adv_place_detail);
  TemperatureRead prefill;
  prefill.place = place.record.place;
  if (place.temperature) prefill.temperature = *place.temperature;
  a.action = SuggestedTask{"temperature_read", a.about, Payload(prefill)};
  if (!place.temperature) {
    a.severity = Severity::advice;
    a.headline = message(MessageKey::adv_place_unread, place.record.name);
    out.push_back(std::move(a));
  } else if (history.last_read && now - *history.last_read > stale_after) {
    a.severity = Severity::advice;
    a.headline = message(MessageKey::adv_place_stale, place.record.name, *place.temperature,
                         between(*history.last_read, now));
    out.push_back(std::move(a));
  }
}

}  // namespace ullage::cellar
