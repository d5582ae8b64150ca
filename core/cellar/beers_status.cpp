// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/beers_status.h"

#include <algorithm>
#include <map>

#include "core/cellar/losses.h"
#include "core/physics/keg_cooling.h"

namespace ullage::cellar {
namespace {

constexpr double near_its_place_kelvin = 1.0;
constexpr double worth_waiting_kelvin = 2.0;

const BeerRecord* beer_of(const CellarStatus& cellar, BeerId id) {
  const auto at = std::find_if(cellar.beers.begin(), cellar.beers.end(),
                               [&](const BeerRecord& b) { return b.beer == id; });
  return at == cellar.beers.end() ? nullptr : &*at;
}

// The last entry of a kind in a keg's story, and when.
template <class P>
const Entry* last_of(KegId keg, const Journal& journal) {
  const Entry* found = nullptr;
  for (const Entry* e : journal.story(subject(keg))) {
    if (get_if<P>(&e->payload) != nullptr) found = e;
  }
  return found;
}

BatchInKeg in_keg(const KegStatus& keg, Instant now, const BeersPast& past) {
  BatchInKeg out;
  out.keg = keg.record.keg;
  out.tag = keg.record.tag;
  if (keg.place) out.place = keg.place->name;
  out.left = keg.level.left;
  const auto tapped = past.tapped.find(keg.record.keg);
  out.fresh = fresh_clock(
      keg, tapped != past.tapped.end() ? std::optional(tapped->second) : std::nullopt, now);
  out.phase = keg.phase;
  if (keg.line) out.tap = keg.line->tap;
  out.held_back = keg.quarantined.has_value();
  return out;
}

VolumeEstimate sum_of(const VolumeEstimate& a, const VolumeEstimate& b) {
  return units::propagate([](Volume x, Volume y) { return Volume(x + y); }, a, b);
}

std::vector<BatchStatus> batches_of(const CellarStatus& cellar, const BeersPast& past) {
  std::vector<BatchStatus> all;
  for (const BatchRecord& record : cellar.batches) {
    BatchStatus b;
    b.record = record;
    if (const BeerRecord* beer = beer_of(cellar, record.beer)) b.beer = *beer;
    b.best_by = record.best_by;
    if (const auto known = past.batches.find(record.batch); known != past.batches.end()) {
      b.recall = known->second.recall;
      b.kegs_before = known->second.kegs_before;
    }
    for (const KegStatus& keg : cellar.kegs) {
      if (!keg.contents || keg.contents->batch != record.batch) continue;
      b.kegs.push_back(in_keg(keg, cellar.now, past));
      const auto& best_by = keg.contents->best_by;
      if (best_by && (!b.best_by || *best_by < *b.best_by)) b.best_by = best_by;
      if (!keg.level.left) {
        b.some_cant_tell = true;
      } else {
        b.left = b.left ? sum_of(*b.left, *keg.level.left) : *keg.level.left;
      }
    }
    all.push_back(std::move(b));
  }
  std::stable_sort(all.begin(), all.end(), [](const BatchStatus& x, const BatchStatus& y) {
    if (x.gone() != y.gone()) return y.gone();
    if (x.best_by.has_value() != y.best_by.has_value()) return x.best_by.has_value();
    return x.best_by && *x.best_by < *y.best_by;
  });
  return all;
}

std::vector<TapNext> tap_next_of(const CellarStatus& cellar) {
  std::vector<TapNext> all;
  for (const KegStatus& keg : cellar.kegs) {
    if (keg.use_next_rank && keg.phase != Phase::on_tap) {
      all.push_back({keg.record.keg, *keg.use_next_rank});
    }
  }
  std::sort(all.begin(), all.end(),
            [](const TapNext& a, const TapNext& b) { return a.rank < b.rank; });
  return all;
}

std::optional<CoolingKeg> cooling_of(const KegStatus& keg, const CellarStatus& cellar) {
  if (!keg.contents || !keg.beer_temperature || !keg.place) return std::nullopt;
  const PlaceStatus* place = cellar.find(keg.place->place);
  if (place == nullptr || !place->temperature) return std::nullopt;
  const Temperature beer = keg.beer_temperature->value();
  const double above = units::in_kelvin(beer) - units::in_kelvin(*place->temperature);
  if (above < worth_waiting_kelvin) return std::nullopt;
  const Temperature to =
      units::kelvin(units::in_kelvin(*place->temperature) + near_its_place_kelvin);
  const auto pace = physics::cooling_time_constant(keg.record.brimful, {"cooling rate"});
  if (!pace) return std::nullopt;
  const auto window = physics::time_to_temperature(beer, *place->temperature, to, *pace);
  if (!window || !*window) return std::nullopt;
  const physics::CoolingWindow& w = **window;
  return CoolingKeg{keg.record.keg, *keg.beer_temperature, to,
                    Window{after(cellar.now, w.earliest), after(cellar.now, w.likely),
                           after(cellar.now, w.latest)}};
}

std::vector<WasteLine> wasted_of(const BeersPast& past, Instant since, Instant now) {
  std::map<WasteReason, WasteLine> by_reason;
  for (const WasteFact& fact : past.wasted) {
    if (fact.at < since || fact.at > now) continue;
    WasteLine& line = by_reason[fact.reason];
    line.reason = fact.reason;
    line.volume += fact.volume;
    ++line.times;
    if (fact.cost_minor) {
      line.cost_minor = line.cost_minor.value_or(0) + *fact.cost_minor;
    } else {
      line.some_without_price = true;
    }
  }
  std::vector<WasteLine> all;
  all.reserve(by_reason.size());
  for (auto& [reason, line] : by_reason) all.push_back(line);
  std::stable_sort(all.begin(), all.end(),
                   [](const WasteLine& a, const WasteLine& b) { return b.volume < a.volume; });
  return all;
}

std::optional<KegAway> away_of(const KegStatus& keg, const CellarStatus& cellar,
                               const Journal& journal, const LocalCalendar& calendar) {
  if (!keg.record.in_use || (!keg.lent_to && keg.record.owner == Owner::ours)) return std::nullopt;
  KegAway away;
  away.keg = keg.record.keg;
  away.owner = keg.record.owner;
  away.lent_to = keg.lent_to;
  away.deposit_minor = keg.record.deposit_minor;
  if (keg.lent_to) {
    const Entry* lent = last_of<Lent>(keg.record.keg, journal);
    if (lent == nullptr) return std::nullopt;
    const auto& payload = get<Lent>(lent->payload);
    away.since = lent->header.happened_at;
    away.due_back = payload.due_back;
    if (payload.deposit_minor) away.deposit_minor = payload.deposit_minor;
  } else {
    // Not ours: since it last came in, else since it was registered.
    const Entry* came = last_of<Received>(keg.record.keg, journal);
    const auto story = journal.story(subject(keg.record.keg));
    if (came == nullptr && story.empty()) return std::nullopt;
    away.since = (came != nullptr ? came : story.front())->header.happened_at;
  }
  const Date today = calendar.date_of(cellar.now);
  away.days = (today - calendar.date_of(away.since)).count();
  away.overdue = away.due_back && *away.due_back < today;
  return away;
}

}  // namespace

std::optional<HopsWait> hops_in(const KegStatus& keg, Instant now, const Journal& journal) {
  if (!keg.contents) return std::nullopt;
  const Entry* in = last_of<HopsIn>(keg.record.keg, journal);
  if (in == nullptr) return std::nullopt;
  const Entry* out = last_of<HopsOut>(keg.record.keg, journal);
  const Entry* cleaned = last_of<Cleaned>(keg.record.keg, journal);
  const Entry* emptied = last_of<Emptied>(keg.record.keg, journal);
  const Instant since = in->header.happened_at;
  for (const Entry* end : {out, cleaned, emptied}) {
    if (end != nullptr && end->header.happened_at >= since) return std::nullopt;
  }
  HopsWait h;
  h.keg = keg.record.keg;
  h.hops = get<HopsIn>(in->payload).hops;
  h.since = since;
  h.look_at = now < since + hops_look ? since + hops_look : since + hops_out_by;
  h.overdue = now > since + hops_out_by;
  return h;
}

BeersPast beers_past(const CellarStatus& cellar, const Journal& journal) {
  BeersPast past;
  past.revision = journal.revision();
  for (const BatchRecord& record : cellar.batches) {
    const auto stints = stints_of(record.batch, journal);
    const auto over = std::count_if(stints.begin(), stints.end(),
                                    [](const Stint& s) { return !s.still_there(); });
    past.batches[record.batch] = {static_cast<std::size_t>(over), recall_of(record.batch, journal)};
  }
  const PlaceLookup places = places_of(journal);
  for (const KegStatus& keg : cellar.kegs) {
    if (!keg.contents) continue;
    if (auto tapped = tapped_past(keg.record.keg, journal, places)) {
      past.tapped[keg.record.keg] = std::move(*tapped);
    }
  }
  for (const Entry& e : journal.entries()) {
    if (journal.standing(e.header.id) != Standing::in_force) continue;
    if (const auto loss = loss_in(e, journal)) {
      past.wasted.push_back({e.header.happened_at, loss->reason, loss->volume, loss->cost_minor});
    }
  }
  return past;
}

BeersStatus beers_status(const CellarStatus& cellar, const Journal& journal,
                         const LocalCalendar& calendar, Instant wasted_since,
                         const BeersPast& past) {
  BeersStatus out;
  out.batches = batches_of(cellar, past);
  out.tap_next = tap_next_of(cellar);
  for (const KegStatus& keg : cellar.kegs) {
    if (auto cooling = cooling_of(keg, cellar)) out.cooling.push_back(std::move(*cooling));
    if (auto hops = hops_in(keg, cellar.now, journal)) out.hops.push_back(std::move(*hops));
    if (auto away = away_of(keg, cellar, journal, calendar)) out.away.push_back(std::move(*away));
  }
  std::stable_sort(
      out.cooling.begin(), out.cooling.end(),
      [](const CoolingKeg& a, const CoolingKeg& b) { return a.there.likely < b.there.likely; });
  std::stable_sort(out.away.begin(), out.away.end(),
                   [](const KegAway& a, const KegAway& b) { return a.days > b.days; });
  out.wasted = wasted_of(past, wasted_since, cellar.now);
  return out;
}

}  // namespace ullage::cellar
