// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is refused and, as important, what is not. The bounds are ours: they need
// no outside source, only to be wide enough for anything that can happen.
#include "core/cellar/validate.h"

#include <gmock/gmock.h>

#include <limits>

#include "core/cellar/field_walk.h"
#include "core/cellar/limits.h"
#include "tests/support/entry_maker.h"

namespace ullage::cellar {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Pair;
using ullage::testing::EntryMaker;
using ullage::testing::minute;
using units::celsius;
using units::gauge_bar;
using units::gauge_psi;
using units::litres;

using Found_faults = std::vector<std::pair<std::string, MessageKey>>;

class Validation : public ::testing::Test {
 protected:
  void SetUp() override {
    register_thing(keg_record);
    register_thing(BeerRecord{.beer = beer, .name = "Pale"});
    register_thing(BatchRecord{.batch = batch, .beer = beer, .name = "12"});
    register_thing(LineRecord{.line = line, .name = "Line 1", .tap = "1"});
    register_thing(BottleRecord{.bottle = bottle, .name = "Big one"});
    register_thing(PlaceRecord{.place = place, .name = "Cold box"});
  }
  void register_thing(Payload payload) {
    journal.append(maker.make(minute(0), std::move(payload)));
  }

  Found_faults faults(const Act& act) {
    const Register reg(journal);
    Found_faults out;
    for (const Fault& f : validate(act, journal, reg, now)) {
      out.emplace_back(f.field, f.why.key);
    }
    return out;
  }
  Found_faults faults(Payload payload, std::string note = {}) {
    return faults(
        {.drafts = {{.payload = std::move(payload), .happened_at = now, .note = std::move(note)}},
         .by = "AB"});
  }

  EntryMaker maker;
  Journal journal;
  Instant now = minute(1000);
  KegId keg = maker.ids.make<KegId>();
  BeerId beer = maker.ids.make<BeerId>();
  BatchId batch = maker.ids.make<BatchId>();
  LineId line = maker.ids.make<LineId>();
  BottleId bottle = maker.ids.make<BottleId>();
  PlaceId place = maker.ids.make<PlaceId>();
  KegRecord keg_record{.keg = keg,
                       .tag = "K07",
                       .keg_kind = KegKind::ball_lock_19,
                       .nominal = litres(18.9),
                       .brimful = litres(19.6),
                       .rated_pressure = gauge_bar(9)};
};

TEST_F(Validation, lets_ordinary_entries_pass) {
  EXPECT_THAT(faults(Cleaned{.keg = keg, .temperature = celsius(60)}), IsEmpty());
  EXPECT_THAT(faults(Filled{.keg = keg, .batch = batch, .volume = litres(18.6)}), IsEmpty());
  EXPECT_THAT(faults(GasSet{.keg = keg, .pressure = gauge_psi(12)}), IsEmpty());
  EXPECT_THAT(faults(Tapped{.keg = keg, .line = line}), IsEmpty());
  EXPECT_THAT(faults(CellarDescribed{.name = "Home", .time_zone = "Europe/London"}), IsEmpty());
}

// It happened: it is logged, and advice says the rest.
TEST_F(Validation, never_refuses_bad_practice) {
  EXPECT_THAT(faults(GasSet{.keg = keg, .pressure = gauge_bar(15)}), IsEmpty());
  EXPECT_THAT(faults(Filled{.keg = keg, .batch = batch, .temperature = celsius(38)}), IsEmpty());
  journal.append(maker.make(minute(1), Filled{.keg = keg, .batch = batch, .volume = litres(18)}));
  EXPECT_THAT(faults(Filled{.keg = keg, .batch = batch, .volume = litres(18)}), IsEmpty());
  journal.append(maker.make(minute(2), LineLocked{.line = line}));
  EXPECT_THAT(faults(Tapped{.keg = keg, .line = line}), IsEmpty());
  EXPECT_THAT(faults(Received{.keg = keg, .batch = batch, .temperature = celsius(31)}), IsEmpty());
}

TEST_F(Validation, refuses_values_that_cannot_be) {
  EXPECT_THAT(faults(Filled{.keg = keg, .batch = batch, .volume = litres(-1)}),
              ElementsAre(Pair("beer_volume_m3", MessageKey::fault_below)));
  EXPECT_THAT(faults(GasSet{.keg = keg, .pressure = gauge_bar(-1.5)}),
              ElementsAre(Pair("pressure_pa", MessageKey::fault_below)));
  EXPECT_THAT(faults(GasSet{.keg = keg, .pressure = gauge_bar(21)}),
              ElementsAre(Pair("pressure_pa", MessageKey::fault_above)));
  EXPECT_THAT(faults(Cleaned{.keg = keg, .temperature = celsius(111)}),
              ElementsAre(Pair("temperature_k", MessageKey::fault_above)));
  EXPECT_THAT(faults(LevelReading{
                  .keg = keg, .method = LevelMethod::heft, .fraction_left = units::fraction(1.2)}),
              ElementsAre(Pair("fraction_left", MessageKey::fault_above)));
  EXPECT_THAT(faults(GravityRead{.batch = batch, .gravity = units::specific_gravity(10.48)}),
              ElementsAre(Pair("gravity_sg", MessageKey::fault_above)));
}

TEST_F(Validation, a_bottle_gauge_reads_more_than_a_keg_can) {
  EXPECT_THAT(faults(GaugeRead{.bottle = bottle, .pressure = gauge_bar(58)}), IsEmpty());
  EXPECT_THAT(faults(GaugeRead{.bottle = bottle, .pressure = gauge_bar(301)}),
              ElementsAre(Pair("pressure_pa", MessageKey::fault_above)));
}

TEST_F(Validation, refuses_numbers_that_are_none) {
  for (const double bad :
       {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    EXPECT_THAT(faults(GasSet{.keg = keg, .pressure = gauge_psi(bad)}),
                ElementsAre(Pair("pressure_pa", MessageKey::fault_not_finite)));
    EXPECT_THAT(faults(Cleaned{.keg = keg, .strength_percent = bad}),
                ElementsAre(Pair("strength_percent", MessageKey::fault_not_finite)));
  }
}

// Every field of every kind has finite bounds that include a value, so that a
// new kind cannot slip past.
TEST_F(Validation, every_number_of_every_kind_is_bounded) {
  int fields = 0;
  for (Payload payload : blank_payloads()) {
    for_each_field(payload, [&]<class T>(std::string_view column, T& field) {
      const auto spoil = [&](auto bad) {
        const T before = field;
        field = bad;
        bool named = false;
        for (const auto& [f, key] : faults(payload, "seen")) {
          named = named || (f == column && key == MessageKey::fault_not_finite);
        }
        EXPECT_TRUE(named) << kind_of(payload) << "." << column;
        field = before;
        ++fields;
      };
      const double nan = std::numeric_limits<double>::quiet_NaN();
      if constexpr (units::Quantity<T>) {
        spoil(units::from_magnitude<T>(nan));
      } else if constexpr (std::is_same_v<T, double> || std::is_same_v<T, std::optional<double>>) {
        spoil(nan);
      } else if constexpr (IsOptional<T>::value) {
        if constexpr (units::Quantity<typename T::value_type>) {
          spoil(units::from_magnitude<typename T::value_type>(nan));
        }
      }
    });
  }
  EXPECT_GT(fields, 80);
}

TEST_F(Validation, refuses_moments_that_have_not_come) {
  Act act{.drafts = {{.payload = GasOff{keg}, .happened_at = now + std::chrono::minutes(2)}}};
  EXPECT_THAT(faults(act), IsEmpty());  // a clock may be a little ahead
  act.drafts[0].happened_at = now + std::chrono::minutes(3);
  EXPECT_THAT(faults(act), ElementsAre(Pair("happened_at", MessageKey::fault_future)));
  act.drafts[0].happened_at = Instant(std::chrono::sys_days(std::chrono::year(1815) / 1 / 1));
  EXPECT_THAT(faults(act), ElementsAre(Pair("happened_at", MessageKey::fault_too_early)));
  EXPECT_THAT(faults(Found{.keg = keg, .since = now + std::chrono::hours(1)}),
              ElementsAre(Pair("since_utc_s", MessageKey::fault_future),
                          Pair("since_utc_s", MessageKey::fault_since_after)));
}

TEST_F(Validation, refuses_text_that_does_not_fit) {
  KegRecord other = keg_record;
  other.keg = maker.ids.make<KegId>();
  other.tag = std::string(13, 'K');
  EXPECT_THAT(faults(other), ElementsAre(Pair("tag", MessageKey::fault_too_long)));
  other.tag = "äöüäöüäöüäöü";  // twelve characters in twenty-four bytes
  EXPECT_THAT(faults(other), IsEmpty());
  other.tag = "  ";
  EXPECT_THAT(faults(other), ElementsAre(Pair("tag", MessageKey::fault_required)));
  other.tag = "K\n8";
  EXPECT_THAT(faults(other), ElementsAre(Pair("tag", MessageKey::fault_not_text)));
  EXPECT_THAT(faults(GasOff{keg}, std::string(2001, 'n')),
              ElementsAre(Pair("note", MessageKey::fault_too_long)));
  EXPECT_THAT(faults(GasOff{keg}, "two\nlines"), IsEmpty());
  EXPECT_THAT(faults({.drafts = {{.payload = GasOff{keg}, .happened_at = now}}, .by = "ABCDEFGHI"}),
              ElementsAre(Pair("by", MessageKey::fault_too_long)));
}

// Unicode standard, table 3-7: overlong forms, surrogates, cut-off sequences.
TEST_F(Validation, refuses_text_that_is_not_utf8) {
  for (const char* bad :
       {"\xc0\xaf", "\xed\xa0\x80", "\xf4\x90\x80\x80", "\xe2\x82", "\xff", "\x80"}) {
    EXPECT_THAT(faults(GasOff{keg}, bad), ElementsAre(Pair("note", MessageKey::fault_not_text)));
  }
  EXPECT_THAT(faults(GasOff{keg}, "3\xe2\x82\xac \xf0\x9f\x8d\xba"), IsEmpty());
}

TEST_F(Validation, refuses_a_tag_or_name_that_another_thing_in_use_has) {
  KegRecord other = keg_record;
  other.keg = maker.ids.make<KegId>();
  other.tag = "k07 ";
  EXPECT_THAT(faults(other), ElementsAre(Pair("tag", MessageKey::fault_tag_taken)));
  EXPECT_THAT(faults(keg_record), IsEmpty());  // the keg itself may keep it
  KegRecord scrapped = keg_record;
  scrapped.in_use = false;
  register_thing(scrapped);
  EXPECT_THAT(faults(other), IsEmpty());
  EXPECT_THAT(faults(PlaceRecord{.place = maker.ids.make<PlaceId>(), .name = "cold box"}),
              ElementsAre(Pair("name", MessageKey::fault_name_taken)));
}

TEST_F(Validation, sees_two_equal_tags_in_one_act) {
  KegRecord one = keg_record, two = keg_record;
  one.keg = maker.ids.make<KegId>();
  two.keg = maker.ids.make<KegId>();
  one.tag = two.tag = "K08";
  const auto found = faults(
      {.drafts = {{.payload = one, .happened_at = now}, {.payload = two, .happened_at = now}}});
  EXPECT_THAT(found, ElementsAre(Pair("tag", MessageKey::fault_tag_taken),
                                 Pair("tag", MessageKey::fault_tag_taken)));
}

TEST_F(Validation, knows_what_the_act_itself_registers) {
  KegRecord fresh = keg_record;
  fresh.keg = maker.ids.make<KegId>();
  fresh.tag = "K08";
  const Found found{.keg = fresh.keg, .contents = FoundContents::beer, .volume = litres(30)};
  EXPECT_THAT(faults(found), ElementsAre(Pair("keg", MessageKey::fault_unknown_subject)));
  EXPECT_THAT(faults({.drafts = {{.payload = fresh, .happened_at = now},
                                 {.payload = found, .happened_at = now}}}),
              ElementsAre(Pair("beer_volume_m3", MessageKey::fault_more_than_keg)));
}

TEST_F(Validation, asks_for_what_an_entry_is_about) {
  EXPECT_THAT(faults(GasOff{}), ElementsAre(Pair("keg", MessageKey::fault_required)));
  EXPECT_THAT(faults(Wasted{.volume = litres(1)}),
              ElementsAre(Pair("keg", MessageKey::fault_required)));
  EXPECT_THAT(faults(Noted{}), ElementsAre(Pair("note", MessageKey::fault_required)));
  EXPECT_THAT(faults(Noted{}, "Cold box hums"), IsEmpty());
  EXPECT_THAT(faults(LevelReading{.keg = keg, .method = LevelMethod::weight}),
              ElementsAre(Pair("gross_mass_kg", MessageKey::fault_required)));
  EXPECT_THAT(faults(CarbonationReading{.keg = keg}),
              ElementsAre(Pair("pressure_pa", MessageKey::fault_required)));
  EXPECT_THAT(faults(Act{}), ElementsAre(Pair("", MessageKey::fault_nothing_to_log)));
}

// A typing slip of a digit: no keg of this size weighs that, whatever is in it.
TEST_F(Validation, RefusesAWeightThatNoSuchKegCanHave) {
  const auto weighed = [this](double kilograms) {
    return LevelReading{
        .keg = keg, .method = LevelMethod::weight, .gross_mass = units::kilograms(kilograms)};
  };
  EXPECT_THAT(faults(weighed(233)), IsEmpty()) << "nobody knows what the empty keg weighs";
  keg_record.tare = units::kilograms(4.2);
  register_thing(keg_record);
  EXPECT_THAT(faults(weighed(233)), ElementsAre(Pair("gross_mass_kg", MessageKey::fault_above)));
  EXPECT_THAT(faults(weighed(23.3)), IsEmpty());
  EXPECT_THAT(faults(weighed(3.5)), IsEmpty()) << "a tare from a preset may be off";
  EXPECT_THAT(faults(weighed(2.33)), ElementsAre(Pair("gross_mass_kg", MessageKey::fault_below)));
  Filled filled{.keg = keg, .batch = batch, .gross_mass = units::kilograms(23.3)};
  EXPECT_THAT(faults(filled), IsEmpty());
  filled.gross_mass = units::kilograms(233);
  EXPECT_THAT(faults(filled), ElementsAre(Pair("gross_mass_kg", MessageKey::fault_above)));
}

TEST_F(Validation, refuses_contradictions) {
  BatchRecord record{.batch = batch,
                     .beer = beer,
                     .name = "12",
                     .original_gravity = units::specific_gravity(1.010),
                     .final_gravity = units::specific_gravity(1.048)};
  EXPECT_THAT(faults(record),
              ElementsAre(Pair("final_gravity_sg", MessageKey::fault_gravity_order)));
  EXPECT_THAT(faults(Filled{.keg = keg, .batch = batch, .volume = litres(19.7)}),
              ElementsAre(Pair("beer_volume_m3", MessageKey::fault_more_than_keg)));
  EXPECT_THAT(faults(Filled{.keg = keg, .batch = batch, .co2_at_fill = Co2AtFill::measured}),
              ElementsAre(Pair("co2_g_per_l", MessageKey::fault_required)));
}

TEST_F(Validation, a_line_is_released_by_a_passed_check_with_a_name) {
  LineReleased release{
      .line = line, .check = FlushCheck::litmus, .passed = true, .checked_by = "AB"};
  EXPECT_THAT(faults(release), IsEmpty());
  release.passed = false;
  EXPECT_THAT(faults(release), ElementsAre(Pair("passed", MessageKey::fault_release_not_passed)));
  release.passed = true;
  release.checked_by = " ";
  EXPECT_THAT(faults(release),
              ElementsAre(Pair("checked_by", MessageKey::fault_release_needs_name)));
  release.checked_by = "AB";
  release.check = FlushCheck::none;
  EXPECT_THAT(faults(release),
              ElementsAre(Pair("flush_check", MessageKey::fault_release_needs_check)));
  release.check = FlushCheck::ph;
  register_thing(LineRecord{.line = line, .name = "Line 1", .second_initials_to_release = true});
  release.countersigned_by = "ab";
  EXPECT_THAT(faults(release),
              ElementsAre(Pair("countersigned_by", MessageKey::fault_release_needs_second)));
  release.countersigned_by = "CD";
  EXPECT_THAT(faults(release), IsEmpty());
}

TEST_F(Validation, strikes_what_stands_and_restores_what_is_struck) {
  const Entry entry = maker.make(minute(5), GasOff{keg});
  journal.append(entry);
  const Struck strike{.target = entry.header.id, .reason = "wrong keg"};
  EXPECT_THAT(faults(strike), IsEmpty());
  EXPECT_THAT(faults({.drafts = {{.payload = strike, .happened_at = now},
                                 {.payload = strike, .happened_at = now}}}),
              ElementsAre(Pair("target_entry", MessageKey::fault_already_struck)));
  EXPECT_THAT(faults(Struck{.target = entry.header.id}),
              ElementsAre(Pair("reason", MessageKey::fault_reason_needed)));
  EXPECT_THAT(faults(Restored{.target = entry.header.id}),
              ElementsAre(Pair("target_entry", MessageKey::fault_not_struck)));
  EXPECT_THAT(faults(Struck{.target = maker.ids.make<EntryId>(), .reason = "?"}),
              ElementsAre(Pair("target_entry", MessageKey::fault_unknown_subject)));
  journal.append(maker.strike(entry));
  EXPECT_THAT(faults(strike), ElementsAre(Pair("target_entry", MessageKey::fault_already_struck)));
  EXPECT_THAT(faults(Restored{.target = entry.header.id}), IsEmpty());
}

TEST_F(Validation, corrects_only_the_entry_in_force) {
  const Entry entry = maker.make(minute(5), GasOff{keg});
  journal.append(entry);
  const auto correcting = [&](EntryId id) {
    return faults({.drafts = {{.payload = GasOff{keg}, .happened_at = now, .replaces = id}}});
  };
  EXPECT_THAT(correcting(entry.header.id), IsEmpty());
  EXPECT_THAT(correcting(maker.ids.make<EntryId>()),
              ElementsAre(Pair("", MessageKey::fault_unknown_subject)));
  journal.append(maker.correction(entry, minute(6), GasOff{keg}));
  EXPECT_THAT(correcting(entry.header.id),
              ElementsAre(Pair("", MessageKey::fault_already_replaced)));
  const Entry latest = journal.entries().back();
  const Entry strike = maker.strike(latest);
  journal.append(strike);
  EXPECT_THAT(correcting(latest.header.id),
              ElementsAre(Pair("", MessageKey::fault_already_struck)));
  EXPECT_THAT(correcting(strike.header.id),
              ElementsAre(Pair("", MessageKey::fault_not_correctable)));
}

TEST(Limits, the_register_forgets_a_struck_record) {
  EntryMaker maker;
  Journal journal;
  const auto keg = maker.ids.make<KegId>();
  const Entry first = maker.make(minute(1), KegRecord{.keg = keg, .tag = "K1"});
  const Entry second = maker.make(minute(2), KegRecord{.keg = keg, .tag = "K2"});
  journal.append(first);
  Register reg(journal);
  journal.append(second);
  reg.refresh();
  EXPECT_EQ(reg.find<KegRecord>(subject(keg))->tag, "K2");
  journal.append(maker.strike(second));
  reg.refresh();
  EXPECT_EQ(reg.find<KegRecord>(subject(keg))->tag, "K1");
  journal.append(maker.strike(first));
  reg.refresh();
  EXPECT_EQ(reg.find(subject(keg)), nullptr);
}

}  // namespace
}  // namespace ullage::cellar
