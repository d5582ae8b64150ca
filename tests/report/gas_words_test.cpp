// SPDX-License-Identifier: GPL-3.0-or-later
//
// The plan to find a loss, as it is read.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/gas_grounds.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

TEST(GasWords, OfTheIsolationPlanNameWhatToShutAndWhatItTells) {
  GasCellar scene;
  const BottleId second = scene.gas_bottle("Bottle 2");
  scene.gas_regulator("Bar", {}, scene.regulator);
  scene.gas_regulator("Manifold", second, scene.regulator);
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.set_gas(k, day(0, 1), 12);
  for (int week = 0; week < 4; ++week) {
    scene.weigh(day(7 * week), 2.0 - 0.3 * week);
    scene.weigh(day(7 * week, 1), 2.0 - 0.3 * week, second);
  }
  const GasAccount& a = scene.account(day(22));
  std::vector<std::string> read;
  read.reserve(a.isolation.size());
  for (const IsolationStep& s : a.isolation) read.push_back(report::say(s.what, {}));
  EXPECT_THAT(
      read,
      ElementsAre(
          "Weigh Bottle 1 now.", "Weigh Bottle 2 now.",
          AllOf(HasSubstr("Shut the bottle’s own valve"), HasSubstr("If Bottle 1 got")),
          AllOf(HasSubstr("Shut the bottle’s own valve"), HasSubstr("If Bottle 2 got")),
          AllOf(HasSubstr("Shut Bar with all that hangs on it"), HasSubstr("go on with its kegs")),
          HasSubstr("Shut Manifold with all that hangs on it"),
          AllOf(HasSubstr("Take the gas off K01"), HasSubstr("If not, put the gas back")),
          AllOf(HasSubstr("All of these off at once"),
                HasSubstr("it is the joints before them, from the bottle to Regulator 1"))));
}

TEST(GasWords, OfKegsToFillNameWhatWasTakenForGranted) {
  GasCellar scene;
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  scene.set_gas(k, day(0, 1), 12);
  scene.weigh(day(0, 2), 2.0);
  const GasAccount& a = scene.account(day(0, 3));
  const report::Grounds g = report::gas_for_kegs_grounds({3, units::litres(19)}, a, {});
  std::vector<std::string> lines;
  lines.reserve(g.inputs.size());
  for (const report::GroundsInput& i : g.inputs) lines.push_back(report::line_of(i));
  EXPECT_THAT(lines, Contains(HasSubstr("3 kegs of 19")));
  EXPECT_THAT(lines, Contains(HasSubstr("Served at 0.8 ± 0.3 bar and 4")));
  EXPECT_THAT(lines, Contains(HasSubstr("For the kegs on it")));
  EXPECT_THAT(g.notes, Contains(HasSubstr("Purging is not counted")));
  EXPECT_TRUE(report::gas_for_kegs_grounds({0, units::litres(19)}, a, {}).empty());
}

}  // namespace
}  // namespace ullage::testing
