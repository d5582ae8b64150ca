// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/exchange.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "core/store/exchange_text.h"
#include "tests/store/store_fixture.h"
#include "tests/support/payload_generator_rapid.h"

namespace ullage::testing {
namespace {

using store::from_exchange;
using store::to_exchange;
using ::testing::HasSubstr;

class ExchangeTest : public StoreTest {
 protected:
  // The problems of a text that must be refused, as sentences.
  [[nodiscard]] static std::vector<std::string> problems(std::string_view text) {
    const auto in = from_exchange(text);
    std::vector<std::string> sentences;
    EXPECT_FALSE(in) << text.substr(0, 300);
    if (in) return {"(accepted)"};
    for (const auto& problem : in.error().problems) sentences.push_back(describe(problem));
    EXPECT_FALSE(sentences.empty());
    return sentences;
  }
  [[nodiscard]] static std::string first_problem(std::string_view text) {
    return problems(text).front();
  }
  [[nodiscard]] static std::string framed(std::string_view entries) {
    return "{\"format\": \"ullage-cellar\", \"version\": 1, \"entries\": [" + std::string(entries) +
           "]}";
  }
  // A well-formed entry with something put in the place of something.
  [[nodiscard]] static std::string vented(std::string_view what = "", std::string_view with = "") {
    std::string text =
        "\n{\"sequence\": 1, \"id\": \"00000000-0000-4000-8000-000000000001\",\n"
        "\"act\": \"00000000-0000-4000-8000-000000000002\", \"kind\": \"vented\",\n"
        "\"happened_at\": \"2026-03-01T18:00:00Z\", \"recorded_at\": \"2026-03-01T18:05:00Z\",\n"
        "\"utc_offset_min\": 60, \"by\": \"ab\", \"note\": \"\",\n"
        "\"keg\": \"00000000-0000-4000-8000-000000000003\", \"to_pressure_pa\": 5}";
    if (!what.empty()) text.replace(text.find(what), what.size(), with);
    return framed(text);
  }
};

TEST_F(ExchangeTest, WritesTheDocumentedForm) {
  const auto in = from_exchange(vented());
  ASSERT_TRUE(in) << describe(in.error().problems.front());
  EXPECT_EQ(to_exchange(*in),
            "{\"format\": \"ullage-cellar\", \"version\": 1, \"entries\": [\n"
            "{\"sequence\":1,\"id\":\"00000000-0000-4000-8000-000000000001\","
            "\"act\":\"00000000-0000-4000-8000-000000000002\",\"kind\":\"vented\","
            "\"happened_at\":\"2026-03-01T18:00:00Z\",\"recorded_at\":\"2026-03-01T18:05:00Z\","
            "\"utc_offset_min\":60,\"by\":\"ab\",\"note\":\"\","
            "\"keg\":\"00000000-0000-4000-8000-000000000003\",\"to_pressure_pa\":5.0}\n]}\n");
}

RC_GTEST_FIXTURE_PROP(ExchangeTest, RoundTripsWhateverIsDrawn, ()) {
  RapidSource source;
  PayloadMaker maker(source);
  auto entries = maker.entries(8);
  std::int64_t sequence = 0;
  for (auto& entry : entries) entry.header.sequence = sequence += source.integer(1, 3);
  const std::string text = to_exchange(entries);
  const auto back = from_exchange(text);
  RC_ASSERT(back.has_value());
  RC_ASSERT(back->size() == entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) RC_ASSERT(same((*back)[i], entries[i]));
  RC_ASSERT(to_exchange(*back) == text);
}

TEST_F(ExchangeTest, RoundTripsEveryKindThroughTwoFilesByteForByte) {
  SeededSource source(6);
  PayloadMaker maker(source);
  auto entries = maker.one_of_each();
  auto from = made();
  ASSERT_TRUE(from.append(entries));
  const auto exported = store::export_to(from, file("out.json"));
  ASSERT_TRUE(exported) << why(exported);
  EXPECT_EQ(*exported, entries.size());

  auto to = made("other.ullage");
  const auto imported = store::import_from(to, file("out.json"));
  ASSERT_TRUE(imported) << describe(imported.error().problems.front());
  EXPECT_EQ(*imported, entries.size());
  expect_same(to.load().value(), entries);
  ASSERT_TRUE(store::export_to(to, file("again.json")));
  EXPECT_EQ(bytes_of(file("again.json")), bytes_of(file("out.json")));
}

TEST_F(ExchangeTest, DoublesComeBackToTheLastBit) {
  for (const double v : {0.1, 1.0 / 3.0, 5e-324, 1.7976931348623157e308, 123456.0, 0.0}) {
    cellar::Primed primed;
    primed.mass = units::kilograms(v);
    std::vector<cellar::Entry> entry(1);
    entry[0].payload = primed;
    entry[0].header.sequence = 1;
    const auto back = from_exchange(to_exchange(entry));
    ASSERT_TRUE(back) << describe(back.error().problems.front());
    EXPECT_EQ(units::in_kilograms(get<cellar::Primed>(back->at(0).payload).mass), v);
  }
}

TEST_F(ExchangeTest, IntoACellarInUseEntriesAreNumberedOn) {
  fill(3);
  auto store = opened();
  write_bytes(file("in.json"), vented());
  const auto imported = store::import_from(store, file("in.json"));
  ASSERT_TRUE(imported) << describe(imported.error().problems.front());
  EXPECT_EQ(store.load().value().back().header.sequence, 4);
  const auto again = store::import_from(store, file("in.json"));
  ASSERT_FALSE(again);
  EXPECT_EQ(describe(again.error().problems.front()),
            "Line 2, entry 1, id: This entry is in the cellar already.");
  EXPECT_EQ(store.load().value().size(), 4U);
}

TEST_F(ExchangeTest, OneBadEntryKeepsAllOut) {
  SeededSource source(6);
  auto entries = PayloadMaker(source).entries(20);
  std::int64_t sequence = 0;
  for (auto& entry : entries) entry.header.sequence = ++sequence;
  cellar::TemperatureRead impossible;
  impossible.temperature = units::kelvin(-5);
  entries[12].payload = impossible;
  entries[12].header.replaces.reset();
  write_bytes(file("in.json"), to_exchange(entries));
  auto store = made();
  const auto refused = store::import_from(store, file("in.json"));
  ASSERT_FALSE(refused);
  ASSERT_EQ(refused.error().problems.size(), 1U);
  EXPECT_EQ(describe(refused.error().problems[0]),
            "Line 14, entry 13, temperature_k: It holds a value that can never be true; the rule "
            "is: temperature_k > 0.");
  EXPECT_TRUE(store.load().value().empty());
}

TEST_F(ExchangeTest, NamesLineEntryAndFieldOfEachProblem) {
  EXPECT_EQ(first_problem(vented("\"vented\"", "\"exploded\"")),
            "Line 3, entry 1, kind: “exploded” is not a kind of entry.");
  EXPECT_EQ(first_problem(vented("\"to_pressure_pa\": 5", "\"pressure_psi\": 5")),
            "Line 6, entry 1, pressure_psi: An entry of this kind has no “pressure_psi”.");
  EXPECT_EQ(first_problem(vented("\"to_pressure_pa\": 5", "\"to_pressure_pa\": \"5\"")),
            "Line 6, entry 1, to_pressure_pa: It must be a number.");
  EXPECT_EQ(first_problem(vented("\"to_pressure_pa\": 5", "\"by\": \"me\"")),
            "Line 6, entry 1, by: It comes twice in one entry.");
  EXPECT_EQ(first_problem(vented("\"keg\": \"0000", "\"keg\": \"zzzz")),
            "Line 6, entry 1, keg: It must be an id such as "
            "\"6f1c2d5e-0000-4000-8000-000000000000\".");
  EXPECT_EQ(first_problem(vented("\"by\": \"ab\", ", "")), "Line 2, entry 1, by: It is missing.");
  EXPECT_THAT(first_problem(vented("2026-03-01T18:00:00Z", "2026-02-30T18:00:00Z")),
              HasSubstr("Line 4, entry 1, happened_at: It must be a time in UTC"));
  EXPECT_THAT(first_problem(vented("\"sequence\": 1", "\"sequence\": 1.5")),
              HasSubstr("It must be a whole number."));
  EXPECT_THAT(first_problem(vented("\"sequence\": 1", "\"sequence\": 0")),
              HasSubstr("Sequence numbers must rise; 0 follows 0."));
  EXPECT_THAT(first_problem(vented("\"to_pressure_pa\": 5", "\"to_pressure_pa\": -1e9")),
              HasSubstr("the rule is: to_pressure_pa >= -110000.0."));
  EXPECT_THAT(first_problem(vented("\"utc_offset_min\": 60", "\"utc_offset_min\": 99999")),
              HasSubstr("utc_offset_min: It is more than a day."));
}

TEST_F(ExchangeTest, ReportsEveryBadEntryNotOnlyTheFirst) {
  const std::string bad = vented("\"vented\"", "\"exploded\"");
  const std::size_t from = bad.find('[') + 1;
  const std::string entry = bad.substr(from, bad.rfind(']') - from);
  std::string three = entry;
  three += "," + entry + "," + entry;
  const auto all = problems(framed(three));
  ASSERT_EQ(all.size(), 3U);
  EXPECT_THAT(all[1], HasSubstr("entry 2"));

  std::string many = entry;
  for (int i = 0; i < 300; ++i) many += "," + entry;
  const auto refused = from_exchange(framed(many));
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().problems.size(), store::import_problem_limit);
  EXPECT_TRUE(refused.error().more);
}

TEST_F(ExchangeTest, RefusesIdsTwiceAndReferencesToNothing) {
  const std::string text = vented();
  const std::size_t from = text.find('[') + 1;
  const std::string entry = text.substr(from, text.rfind(']') - from);
  std::string second = entry;
  second.replace(second.find("\"sequence\": 1"), 13, "\"sequence\": 2");
  EXPECT_THAT(first_problem(framed(entry + "," + second)), HasSubstr("comes twice"));
  EXPECT_THAT(first_problem(vented("\"note\": \"\"",
                                   "\"note\": \"\", \"replaces\": "
                                   "\"00000000-0000-4000-8000-000000000009\"")),
              HasSubstr("replaces: There is no earlier entry"));
}

TEST_F(ExchangeTest, RefusesTheFormatsFutureAndOtherFormats) {
  std::string future = vented();
  future.replace(future.find("\"version\": 1"), 12, "\"version\": 2");
  EXPECT_THAT(first_problem(future), HasSubstr("version 2 of the format, of a later release"));
  std::string other = vented();
  other.replace(other.find("ullage-cellar"), 13, "shopping-list");
  EXPECT_EQ(first_problem(other), "Line 1: It is not an exported cellar.");
  EXPECT_THAT(first_problem("[]"), HasSubstr("not an exported cellar"));
  EXPECT_THAT(first_problem("42"), HasSubstr("Line 1"));
  EXPECT_THAT(first_problem("{}"), HasSubstr("no list of entries"));
  EXPECT_THAT(first_problem("{\"entries\": []}"), HasSubstr("does not begin with the format"));
  EXPECT_THAT(first_problem("{\"format\": \"ullage-cellar\", \"version\": 1, \"extra\": 1}"),
              HasSubstr("“extra” is no part of the format"));
}

TEST_F(ExchangeTest, SurvivesHostileText) {
  EXPECT_THAT(first_problem(""), HasSubstr("Line 1: It is not well-formed here"));
  EXPECT_THAT(first_problem("{\"format\": \"ullage-cellar\",\n\"version\": 1,\n \"entries\": [,]}"),
              HasSubstr("Line 3: It is not well-formed here"));
  std::string cut = vented();
  cut.resize(cut.size() - 30);
  EXPECT_THAT(first_problem(cut), HasSubstr("not well-formed"));
  EXPECT_THAT(first_problem(vented("\"ab\"", "\"\xff\xfe\"")), HasSubstr("Line 5"));
  EXPECT_THAT(first_problem(vented("\"ab\"", "\"\xed\xa0\x80\"")), HasSubstr("Line 5"));
  EXPECT_THAT(first_problem(vented("\"ab\"", "\"a\nb\"")), HasSubstr("not well-formed"));
  EXPECT_THAT(first_problem(vented("\"to_pressure_pa\": 5", "\"to_pressure_pa\": 1e999")),
              HasSubstr("not well-formed"));
  EXPECT_THAT(first_problem(vented("\"to_pressure_pa\": 5", "\"to_pressure_pa\": NaN")),
              HasSubstr("not well-formed"));
  EXPECT_THAT(first_problem(vented("\"sequence\": 1", "\"sequence\": 99999999999999999999")),
              HasSubstr("whole number"));
  EXPECT_THAT(first_problem(vented("\"ab\"", "\"" + std::string(70'000, 'x') + "\"")),
              HasSubstr("at most 64 KiB"));
  EXPECT_THAT(first_problem(std::string(2'000'000, '[')), HasSubstr("not an exported cellar"));
  EXPECT_THAT(first_problem(vented("\"to_pressure_pa\": 5",
                                   "\"to_pressure_pa\": " + std::string(1'000'000, '['))),
              HasSubstr("holds a list, not a plain value"));
  EXPECT_THAT(first_problem(vented("\"to_pressure_pa\": 5", "\"to_pressure_pa\": {\"a\": 1}")),
              HasSubstr("holds an object, not a plain value"));
}

// Into a cellar with entries of its own, each kind of bad file: refused as a whole,
// with the line where there is one, and not a row of it is kept.
TEST_F(ExchangeTest, HostileFilesLeaveTheCellarAsItWas) {
  fill(3);
  const std::string good = vented();
  const std::size_t from = good.find('[') + 1;
  const std::string entry = good.substr(from, good.rfind(']') - from);
  std::string second = entry;
  second.replace(second.find("\"sequence\": 1"), 13, "\"sequence\": 2");
  std::string future = good;
  future.replace(future.find("\"version\": 1"), 12, "\"version\": 9");
  const std::pair<const char*, std::string> hostile[] = {
      {"truncated", good.substr(0, good.size() - 20)},
      {"wrong type", vented("\"to_pressure_pa\": 5", "\"to_pressure_pa\": \"5\"")},
      {"duplicate id", framed(entry + "," + second)},
      {"not UTF-8", vented("\"ab\"", "\"\xff\xfe\"")},
      {"future version", future},
      {"good, then cut", framed(entry + ",").substr(0, entry.size() + 60)}};
  for (const auto& [what, text] : hostile) {
    write_bytes(file("in.json"), text);
    auto store = opened();
    const auto refused = store::import_from(store, file("in.json"));
    ASSERT_FALSE(refused) << what;
    EXPECT_FALSE(refused.error().problems.empty()) << what;
    EXPECT_GE(refused.error().problems.front().line, 1U) << what;
    EXPECT_EQ(store.load().value().size(), 3U) << what;
  }
}

// The size is asked of the file system: nothing of it is read.
TEST_F(ExchangeTest, AHugeFileIsRefusedUnread) {
  fill(3);
  write_bytes(file("in.json"), vented());
  std::filesystem::resize_file(file("in.json"), store::import_size_limit + 1);  // a hole on disk
  auto store = opened();
  const auto refused = store::import_from(store, file("in.json"));
  ASSERT_FALSE(refused);
  EXPECT_THAT(describe(refused.error().problems.front()), HasSubstr("larger than 1 GiB"));
  EXPECT_EQ(store.load().value().size(), 3U);
}

TEST_F(ExchangeTest, TakesAFileThatIsNotThereAsAProblem) {
  auto store = made();
  const auto refused = store::import_from(store, file("nowhere.json"));
  ASSERT_FALSE(refused);
  EXPECT_THAT(describe(refused.error().problems.front()), HasSubstr("There is no file"));
}

TEST_F(ExchangeTest, TimesAreReadStrictly) {
  using store::date_from_text;
  using store::instant_from_text;
  EXPECT_EQ(store::instant_text(cellar::Instant(std::chrono::seconds(0))), "1970-01-01T00:00:00Z");
  EXPECT_EQ(store::instant_text(cellar::Instant(std::chrono::seconds(-1))), "1969-12-31T23:59:59Z");
  EXPECT_EQ(instant_from_text("1969-12-31T23:59:59Z"), cellar::Instant(std::chrono::seconds(-1)));
  EXPECT_FALSE(instant_from_text("1969-12-31T24:00:00Z"));
  EXPECT_FALSE(instant_from_text("1969-12-31T23:59:60Z"));
  EXPECT_FALSE(instant_from_text("1969-12-31 23:59:59Z"));
  EXPECT_FALSE(instant_from_text("1969-12-31T23:59:59+"));
  EXPECT_FALSE(date_from_text("2025-02-29"));
  EXPECT_TRUE(date_from_text("2024-02-29"));
  EXPECT_FALSE(date_from_text("0000-01-01"));
  EXPECT_FALSE(date_from_text("2024-2-29"));
}

}  // namespace
}  // namespace ullage::testing
