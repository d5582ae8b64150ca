// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_account.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <unordered_map>
#include <utility>

#include "core/cellar/cellar_status.h"
#include "core/cellar/gas_draws.h"
#include "core/cellar/gas_given.h"
#include "core/cellar/gas_sums.h"
#include "core/cellar/mass_sum.h"

namespace ullage::cellar {

namespace {

constexpr double tare_stamp_error = 0.1;      // kg, the stamp's last digit
constexpr double regulator_mass = 1.1;        // kg: 0.7 to 1.5 (common practice)
constexpr double regulator_mass_error = 0.4;  // kg
constexpr double known_regulator_mass_error = 0.05;
constexpr double least_refill = 0.3;  // kg more than before
constexpr std::chrono::hours weighed_together{12};
constexpr int most_chart_points = 16;
constexpr std::size_t most_weighings = 60;  // of an account: the latest

struct Weighing {
  Instant at{};
  MassEstimate gas;
};

// Weighings of one bottle since it was last refilled.
std::vector<Weighing> weighings_of(BottleId id, const BottleRecord& record, Lookup& lookup) {
  std::vector<Weighing> out;
  for (const Entry* e : lookup.story(subject(id))) {
    const auto* w = get_if<BottleWeighed>(&e->payload);
    if (!w || w->bottle != id) continue;
    Weighing next{e->header.happened_at, weighed_gas(record, *w, e->header.sequence, lookup)};
    if (!out.empty()) {
      MassSum more;
      more.add(next.gas);
      more.add(out.back().gas, -1);
      const MassEstimate gained = more.sum();
      if (units::in_kilograms(gained.value()) > std::max(least_refill, gained.half_width()))
        out.clear();
      // Two weighings of one moment: the later entry counts.
      if (!out.empty() && out.back().at == next.at) out.pop_back();
    }
    out.push_back(std::move(next));
  }
  if (out.size() > most_weighings)
    out.erase(out.begin(), out.end() - static_cast<std::ptrdiff_t>(most_weighings));
  return out;
}

// The weighings of a manifold: moments when all its bottles were weighed.
std::vector<Weighing> together(const std::vector<std::vector<Weighing>>& bottles) {
  if (bottles.size() == 1) return bottles.front();
  std::vector<Weighing> out;
  Instant from = Instant::min();
  for (const auto& b : bottles) {
    if (b.empty()) return {};
    from = std::max(from, b.front().at - weighed_together);
  }
  for (const Weighing& lead : bottles.front()) {
    if (lead.at < from) continue;
    MassSum sum;
    sum.add(lead.gas);
    Instant at = lead.at;
    bool all = true;
    for (std::size_t i = 1; i < bottles.size() && all; ++i) {
      const auto near = std::find_if(bottles[i].begin(), bottles[i].end(), [&](const Weighing& w) {
        return w.at - lead.at <= weighed_together && lead.at - w.at <= weighed_together;
      });
      all = near != bottles[i].end();
      if (!all) break;
      sum.add(near->gas);
      at = std::max(at, near->at);
    }
    if (all && (out.empty() || out.back().at < at)) out.push_back({at, sum.sum()});
  }
  return out;
}

// Which bottles were behind a regulator at what time, worked out once.
class Behind {
 public:
  Behind(RegulatorId id, Lookup& lookup) {
    std::set<Instant> changes{Instant::min()};
    std::optional<RegulatorId> at = id;
    for (int depth = 0; at && depth < longest_chain_of_regulators; ++depth) {
      for (const Entry* e : lookup.records(subject(*at))) {
        if (holds_alternative<BottleChanged>(e->payload) ||
            holds_alternative<RegulatorRecord>(e->payload))
          changes.insert(e->header.happened_at);
      }
      const auto record = lookup.find(*at);
      at = record ? record->fed_by : std::nullopt;
    }
    for (const Instant t : changes) spans_.emplace_back(t, bottles_behind(id, t, lookup));
  }
  [[nodiscard]] bool any_of(const std::vector<BottleId>& bottles, Instant at) const {
    auto span = std::upper_bound(spans_.begin(), spans_.end(), at,
                                 [](Instant t, const auto& s) { return t < s.first; });
    if (span == spans_.begin()) return false;
    --span;
    return std::any_of(span->second.begin(), span->second.end(), [&](BottleId b) {
      return std::binary_search(bottles.begin(), bottles.end(), b);
    });
  }

  [[nodiscard]] bool ever(const std::vector<BottleId>& bottles) const {
    return std::any_of(spans_.begin(), spans_.end(),
                       [&](const auto& span) { return any_of(bottles, span.first); });
  }
  [[nodiscard]] std::vector<Instant> changes_between(Instant from, Instant to) const {
    std::vector<Instant> out;
    for (const auto& [since, bottles] : spans_) {
      if (since > from && since < to) out.push_back(since);
    }
    return out;
  }

 private:
  std::vector<std::pair<Instant, std::vector<BottleId>>> spans_;
};

using BehindAll = std::map<RegulatorId, Behind>;

// Kegs that ever had gas from the supply, as far as the journal says: from any
// regulator that ever stood on it.
std::vector<KegId> kegs_on(const GasAccountInput& in, const BehindAll& behind, Lookup& lookup) {
  std::set<KegId> found;
  for (const auto& [regulator, past] : behind) {
    if (!past.ever(in.supply.bottles)) continue;
    for (const Entry* e : lookup.story(subject(regulator))) {
      if (const auto* g = get_if<GasSet>(&e->payload)) found.insert(g->keg);
      if (const auto* f = get_if<Found>(&e->payload)) found.insert(f->keg);
    }
    add_kegs_on_its_lines(regulator, lookup, found);
  }
  if (in.supply.only_one) found.insert(in.all_kegs.begin(), in.all_kegs.end());
  return {found.begin(), found.end()};
}

void tell_branches(GasAccount& out, const GasAccountInput& in, const std::vector<KegId>& kegs,
                   Lookup& lookup) {
  for (const RegulatorId r : in.supply.regulators) {
    if (const auto record = lookup.find(r))
      out.branches.push_back({*record, {}, bottle_behind(r, std::nullopt, lookup).bottle});
  }
  for (const KegId id : kegs) {
    const KegTimeline& keg = in.timeline(id);
    if (!keg.gas.now.on || !keg.gas.now.set) continue;
    const BranchKeg on{id, keg.record.tag, *keg.gas.now.set, keg.gas.now.since.value_or(in.now),
                       keg.hold.kind};
    const auto at = std::find_if(out.branches.begin(), out.branches.end(), [&](const GasBranch& b) {
      return keg.gas.now.regulator && b.regulator.regulator == *keg.gas.now.regulator;
    });
    if (at != out.branches.end()) {
      at->kegs.push_back(on);
    } else if (!keg.gas.now.regulator && in.supply.only_one) {
      out.unassigned.push_back(on);
    }
  }
  const auto by_tag = [](const BranchKeg& a, const BranchKeg& b) {
    return natural_less(a.tag, b.tag);
  };
  for (GasBranch& b : out.branches) std::sort(b.kegs.begin(), b.kegs.end(), by_tag);
  std::sort(out.unassigned.begin(), out.unassigned.end(), by_tag);
}

// Where the account looks up to now: at each weighing, where a regulator changed
// its bottle, so that a draw is never of two bottles, and along the chart: every
// day from the first weighing on, or every second, fourth ... None of them moves
// with the clock.
std::vector<Instant> grid_of(const std::vector<Weighing>& weighings, Instant now,
                             const BehindAll& behind) {
  std::set<Instant> all;
  for (const Weighing& w : weighings) all.insert(w.at);
  const Instant from = weighings.front().at, to = std::max(now, weighings.back().at);
  std::chrono::days step{1};
  while ((to - from) / step > most_chart_points) step *= 2;
  for (Instant t = from + step; t < to; t += step) all.insert(t);
  for (const auto& [regulator, past] : behind) {
    for (const Instant change : past.changes_between(from, to)) all.insert(change);
  }
  return {all.begin(), all.end()};
}

// Everything the kegs should have drawn, summed up by each moment.
GasSums draws_of(const GasAccountInput& in, const std::vector<KegId>& kegs,
                 const std::vector<Instant>& grid, const std::vector<Instant>& moments,
                 const BehindAll& behind, Reliance& relies_on) {
  GasSums sums(moments, in.sources);
  for (const KegId id : kegs) {
    const KegDraws& keg = in.draws(id, grid, moments.back());
    relies_on.add(keg.relies_on());
    for (const auto& part : keg.draws()) {
      for (const PlainDraws::Row& row : part->rows()) {
        bool ours = in.supply.only_one;
        if (row.regulator) {
          const auto at = behind.find(*row.regulator);
          ours = at != behind.end() && at->second.any_of(in.supply.bottles, row.from);
        }
        if (ours) sums.add(*part, row);
      }
    }
  }
  return sums;
}

void keep_account(GasAccount& out, const std::vector<Weighing>& weighings,
                  const std::vector<Instant>& moments, GasSums& sums) {
  std::vector<Instant> asked;
  for (const Weighing& w : weighings) {
    sums.keep_names_of(w.gas);
    asked.push_back(w.at);
  }
  asked.push_back(moments.back());
  sums.finish(asked);
  for (std::size_t i = 0; i < weighings.size(); ++i)
    out.weighings.push_back({weighings[i].at, weighings[i].gas, sums.drawn(i)});
  for (std::size_t i = 0; i < moments.size(); ++i) {
    const GasSums::Left left = sums.left(weighings.front().gas, i);
    out.expected.push_back({moments[i], units::kilograms(left.value - left.half_width),
                            units::kilograms(left.value),
                            units::kilograms(left.value + left.half_width)});
  }
  const double days = units::in_days(between(moments.front(), moments.back()));
  if (days >= 1) {
    MassSum per_day;
    per_day.add(sums.drawn(weighings.size()), 1 / days);
    out.use_per_day = per_day.sum();
  }
}

// Of what the bottles of a price hold when full, taken together.
std::optional<double> price_per_kilogram(const std::vector<BottleRecord>& bottles) {
  double price = 0, kilograms = 0;
  for (const BottleRecord& b : bottles) {
    if (!b.price_minor || !b.content || b.content->value() <= 0) continue;
    price += static_cast<double>(*b.price_minor);
    kilograms += units::in_kilograms(*b.content);
  }
  return kilograms > 0 ? std::optional(price / kilograms) : std::nullopt;
}

void find_loss(GasAccount& out, Mass limit) {
  if (out.weighings.size() < 2) {
    out.cant_tell = message(MessageKey::gas_weighed_once, out.weighings.front().at);
    return;
  }
  std::vector<physics::LedgerPoint> points;
  points.reserve(out.weighings.size());
  const Instant from = out.weighings.front().at;
  for (const AccountWeighing& w : out.weighings)
    points.push_back({between(from, w.at), w.gas, w.expected});
  auto loss = physics::unexplained_loss(points, limit);
  if (!loss) {  // two weighings within the hour
    out.cant_tell = message(MessageKey::gas_weighed_once, out.weighings.front().at);
    return;
  }
  double most = 0;
  for (const physics::LossBetween& b : loss->between) {
    const double days = units::in_days(b.to - b.from);
    const double sure = (b.unexplained.value().value() - b.unexplained.half_width()) / days;
    if (sure <= most) continue;
    most = sure;
    out.loss_from = after(from, b.from);
    out.loss_to = after(from, b.to);
  }
  out.alarm = loss->verdict == physics::LossVerdict::unexplained;
  if (const auto price = price_per_kilogram(out.bottles))
    out.cost_minor_per_30_days = std::llround(loss->per_day.value().value() * 30 * *price);
  out.loss = std::move(*loss);
}

}  // namespace

MassEstimate weighed_gas(const BottleRecord& bottle, const BottleWeighed& w, std::int64_t sequence,
                         Lookup& lookup) {
  MassEstimate left = Readings(lookup).mass(w.gross_mass, w.scale, sequence);
  double off = 0;
  if (bottle.tare) {
    off = units::in_kilograms(*bottle.tare);
    left = std::move(left).with({bottle.name + ": tare"}, tare_stamp_error);
  }
  if (w.with_regulator) {
    const auto r = lookup.find(*w.with_regulator);
    const bool known = r && r->mass;
    off += known ? units::in_kilograms(*r->mass) : regulator_mass;
    left = std::move(left).with({(r ? r->name : std::string("regulator")) + ": mass"},
                                known ? known_regulator_mass_error : regulator_mass_error);
  }
  return MassEstimate(units::kilograms(units::in_kilograms(left.value()) - off),
                      left.contributions());
}

GasAccount gas_account(const GasAccountInput& in, Reliance& relies_on) {
  Lookup lookup(in.journal);
  GasAccount out;
  std::vector<std::vector<Weighing>> by_bottle;
  out.tare_known = true;
  for (const BottleId id : in.supply.bottles) {
    BottleRecord record;
    record.bottle = id;
    if (auto known = lookup.find(id)) record = *known;
    out.name += (out.name.empty() ? "" : " + ") + record.name;
    out.tare_known = out.tare_known && record.tare.has_value();
    by_bottle.push_back(weighings_of(id, record, lookup));
    out.bottles.push_back(std::move(record));
  }
  BehindAll behind;
  for (const RegulatorId r : in.all_regulators) behind.emplace(r, Behind(r, lookup));
  const std::vector<KegId> kegs = kegs_on(in, behind, lookup);
  tell_branches(out, in, kegs, lookup);
  const std::vector<Weighing> weighings = together(by_bottle);
  Reliance drawn;
  if (weighings.empty()) {
    const bool some =
        std::any_of(by_bottle.begin(), by_bottle.end(), [](const auto& w) { return !w.empty(); });
    out.cant_tell = message(some ? MessageKey::gas_weigh_together : MessageKey::gas_never_weighed);
  } else {
    const std::vector<Instant> grid = grid_of(weighings, in.now, behind);
    std::vector<Instant> moments = grid;
    if (in.now > grid.back()) moments.push_back(in.now);
    GasSums sums = draws_of(in, kegs, grid, moments, behind, drawn);
    keep_account(out, weighings, moments, sums);
    const auto cellar = lookup.cellar();
    const Mass limit = cellar && cellar->leak_limit_per_day
                           ? *cellar->leak_limit_per_day
                           : units::grams(physics::loss_limit_grams_per_day);
    find_loss(out, limit);
  }
  tell_bottles(out, in, lookup);
  tell_days_left(out, in, lookup);
  tell_suspects(out, in, lookup);
  relies_on = lookup.relies_on();
  relies_on.add(drawn);
  for (const KegId id : kegs) relies_on.add(in.timeline(id).relies_on);
  return out;
}

void advise_gas(const GasAccount& account, std::vector<Advice>& out) {
  advise_warm_bottles(account, out);
  advise_leaks(account, out);
  if (!account.alarm || !account.loss) return;
  Advice a;
  a.severity = Severity::warning;
  a.about = subject(account.bottles.front().bottle);
  a.headline = message(MessageKey::adv_gas_loss, account.name, account.loss->per_day);
  a.detail = message(MessageKey::adv_gas_loss_detail);
  for (const AccountWeighing& w : account.weighings) {
    a.inputs.push_back({message(MessageKey::input_bottle_weighed, account.name, w.gas), w.at});
  }
  if (!account.suspects.empty()) a.action = account.suspects.front().check;
  out.push_back(std::move(a));
}

}  // namespace ullage::cellar
