// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QEventLoop>
#include <QProcess>

#include "core/units/present.h"
#include "tests/app/session_fixture.h"

namespace ullage::app {
namespace {

using cellar::Act;
using cellar::Change;
using cellar::Cleaned;
using cellar::GasOff;
using cellar::GasSet;
using cellar::MessageKey;
using cellar::Sanitised;
using cellar::Vented;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ullage::testing::minute;
using units::gauge_psi;

class Session : public ullage::testing::SessionFixture {};

TEST_F(Session, keeps_what_was_logged) {
  log(Cleaned{.keg = keg});
  EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned"));
  session.reset();
  const auto reopened = another();
  EXPECT_THAT(kinds_about(*reopened, keg), ElementsAre("keg_record", "cleaned"));
  EXPECT_EQ(reopened->file_name(), "shed.ullage");
  EXPECT_EQ(reopened->calendar().zone_name(), "Europe/London");
}

TEST_F(Session, fills_the_header) {
  clock.time = cellar::Instant(std::chrono::sys_days(std::chrono::year(2026) / 7 / 1));
  const auto act = session->log(
      {.drafts = {{.payload = GasOff{keg}, .happened_at = minute(-5), .note = "for the weekend"}},
       .by = "CD"});
  ASSERT_TRUE(act);
  const cellar::EntryHeader& h = last().header;
  EXPECT_EQ(h.act, *act);
  EXPECT_EQ(h.happened_at, minute(-5));
  EXPECT_EQ(h.recorded_at, clock.time);
  EXPECT_EQ(h.utc_offset, std::chrono::minutes(60));  // summer in London
  EXPECT_EQ(h.by, "CD");
  EXPECT_EQ(h.note, "for the weekend");
  EXPECT_GT(h.sequence, 0);
}

TEST_F(Session, logs_all_of_an_act_or_nothing) {
  const auto entries = session->journal().entries().size();
  Act act = act_of(Cleaned{.keg = keg});
  act.drafts.push_back(
      {.payload = GasSet{.keg = keg, .pressure = gauge_psi(9000)}, .happened_at = clock.time});
  const auto refused = session->log(act);
  ASSERT_FALSE(refused);
  ASSERT_EQ(refused.error().faults.size(), 1U);
  EXPECT_EQ(refused.error().faults[0].draft, 1U);
  EXPECT_EQ(refused.error().faults[0].field, "pressure_pa");
  EXPECT_EQ(session->journal().entries().size(), entries);
  EXPECT_EQ(another()->journal().entries().size(), entries);
}

TEST_F(Session, an_act_of_several_entries_is_undone_as_one) {
  Act act = act_of(Cleaned{.keg = keg});
  act.drafts.push_back({.payload = Sanitised{.keg = keg}, .happened_at = clock.time});
  const auto logged = session->log(act);
  ASSERT_TRUE(logged);
  EXPECT_EQ(session->undo_target(), *logged);
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record"));
  EXPECT_EQ(session->redo_target(), *logged);
  ASSERT_TRUE(session->redo("AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned", "sanitised"));
}

TEST_F(Session, undoes_and_redoes_through_a_chain) {
  log(Cleaned{.keg = keg});
  log(Sanitised{.keg = keg});
  log(Vented{.keg = keg});
  for (int round = 0; round < 3; ++round) {
    EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned", "sanitised", "vented"));
    ASSERT_TRUE(session->undo("AB"));
    EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned", "sanitised"));
    ASSERT_TRUE(session->undo("AB"));
    ASSERT_TRUE(session->undo("AB"));
    EXPECT_THAT(story(), ElementsAre("keg_record"));
    ASSERT_TRUE(session->redo("AB"));
    EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned"));
    ASSERT_TRUE(session->redo("AB"));
    ASSERT_TRUE(session->redo("AB"));
    EXPECT_FALSE(session->redo_target());
  }
  const auto nothing = session->redo("AB");
  ASSERT_FALSE(nothing);
  EXPECT_EQ(nothing.error().faults[0].why.key, MessageKey::fault_nothing_to_redo);
}

TEST_F(Session, a_new_act_ends_what_could_be_redone) {
  log(Cleaned{.keg = keg});
  ASSERT_TRUE(session->undo("AB"));
  log(Sanitised{.keg = keg});
  EXPECT_FALSE(session->redo_target());
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record"));
}

TEST_F(Session, takes_back_nothing_of_an_earlier_run) {
  log(Cleaned{.keg = keg});
  session.reset();
  const auto reopened = another();
  EXPECT_FALSE(reopened->undo_target());
  const auto nothing = reopened->undo("AB");
  ASSERT_FALSE(nothing);
  EXPECT_EQ(nothing.error().faults[0].why.key, MessageKey::fault_nothing_to_undo);
}

// A window puts its Undo in order when it is told.
TEST_F(Session, what_a_listener_is_told_of_can_be_undone_by_then) {
  const std::optional<cellar::ActId> before = session->undo_target();
  std::vector<std::optional<cellar::ActId>> undo_then, redo_then;
  const auto listening = session->on_change([&](const Change&) {
    undo_then.push_back(session->undo_target());
    redo_then.push_back(session->redo_target());
  });
  const auto act = session->log(act_of(Cleaned{.keg = keg}));
  ASSERT_TRUE(act);
  ASSERT_TRUE(session->undo("AB"));
  ASSERT_TRUE(session->redo("AB"));
  EXPECT_THAT(undo_then, ElementsAre(*act, before, *act));
  EXPECT_THAT(redo_then, ElementsAre(std::nullopt, *act, std::nullopt));
}

TEST_F(Session, a_strike_can_be_undone_and_redone) {
  log(Cleaned{.keg = keg});
  const auto cleaned = last().header.id;
  ASSERT_TRUE(session->strike({cleaned}, "it was K02", "AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record"));
  ASSERT_TRUE(session->undo("AB"));  // the strike
  EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned"));
  ASSERT_TRUE(session->undo("AB"));  // the cleaning
  EXPECT_THAT(story(), ElementsAre("keg_record"));
  ASSERT_TRUE(session->redo("AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned"));
  ASSERT_TRUE(session->redo("AB"));  // the strike again
  EXPECT_THAT(story(), ElementsAre("keg_record"));
  EXPECT_EQ(get<cellar::Struck>(session->journal().struck_by(cleaned)->payload).reason,
            "it was K02");
}

TEST_F(Session, what_is_struck_can_be_restored) {
  log(Cleaned{.keg = keg});
  const auto cleaned = last().header.id;
  ASSERT_TRUE(session->strike({cleaned}, "it was K02", "AB"));
  ASSERT_TRUE(session->restore({cleaned}, "it was K01 after all", "AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned"));
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record"));
}

TEST_F(Session, a_strike_needs_a_reason) {
  log(Cleaned{.keg = keg});
  const auto refused = session->strike({last().header.id}, " ", "AB");
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().faults[0].why.key, MessageKey::fault_reason_needed);
}

TEST_F(Session, a_correction_keeps_its_place_and_its_reason) {
  log(GasSet{.keg = keg, .pressure = gauge_psi(30)});
  const auto wrong = last();
  log(GasOff{keg});  // in the same second
  const auto corrected = session->correct(wrong.header.id,
                                          {.payload = GasSet{.keg = keg, .pressure = gauge_psi(12)},
                                           .happened_at = wrong.header.happened_at},
                                          "misread the dial", "AB");
  ASSERT_TRUE(corrected);
  EXPECT_THAT(story(), ElementsAre("keg_record", "gas_set", "gas_off"));
  const cellar::Entry* now = session->journal().replaced_by(wrong.header.id);
  ASSERT_NE(now, nullptr);
  EXPECT_EQ(get<GasSet>(now->payload).pressure, gauge_psi(12));
  EXPECT_EQ(session->journal().standing(wrong.header.id), cellar::Standing::replaced);
  EXPECT_EQ(get<cellar::Struck>(session->journal().struck_by(wrong.header.id)->payload).reason,
            "misread the dial");
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_EQ(session->journal().standing(wrong.header.id), cellar::Standing::in_force);
  EXPECT_THAT(story(), ElementsAre("keg_record", "gas_set", "gas_off"));
  ASSERT_TRUE(session->redo("AB"));
  EXPECT_EQ(session->journal().standing(wrong.header.id), cellar::Standing::replaced);
}

TEST_F(Session, striking_a_corrected_entry_leaves_nothing_of_it) {
  log(Cleaned{.keg = keg});
  const auto first = last().header.id;
  ASSERT_TRUE(session->correct(first, {.payload = Sanitised{.keg = keg}, .happened_at = clock.time},
                               "was only sanitised", "AB"));
  const auto second = session->journal().replaced_by(first)->header.id;
  EXPECT_FALSE(session->strike({first}, "x", "AB"));  // corrected since
  ASSERT_TRUE(session->strike({second}, "it was K02", "AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record"));
}

TEST_F(Session, looks_back_to_a_date) {
  clock.time = minute(100);
  log(Cleaned{.keg = keg});
  clock.time = minute(200);
  log(Sanitised{.keg = keg});
  const auto then = session->status_as_of({.happened_by = minute(150)});
  EXPECT_EQ(then->now, minute(150));
  ASSERT_NE(then->find(keg), nullptr);
  EXPECT_EQ(then->find(keg)->phase, cellar::Phase::clean);
  EXPECT_EQ(session->status()->find(keg)->phase, cellar::Phase::sanitised);
  EXPECT_EQ(session->status_as_of({.happened_by = minute(150)}), then);
}

TEST_F(Session, status_is_the_same_object_until_something_happens) {
  const auto first = session->status();
  EXPECT_EQ(session->status(), first);
  clock.time += std::chrono::seconds(20);
  EXPECT_EQ(session->status(), first);
  clock.time += std::chrono::seconds(40);
  const auto later = session->status();
  EXPECT_NE(later, first);
  log(Cleaned{.keg = keg});
  EXPECT_NE(session->status(), later);
}

TEST_F(Session, previews_a_keg_and_writes_nothing) {
  const auto entries = session->journal().entries().size();
  const auto revision = session->journal().revision();
  const auto preview = session->preview(act_of(Cleaned{.keg = keg}), keg);
  ASSERT_TRUE(preview);
  EXPECT_EQ(present(preview).phase, cellar::Phase::clean);
  EXPECT_EQ(present(preview).record.tag, "K01");
  EXPECT_EQ(session->journal().entries().size(), entries);
  EXPECT_EQ(session->journal().revision(), revision);
  EXPECT_NE(session->status()->find(keg)->phase, cellar::Phase::clean);
  EXPECT_FALSE(session->preview(act_of(Cleaned{.keg = keg}), session->fresh<cellar::KegId>()));
}

TEST_F(Session, checks_without_writing) {
  EXPECT_THAT(session->check(act_of(Cleaned{.keg = keg})), IsEmpty());
  const auto faults =
      session->check(act_of(cellar::CellarDescribed{.name = "Shed", .time_zone = "Mars/Base"}));
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_EQ(faults[0].field, "time_zone");
  EXPECT_EQ(faults[0].why.key, MessageKey::fault_unknown_zone);
}

TEST_F(Session, the_calendar_follows_the_cellars_zone) {
  log(cellar::CellarDescribed{.name = "Shed", .time_zone = "America/Denver"});
  EXPECT_EQ(session->calendar().zone_name(), "America/Denver");
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_EQ(session->calendar().zone_name(), "Europe/London");
}

TEST_F(Session, tells_listeners_what_changed) {
  std::vector<Change> heard;
  auto listening = session->on_change([&](const Change& c) { heard.push_back(c); });
  log(Cleaned{.keg = keg});
  ASSERT_EQ(heard.size(), 1U);
  EXPECT_THAT(heard[0].subjects, ElementsAre(cellar::subject(keg)));
  EXPECT_FALSE(heard[0].from_elsewhere);
  ASSERT_TRUE(session->undo("AB"));
  ASSERT_EQ(heard.size(), 2U);
  EXPECT_THAT(heard[1].subjects, ElementsAre(cellar::subject(keg)));
  listening.reset();
  log(Cleaned{.keg = keg});
  EXPECT_EQ(heard.size(), 2U);
}

TEST_F(Session, a_listener_may_stop_listening_while_it_is_told) {
  int told = 0;
  std::unique_ptr<cellar::Subscription> listening;
  listening = session->on_change([&](const Change&) {
    ++told;
    listening.reset();
  });
  auto other = session->on_change([&](const Change&) { ++told; });
  log(Cleaned{.keg = keg});
  EXPECT_EQ(told, 2);
  log(Sanitised{.keg = keg});
  EXPECT_EQ(told, 3);
  session.reset();
  other.reset();  // after the cellar itself: nothing to do
}

TEST_F(Session, two_windows_on_one_file_see_each_other_within_two_seconds) {
  const auto second = another();
  std::vector<Change> heard;
  const auto listening = second->on_change([&](const Change& c) { heard.push_back(c); });
  second->watch();
  log(Cleaned{.keg = keg});
  const QDeadlineTimer deadline(2000);
  while (heard.empty() && !deadline.hasExpired()) {
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
  }
  ASSERT_EQ(heard.size(), 1U);
  EXPECT_TRUE(heard[0].from_elsewhere);
  EXPECT_THAT(heard[0].subjects, ElementsAre(cellar::subject(keg)));
  EXPECT_THAT(kinds_about(*second, keg), ElementsAre("keg_record", "cleaned"));
}

// Another program altogether: it logs as fast as it can and is then killed.
TEST_F(Session, another_program_on_the_file_is_seen_within_two_seconds) {
  std::size_t theirs = 0;
  const auto listening =
      session->on_change([&](const Change& c) { theirs += c.from_elsewhere ? 1U : 0U; });
  session->watch();
  QProcess other;
  other.start(QStringLiteral(ULLAGE_CRASH_CHILD), {QString::fromStdString(path().string()), "7"});
  ASSERT_TRUE(other.waitForReadyRead(20'000)) << "it logged nothing";  // its first act is kept
  const QDeadlineTimer deadline(2000);
  while (theirs == 0 && !deadline.hasExpired()) {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
  }
  other.kill();
  ASSERT_TRUE(other.waitForFinished());
  EXPECT_GE(theirs, 1U);
  session->look_for_changes();
  const auto kept = another()->journal().entries().size();
  EXPECT_EQ(session->journal().entries().size(), kept) << "and nothing of theirs is missed";
  log(Cleaned{.keg = keg});
  EXPECT_EQ(another()->journal().entries().size(), kept + 1);
}

TEST_F(Session, writes_of_two_windows_both_stay) {
  const auto second = another();
  log(Cleaned{.keg = keg});
  std::vector<bool> from_elsewhere;
  const auto listening =
      second->on_change([&](const Change& c) { from_elsewhere.push_back(c.from_elsewhere); });
  ASSERT_TRUE(second->log(act_of(Sanitised{.keg = keg})));
  EXPECT_THAT(from_elsewhere, ElementsAre(true, false));
  session->look_for_changes();
  EXPECT_THAT(story(), ElementsAre("keg_record", "cleaned", "sanitised"));
  EXPECT_THAT(kinds_about(*second, keg), ElementsAre("keg_record", "cleaned", "sanitised"));
  // Undo is each window's own.
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_THAT(story(), ElementsAre("keg_record", "sanitised"));
}

TEST_F(Session, what_others_struck_is_not_undone_again) {
  log(Cleaned{.keg = keg});
  const auto cleaned = last().header.id;
  const auto second = another();
  ASSERT_TRUE(second->strike({cleaned}, "it was K02", "CD"));
  session->look_for_changes();
  // What is left to take back is the registration of the keg.
  ASSERT_TRUE(session->undo("AB"));
  EXPECT_THAT(story(), IsEmpty());
}

TEST_F(Session, refuses_to_write_to_what_it_may_only_read) {
  const auto reader = another({.read_only = true});
  ASSERT_TRUE(reader);
  EXPECT_TRUE(reader->read_only());
  const auto refused = reader->log(act_of(Cleaned{.keg = keg}));
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().faults[0].why.key, MessageKey::fault_read_only);
  EXPECT_THAT(kinds_about(*reader, keg), ElementsAre("keg_record"));
}

TEST_F(Session, an_open_that_fails_says_why) {
  const auto absent = CellarSession::open(path().string() + ".nowhere", {clock, ids});
  ASSERT_FALSE(absent);
  EXPECT_EQ(absent.error().fault, store::StoreFault::absent);
}

}  // namespace
}  // namespace ullage::app
