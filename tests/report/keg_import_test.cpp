// SPDX-License-Identifier: GPL-3.0-or-later
//
// A list of kegs from a CSV file: what is read, and what refuses the whole file.
#include "core/report/keg_import.h"

#include <gmock/gmock.h>

#include "core/report/cellar_lists.h"
#include "core/units/present.h"
#include "tests/report/book.h"

namespace ullage::testing {
namespace {

using report::KegField;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

struct KegImport : ::testing::Test {
  Scenario s;
  PlaceId box = s.place("Cold box", 3.0);
  KegId known = s.keg("K01", box);
  CellarStatus now = s.cellar(day(0));
  units::Parser parser{units::DisplayUnits::metric(), {}};

  [[nodiscard]] std::vector<report::PlannedKeg> read(const std::string& text) const {
    const auto file = report::read_csv(text);
    EXPECT_TRUE(file) << report::say(file.error());
    if (!file) return {};
    const auto plan = report::plan_kegs(*file, report::matched_columns(file->header), now, parser);
    EXPECT_TRUE(plan) << plan.error().front().words;
    return plan ? *plan : std::vector<report::PlannedKeg>{};
  }
  [[nodiscard]] std::vector<std::string> refused(const std::string& text) const {
    const auto file = report::read_csv(text);
    EXPECT_TRUE(file);
    const auto plan = report::plan_kegs(*file, report::matched_columns(file->header), now, parser);
    EXPECT_FALSE(plan);
    std::vector<std::string> words;
    if (!plan) {
      for (const auto& fault : plan.error()) words.push_back(fault.words);
    }
    return words;
  }
};

TEST_F(KegImport, ReadsUnitsFromTheHeadingTheFieldOrTheReader) {
  const auto kegs = read(
      "Keg no.,Kind,Tare (lb),Rated_psi,Brimful,Place,Owner,Deposit\n"
      "K07,ball_lock_19,10,130,19.5,cold box,ours,\n"
      "K08,Ball lock 19,4.5 kg,9 bar,5.2 gal,,supplier,40.00\n");
  ASSERT_EQ(kegs.size(), 2U);
  EXPECT_EQ(kegs[0].line, 2U);
  EXPECT_EQ(kegs[0].keg.tag, "K07");
  // A pound is 0.45359237 kg exactly; 130 psi are 896.3 kPa; both by definition.
  EXPECT_NEAR(units::in_kilograms(present(kegs[0].keg.tare)), 4.5359237, 1e-9);
  EXPECT_NEAR(units::in_pascals(present(kegs[0].keg.rated_pressure)), 896318, 1);
  EXPECT_NEAR(units::in_litres(kegs[0].keg.brimful), 19.5, 1e-9);
  EXPECT_EQ(kegs[0].keg.place, box);
  EXPECT_NEAR(units::in_kilograms(present(kegs[1].keg.tare)), 4.5, 1e-9);
  EXPECT_NEAR(units::in_pascals(present(kegs[1].keg.rated_pressure)), 900000, 1);
  // A US gallon is 3.785411784 L exactly.
  EXPECT_NEAR(units::in_litres(kegs[1].keg.brimful), 19.6841412768, 1e-8);
  EXPECT_EQ(kegs[1].keg.owner, Owner::supplier);
  EXPECT_EQ(kegs[1].keg.deposit_minor, 4000);
}

TEST_F(KegImport, TellsTheKindByASizeThatOneKindHas) {
  const auto kegs = read("tag;size\nP1;50 L\nP2;30\n");
  ASSERT_EQ(kegs.size(), 2U);
  EXPECT_EQ(kegs[0].keg.keg_kind, KegKind::keg_50);
  EXPECT_EQ(kegs[1].keg.keg_kind, KegKind::keg_30);
  EXPECT_THAT(refused("tag,size\nK7,19 L\n"), ElementsAre(HasSubstr("Line 2: more than one kind")));
  const auto posts = read("tag,size,posts\nK7,19 L,pin lock\n");
  EXPECT_EQ(posts.front().keg.keg_kind, KegKind::pin_lock_19);
}

TEST_F(KegImport, ReadsBackWhatWasExported) {
  const Book book;
  const CellarStatus told = Replay(book.journal(), book.s.calendar).status(Book::now());
  const std::string csv = report::csv_of(report::keg_list(told, book.speaker(), ""));
  const auto file = report::read_csv(csv);
  ASSERT_TRUE(file) << report::say(file.error());
  CellarStatus empty = told;
  empty.kegs.clear();
  const auto plan = report::plan_kegs(*file, report::matched_columns(file->header), empty, parser);
  ASSERT_TRUE(plan) << plan.error().front().words;
  ASSERT_EQ(plan->size(), told.kegs.size());
  for (std::size_t i = 0; i < plan->size(); ++i) {
    const KegRecord& was = told.kegs[i].record;
    const KegRecord& is = (*plan)[i].keg;
    EXPECT_EQ(is.tag, was.tag);
    EXPECT_EQ(is.keg_kind, was.keg_kind);
    EXPECT_EQ(is.owner, was.owner);
    if (!told.kegs[i].lent_to) {
      EXPECT_EQ(is.place, was.place);
    }
    EXPECT_EQ(is.coupler, was.coupler);
    // Exported to a thousandth.
    EXPECT_NEAR(units::in_litres(is.brimful), units::in_litres(was.brimful), 5e-4);
    EXPECT_NEAR(units::in_kilograms(present(is.tare)), units::in_kilograms(present(was.tare)),
                5e-4);
  }
}

TEST_F(KegImport, OneBadLineRefusesTheWholeFileAndEveryFaultIsToldWithItsLine) {
  const auto faults = refused(
      "tag,kind,tare_kg,place,owner,deposit\n"
      "K02,ball_lock_19,4.1,Cold box,ours,\n"
      "K02,ball_lock_19,4.1,,,\n"
      "k01,ball_lock_19,4.1,,,\n"
      ",ball_lock_19,4.1,,,\n"
      "K05,barrel,4.1,,,\n"
      "K06,ball_lock_19,30 psi,,,\n"
      "K07,ball_lock_19,-4,,,\n"
      "K08,ball_lock_19,,Attic,,\n"
      "K09,ball_lock_19,,,mine,\n"
      "K10,ball_lock_19,,,,lots\n"
      "K11,,,,,\n"
      "A number far too long,ball_lock_19,,,,\n"
      "K12,custom,,,,\n");
  EXPECT_THAT(faults,
              ElementsAre(AllOf(HasSubstr("Line 3"), HasSubstr("first in line 2")),
                          AllOf(HasSubstr("Line 4"), HasSubstr("registered already")),
                          AllOf(HasSubstr("Line 5"), HasSubstr("no number")),
                          AllOf(HasSubstr("Line 6"), HasSubstr("barrel")), HasSubstr("Line 7"),
                          HasSubstr("Line 8"), AllOf(HasSubstr("Line 9"), HasSubstr("Attic")),
                          AllOf(HasSubstr("Line 10"), HasSubstr("mine")),
                          AllOf(HasSubstr("Line 11"), HasSubstr("lots")),
                          AllOf(HasSubstr("Line 12"), HasSubstr("neither")),
                          AllOf(HasSubstr("Line 13"), HasSubstr("at most")),
                          AllOf(HasSubstr("Line 14"), HasSubstr("full volume"))));
}

TEST_F(KegImport, FaultsAreCountedNoFurtherThanAnybodyReads) {
  std::string text = "tag,kind\n";
  for (int i = 0; i < 4000; ++i) text += "K,nonsense\n";
  EXPECT_LE(refused(text).size(), report::most_import_faults);
}

TEST_F(KegImport, AsksForTheColumnOfTheNumbers) {
  EXPECT_THAT(refused("what,kind\nK1,ball_lock_19\n"), ElementsAre(HasSubstr("choose one")));
}

TEST_F(KegImport, AColumnIsMatchedToOneFieldAndTheFirstWins) {
  const auto columns = report::matched_columns({1, {"Tag", "tag", "Empty weight (kg)", "colour"}});
  EXPECT_EQ(columns[static_cast<std::size_t>(KegField::tag)], 0U);
  EXPECT_EQ(columns[static_cast<std::size_t>(KegField::tare)], 2U);
  EXPECT_FALSE(columns[static_cast<std::size_t>(KegField::place)]);
}

}  // namespace
}  // namespace ullage::testing
