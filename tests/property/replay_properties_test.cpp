// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must hold of replay whatever was logged. Statuses are compared whole.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "core/cellar/excerpt.h"
#include "core/cellar/replay.h"
#include "tests/property/random_cellar.h"
#include "tests/property/status_text.h"
#include "tests/support/fake_facade.h"

namespace ullage::cellar {
namespace {

using ullage::testing::CountingIds;
using ullage::testing::difference;
using ullage::testing::FixedCalendar;
using ullage::testing::minute;
using ullage::testing::random_entry;
using ullage::testing::random_things;
using ullage::testing::RandomThings;
using ullage::testing::records_of;
using ullage::testing::text_of;

const Instant now = minute(61 * 24 * 60);
const FixedCalendar calendar;

using Numbers = std::vector<std::uint32_t>;

std::vector<Entry> registering(const RandomThings& things, std::uint8_t family) {
  CountingIds ids(static_cast<std::uint8_t>(0x80 + family));
  std::vector<Entry> entries;
  for (const Payload& record : records_of(things, family)) {
    Entry e;
    e.header.id = ids.make<EntryId>();
    e.header.act = ids.make<ActId>();
    e.header.happened_at = minute(0);
    e.payload = record;
    entries.push_back(std::move(e));
  }
  return entries;
}

// Each number once: one number is one entry with one id.
std::vector<Entry> entries_of(const Numbers& numbers, const RandomThings& things) {
  std::vector<Entry> entries;
  for (const std::uint32_t n : std::set<std::uint32_t>(numbers.begin(), numbers.end())) {
    entries.push_back(random_entry(n, things));
  }
  return entries;
}

Journal journal_of(const std::vector<Entry>& entries) {
  Journal journal;
  std::int64_t sequence = 0;
  for (Entry e : entries) {
    e.header.sequence = ++sequence;
    journal.append(std::move(e));
  }
  return journal;
}

std::string told(const Journal& journal) { return text_of(Replay(journal, calendar).status(now)); }

void append_all(std::vector<Entry>& to, const std::vector<Entry>& more) {
  to.insert(to.end(), more.begin(), more.end());
}

// The same entries at a handful of moments: what happened in one second stands in the
// story as it was recorded, so that the order of recording can tell.
std::vector<Entry> at_few_moments(std::vector<Entry> entries) {
  constexpr std::size_t moments = 6;
  for (Entry& entry : entries) {
    const std::size_t at = entry.header.id.uuid.bytes[5] % moments;
    entry.header.happened_at = minute(10 + static_cast<int>(at) * 7 * 24 * 60);
  }
  return entries;
}

// One after the other in a drawn order that keeps that of either side.
std::vector<Entry> shuffled_together(const std::vector<Entry>& a, const std::vector<Entry>& b,
                                     const std::vector<bool>& from_a) {
  std::vector<Entry> both;
  std::size_t i = 0;
  std::size_t j = 0;
  for (std::size_t n = 0; i < a.size() || j < b.size(); ++n) {
    const bool take_a = j == b.size() || (i < a.size() && n < from_a.size() && from_a[n]);
    both.push_back(take_a ? a[i++] : b[j++]);
  }
  return both;
}

// Entries about two halves of a cellar that share no subject, place, regulator, line,
// batch or instrument may be recorded in any order between them.
RC_GTEST_PROP(Replay, entries_that_share_nothing_commute,
              (const Numbers& left, const Numbers& right, const std::vector<bool>& from_left)) {
  const RandomThings a = random_things(1);
  const RandomThings b = random_things(2);
  std::vector<Entry> start = registering(a, 1);
  append_all(start, registering(b, 2));
  const std::vector<Entry> of_a = at_few_moments(entries_of(left, a));
  const std::vector<Entry> of_b = at_few_moments(entries_of(right, b));
  std::vector<Entry> left_first = start;
  append_all(left_first, of_a);
  append_all(left_first, of_b);
  const std::string expected = told(journal_of(left_first));
  std::vector<bool> in_turn;
  in_turn.reserve(of_a.size() + of_b.size());
  for (std::size_t i = 0; i < of_a.size() + of_b.size(); ++i) in_turn.push_back(i % 2 == 0);
  for (const std::vector<bool>& order : {std::vector<bool>(), in_turn, from_left}) {
    std::vector<Entry> other = start;
    append_all(other, shuffled_together(of_a, of_b, order));
    RC_ASSERT(difference(told(journal_of(other)), expected) == "");
  }
}

// Else the property above could not fail: of what shares a keg the order does tell.
TEST(Replay, entries_about_one_keg_do_not_commute) {
  const RandomThings things = random_things(1);
  const auto set_to = [&](double psi, std::uint8_t mark) {
    Entry e;
    e.header.id.uuid.bytes[3] = mark;
    e.header.happened_at = minute(10);
    e.payload = GasSet{.keg = things.kegs[0], .pressure = units::gauge_psi(psi)};
    return e;
  };
  std::vector<Entry> one_way = registering(things, 1);
  std::vector<Entry> other_way = one_way;
  append_all(one_way, {set_to(10, 1), set_to(20, 2)});
  append_all(other_way, {set_to(20, 2), set_to(10, 1)});
  EXPECT_NE(told(journal_of(one_way)), told(journal_of(other_way)));
}

Entry strike_of(const Entry& target, std::uint8_t mark) {
  Entry e;
  e.header.id = target.header.id;
  e.header.id.uuid.bytes[2] = mark;
  e.header.act.uuid = e.header.id.uuid;
  e.header.happened_at = minute(1);
  e.payload = Struck{.target = target.header.id, .reason = "not so"};
  return e;
}

RC_GTEST_PROP(Replay, a_struck_entry_never_happened,
              (const Numbers& numbers, const Numbers& wrong)) {
  const RandomThings things = random_things(1);
  std::vector<Entry> without = registering(things, 1);
  std::vector<Entry> with = without;
  const std::vector<Entry> right_entries = entries_of(numbers, things);
  const std::vector<Entry> wrong_entries = entries_of(wrong, things);
  std::vector<Entry> strikes;
  for (const Entry& e : wrong_entries) {
    const bool also_right = std::any_of(right_entries.begin(), right_entries.end(),
                                        [&](const Entry& r) { return r.header.id == e.header.id; });
    if (also_right) continue;
    with.push_back(e);
    strikes.push_back(strike_of(e, 1));
  }
  append_all(with, right_entries);
  append_all(with, strikes);
  append_all(without, right_entries);
  RC_ASSERT(difference(told(journal_of(with)), told(journal_of(without))) == "");
}

// What a replay remembers between questions changes no answer.
RC_GTEST_PROP(Replay, asked_after_each_entry_it_tells_what_a_fresh_one_tells,
              (const Numbers& numbers)) {
  const RandomThings things = random_things(1);
  Journal journal = journal_of(registering(things, 1));
  const Replay kept(journal, calendar);
  RC_ASSERT(difference(text_of(kept.status(now)), told(journal)) == "");
  for (const Entry& made : entries_of(numbers, things)) {
    Entry e = made;
    e.header.sequence = journal.last_sequence() + 1;
    journal.append(e);
    if (made.header.id.uuid.bytes[4] % 4 == 0) {
      Entry strike = strike_of(made, 1);
      strike.header.sequence = journal.last_sequence() + 1;
      journal.append(strike);
    }
    RC_ASSERT(difference(text_of(kept.status(now)), told(journal.as_of({}))) == "");
  }
}

RC_GTEST_PROP(Replay, an_excerpt_tells_of_a_keg_what_the_whole_journal_tells,
              (const Numbers& numbers, const Numbers& typed)) {
  const RandomThings a = random_things(1);
  const RandomThings b = random_things(2);
  std::vector<Entry> entries = registering(a, 1);
  append_all(entries, registering(b, 2));
  append_all(entries, entries_of(numbers, a));
  const Journal journal = journal_of(entries);
  Act act{.drafts = {}, .by = "AB"};
  for (const std::uint32_t n : typed) {
    const Entry e = random_entry(n, a);
    act.drafts.push_back({.payload = e.payload, .happened_at = e.header.happened_at});
  }
  for (const KegId keg : a.kegs) {
    const Journal part = excerpt_with(journal, keg, act);
    Journal whole = journal.as_of({});
    for (const Entry& e : part.entries()) {
      if (e.header.sequence > journal.last_sequence()) whole.append(e);
    }
    RC_ASSERT(difference(text_of(Replay(part, calendar).keg_status(keg, now)),
                         text_of(Replay(whole, calendar).keg_status(keg, now))) == "");
  }
}

RC_GTEST_PROP(Replay, as_recorded_by_then_is_the_journal_of_then, (const Numbers& numbers)) {
  const RandomThings things = random_things(1);
  std::vector<Entry> entries = registering(things, 1);
  const std::vector<Entry> more = entries_of(numbers, things);
  append_all(entries, more);
  const auto then = static_cast<std::int64_t>(entries.size());
  const Journal before = journal_of(entries);
  for (const Entry& e : more) entries.push_back(strike_of(e, 1));
  RC_ASSERT(difference(told(journal_of(entries).as_of({.recorded_through = then})), told(before)) ==
            "");
}

}  // namespace
}  // namespace ullage::cellar
