// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/journal.h"

#include <gmock/gmock.h>

#include <stdexcept>

#include "tests/support/entry_maker.h"

namespace ullage::cellar {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::UnorderedElementsAre;
using ullage::testing::EntryMaker;
using ullage::testing::minute;

// The sequences of a story: short to write and to read in a failure.
std::vector<std::int64_t> numbers(std::span<const Entry* const> story) {
  std::vector<std::int64_t> out;
  for (const Entry* e : story) out.push_back(e->header.sequence);
  return out;
}

class AKegsJournal : public ::testing::Test {
 protected:
  Entry gas(int at, double psi) {
    return maker.make(minute(at), GasSet{.keg = keg, .pressure = units::gauge_psi(psi)});
  }
  Entry corrected_gas(const Entry& of, int at, double psi) {
    return maker.correction(of, minute(at), GasSet{.keg = keg, .pressure = units::gauge_psi(psi)});
  }
  // The story as read now, checked against one whose lists were never read before.
  std::vector<std::int64_t> told() {
    const auto now = numbers(journal.story(subject(keg)));
    EXPECT_EQ(numbers(journal.as_of({}).story(subject(keg))), now);
    return now;
  }

  EntryMaker maker;
  KegId keg = maker.ids.make<KegId>();
  KegId other_keg = maker.ids.make<KegId>();
  Journal journal;
};

TEST_F(AKegsJournal, tells_entries_by_time_then_by_sequence) {
  journal.append(gas(10, 30));  // 1
  journal.append(gas(5, 12));   // 2, backdated
  journal.append(gas(10, 11));  // 3, same minute as 1
  EXPECT_THAT(told(), ElementsAre(2, 1, 3));
  journal.append(gas(7, 10));  // 4, into a story that was read already
  EXPECT_THAT(told(), ElementsAre(2, 4, 1, 3));
  EXPECT_EQ(numbers(journal.story()), told());
}

TEST_F(AKegsJournal, keeps_what_the_register_says_apart_from_what_was_done) {
  journal.append(maker.make(minute(1), KegRecord{.keg = keg, .tag = "K01"}));  // 1
  journal.append(gas(2, 12));                                                  // 2
  EXPECT_THAT(numbers(journal.records(subject(keg))), ElementsAre(1));
  const auto before = journal.records_revision(subject(keg));
  journal.append(gas(3, 12));  // 3
  EXPECT_EQ(journal.records_revision(subject(keg)), before);
  journal.append(maker.make(minute(4), KegRecord{.keg = keg, .tag = "K02"}));  // 4
  EXPECT_GT(journal.records_revision(subject(keg)), before);
  EXPECT_THAT(numbers(journal.records(subject(keg))), ElementsAre(1, 4));
  EXPECT_THAT(told(), ElementsAre(1, 2, 3, 4));
}

TEST_F(AKegsJournal, tells_whether_the_story_up_to_a_moment_is_still_the_same) {
  journal.append(gas(10, 30));
  const auto then = journal.revision(subject(keg));
  EXPECT_TRUE(journal.same_until(subject(keg), then, minute(10)));
  journal.append(gas(20, 12));
  EXPECT_TRUE(journal.same_until(subject(keg), then, minute(19)));
  EXPECT_FALSE(journal.same_until(subject(keg), then, minute(20)));
  const auto later = journal.revision(subject(keg));
  journal.append(gas(15, 12));  // backdated
  EXPECT_TRUE(journal.same_until(subject(keg), later, minute(14)));
  EXPECT_FALSE(journal.same_until(subject(keg), later, minute(15)));
  EXPECT_FALSE(journal.same_until(subject(keg), then, minute(16)));
  journal.append(gas(30, 12));
  EXPECT_FALSE(journal.same_until(subject(keg), later, minute(15))) << "a later one hides nothing";
  EXPECT_TRUE(journal.same_until(subject(other_keg), 0, minute(99)));
}

TEST_F(AKegsJournal, a_strike_or_a_correction_changes_the_story_where_the_entry_stood) {
  const Entry first = gas(10, 30);
  journal.append(first);
  journal.append(gas(20, 12));
  auto then = journal.revision(subject(keg));
  journal.append(corrected_gas(first, 40, 11));  // it happened later, we now know
  EXPECT_FALSE(journal.same_until(subject(keg), then, minute(10)));
  EXPECT_TRUE(journal.same_until(subject(keg), then, minute(9)));
  then = journal.revision(subject(keg));
  journal.append(maker.make(minute(50), Struck{first.header.id, "typed twice"}));
  EXPECT_TRUE(journal.same_until(subject(keg), then, minute(9)));
}

TEST_F(AKegsJournal, keeps_the_stories_of_things_apart) {
  journal.append(gas(1, 30));
  journal.append(maker.make(minute(2), GasOff{other_keg}));
  EXPECT_THAT(told(), ElementsAre(1));
  EXPECT_THAT(numbers(journal.story(subject(other_keg))), ElementsAre(2));
  EXPECT_THAT(journal.story(subject(maker.ids.make<KegId>())), IsEmpty());
}

TEST_F(AKegsJournal, refuses_entries_out_of_sequence) {
  const Entry early = gas(1, 30);
  journal.append(gas(2, 30));
  EXPECT_THROW(journal.append(early), std::logic_error);
}

TEST_F(AKegsJournal, a_struck_entry_leaves_the_story_and_stays_readable) {
  const Entry wrong = gas(1, 30);
  journal.append(wrong);
  journal.append(gas(2, 12));
  EXPECT_THAT(told(), ElementsAre(1, 2));
  const Entry strike = maker.strike(wrong);
  journal.append(strike);
  EXPECT_THAT(told(), ElementsAre(2));
  EXPECT_EQ(journal.standing(wrong.header.id), Standing::struck);
  EXPECT_EQ(journal.struck_by(wrong.header.id)->header.id, strike.header.id);
  EXPECT_EQ(journal.entries().size(), 3U);
}

// Whatever time a strike says it happened at, it acts from where it was recorded.
TEST_F(AKegsJournal, strikes_act_by_sequence_not_by_time) {
  const Entry wrong = gas(100, 30);
  journal.append(wrong);
  journal.append(maker.strike(wrong, minute(1)));
  EXPECT_THAT(told(), IsEmpty());
}

TEST_F(AKegsJournal, restoring_brings_a_struck_entry_back) {
  const Entry entry = gas(1, 30);
  journal.append(entry);
  journal.append(maker.strike(entry));
  journal.append(maker.restore(entry));
  EXPECT_THAT(told(), ElementsAre(1));
  EXPECT_EQ(journal.standing(entry.header.id), Standing::in_force);
  EXPECT_EQ(journal.struck_by(entry.header.id), nullptr);
  journal.append(maker.strike(entry));
  EXPECT_THAT(told(), IsEmpty());
}

TEST_F(AKegsJournal, striking_a_strike_undoes_it_to_any_depth) {
  const Entry entry = gas(1, 30);
  journal.append(entry);
  const Entry strike = maker.strike(entry);
  journal.append(strike);
  const Entry undo = maker.strike(strike);
  journal.append(undo);
  EXPECT_THAT(told(), ElementsAre(1));
  EXPECT_EQ(journal.standing(strike.header.id), Standing::struck);
  journal.append(maker.strike(undo));
  EXPECT_THAT(told(), IsEmpty());
  journal.append(maker.restore(undo));
  EXPECT_THAT(told(), ElementsAre(1));
}

TEST_F(AKegsJournal, striking_a_restore_leaves_what_was_struck_struck) {
  const Entry entry = gas(1, 30);
  journal.append(entry);
  journal.append(maker.strike(entry));
  const Entry back = maker.restore(entry);
  journal.append(back);
  journal.append(maker.strike(back));
  EXPECT_THAT(told(), IsEmpty());
}

TEST_F(AKegsJournal, a_correction_takes_the_place_of_what_it_corrects) {
  const Entry first = gas(10, 30);
  journal.append(first);
  journal.append(gas(10, 12));
  EXPECT_THAT(told(), ElementsAre(1, 2));
  const Entry correction = corrected_gas(first, 10, 20);  // 3, still before 2
  journal.append(correction);
  EXPECT_THAT(told(), ElementsAre(3, 2));
  EXPECT_EQ(journal.standing(first.header.id), Standing::replaced);
  EXPECT_EQ(journal.replaced_by(first.header.id)->header.sequence, 3);
  const Entry again = corrected_gas(correction, 10, 22);  // 4
  journal.append(again);
  EXPECT_THAT(told(), ElementsAre(4, 2));
  EXPECT_EQ(journal.replaced_by(first.header.id)->header.sequence, 4);
  EXPECT_EQ(journal.replaced_by(again.header.id), nullptr);
  EXPECT_EQ(journal.chain(correction.header.id).size(), 3U);
}

TEST_F(AKegsJournal, a_correction_of_the_time_moves_the_entry) {
  const Entry first = gas(10, 30);
  journal.append(first);
  journal.append(gas(20, 12));
  journal.append(corrected_gas(first, 30, 30));
  EXPECT_THAT(told(), ElementsAre(2, 3));
}

TEST_F(AKegsJournal, striking_a_correction_brings_back_what_it_corrected) {
  const Entry first = gas(10, 30);
  journal.append(first);
  journal.append(gas(10, 12));
  const Entry correction = corrected_gas(first, 10, 20);
  journal.append(correction);
  EXPECT_THAT(told(), ElementsAre(3, 2));
  journal.append(maker.strike(correction));
  EXPECT_THAT(told(), ElementsAre(1, 2));
  EXPECT_EQ(journal.replaced_by(first.header.id), nullptr);
  journal.append(maker.restore(correction));
  EXPECT_THAT(told(), ElementsAre(3, 2));
}

// Two windows may correct one entry at the same time.
TEST_F(AKegsJournal, of_two_corrections_of_one_entry_the_later_holds) {
  const Entry first = gas(10, 30);
  journal.append(first);
  const Entry one = corrected_gas(first, 10, 20);
  const Entry two = corrected_gas(first, 10, 22);
  journal.append(one);
  journal.append(two);
  EXPECT_THAT(told(), ElementsAre(3));
  EXPECT_EQ(journal.standing(one.header.id), Standing::replaced);
  journal.append(maker.strike(two));
  EXPECT_THAT(told(), ElementsAre(2));
}

TEST_F(AKegsJournal, striking_a_whole_chain_leaves_nothing_of_it) {
  const Entry first = gas(10, 30);
  journal.append(first);
  const Entry correction = corrected_gas(first, 10, 20);
  journal.append(correction);
  EXPECT_THAT(told(), ElementsAre(2));
  journal.append(maker.strike(first));
  journal.append(maker.strike(correction));
  EXPECT_THAT(told(), IsEmpty());
  EXPECT_EQ(journal.standing(first.header.id), Standing::struck);
}

// How a correction carries its reason: a strike of the old entry beside the new one.
TEST_F(AKegsJournal, an_entry_struck_and_corrected_counts_as_corrected) {
  const Entry first = gas(10, 30);
  journal.append(first);
  const Entry strike = maker.strike(first);
  journal.append(strike);
  const Entry correction = corrected_gas(first, 10, 20);
  journal.append(correction);
  EXPECT_THAT(told(), ElementsAre(3));
  EXPECT_EQ(journal.standing(first.header.id), Standing::replaced);
  EXPECT_EQ(journal.struck_by(first.header.id)->header.id, strike.header.id);
  journal.append(maker.strike(correction));
  EXPECT_THAT(told(), IsEmpty());
  EXPECT_EQ(journal.standing(first.header.id), Standing::struck);
  journal.append(maker.strike(strike));
  EXPECT_THAT(told(), ElementsAre(1));
}

TEST_F(AKegsJournal, an_excerpt_keeps_what_was_said_of_its_entries) {
  const Entry first = gas(10, 30);
  journal.append(first);
  journal.append(gas(10, 12));  // 2
  const Entry correction = corrected_gas(first, 10, 20);
  journal.append(correction);  // 3
  const Entry struck = gas(11, 9);
  journal.append(struck);                // 4
  journal.append(maker.strike(struck));  // 5
  journal.append(gas(12, 8));            // 6
  const Journal part = journal.excerpt(
      {journal.find(correction.header.id), journal.find(struck.header.id), &journal.entries()[1]});
  EXPECT_THAT(numbers(part.story(subject(keg))), ElementsAre(3, 2));
  EXPECT_EQ(part.entries().size(), 5U);
}

TEST_F(AKegsJournal, a_correction_may_move_an_entry_to_another_keg) {
  const Entry first = gas(10, 30);
  journal.append(first);
  EXPECT_THAT(told(), ElementsAre(1));
  const auto before = journal.revision();
  journal.append(maker.correction(first, minute(10), GasOff{other_keg}));
  EXPECT_THAT(told(), IsEmpty());
  EXPECT_THAT(numbers(journal.story(subject(other_keg))), ElementsAre(2));
  EXPECT_THAT(journal.changed_since(before),
              UnorderedElementsAre(subject(keg), subject(other_keg)));
}

TEST_F(AKegsJournal, revisions_rise_with_what_is_said_of_a_thing) {
  EXPECT_EQ(journal.revision(subject(keg)), 0U);
  const Entry entry = gas(1, 30);
  journal.append(entry);
  auto before = journal.revision(subject(keg));
  EXPECT_GT(before, 0U);
  journal.append(maker.make(minute(2), GasOff{other_keg}));
  EXPECT_EQ(journal.revision(subject(keg)), before);
  const auto all = journal.revision();
  const Entry strike = maker.strike(entry);
  for (const Entry& e : {strike, maker.strike(strike), maker.restore(entry)}) {
    journal.append(e);
    if (e.header.sequence == 5) continue;  // restoring what is in force changes nothing
    EXPECT_GT(journal.revision(subject(keg)), before);
    before = journal.revision(subject(keg));
  }
  EXPECT_THAT(journal.changed_since(all), UnorderedElementsAre(subject(keg)));
  EXPECT_THAT(journal.changed_since(journal.revision()), IsEmpty());
}

TEST_F(AKegsJournal, as_of_a_date_is_what_we_now_know_of_it) {
  const Entry early = gas(10, 30);
  journal.append(early);                            // 1
  journal.append(gas(50, 12));                      // 2
  journal.append(gas(20, 10));                      // 3, backdated
  journal.append(maker.strike(early, minute(90)));  // 4, later strike of an early entry
  const Journal then = journal.as_of({.happened_by = minute(30)});
  EXPECT_THAT(numbers(then.story(subject(keg))), ElementsAre(3));
  EXPECT_EQ(then.standing(early.header.id), Standing::struck);
}

TEST_F(AKegsJournal, as_of_a_date_an_entry_since_moved_later_had_not_happened) {
  const Entry entry = gas(10, 30);
  journal.append(entry);
  const Entry later = corrected_gas(entry, 50, 30);
  journal.append(later);
  EXPECT_THAT(journal.as_of({.happened_by = minute(30)}).story(subject(keg)), IsEmpty());
  EXPECT_THAT(numbers(journal.as_of({.happened_by = minute(50)}).story(subject(keg))),
              ElementsAre(2));
  journal.append(maker.strike(later));
  EXPECT_THAT(numbers(journal.as_of({.happened_by = minute(30)}).story(subject(keg))),
              ElementsAre(1));
}

TEST_F(AKegsJournal, as_recorded_by_a_date_knows_nothing_that_came_after) {
  const Entry entry = gas(10, 30);
  journal.append(entry);
  journal.append(corrected_gas(entry, 10, 20));
  journal.append(maker.strike(entry));
  journal.append(gas(5, 9));
  EXPECT_THAT(numbers(journal.as_of({.recorded_through = 1}).story(subject(keg))), ElementsAre(1));
  EXPECT_THAT(numbers(journal.as_of({.recorded_through = 3}).story(subject(keg))), ElementsAre(2));
  EXPECT_THAT(
      numbers(journal.as_of({.happened_by = minute(7), .recorded_through = 4}).story(subject(keg))),
      ElementsAre(4));
  EXPECT_THAT(journal.as_of({.happened_by = minute(7), .recorded_through = 3}).story(subject(keg)),
              IsEmpty());
}

TEST_F(AKegsJournal, strikes_of_unknown_or_later_entries_do_nothing) {
  const Entry entry = gas(10, 30);
  const Entry unknown = gas(11, 30);
  journal.append(entry);
  journal.append(maker.strike(unknown));
  Entry itself = maker.strike(entry);
  get<Struck>(itself.payload).target = itself.header.id;
  journal.append(itself);
  EXPECT_THAT(told(), ElementsAre(1));
  EXPECT_EQ(journal.standing(itself.header.id), Standing::in_force);
}

TEST_F(AKegsJournal, survives_being_moved) {
  journal.append(gas(10, 30));
  journal.append(gas(5, 30));
  EXPECT_THAT(told(), ElementsAre(2, 1));
  Journal moved = std::move(journal);
  moved.append(gas(7, 30));
  EXPECT_THAT(numbers(moved.story(subject(keg))), ElementsAre(2, 3, 1));
  EXPECT_EQ(moved.find(moved.entries()[0].header.id), &moved.entries()[0]);
}

}  // namespace
}  // namespace ullage::cellar
