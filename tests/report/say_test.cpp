// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every message has words that fit its arguments, and times are told as people
// tell them.
#include "core/report/say.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <set>
#include <sstream>

#include "core/report/cleaning_words.h"
#include "core/report/phrases.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using report::RegionalWords;
using report::Speaker;
using ::testing::HasSubstr;

std::set<int> placeholders(std::string_view text) {
  std::set<int> found;
  for (auto at = text.find('{'); at != std::string_view::npos; at = text.find('{', at + 1)) {
    found.insert(text[at + 1] - '0');
  }
  return found;
}

class EveryMessage : public ::testing::TestWithParam<RegionalWords> {};

TEST_P(EveryMessage, HasWordsThatFitItsArguments) {
  for (const MessageInfo& info : all_messages) {
    const std::string_view text = report::phrase(info.key, GetParam());
    EXPECT_FALSE(text.empty()) << info.name;
    for (const int n : placeholders(text)) {
      EXPECT_LT(n, info.arguments) << info.name << ": " << text;
    }
    EXPECT_EQ(static_cast<int>(placeholders(text).size()), info.arguments)
        << info.name << ": " << text;
  }
}

TEST_P(EveryMessage, IsPlainAndShort) {
  for (const MessageInfo& info : all_messages) {
    const std::string_view text = report::phrase(info.key, GetParam());
    EXPECT_EQ(text.find('!'), std::string_view::npos) << info.name;
    EXPECT_EQ(text.find('\''), std::string_view::npos) << info.name << ": typographic apostrophe";
    std::string lower(text);
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    for (const char* jargon : {"uuid", "subject", "payload", "json", "sql", "null", "nan",
                               "invalid", "error code", "please", "parameter", "entity"}) {
      EXPECT_EQ(lower.find(jargon), std::string::npos) << info.name << ": " << text;
    }
    // A sentence of more than twenty words is read twice.
    std::istringstream words(lower);
    int length = 0;
    for (std::string word; words >> word;) {
      ++length;
      EXPECT_LE(length, 20) << info.name << ": " << text;
      if (word.back() == '.' || word.back() == '?' || word.back() == ':') length = 0;
    }
    if (info.name.starts_with("state_") || info.name.starts_with("next_")) {
      EXPECT_LE(text.size(), 45U) << info.name << ": " << text;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Regions, EveryMessage,
                         ::testing::Values(RegionalWords::british, RegionalWords::us));

TEST(Words, NoMessageIsWordedTwice) {
  std::set<MessageKey> seen;
  for (const auto part : {report::phrases_of_entries(), report::phrases_of_kegs(),
                          report::phrases_of_gas(), report::phrases_of_lines()}) {
    for (const report::Phrase& p : part) EXPECT_TRUE(seen.insert(p.key).second) << p.text;
  }
  EXPECT_EQ(seen.size(), all_messages.size());
}

struct Spoken : ::testing::Test {
  Scenario s;
  Speaker speaker{{units::DisplayUnits::british(), {}},
                  &s.calendar,
                  RegionalWords::british,
                  day(21, 15)};  // Monday 23 November, 15:00
  [[nodiscard]] std::string time(Instant t) const { return report::say_time(t, speaker); }
  [[nodiscard]] std::string day_of(Instant t) const { return report::say_day(t, speaker); }
};

TEST_F(Spoken, TimesAsPeopleSayThem) {
  EXPECT_EQ(time(day(21, 18)), "today 18:00");
  EXPECT_EQ(time(day(22, 9.5)), "tomorrow 09:30");
  EXPECT_EQ(time(day(20, 22)), "yesterday 22:00");
  EXPECT_EQ(time(day(24, 14)), "Thu 14:00");
  EXPECT_EQ(time(day(16, 8)), "Wed 08:00");
  EXPECT_EQ(time(day(40, 8)), "12 Dec 08:00");
  EXPECT_EQ(day_of(day(16)), "Wed");
  EXPECT_EQ(day_of(day(25)), "Fri 27 Nov");
  EXPECT_EQ(day_of(day(114)), "24 Feb 2027");
  EXPECT_EQ(report::say_date(date(114), speaker), "24 Feb 2027");
  EXPECT_EQ(report::say_clock(day(22, 19.25), speaker), "2026-11-24 19:15");
}

TEST_F(Spoken, AgesCountWholeUnits) {
  const auto ago = [&](std::chrono::seconds d) {
    return report::say_age(speaker.now - d, speaker);
  };
  EXPECT_EQ(ago(std::chrono::seconds(30)), "just now");
  EXPECT_EQ(ago(std::chrono::minutes(45)), "45 min ago");
  EXPECT_EQ(ago(std::chrono::hours(23)), "23 h ago");
  EXPECT_EQ(ago(std::chrono::hours(80)), "3 d ago");
}

TEST_F(Spoken, TheNightTheClocksGoBackHasItsOwnYesterday) {
  using namespace std::chrono;
  // Sunday 25 October 2026 is 25 hours long; 22:30 UTC the day before is 23:30
  // on the wall.
  speaker.now = sys_days(year(2026) / 10 / 25) + hours(12);
  EXPECT_EQ(time(sys_days(year(2026) / 10 / 24) + hours(22) + minutes(30)), "yesterday 23:30");
  EXPECT_EQ(time(sys_days(year(2026) / 10 / 25) + minutes(30)), "today 01:30");
  EXPECT_EQ(time(sys_days(year(2026) / 10 / 25) + hours(1) + minutes(30)), "today 01:30");
}

TEST_F(Spoken, MessagesPutQuantitiesInTheReadersUnits) {
  const Message m = message(MessageKey::next_drop_and_vent, units::gauge_psi(11), day(24, 14));
  EXPECT_EQ(report::say(m, speaker), "drop to 11 psi Thu 14:00 and vent");
  Speaker metric = speaker;
  metric.printer.units = units::DisplayUnits::metric();
  EXPECT_EQ(report::say(m, metric), "drop to 0.76 bar Thu 14:00 and vent");
  const Message ready = message(MessageKey::ready_at, Window{day(22, 15), day(25, 9), day(24, 15)});
  EXPECT_EQ(report::say(ready, speaker), "Ready Fri 27 Nov (1 to 3 days)");
}

TEST_F(Spoken, EveryKindOfEntryAndEveryKindNameHasWords) {
  const CellarStatus names;
  for (const Payload& payload : blank_payloads()) {
    const std::string line = report::say_entry(payload, names, speaker);
    EXPECT_FALSE(line.empty()) << kind_of(payload);
    EXPECT_EQ(line.find('_'), std::string::npos) << line;
    EXPECT_EQ(line.find("nan"), std::string::npos) << line;
    const std::string name = report::say_kind(kind_of(payload), speaker);
    EXPECT_TRUE(std::isupper(static_cast<unsigned char>(name.front()))) << name;
  }
}

TEST_F(Spoken, EntriesReadAsTheyWereLogged) {
  const KegId k = s.keg("K07");
  const BatchId rye = s.batch("Red Rye");
  const CellarStatus names = s.cellar(day(0));
  const auto said = [&](const Payload& p) { return report::say_entry(p, names, speaker); };
  EXPECT_EQ(said(GasSet{k, units::gauge_psi(30), GasPurpose::burst, {}, {}, {}}),
            "Pressure set to 30 psi, burst");
  Filled f;
  f.keg = k;
  f.batch = rye;
  f.volume = units::litres(18.6);
  EXPECT_THAT(said(f), HasSubstr("Red Rye"));
  EXPECT_THAT(said(f), HasSubstr("18.6 L"));
  EXPECT_EQ(said(Purged{k, PurgeMethod::cycles, 5, units::gauge_psi(30), {}, {}}),
            "Purged, 5 cycles, at 30 psi");
}

void expect_whole(const Message& m, const Speaker& speaker) {
  const std::string text = report::say(m, speaker);
  EXPECT_FALSE(text.empty());
  EXPECT_EQ(text.find_first_of("{}"), std::string::npos) << text;
  EXPECT_EQ(text.find("–"), std::string::npos) << text;
  EXPECT_EQ(text.find("  "), std::string::npos) << text;
}

void expect_whole(const KegStatus& k, const Speaker& speaker) {
  std::vector<Message> all = k.readiness.reasons;
  all.push_back(k.state);
  all.push_back(k.readiness.headline);
  if (k.next_step) all.push_back(*k.next_step);
  for (const Advice& a : k.advice) {
    all.push_back(a.headline);
    if (a.detail) all.push_back(*a.detail);
    for (const InputUsed& i : a.inputs) all.push_back(i.what);
  }
  for (const PreparationStep& p : k.preparation) {
    if (p.result) all.push_back(*p.result);
  }
  for (const Message& m : all) {
    expect_whole(m, speaker);
    for (const MessageInfo& info : all_messages) {
      if (info.key != m.key) continue;
      EXPECT_EQ(static_cast<int>(m.args.size()), info.arguments) << info.name;
    }
  }
}

// Whatever a status says must come out whole: no gap, no brace, no dash for a number.
TEST_F(Spoken, AStatusOfEveryStateIsSaidWhole) {
  const PlaceId box = s.place("Cold box", 2.0);
  const LineId line = s.line("Line 1", "1", 14);
  const BatchId rye = s.batch("Red Rye", 2.3, 2.7);
  for (int i = 0; i < 8; ++i) {
    const KegId k = s.keg("K0" + std::to_string(i), box);
    s.log(day(0), Emptied{k});
    if (i > 0) s.prepare(k, day(1));
    if (i > 1) s.fill(k, rye, day(2), 18.6, 2.0);
    if (i > 2) s.gas(k, day(2), i == 3 ? 30 : 11, i == 3 ? GasPurpose::burst : GasPurpose::serving);
    if (i == 4) s.log(day(18), Tapped{k, line});
    if (i == 5) s.log(day(18), Quarantined{k, "tastes of butter"});
    if (i == 6) s.log(day(18), Lent{k, "Sam", {}, date(19)});
    if (i == 7) s.fill(k, rye, day(5));
  }
  s.log(day(20), LineLocked{line, LineAgent::caustic, "", "cleaning"});
  for (const Instant when : {day(2, 6), day(4), day(21, 15)}) {
    speaker.now = when;
    for (const KegStatus& k : s.cellar(when).kegs) expect_whole(k, speaker);
  }
}

// What a cleaning day costs is said with what it may come to: even where only the
// hoses are in doubt, from least to most where a keg may or may not be empty.
TEST(SayBeerLost, HasItsRange) {
  Speaker s;
  const auto lost = [](double least, double likely, double most) {
    cellar::BeerLost b{units::litres(likely), units::litres(least), units::litres(most)};
    b.price_least = std::llround(least * 400);
    b.price_minor = std::llround(likely * 400);
    b.price_most = std::llround(most * 400);
    return b;
  };
  EXPECT_EQ(report::say_beer_lost(lost(0.264, 0.287, 0.310), s),
            "about 290 ± 20 mL of beer lost, worth 1.15 ± 0.09");
  EXPECT_EQ(report::say_beer_lost(lost(0, 0, 0.31), s),
            "0 mL to 310 mL of beer lost, likely 0 mL, worth 0.00 to 1.24");
  EXPECT_EQ(report::say_beer_lost(lost(0, 0, 0), s), "no beer lost that is on record");
  s.printer.units = units::DisplayUnits::us();
  EXPECT_EQ(report::say_beer_lost(lost(0.264, 0.287, 0.310), s),
            "about 9.7 ± 0.8 fl oz of beer lost, worth 1.15 ± 0.09");
}

}  // namespace
}  // namespace ullage::testing
