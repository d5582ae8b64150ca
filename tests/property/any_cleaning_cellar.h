// SPDX-License-Identifier: GPL-3.0-or-later
//
// Any cellar that a cleaning day may be planned for.
#pragma once

#include <rapidcheck.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/cellar/cleaning_plan.h"
#include "core/cellar/presets.h"
#include "core/cellar/replay.h"
#include "tests/support/entry_maker.h"

namespace ullage::testing {

using namespace cellar;

class UtcCalendar final : public LocalCalendar {
 public:
  [[nodiscard]] std::string zone_name() const override { return "Etc/UTC"; }
  [[nodiscard]] UtcOffset offset_at(Instant) const override { return UtcOffset(0); }
  [[nodiscard]] std::optional<Instant> to_instant(LocalTime local) const override {
    return Instant(local.time_since_epoch());
  }
};

inline int drawn(int low, int high) { return *rc::gen::inRange(low, high + 1); }

// A cellar with up to five lines, four kegs and two places, any rules, and work
// done at any time before.
struct AnyCellar {
  Journal journal;
  UtcCalendar calendar;
  EntryMaker maker;
  std::vector<LineId> lines;
  std::vector<KegId> kegs;
  std::vector<PlaceId> places;
  std::vector<EmptyForecast> empties;
  Instant now = minute(60 * 24 * 200);

  AnyCellar() {
    for (int i = 0; i < 2; ++i) {
      PlaceRecord p;
      p.place = maker.ids.make<PlaceId>();
      p.name = "P" + std::to_string(i);
      p.sensor_height = units::metres(0.3);
      places.push_back(p.place);
      log(0, p);
    }
    add_lines(drawn(0, 5));
    add_kegs(drawn(0, 4));
    add_rules(drawn(1, 6));
    for (int i = drawn(0, 15); i > 0; --i) do_work();
    for (const LineId line : lines) {
      if (drawn(0, 3) > 0) continue;
      log(drawn(151, 200), LineLocked{line, static_cast<LineAgent>(drawn(0, 3)), "", "drawn"});
    }
    for (const LineId line : lines) {
      if (drawn(0, 2) == 0) move_work(line);
      if (drawn(0, 3) == 0) clean_today(line);
    }
  }
  // Whether the agent was put into a line or keg today, however it stands now.
  [[nodiscard]] bool used_today(LineAgent agent) const {
    const Date today = calendar.date_of(now);
    return std::ranges::any_of(journal.entries(), [&](const Entry& e) {
      if (calendar.date_of(e.header.happened_at) != today) return false;
      const auto* cleaned = get_if<LineCleaned>(&e.payload);
      const auto* locked = get_if<LineLocked>(&e.payload);
      return (cleaned != nullptr && cleaned->agent == agent) ||
             (locked != nullptr && locked->agent == agent);
    });
  }

 private:
  void log(int day, Payload p) { journal.append(maker.make(minute(60 * 24 * day), std::move(p))); }
  void add_lines(int many) {
    for (int i = 0; i < many; ++i) {
      LineRecord l;
      l.line = maker.ids.make<LineId>();
      l.name = "L" + std::to_string(i);
      l.place = places[static_cast<std::size_t>(drawn(0, 1))];
      if (drawn(0, 3) > 0) {
        l.length = units::metres(drawn(1, 30));
        l.bore = units::metres(0.001 * drawn(4, 12));
      }
      lines.push_back(l.line);
      log(drawn(0, 150), l);
    }
  }
  void add_kegs(int many) {
    for (int i = 0; i < many; ++i) {
      KegRecord k = keg_from_preset(KegKind::ball_lock_19);
      k.keg = maker.ids.make<KegId>();
      k.tag = "K" + std::to_string(i);
      k.place = places[static_cast<std::size_t>(drawn(0, 1))];
      kegs.push_back(k.keg);
      const int day = drawn(0, 150);
      log(day, k);
      const int story = drawn(0, 2);
      if (story == 0) log(day + 1, Emptied{k.keg});
      if (story == 1) fill(k.keg, day + 1);
    }
  }
  // With beer in it, perhaps on a line; perhaps running empty soon.
  void fill(KegId keg, int day) {
    BeerRecord beer;
    beer.beer = maker.ids.make<BeerId>();
    beer.name = "B" + std::to_string(day);
    log(day, beer);
    BatchRecord batch;
    batch.batch = maker.ids.make<BatchId>();
    batch.beer = beer.beer;
    batch.name = "1";
    log(day, batch);
    Filled f;
    f.keg = keg;
    f.batch = batch.batch;
    f.volume = units::litres(18);
    log(day, f);
    if (next_line_ < lines.size() && drawn(0, 1) == 0) {
      log(day + 1, Tapped{keg, lines[next_line_++]});
    }
    if (drawn(0, 2) == 0) return;
    const auto hours = std::chrono::hours(drawn(1, 24 * 20));
    empties.push_back({keg, {now + hours / 2, now + hours, now + 2 * hours}});
  }
  void add_rules(int many) {
    for (int i = 0; i < many; ++i) {
      RuleRecord r;
      r.rule = maker.ids.make<RuleId>();
      r.scope = static_cast<RuleScope>(drawn(0, 5));
      const auto works = works_of(r.scope);
      r.work = works[static_cast<std::size_t>(drawn(0, static_cast<int>(works.size()) - 1))];
      if (drawn(0, 5) > 0) r.interval_days = drawn(1, 120);
      r.source = "drawn";
      log(0, r);
    }
  }
  // To a day before or after it is due.
  void move_work(LineId line) {
    WorkMoved m;
    m.work = drawn(0, 1) == 0 ? WorkKind::caustic : WorkKind::acid;
    m.line = line;
    m.to_day = calendar.date_of(now) + std::chrono::days(drawn(-10, 14));
    log(199, m);
  }
  // Work of the same day that is over: rinsed out and checked, or left standing.
  void clean_today(LineId line) {
    LineCleaned c;
    c.line = line;
    c.agent = static_cast<LineAgent>(drawn(0, 4));
    if (drawn(0, 1) == 0) {
      c.flush_check = FlushCheck::litmus;
      c.flush_passed = true;
    }
    log(200, c);
    if (drawn(0, 1) == 0) log(200, LineReleased{.line = line, .passed = true, .checked_by = "JB"});
  }
  void do_work() {
    WorkDone w;
    w.work = static_cast<WorkKind>(drawn(0, 9));
    w.complete = drawn(0, 3) > 0;
    if (!lines.empty() && drawn(0, 1) == 0) {
      w.line = lines[static_cast<std::size_t>(drawn(0, static_cast<int>(lines.size()) - 1))];
    } else {
      w.place = places[static_cast<std::size_t>(drawn(0, 1))];
    }
    log(drawn(1, 199), w);
  }
  std::size_t next_line_ = 0;
};

}  // namespace ullage::testing
