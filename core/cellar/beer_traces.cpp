// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/beer_traces.h"

namespace ullage::cellar {

namespace {

struct PutOn {
  KegId keg;
  Instant at{};
};

std::optional<PutOn> put_on(const Entry& e, LineId line) {
  if (const auto* tapped = get_if<Tapped>(&e.payload); tapped && tapped->line == line) {
    return PutOn{tapped->keg, e.header.happened_at};
  }
  if (const auto* found = get_if<Found>(&e.payload); found && found->line == line) {
    return PutOn{found->keg, e.header.happened_at};
  }
  return std::nullopt;
}

bool stayed_on(const Journal& journal, const PutOn& on, Instant until) {
  for (const Entry* e : journal.story(subject(on.keg))) {
    if (e->header.happened_at <= on.at || e->header.happened_at > until) continue;
    if (holds_alternative<Untapped>(e->payload) || holds_alternative<Emptied>(e->payload) ||
        holds_alternative<Tapped>(e->payload)) {
      return false;
    }
  }
  return true;
}

}  // namespace

std::optional<BatchId> batch_put_in(const Payload& payload) {
  if (const auto* filled = get_if<Filled>(&payload)) return filled->batch;
  if (const auto* received = get_if<Received>(&payload)) return received->batch;
  if (const auto* found = get_if<Found>(&payload)) return found->batch;
  return std::nullopt;
}

std::optional<BatchId> batch_in_keg(const Journal& journal, KegId keg, Instant at) {
  std::optional<BatchId> held;
  for (const Entry* e : journal.story(subject(keg))) {
    if (e->header.happened_at > at) break;
    if (const auto batch = batch_put_in(e->payload)) {
      held = batch;
    } else if (holds_alternative<Emptied>(e->payload) || holds_alternative<Found>(e->payload)) {
      held.reset();
    }
  }
  return held;
}

BeersAround beers_around(const Journal& journal, LineId line, Instant at) {
  std::optional<PutOn> last;
  std::optional<PutOn> next;
  for (const Entry* e : journal.story(subject(line))) {
    const auto on = put_on(*e, line);
    if (!on) continue;
    if (on->at <= at) {
      last = on;
    } else if (!next) {
      next = on;
    }
  }
  BeersAround beers;
  if (last) beers.before = batch_in_keg(journal, last->keg, last->at);
  if (last && stayed_on(journal, *last, at)) {
    beers.after = beers.before;
  } else if (next) {
    beers.after = batch_in_keg(journal, next->keg, next->at);
  }
  return beers;
}

}  // namespace ullage::cellar
