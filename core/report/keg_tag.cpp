// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <array>

#include "core/cellar/beer_traces.h"
#include "core/cellar/due_work.h"
#include "core/physics/density.h"
#include "core/report/keg_code.h"
#include "core/report/log_rows.h"
#include "core/report/tags.h"

namespace ullage::report {

namespace {

using namespace cellar;

// Of a beer whose final gravity nobody stated: most finish between 1.005 and
// 1.018, which moves the weight of the beer by 0.7 % at most.
constexpr double usual_final_gravity = 1.010;
constexpr double gravity_share = 0.007;

std::string coupled(const std::string& a, const std::string& b) {
  return a.empty() ? b : b.empty() ? a : a + ", " + b;
}

std::string full_weight(const KegStatus& keg, const Speaker& speaker) {
  if (!keg.record.tare) return {};
  auto gravity = units::specific_gravity(usual_final_gravity);
  if (keg.contents && keg.contents->batch_record.final_gravity) {
    gravity = *keg.contents->batch_record.final_gravity;
  }
  const auto density = physics::beer_density(gravity, units::celsius(4));
  if (!density) return {};
  const units::Mass beer = *density * keg.record.nominal;
  const units::Estimate<units::Mass> full =
      units::Estimate<units::Mass>(*keg.record.tare + beer)
          .with_error({"tare"}, keg.record.tare_half_width.value_or(units::kilograms(0)))
          .with_error({"gravity"}, gravity_share * beer);
  return "~" + speaker.printer.print(full);
}

std::string target_words(const KegStatus& keg, const Speaker& speaker) {
  if (!keg.co2.target_low || !keg.co2.target_high) return {};
  return speaker.printer.print_range(*keg.co2.target_low, *keg.co2.target_high);
}

// At the temperature that it was worked out for: as its place was read last, else as set.
std::string set_words(const KegStatus& keg, const CellarStatus& names, const Speaker& speaker) {
  const std::string pressure = say_should_be(keg, speaker);
  std::string at;
  const PlaceStatus* place = keg.place ? names.find(keg.place->place) : nullptr;
  if (place && place->temperature) at = speaker.printer.print(*place->temperature);
  return pressure.empty() || at.empty() ? pressure : pressure + " at " + at;
}

std::vector<TagFact> front_facts(const KegStatus& keg, const CellarStatus& names,
                                 const Speaker& speaker) {
  std::string filled;
  if (keg.contents) {
    filled = iso_day(speaker.calendar->date_of(keg.contents->since));
    if (keg.contents->found) {
      filled += " (found)";
    } else if (!keg.contents->filled_by_us) {
      filled += " (came in)";
    }
  }
  return {{"Batch", keg.contents ? keg.contents->batch_record.name : std::string()},
          {"Filled", filled},
          {"Empty weight", keg.record.tare ? speaker.printer.print(*keg.record.tare) : ""},
          {"Full weight", full_weight(keg, speaker)},
          {"Max. pressure",
           keg.record.rated_pressure ? speaker.printer.print(*keg.record.rated_pressure) : ""},
          {"CO₂ target", target_words(keg, speaker)},
          {"Set pressure", set_words(keg, names, speaker)},
          {speaker.words == RegionalWords::us ? "Tapped on" : "Put on", ""},
          {"Line", ""}};
}

// The last days on which something was done to the keg, told from its story.
struct BackOfTag {
  std::string seals, hold, last_beer;
};
BackOfTag back_of(const KegStatus& keg, const Journal& journal, const CellarStatus& names,
                  const Speaker& speaker) {
  BackOfTag back;
  std::optional<BatchId> now;
  std::optional<BatchId> before;
  for (const Entry* e : journal.story(subject(keg.record.keg))) {
    if (e->header.happened_at > speaker.now) break;
    const std::string day = iso_day(speaker.calendar->date_of(e->header.happened_at));
    if (renews_seals(e->payload)) {
      back.seals = day;
    } else if (holds_alternative<HoldReading>(e->payload)) {
      back.hold = day;
    } else if (const auto batch = batch_put_in(e->payload)) {
      if (now && *now != *batch) before = now;
      now = batch;
    }
  }
  if (keg.hold_result && !back.hold.empty()) {
    back.hold += ": " + say(*keg.hold_result, speaker);
  }
  const std::optional<BatchId> last = keg.contents ? before : now;
  if (last) back.last_beer = batch_with_beer(*last, names);
  return back;
}

std::string owned_words(const KegRecord& record, const Speaker& speaker) {
  std::string words = record.owner == Owner::ours     ? "ours"
                      : record.owner == Owner::rented ? "rented"
                                                      : "the supplier’s";
  if (record.deposit_minor) words += ", deposit " + say_money(*record.deposit_minor, speaker);
  return words;
}

std::vector<std::string> state_boxes(const Speaker& speaker) {
  const bool us = speaker.words == RegionalWords::us;
  return {"CLEAN",       us ? "SANITIZED" : "SANITISED",
          "PURGED",      "FILLED",
          "CARBONATING", "READY",
          "ON TAP",      "EMPTY",
          "DO NOT USE"};
}

}  // namespace

std::string use_by_words(Date date) {
  static constexpr auto months = std::to_array<std::string_view>(
      {"JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"});
  const std::chrono::year_month_day d(date);
  return fmt::format("{} {} {}", static_cast<unsigned>(d.day()),
                     months.at(static_cast<unsigned>(d.month()) - 1), static_cast<int>(d.year()));
}

KegTag keg_tag(const KegStatus& keg, const Journal& journal, const CellarStatus& names,
               const Speaker& speaker) {
  KegTag tag;
  tag.tag = keg.record.tag;
  tag.code = keg_code(keg.record.tag);
  if (keg.contents) {
    tag.beer = keg.contents->beer.name;
    tag.kind = coupled(keg.contents->beer.style,
                       keg.contents->abv ? speaker.printer.print(*keg.contents->abv) + " ABV" : "");
    tag.allergens = keg.contents->beer.allergens;
    if (keg.contents->best_by) tag.use_by = use_by_words(*keg.contents->best_by);
  }
  tag.facts = front_facts(keg, names, speaker);
  tag.states = state_boxes(speaker);
  const BackOfTag back = back_of(keg, journal, names, speaker);
  tag.back = {{"Keg", say(keg.record.keg_kind, speaker)},
              {"Seals renewed", back.seals},
              {"Last pressure test", back.hold},
              {"Last beer in it", back.last_beer},
              {"Owner", owned_words(keg.record, speaker)},
              {"Remarks", ""},
              {"", ""}};
  tag.caution = "Under pressure: vent before opening.";
  return tag;
}

std::vector<KegTag> keg_tags(const Journal& journal, const CellarStatus& status,
                             const Speaker& speaker) {
  std::vector<KegTag> tags;
  for (const KegStatus& keg : status.kegs) {
    if (keg.record.in_use && !keg.lent_to) tags.push_back(keg_tag(keg, journal, status, speaker));
  }
  return tags;
}

namespace {

std::string fact_lines(const std::vector<TagFact>& facts) {
  std::string out;
  for (const TagFact& fact : facts) {
    out += fmt::format("  {:<26}{}\n", fact.label,
                       fact.value.empty() ? std::string("____________") : fact.value);
  }
  return out;
}

}  // namespace

std::string text_of(const KegTag& tag) {
  std::string out = fmt::format("== {} ==  [{}]\n", tag.tag, tag.code);
  out += fmt::format("  {}\n", tag.beer.empty() ? "____________" : tag.beer);
  if (!tag.kind.empty()) out += fmt::format("  {}\n", tag.kind);
  if (!tag.allergens.empty()) out += fmt::format("  contains {}\n", tag.allergens);
  out += fmt::format("  USE BY {}\n", tag.use_by.empty() ? "____________" : tag.use_by);
  out += fact_lines(tag.facts) + " ";
  for (const std::string& state : tag.states) out += " [ ] " + state;
  return out + "\n  " + tag.caution + "\n  -- back --\n" + fact_lines(tag.back);
}

std::string text_of(const WarningTag& tag) {
  return fmt::format("## {} ##\n  {}\n  {}\n{}  {}\n", tag.title, tag.subtitle, tag.subject,
                     fact_lines(tag.facts), tag.caution);
}

}  // namespace ullage::report
