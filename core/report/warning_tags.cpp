// SPDX-License-Identifier: GPL-3.0-or-later
#include <set>

#include "core/cellar/hold_test.h"
#include "core/cellar/suggest.h"
#include "core/report/log_rows.h"
#include "core/report/recall_list.h"
#include "core/report/tags.h"

namespace ullage::report {

namespace {

using namespace cellar;

std::string holds(const KegStatus& keg) {
  if (!keg.contents) return {};
  return listed({keg.contents->beer.name, keg.contents->batch_record.name});
}

WarningTag keg_warning(Warning warning, const KegStatus& keg) {
  WarningTag tag;
  tag.warning = warning;
  tag.about = subject(keg.record.keg);
  tag.subject = keg.record.tag;
  return tag;
}

// That a keg leaks is known since the last reading of its test.
std::string known_since(const KegStatus& keg, const Speaker& speaker) {
  if (!keg.hold_study || keg.hold_study->test.readings.empty()) return {};
  return say_clock(keg.hold_study->time_of(keg.hold_study->test.readings.back().at), speaker);
}

std::string agent_in(const LineLock& lock) {
  return lock.agent.empty() ? plain_word(lock.agent_kind) : lock.agent;
}

}  // namespace

WarningTag do_not_serve_tag(const LineStatus& line, const Speaker& speaker) {
  WarningTag tag;
  tag.warning = Warning::do_not_serve;
  tag.about = subject(line.record.line);
  tag.title = "DO NOT SERVE";
  const std::string word = speaker.words == RegionalWords::us ? "faucet " : "tap ";
  tag.subject =
      listed({line.record.name, line.record.tap.empty() ? std::string() : word + line.record.tap});
  if (line.keg_lock && !line.lock) {
    tag.subtitle = "The keg on it is held back";
    tag.facts = {{"Keg", line.keg_lock->tag},
                 {"Why", say(line.keg_lock->why, speaker)},
                 {"Printed", say_clock(speaker.now, speaker)},
                 {"Keg taken off or cleared by, when", ""}};
    tag.caution =
        "Take this tag off only when another keg is on the line or this one has been cleared.";
    return tag;
  }
  tag.subtitle = "Line being cleaned";
  tag.facts = {{"Started", line.lock ? say_clock(line.lock->since, speaker) : std::string()},
               {"Agent", line.lock ? agent_in(*line.lock) : std::string()},
               {"Ask", line.lock ? line.lock->by : std::string()},
               {"Released by, check", ""},
               {"Countersigned", ""}};
  if (line.keg_lock)
    tag.facts.insert(tag.facts.begin() + 3,
                     {"Keg", line.keg_lock->tag + ": " + say(line.keg_lock->why, speaker)});
  tag.caution =
      "Cleaner burns mouth and throat. Take this tag off only after a flush check has passed, "
      "never by taste. Local rules and the agent’s label come first.";
  return tag;
}

WarningTag vent_first_tag(const KegStatus& keg, const Speaker& speaker) {
  WarningTag tag = keg_warning(Warning::vent_first, keg);
  tag.title = "UNDER PRESSURE";
  tag.subtitle = "Vent first";
  tag.facts = {
      {"Holds", holds(keg)},
      {"Last set to", keg.gas.set ? speaker.printer.print(*keg.gas.set) : std::string()},
      {"Rated", keg.record.rated_pressure ? speaker.printer.print(*keg.record.rated_pressure) : ""},
      {"Vented by, when", ""}};
  tag.caution =
      "Take the gas off and let all pressure out before opening. Keep your face away from lid and "
      "coupler. Never pull a spear from a keg under pressure: that is work for a trained person.";
  return tag;
}

WarningTag out_of_service_tag(const KegStatus& keg, const Speaker& speaker) {
  WarningTag tag = keg_warning(Warning::out_of_service, keg);
  tag.title = "OUT OF SERVICE";
  std::string why;
  std::string since;
  if (keg.quarantined) {
    tag.subtitle = "Do not serve, do not fill";
    why = say(*keg.quarantined, speaker);
    if (keg.quarantined_since) since = say_clock(*keg.quarantined_since, speaker);
  } else if (keg.hold_failed && keg.hold_result) {
    tag.subtitle = "Leaking: do not fill";
    why = say(*keg.hold_result, speaker);
    since = known_since(keg, speaker);
  } else if (keg.leaks) {
    tag.subtitle = "Leaking: do not serve, do not fill";
    why = say(*keg.leaks, speaker);
  } else {
    tag.subtitle = "Do not use";
  }
  tag.facts = {{"Why", why}, {"Since", since}, {"Holds", holds(keg)}, {"Put right by, when", ""}};
  tag.caution = "May be under pressure: vent before opening.";
  return tag;
}

WarningTag recalled_tag(const KegStatus& keg, const std::string& reason, const Speaker& speaker) {
  WarningTag tag = keg_warning(Warning::recalled, keg);
  tag.title = "RECALLED";
  tag.subtitle = "Hold: do not serve, do not pour away";
  tag.facts = {{"Holds", holds(keg)},
               {"Why", reason},
               {"Printed", say_clock(speaker.now, speaker)},
               {"Released or collected by", ""}};
  tag.caution = "Keep apart from other stock until the recall is closed.";
  return tag;
}

WarningTag gas_tag(const BottleStatus& bottle, const Speaker& speaker) {
  WarningTag tag;
  tag.warning = Warning::gas;
  tag.about = subject(bottle.record.bottle);
  tag.title = "GAS";
  tag.subtitle = say_gas(bottle.record.co2, speaker);
  tag.subject = bottle.record.name;
  const auto mass = [&](const std::optional<Mass>& m) {
    return m ? speaker.printer.print(*m) : std::string();
  };
  tag.facts = {{"Retest due", bottle.test_due ? iso_day(*bottle.test_due) : ""},
               {"Tare", mass(bottle.record.tare)},
               {"Holds when full", mass(bottle.record.content)},
               {"Put on, by", ""},
               {"Leak test, washer", ""}};
  tag.caution =
      "Keep upright and chained. Gas can suffocate without warning: air the room, heed the alarm, "
      "never go in to rescue alone.";
  return tag;
}

namespace {

// Somebody will open it next, and nobody has let its pressure out.
bool to_be_vented(const KegStatus& keg) {
  return keg.gas.unvented && !keg.lent_to && (!keg.contents || keg.out_of_service());
}

std::optional<WarningTag> keg_warning_tag(Warning kind, const KegStatus& keg,
                                          const Journal& journal, const Speaker& speaker) {
  if (kind == Warning::vent_first) return vent_first_tag(keg, speaker);
  if (kind == Warning::out_of_service) return out_of_service_tag(keg, speaker);
  if (kind != Warning::recalled) return std::nullopt;
  std::string reason;
  for (const RecalledBatch& recall : recalled_batches(journal)) {
    if (keg.contents && keg.contents->batch == recall.batch) reason = recall.reason;
  }
  return recalled_tag(keg, reason, speaker);
}

}  // namespace

std::optional<WarningTag> warning_tag(Warning kind, SubjectRef about, const Journal& journal,
                                      const CellarStatus& status, const Speaker& speaker) {
  if (about.kind == SubjectKind::keg) {
    const KegStatus* keg = status.find(KegId{about.uuid});
    return keg ? keg_warning_tag(kind, *keg, journal, speaker) : std::nullopt;
  }
  if (about.kind == SubjectKind::line && kind == Warning::do_not_serve) {
    const LineStatus* line = status.find(LineId{about.uuid});
    return line ? std::optional(do_not_serve_tag(*line, speaker)) : std::nullopt;
  }
  if (about.kind == SubjectKind::bottle && kind == Warning::gas) {
    const BottleStatus* bottle = status.find(BottleId{about.uuid});
    return bottle ? std::optional(gas_tag(*bottle, speaker)) : std::nullopt;
  }
  return std::nullopt;
}

std::vector<WarningTag> warning_tags(const Journal& journal, const CellarStatus& status,
                                     const Speaker& speaker) {
  std::vector<WarningTag> tags;
  for (const LineStatus& line : status.lines) {
    if (line.do_not_serve()) tags.push_back(do_not_serve_tag(line, speaker));
  }
  std::set<KegId> recalled;
  for (const RecalledBatch& recall : recalled_batches(journal)) {
    for (const KegStatus& keg : status.kegs) {
      if (!keg.contents || keg.contents->batch != recall.batch) continue;
      tags.push_back(recalled_tag(keg, recall.reason, speaker));
      recalled.insert(keg.record.keg);
    }
  }
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use || recalled.contains(keg.record.keg)) continue;
    if (keg.out_of_service()) tags.push_back(out_of_service_tag(keg, speaker));
  }
  for (const KegStatus& keg : status.kegs) {
    if (keg.record.in_use && to_be_vented(keg)) tags.push_back(vent_first_tag(keg, speaker));
  }
  for (const BottleStatus& bottle : status.bottles) {
    if (bottle.record.in_use) tags.push_back(gas_tag(bottle, speaker));
  }
  return tags;
}

}  // namespace ullage::report
