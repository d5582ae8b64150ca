// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <map>

#include "core/cellar/losses.h"
#include "core/report/entry_words.h"
#include "core/report/log_rows.h"
#include "core/report/period_logs.h"
#include "core/report/regional.h"

namespace ullage::report {

namespace {

using namespace cellar;

std::string reason_words(WasteReason reason, const Speaker& speaker) {
  if (reason == WasteReason::foam && speaker.words == RegionalWords::british) return "fob";
  return spaced(to_word(reason));
}

TableRow loss_row(const Entry& e, const Loss& loss, const LogSource& from) {
  TableRow row;
  tell_standing(row, e, from);
  const std::string beer =
      loss.batch ? batch_with_beer(*loss.batch, from.names) : std::string("not stated");
  const std::string container = loss.from ? name_of(*loss.from, from.names) : std::string();
  const std::string reason = reason_words(loss.reason, from.speaker);
  row.cells = {
      from.clock(e.header.happened_at),
      beer,
      container,
      from.speaker.printer.print(loss.volume),
      reason,
      loss.cost_minor ? say_money(*loss.cost_minor, from.speaker) : std::string("no price"),
      e.header.by,
      e.header.note,
      std::string()};
  row.data = {datum(stamp_of(e.header.happened_at, from.speaker)),
              loss.batch ? datum(beer) : Datum(),
              datum(container),
              datum(units::in_litres(loss.volume)),
              datum(reason),
              loss.cost_minor ? datum(static_cast<double>(*loss.cost_minor) / 100) : Datum(),
              datum(e.header.by),
              datum(e.header.note)};
  return row;
}

struct LossSum {
  Volume volume = units::litres(0);
  std::int64_t cost_minor = 0;
  std::size_t priced = 0;
  std::size_t without_price = 0;
  void add(const Loss& loss) {
    volume += loss.volume;
    cost_minor += loss.cost_minor.value_or(0);
    priced += loss.cost_minor ? 1U : 0U;
    without_price += loss.cost_minor ? 0U : 1U;
  }
  [[nodiscard]] std::string words(const std::string& name, const Speaker& speaker) const {
    std::string text = fmt::format("{}: {}", name, speaker.printer.print(volume));
    if (priced == 0) return text + ", no price known";
    text += ", cost " + say_money(cost_minor, speaker);
    if (without_price > 0) text += fmt::format(" and {} without a price", without_price);
    return text;
  }
};

}  // namespace

TableSheet wastage_book(const Journal& journal, const CellarStatus& now, const Period& period,
                        const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  TableSheet sheet = sheet_titled("Wastage book", now, speaker, by);
  sheet.period = say_period(period);
  sheet.columns = {{"When", 78},   {"Beer, batch", 122}, {"From", 56},
                   {"Volume", 66}, {"Reason", 76},       {"Cost", 50},
                   {"By", 28},     {"Remarks", 120},     {"Countersign", 66, true}};
  sheet.keys = {"at", "beer", "from", "volume_l", "reason", "cost", "by", "remarks"};
  sheet.when_empty = "No beer was logged as lost in this period.";
  std::map<std::string, LossSum> by_reason;
  LossSum all;
  for (const Entry* e : entries_within(period, from, [](const Payload& p) {
         return holds_alternative<Wasted>(p) || holds_alternative<LineCleaned>(p);
       })) {
    const std::optional<Loss> loss = loss_in(*e, journal);
    if (!loss) continue;
    sheet.rows.push_back(loss_row(*e, *loss, from));
    if (sheet.rows.back().struck) continue;
    by_reason[reason_words(loss->reason, speaker)].add(*loss);
    all.add(*loss);
  }
  SheetBox sums{"Lost in this period", {}};
  for (const auto& [reason, sum] : by_reason) sums.lines.push_back(sum.words(reason, speaker));
  sums.lines.push_back(all.words("All", speaker));
  sheet.boxes = {sums};
  sheet.signatures = {"Kept by", "Countersigned by"};
  sheet.footnote = regional(
      "Cost is the beer’s price per litre when it was lost. Crossed-through entries were struck or "
      "corrected and are in no sum.",
      speaker.words);
  return sheet;
}

}  // namespace ullage::report
