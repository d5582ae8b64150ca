// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/losses.h"

#include <cmath>

#include "core/cellar/beer_traces.h"
#include "core/cellar/record_at.h"

namespace ullage::cellar {
namespace {

std::optional<std::int64_t> cost_of(const Loss& loss, Instant at, const Journal& journal) {
  if (!loss.batch) return std::nullopt;
  const auto* batch = record_at<BatchRecord>(journal, subject(*loss.batch), at);
  if (!batch) return std::nullopt;
  const auto* beer = record_at<BeerRecord>(journal, subject(batch->beer), at);
  if (!beer || !beer->price_minor_per_litre) return std::nullopt;
  return std::llround(units::in_litres(loss.volume) *
                      static_cast<double>(*beer->price_minor_per_litre));
}

}  // namespace

std::optional<Loss> loss_in(const Entry& e, const Journal& journal) {
  const Instant at = e.header.happened_at;
  Loss loss;
  if (const auto* wasted = get_if<Wasted>(&e.payload)) {
    loss.batch = wasted->batch;
    if (wasted->keg) {
      loss.from = subject(*wasted->keg);
      // The keg may be emptied in the same moment: what it held just before.
      if (!loss.batch) {
        loss.batch = batch_in_keg(journal, *wasted->keg, at - std::chrono::seconds(1));
      }
    }
    loss.volume = wasted->volume;
    loss.reason = wasted->reason;
  } else if (const auto* cleaned = get_if<LineCleaned>(&e.payload);
             cleaned && cleaned->beer_lost && *cleaned->beer_lost > units::litres(0)) {
    loss.from = subject(cleaned->line);
    loss.batch = beers_around(journal, cleaned->line, at).before;
    loss.volume = *cleaned->beer_lost;
    loss.reason = WasteReason::line_cleaning;
  } else {
    return std::nullopt;
  }
  loss.cost_minor = cost_of(loss, at, journal);
  return loss;
}

}  // namespace ullage::cellar
