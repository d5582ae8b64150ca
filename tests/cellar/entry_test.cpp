// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/entry.h"

#include <gmock/gmock.h>

#include <limits>
#include <set>

#include "core/units/present.h"
#include "tests/support/entry_maker.h"

namespace ullage::cellar {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ullage::testing::CountingIds;
using ullage::testing::EntryMaker;
using ullage::testing::minute;

// RFC 4122 section 3, the example of its text form.
TEST(UuidText, reads_and_writes_the_standard_form) {
  const auto uuid = uuid_from_text("f81d4fae-7dec-11d0-a765-00a0c91e6bf6");
  ASSERT_TRUE(uuid);
  EXPECT_EQ(present(uuid).bytes[0], 0xf8);
  EXPECT_EQ(present(uuid).bytes[15], 0xf6);
  EXPECT_EQ(to_text(present(uuid)), "f81d4fae-7dec-11d0-a765-00a0c91e6bf6");
  EXPECT_EQ(uuid_from_text("F81D4FAE-7DEC-11D0-A765-00A0C91E6BF6"), uuid);
}

TEST(UuidText, refuses_everything_else) {
  for (const char* text :
       {"", "f81d4fae", "f81d4fae-7dec-11d0-a765-00a0c91e6bf",
        "f81d4fae-7dec-11d0-a765-00a0c91e6bf66", "f81d4fae+7dec-11d0-a765-00a0c91e6bf6",
        "g81d4fae-7dec-11d0-a765-00a0c91e6bf6", "f81d4fae-7dec-11d0-a765-00a0c91e6b-6",
        "f81d-4fae7dec-11d0-a765-00a0c91e6bf6"}) {
    EXPECT_FALSE(uuid_from_text(text)) << text;
  }
}

TEST(Kinds, are_distinct_and_each_can_be_made_by_name) {
  std::set<std::string_view> kinds;
  for (const Payload& payload : blank_payloads()) {
    const std::string_view kind = kind_of(payload);
    EXPECT_TRUE(kinds.insert(kind).second) << kind;
    const auto made = make_payload(kind);
    ASSERT_TRUE(made);
    EXPECT_EQ(kind_of(present(made)), kind);
    EXPECT_TRUE(same(present(made), payload));
  }
  EXPECT_EQ(kinds.size(), boost::variant2::variant_size<AnyPayload>::value);
  EXPECT_FALSE(make_payload("sung_to"));
}

TEST(Subjects, are_what_the_entry_is_about_in_field_order) {
  CountingIds ids;
  const auto keg = ids.make<KegId>();
  const auto batch = ids.make<BatchId>();
  const auto scale = ids.make<InstrumentId>();
  const auto dial = ids.make<InstrumentId>();
  const Payload filled = Filled{.keg = keg, .batch = batch, .scale = scale, .spund_dial = dial};
  EXPECT_THAT(subjects_of(filled), ElementsAre(subject(keg), subject(batch)));
  EXPECT_THAT(instruments_of(filled), ElementsAre(scale, dial));
}

TEST(Subjects, of_records_and_of_entries_about_the_journal) {
  CountingIds ids;
  const auto dial = ids.make<InstrumentId>();
  EXPECT_THAT(subjects_of(InstrumentRecord{.instrument = dial}), ElementsAre(subject(dial)));
  EXPECT_THAT(instruments_of(InstrumentRecord{.instrument = dial}), IsEmpty());
  EXPECT_THAT(subjects_of(CellarDescribed{}), ElementsAre(cellar_subject()));
  EXPECT_THAT(subjects_of(Struck{.target = ids.make<EntryId>()}), IsEmpty());
  EXPECT_THAT(subjects_of(Noted{}), IsEmpty());
}

TEST(Subjects, an_instrument_named_twice_is_listed_once) {
  CountingIds ids;
  const auto keg = ids.make<KegId>();
  const auto both = ids.make<InstrumentId>();
  EXPECT_THAT(instruments_of(HoldReading{.keg = keg, .instrument = both, .thermometer = both}),
              ElementsAre(both));
}

TEST(Same, tells_every_field_apart) {
  CountingIds ids;
  const GasSet a{.keg = ids.make<KegId>(), .pressure = units::gauge_psi(12)};
  GasSet b = a;
  EXPECT_TRUE(same(Payload(a), Payload(b)));
  b.pressure = units::gauge_psi(12.5);
  EXPECT_FALSE(same(Payload(a), Payload(b)));
  b = a;
  b.co2 = units::mole_fraction(1);
  EXPECT_FALSE(same(Payload(a), Payload(b)));  // stated is not the same as left open
  EXPECT_FALSE(same(Payload(GasOff{a.keg}), Payload(Untapped{a.keg})));
}

TEST(Same, not_a_number_is_the_same_as_itself) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_TRUE(
      same(Payload(Cleaned{.strength_percent = nan}), Payload(Cleaned{.strength_percent = nan})));
  EXPECT_TRUE(same(Payload(GasSet{.pressure = units::gauge_psi(nan)}),
                   Payload(GasSet{.pressure = units::gauge_psi(nan)})));
}

TEST(Same, entries_differ_by_their_headers_too) {
  EntryMaker maker;
  const Entry a = maker.make(minute(1), Noted{});
  Entry b = a;
  EXPECT_TRUE(same(a, b));
  b.header.note = "smells of apples";
  EXPECT_FALSE(same(a, b));
}

}  // namespace
}  // namespace ullage::cellar
