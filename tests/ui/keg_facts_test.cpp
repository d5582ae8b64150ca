// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is known of a keg, in its panel: every number opens its reasons.
#include <map>

#include "tests/ui/kegs_fixture.h"
#include "ui/pages/keg_panel_facts.h"
#include "ui/widgets/figure.h"

namespace ullage::testing {
namespace {

class KegFactsWindow : public KegsWindow {
 protected:
  // As shown, by the text of each number.
  std::map<QString, const ui::Figure*> figures(const char* section) {
    std::map<QString, const ui::Figure*> shown;
    for (const ui::Figure* each : part<QWidget>(section)->findChildren<ui::Figure*>())
      if (each->isVisible()) shown[each->text()] = each;
    return shown;
  }
  static const ui::Figure* having(const std::map<QString, const ui::Figure*>& all,
                                  const char* words) {
    for (const auto& [text, figure] : all)
      if (text.contains(QString::fromUtf8(words))) return figure;
    return nullptr;
  }
};

TEST_F(KegFactsWindow, EveryNumberOpensItsReasons) {
  cellar::CellarStatus status = sample_cellar();
  for (cellar::KegStatus& keg : status.kegs) {
    if (keg.record.tag != "K01") continue;
    const cellar::UptakeBand band{units::days(2), units::days(4), units::days(8)};
    keg.co2.uptake = cellar::UptakeRate{band, band, 0, true};
    keg.level.runs_out = cellar::Window{days_on(3), days_on(4), days_on(6)};
    keg.hold_result = words("Held 30 psi for 2 days");
    for (cellar::PreparationStep& step : keg.preparation) {
      if (step.kind == "purged")
        step.result = cellar::message(cellar::MessageKey::step_purged_swept, 800.0, 2000.0);
    }
  }
  cellar_.show(std::move(status));
  open();
  for (int row = 0; row < table()->model()->rowCount(); ++row) {
    const QModelIndex at = table()->model()->index(row, 0);
    if (at.data().toString() == "K01") table()->setCurrentIndex(at);
  }
  ASSERT_EQ(chosen_tag(), "K01");
  const auto facts = figures("facts");
  for (const char* each : {"30 psi", "two thirds of what is missing", "four times in five",
                           "Held 30 psi", "to hold its CO₂"}) {
    const ui::Figure* figure = having(facts, each);
    ASSERT_NE(figure, nullptr) << each;
    ASSERT_TRUE(figure->has_reasons()) << each;
    EXPECT_FALSE(figure->grounds().empty()) << each;
    EXPECT_FALSE(figure->grounds().equation.empty()) << each;
  }
  const ui::Figure* oxygen = having(figures("preparation"), "ppm oxygen left");
  ASSERT_NE(oxygen, nullptr);
  EXPECT_EQ(oxygen->grounds().section, report::laws::purging.section);
}

}  // namespace
}  // namespace ullage::testing
