// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/recall_list.h"

#include <fmt/format.h>

#include "core/cellar/beer_traces.h"
#include "core/report/log_rows.h"

namespace ullage::report {

namespace {

using namespace cellar;

// One keg's time with the batch.
struct Held {
  KegId keg;
  Instant from{};
  std::optional<Instant> to;
  std::optional<Volume> volume;
  std::string supplier;
  std::vector<std::string> served;  // "Line 1 2026-11-20 16:30"
};

std::optional<Volume> volume_put_in(const Payload& payload) {
  if (const auto* filled = get_if<Filled>(&payload)) return filled->volume;
  if (const auto* received = get_if<Received>(&payload)) return received->volume;
  if (const auto* found = get_if<Found>(&payload)) return found->volume;
  return std::nullopt;
}

// Found with the same batch again is stock-taking, not a new filling.
void trace_keg(KegId keg, BatchId batch, const LogSource& from, std::vector<Held>& into) {
  std::optional<Held> open;
  const auto close = [&](Instant at) {
    if (!open) return;
    open->to = at;
    into.push_back(std::move(*open));
    open.reset();
  };
  for (const Entry* e : from.journal.story(subject(keg))) {
    const Instant at = e->header.happened_at;
    const auto put_in = batch_put_in(e->payload);
    if (put_in == batch && put_in) {
      if (open && holds_alternative<Found>(e->payload)) continue;
      close(at);
      open = Held{keg, at, {}, volume_put_in(e->payload), {}, {}};
      if (const auto* r = get_if<Received>(&e->payload)) open->supplier = r->supplier;
    } else if (put_in || holds_alternative<Emptied>(e->payload) ||
               holds_alternative<Found>(e->payload)) {
      close(at);
    } else if (const auto* tapped = get_if<Tapped>(&e->payload); tapped && open) {
      open->served.push_back(
          fmt::format("{}, {}", name_of(subject(tapped->line), from.names), from.clock(at)));
    }
  }
  if (open) into.push_back(std::move(*open));
}

std::string whereabouts(const KegStatus* keg) {
  if (keg == nullptr) return "not known";
  if (keg->lent_to) return "LENT: " + *keg->lent_to;
  if (!keg->record.in_use) return "no longer ours";
  std::string words = keg->place ? keg->place->name : std::string("place not known");
  if (keg->line) words += "\non " + keg->line->name;
  return words;
}

TableRow held_row(const Held& held, const LogSource& from) {
  const KegStatus* keg = from.names.find(held.keg);
  const std::string tag = name_of(subject(held.keg), from.names);
  std::string served;
  for (const std::string& line : held.served) served += (served.empty() ? "" : "\n") + line;
  TableRow row;
  row.marked = !held.to;
  const std::string state = held.to ? std::string("holds it no more")
                            : keg   ? say(keg->state, from.speaker)
                                    : "";
  row.cells = {tag,
               stacked({from.clock(held.from), held.supplier}),
               held.to ? from.clock(*held.to) : std::string("STILL IN IT"),
               from.print(held.volume),
               served.empty() ? std::string("not served") : served,
               whereabouts(keg),
               state,
               std::string()};
  row.data = {datum(tag),
              datum(stamp_of(held.from, from.speaker)),
              held.to ? datum(stamp_of(*held.to, from.speaker)) : Datum(),
              Datum(!held.to),
              datum(held.volume, [](Volume v) { return units::in_litres(v); }),
              datum(served),
              datum(whereabouts(keg)),
              datum(held.supplier)};
  return row;
}

SheetBox wasted_box(BatchId batch, const LogSource& from) {
  SheetBox box{"Poured away of this batch", {}};
  for (const Entry* e : from.journal.story()) {
    const auto* wasted = get_if<Wasted>(&e->payload);
    if (!wasted) continue;
    std::optional<BatchId> of = wasted->batch;
    if (!of && wasted->keg) {
      of =
          batch_in_keg(from.journal, *wasted->keg, e->header.happened_at - std::chrono::seconds(1));
    }
    if (of != batch) continue;
    box.lines.push_back(
        listed({from.clock(e->header.happened_at), from.speaker.printer.print(wasted->volume),
                e->header.by, e->header.note}));
  }
  if (box.lines.empty()) box.lines.emplace_back("nothing");
  return box;
}

}  // namespace

std::vector<RecalledBatch> recalled_batches(const Journal& journal) {
  std::vector<RecalledBatch> recalls;
  for (const Entry* e : journal.story()) {
    const auto* recalled = get_if<BatchRecalled>(&e->payload);
    if (!recalled) continue;
    std::erase_if(recalls, [&](const RecalledBatch& r) { return r.batch == recalled->batch; });
    recalls.push_back({recalled->batch, recalled->reason, e->header.happened_at});
  }
  return recalls;
}

TableSheet recall_list(const Journal& journal, const CellarStatus& now, BatchId batch,
                       const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  TableSheet sheet = sheet_titled("Recall list", now, speaker, by);
  sheet.period = batch_with_beer(batch, now);
  for (const RecalledBatch& recall : recalled_batches(journal)) {
    if (recall.batch != batch) continue;
    sheet.period += fmt::format(": recalled {}", from.clock(recall.at));
    if (!recall.reason.empty()) sheet.period += ", " + recall.reason;
  }
  sheet.columns = {{"Keg", 52},        {"In it from", 84}, {"To", 84},  {"Filled", 54},
                   {"Served on", 136}, {"Where now", 90},  {"Now", 90}, {"Secured by", 64, true}};
  sheet.keys = {"keg",      "from",      "to",        "still_in_it",
                "filled_l", "served_on", "where_now", "supplier"};
  sheet.when_empty = "No keg is known to have held this batch.";
  std::vector<Held> all;
  for (const KegStatus& keg : now.kegs) trace_keg(keg.record.keg, batch, from, all);
  std::stable_partition(all.begin(), all.end(), [](const Held& held) { return !held.to; });
  for (const Held& held : all) sheet.rows.push_back(held_row(held, from));
  sheet.boxes = {wasted_box(batch, from)};
  sheet.signatures = {"Secured by", "Countersigned by"};
  sheet.footnote = "A bar at the left marks a keg that still holds this batch.";
  return sheet;
}

}  // namespace ullage::report
