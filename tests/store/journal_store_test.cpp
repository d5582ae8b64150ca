// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/journal_store.h"

#include <gmock/gmock.h>
#include <rapidcheck.h>

#include <cmath>
#include <stdexcept>
#include <thread>

#include "tests/store/store_fixture.h"
#include "tests/support/payload_generator_rapid.h"

namespace ullage::testing {
namespace {

using store::JournalStore;
using store::StoreFault;

class JournalStoreTest : public StoreTest {};

TEST_F(JournalStoreTest, GivesBackEveryKindAsItWasWritten) {
  std::vector<cellar::Entry> all;
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    SeededSource source(seed);
    for (auto& entry : PayloadMaker(source).one_of_each()) all.push_back(std::move(entry));
  }
  {
    auto store = made();
    const auto appended = store.append(all);
    ASSERT_TRUE(appended) << why(appended);
  }
  auto store = opened();
  const auto loaded = store.load();
  ASSERT_TRUE(loaded) << why(loaded);
  expect_same(*loaded, all);
  EXPECT_EQ(all.front().header.sequence, 1);
  EXPECT_EQ(all.back().header.sequence, std::ssize(all));
}

TEST_F(JournalStoreTest, RoundTripsWhateverIsDrawn) {
  auto store = made();
  EXPECT_TRUE(rc::check([&] {
    RapidSource source;
    PayloadMaker maker(source);
    auto entries = maker.entries(8);
    const std::int64_t before = store.last_sequence().value();
    RC_ASSERT(store.append(entries).has_value());
    const auto loaded = store.load_after(before);
    RC_ASSERT(loaded.has_value());
    RC_ASSERT(loaded->size() == entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i) RC_ASSERT(same((*loaded)[i], entries[i]));
  }));
}

TEST_F(JournalStoreTest, KeepsDoublesToTheLastBit) {
  int count = 0;
  for (const double v : {0.1, 1.0 / 3.0, 5e-324, 1.7976931348623157e308, 2.2250738585072014e-308,
                         9007199254740993.0, 0.0}) {
    auto store = made(std::to_string(count++) + ".ullage");
    cellar::Primed primed;
    primed.mass = units::kilograms(v);
    std::vector<cellar::Entry> entry(1);
    entry[0].payload = primed;
    ASSERT_TRUE(store.append(entry));
    const auto loaded = store.load();
    ASSERT_TRUE(loaded) << why(loaded);
    EXPECT_EQ(units::in_kilograms(get<cellar::Primed>(loaded->at(0).payload).mass), v);
  }
}

TEST_F(JournalStoreTest, NumbersOnFromTheLastEntry) {
  auto first = fill(5);
  auto store = opened();
  SeededSource source(9);
  auto more = PayloadMaker(source).entries(3);
  ASSERT_TRUE(store.append(more));
  EXPECT_EQ(more[0].header.sequence, 6);
  EXPECT_EQ(store.last_sequence().value(), 8);
  const auto after = store.load_after(5);
  ASSERT_TRUE(after) << why(after);
  expect_same(*after, more);
}

TEST_F(JournalStoreTest, RefusesWhatCanNeverBeTrueAndKeepsNothingOfTheAct) {
  auto store = made();
  SeededSource source(3);
  auto act = PayloadMaker(source).entries(4);
  cellar::GravityRead impossible;
  impossible.temperature = units::kelvin(-1);
  act[2].payload = impossible;
  const auto refused = store.append(act);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().fault, StoreFault::refused_value);
  EXPECT_THAT(refused.error().detail, ::testing::HasSubstr("gravity_read"));
  EXPECT_THAT(refused.error().detail, ::testing::HasSubstr("temperature_k"));
  for (const auto& entry : act) EXPECT_EQ(entry.header.sequence, 0);
  EXPECT_TRUE(store.load().value().empty());

  impossible.temperature = units::celsius(20);
  act[2].payload = impossible;
  EXPECT_TRUE(store.append(act));
  EXPECT_EQ(store.load().value().size(), 4U);
}

TEST_F(JournalStoreTest, KeepsAllThatIsAppendedAsOneOrNothing) {
  SeededSource source(3);
  auto first = PayloadMaker(source).entries(4);
  auto second = PayloadMaker(source).entries(4, 5);
  auto store = made();
  const auto half_way = [&] {
    return store.as_one([&] {
      ASSERT_TRUE(store.append(first));
      throw std::runtime_error("half way");
    });
  };
  EXPECT_THROW(EXPECT_FALSE(half_way()), std::runtime_error);
  EXPECT_EQ(store.last_sequence().value(), 0);

  // An act refused within it is undone by itself: its first entry is sound.
  cellar::Primed no_number;
  no_number.mass = units::kilograms(std::nan(""));
  std::vector<cellar::Entry> refused = {second[0], second[1]};
  refused[1].payload = no_number;
  const auto kept = store.as_one([&] {
    EXPECT_TRUE(store.append(first));
    EXPECT_EQ(opened().last_sequence().value(), 0) << "nobody else sees it yet";
    EXPECT_FALSE(store.append(refused));
    EXPECT_TRUE(store.append(second));
  });
  ASSERT_TRUE(kept) << why(kept);
  first.insert(first.end(), second.begin(), second.end());
  expect_same(opened().load().value(), first);
}

TEST_F(JournalStoreTest, AThrowawayFileHoldsTheSame) {
  SeededSource source(4);
  auto entries = PayloadMaker(source).entries(50);
  {
    store::OpenOptions options;
    options.throwaway = true;
    auto store = JournalStore::create(file(), numbered_uuid(7), test_now, options);
    ASSERT_TRUE(store) << why(store);
    ASSERT_TRUE(store->append(entries));
  }
  expect_same(opened().load().value(), entries);
}

TEST_F(JournalStoreTest, RefusesNumbersThatAreNotAndTextThatIsNot) {
  auto store = made();
  const auto refused = [&](cellar::Payload payload, std::string note = {}) {
    std::vector<cellar::Entry> entry(1);
    entry[0].payload = std::move(payload);
    entry[0].header.note = std::move(note);
    const auto result = store.append(entry);
    return !result && result.error().fault == StoreFault::refused_value;
  };
  cellar::Vented nan;
  nan.to_pressure = units::gauge_pascals(std::numeric_limits<double>::quiet_NaN());
  EXPECT_TRUE(refused(nan));
  cellar::Vented infinite;
  infinite.to_pressure = units::gauge_pascals(std::numeric_limits<double>::infinity());
  EXPECT_TRUE(refused(infinite));
  EXPECT_TRUE(refused(cellar::Noted{}, "\xff\xfe"));
  EXPECT_TRUE(refused(cellar::Noted{}, "\xc0\xaf"));
  EXPECT_TRUE(refused(cellar::Noted{}, std::string(70'000, 'a')));
  cellar::Struck nobody;
  nobody.target.uuid = numbered_uuid(99);
  EXPECT_TRUE(refused(nobody)) << "a strike of an entry that is not there";
  EXPECT_TRUE(store.load().value().empty());
}

TEST_F(JournalStoreTest, KeepsTextWithAZeroByteInIt) {
  auto store = made();
  std::vector<cellar::Entry> entry(1);
  entry[0].payload = cellar::Noted{};
  entry[0].header.note = std::string("a\0b", 3);
  ASSERT_TRUE(store.append(entry));
  EXPECT_EQ(store.load().value().at(0).header.note, std::string("a\0b", 3));
}

TEST_F(JournalStoreTest, RefusesTheSameEntryTwice) {
  auto entries = fill(3);
  auto store = opened();
  std::vector<cellar::Entry> again{entries[1]};
  const auto refused = store.append(again);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().fault, StoreFault::duplicate);
  EXPECT_EQ(store.load().value().size(), 3U);
}

TEST_F(JournalStoreTest, FindsTheEntriesAboutAThing) {
  auto store = made();
  const cellar::KegId keg{numbered_uuid(1)};
  const cellar::InstrumentId dial{numbered_uuid(2)};
  cellar::HoldReading reading;
  reading.keg = keg;
  reading.instrument = dial;
  cellar::Emptied emptied;
  emptied.keg = keg;
  std::vector<cellar::Entry> act(3);
  for (std::uint8_t i = 0; i < 3; ++i) act[i].header.id.uuid = numbered_uuid(10 + i);
  act[0].payload = reading;
  act[1].payload = cellar::Noted{};
  act[2].payload = emptied;
  ASSERT_TRUE(store.append(act));
  EXPECT_THAT(store.sequences_about(cellar::subject(keg)).value(), ::testing::ElementsAre(1, 3));
  EXPECT_THAT(store.sequences_about(cellar::subject(dial)).value(), ::testing::ElementsAre(1));
}

TEST_F(JournalStoreTest, TwoStoresOnOneFileSeeEachOther) {
  auto one = made();
  auto two = opened();
  SeededSource source(4);
  PayloadMaker maker(source);
  auto first = maker.entries(2);
  auto second = maker.entries(2);
  EXPECT_FALSE(two.changed_elsewhere().value());
  ASSERT_TRUE(one.append(first));
  EXPECT_TRUE(two.changed_elsewhere().value());
  EXPECT_FALSE(two.changed_elsewhere().value()) << "told once";
  EXPECT_FALSE(one.changed_elsewhere().value()) << "its own writing is no news";
  expect_same(two.load_after(0).value(), first);
  ASSERT_TRUE(two.append(second));
  EXPECT_TRUE(one.changed_elsewhere().value());
  expect_same(one.load_after(2).value(), second);
}

TEST_F(JournalStoreTest, LosesNoEntryWhenTwoThreadsWriteAtOnce) {
  fill(0);
  constexpr int acts = 60;
  const auto write = [&](std::uint64_t seed) {
    auto store = opened();
    SeededSource source(seed);
    PayloadMaker maker(source);
    for (int i = 0; i < acts; ++i) {
      auto act = maker.entries(3, 3);
      const auto appended = store.append(act);
      ASSERT_TRUE(appended) << why(appended);
    }
  };
  {
    const std::jthread one(write, 11);
    const std::jthread two(write, 22);
  }
  const auto loaded = opened().load();
  ASSERT_TRUE(loaded) << why(loaded);
  ASSERT_EQ(loaded->size(), 2U * acts * 3U);
  for (std::size_t i = 0; i < loaded->size(); ++i) {
    EXPECT_EQ((*loaded)[i].header.sequence, static_cast<std::int64_t>(i) + 1);
  }
}

}  // namespace
}  // namespace ullage::testing
