// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/kegs_to_fill.h"

#include <algorithm>

#include "core/cellar/mass_sum.h"

namespace ullage::cellar {

namespace {

// Volumes of still beer as it comes from the fermenter, and as most beer is served.
constexpr double still_beer = 0.85, still_beer_error = 0.15;
constexpr double served_beer = 2.5, served_beer_error = 0.4;
constexpr double loss_goes_on_for_days = 14;  // where nobody knows how long the work takes

Co2Estimate volumes_taken(double volumes, const char* source, double error) {
  return Co2Estimate(units::volumes_of_co2(volumes)).with({source}, error);
}

bool stands_empty(const KegStatus& k) {
  const bool known_empty = k.phase == Phase::dirty || k.phase == Phase::clean ||
                           k.phase == Phase::sanitised || k.phase == Phase::purged;
  return k.registered_now && k.record.owner == Owner::ours && k.record.in_use && known_empty &&
         !k.contents && !k.lent_to && !k.out_of_service();
}

bool went_into_a_keg(const BatchRecord& batch, const Journal& journal) {
  const auto story = journal.story(subject(batch.batch));
  return std::any_of(story.begin(), story.end(), [](const Entry* e) {
    return holds_alternative<Filled>(e->payload) || holds_alternative<Found>(e->payload) ||
           holds_alternative<Received>(e->payload);
  });
}

}  // namespace

KegsWaiting kegs_waiting(const CellarStatus& cellar, const Journal& journal) {
  KegsWaiting out;
  Volume in_all = units::litres(0);
  for (const KegStatus& k : cellar.kegs) {
    if (!stands_empty(k)) continue;
    out.empty.push_back(k.record.tag);
    in_all += k.record.nominal;
  }
  for (const BatchRecord& b : cellar.batches) {
    if (b.origin == BatchOrigin::brewed_here && !went_into_a_keg(b, journal))
      out.batches.push_back(b.name);
  }
  // Kegs of several sizes take together what so many of their mean take.
  const auto count = static_cast<std::int64_t>(out.empty.size());
  if (count > 0) out.kegs.each = in_all / static_cast<double>(count);
  if (!out.batches.empty()) out.kegs.count = count;
  return out;
}

std::optional<GasForKegs> gas_for(const KegsToFill& kegs, const GasAccount& account) {
  if (kegs.count <= 0 || kegs.each.value() <= 0 || !account.next_keg) return std::nullopt;
  const VolumeEstimate one(kegs.each);
  const physics::SupplyState& supply = *account.next_keg;
  const auto push = physics::gas_to_push(one, supply, {"gas use: method"});
  const auto carbonate = physics::gas_to_carbonate(
      one, volumes_taken(still_beer, "beer to fill: its CO₂", still_beer_error),
      volumes_taken(served_beer, "beer to fill: CO₂ wanted", served_beer_error), supply.co2,
      {"gas use: method"});
  if (!push || !carbonate) return std::nullopt;
  MassSum them, all;
  them.add(*push, static_cast<double>(kegs.count));
  them.add(*carbonate, static_cast<double>(kegs.count));
  GasForKegs out;
  out.for_them = them.sum();
  all.add(out.for_them);
  all.add(account.planned);
  out.in_all = all.sum();
  units::Duration over = units::days(loss_goes_on_for_days);
  if (account.use_per_day && account.use_per_day->value().value() > 0) {
    const auto days = physics::days_left({out.in_all, *account.use_per_day, MassEstimate{}});
    if (days && days->likely) {
      out.work_for = *days;
      over = *days->likely;
    }
  }
  if (!account.gas_now) return out;
  // Over months what is not enough to call a loss would outweigh all the rest.
  const MassEstimate loss = account.alarm && account.loss ? account.loss->per_day : MassEstimate{};
  if (const auto enough = physics::enough_for(*account.gas_now, out.in_all, loss, over))
    out.enough = enough->probability;
  return out;
}

}  // namespace ullage::cellar
