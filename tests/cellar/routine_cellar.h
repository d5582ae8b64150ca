// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cellar with lines of known volume, kegs on them, a bottle and a place, for
// the tests of rules, due work and cleaning days.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/cleaning_plan.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {

struct RoutineCellar : Scenario {
  cellar::PlaceId bar = place("Bar", 4);

  cellar::LineId hose(const std::string& name, double metres = 5, double millimetres = 6) {
    cellar::LineRecord r;
    r.line = made_id<cellar::LineId>();
    r.name = name;
    r.tap = name;
    r.place = bar;
    r.length = units::metres(metres);
    r.bore = units::metres(millimetres / 1000);
    log(day(-60), r);
    return r.line;
  }
  cellar::RuleId rule(cellar::RuleScope scope, cellar::WorkKind work,
                      std::optional<std::int64_t> every, const std::string& source = "own rule") {
    cellar::RuleRecord r;
    r.rule = made_id<cellar::RuleId>();
    r.scope = scope;
    r.work = work;
    r.interval_days = every;
    r.source = source;
    log(day(-60), r);
    return r.rule;
  }
  void cleaned(cellar::LineId line, Instant when,
               cellar::LineAgent agent = cellar::LineAgent::caustic) {
    cellar::LineCleaned c;
    c.line = line;
    c.agent = agent;
    c.flush_check = cellar::FlushCheck::litmus;
    c.flush_passed = true;
    log(when, c);
  }
  [[nodiscard]] std::vector<cellar::DueWork> due(Instant now) const {
    return cellar::due_work(journal, cellar(now), calendar);
  }
  template <class AnyId>
  AnyId made_id() {
    cellar::Uuid u;
    u.bytes[0] = 0xab;
    u.bytes[15] = next_++;
    return AnyId{u};
  }

 private:
  std::uint8_t next_ = 1;
};

}  // namespace ullage::testing
