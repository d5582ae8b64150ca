// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bad practice that happened is a fact: it is logged, and a banner stays on the
// keg until it is put right. By keyboard, through the window.
#include <QPointer>

#include "core/cellar/presets.h"
#include "core/units/present.h"
#include "tests/journeys/desk_journey.h"
#include "ui/widgets/banner.h"

namespace ullage {
namespace {

class BadPractice : public DeskJourney {
 protected:
  // The headlines of the banners beside the keg, as the page shows them.
  [[nodiscard]] QStringList banners_of(std::string_view tag) const {
    window().show_keg(keg(tag).record.keg);
    QApplication::processEvents();
    QStringList headlines;
    for (const auto* banner :
         window().findChild<QWidget*>("keg_panel")->findChildren<ui::Banner*>()) {
      if (banner->isVisible()) headlines << banner->headline();
    }
    return headlines;
  }
  [[nodiscard]] bool warned(std::string_view tag, const char* words) const {
    const QStringList all = banners_of(tag);
    return std::any_of(all.begin(), all.end(),
                       [&](const QString& each) { return each.contains(QLatin1String(words)); });
  }
  void look_elsewhere_and_open_again() {
    typist_.chord("Ctrl+3");
    desk_.close(&window());
    ASSERT_TRUE(desk_.open(path("home.cellar").toStdString()));
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  void fill(const char* words, std::string_view batch_of) {
    const auto status = cellar().status();
    const cellar::BatchId in_it = present(keg(batch_of).contents).batch;
    const auto found = std::find_if(status->batches.begin(), status->batches.end(),
                                    [&](const auto& each) { return each.batch == in_it; });
    ASSERT_NE(found, status->batches.end());
    const QString batch = QString::fromStdString(found->name);
    task(words, "form_filled", [this, batch] {
      typist_.fill("batch", batch);
      typist_.fill("beer_volume_m3", "18 L");
      typist_.fill("temperature_k", "4 C");
      log_it();
    });
  }
  void an_hour_ago(const char* words, const QString& form) {
    task(words, form, [this] {
      typist_.fill("when", "1 h ago");
      log_it();
    });
  }
  // Empty and not clean, registered just now.
  void register_keg(const char* tag, units::GaugePressure rated) {
    cellar::KegRecord record = cellar::keg_from_preset(cellar::KegKind::ball_lock_19);
    record.keg = cellar().fresh<cellar::KegId>();
    record.tag = tag;
    record.rated_pressure = rated;
    const cellar::Instant then = cellar().now() - std::chrono::hours(24);
    ASSERT_TRUE(cellar().log({{{cellar::Payload(record), then, {}, {}},
                               {cellar::Payload(cellar::Emptied{record.keg}), then, {}, {}}},
                              "MK"}));
  }
};

TEST_F(BadPractice, AnUncleanedKegThatWasFilledIsWarnedOfUntilItsCleaningIsLogged) {
  open_demo_file();
  register_keg("K77", units::gauge_psi(130));
  fill("filled k77", "K01");
  ASSERT_TRUE(keg("K77").contents);
  EXPECT_TRUE(warned("K77", "no cleaning is logged")) << banners_of("K77").join("|").toStdString();
  look_elsewhere_and_open_again();
  EXPECT_TRUE(warned("K77", "no cleaning is logged"));
  an_hour_ago("cleaned k77", "form_cleaned");
  EXPECT_FALSE(warned("K77", "no cleaning is logged"));
  EXPECT_TRUE(warned("K77", "no sanitising is logged"));
  an_hour_ago("sanitised k77", "form_sanitised");
  EXPECT_FALSE(warned("K77", "no sanitising is logged"));
}

TEST_F(BadPractice, MoreThanItsRatingIsADangerUntilLoweredVentedAndLookedOver) {
  open_demo_file();
  register_keg("K77", units::gauge_psi(20));
  const auto set_gas = [&](const char* pressure, bool told_before) {
    task("gas k77", "form_gas_set", [this, pressure, told_before] {
      typist_.fill("pressure_pa", QString::fromLatin1(pressure));
      const auto* warning = QApplication::activeModalWidget()->findChild<QWidget*>("warning");
      EXPECT_EQ(QTest::qWaitFor([&] { return warning->isVisible(); }, told_before ? 3000 : 800),
                told_before);
      log_it();
    });
  };
  set_gas("30 psi", true);  // it is told before it is logged, and logged all the same
  EXPECT_NEAR(units::in_psi(keg("K77").gas.set.value_or(units::gauge_psi(0))), 30, 0.001);
  EXPECT_TRUE(warned("K77", "above its rated 20 psi: let it down"))
      << banners_of("K77").join("|").toStdString();
  look_elsewhere_and_open_again();
  EXPECT_TRUE(warned("K77", "above its rated 20 psi: let it down"));
  set_gas("10 psi", true);
  EXPECT_TRUE(warned("K77", "above its rated 20 psi: let it down")) << "lowering does not vent";
  task("vented k77", "form_vented", [this] { log_it(); });
  EXPECT_FALSE(warned("K77", "let it down"));
  EXPECT_TRUE(warned("K77", "look it over"));
  task("inspected k77", "form_inspected", [this] { log_it(); });
  EXPECT_FALSE(warned("K77", "look it over")) << banners_of("K77").join("|").toStdString();
}

TEST_F(BadPractice, AFullKegFilledAgainIsADangerUntilItWasEmptiedBetween) {
  open_demo_file();
  ASSERT_TRUE(keg("K01").contents);
  fill("filled k01", "K01");
  EXPECT_TRUE(warned("K01", "Filled on top of what was in it"))
      << banners_of("K01").join("|").toStdString();
  look_elsewhere_and_open_again();
  EXPECT_TRUE(warned("K01", "Filled on top of what was in it"));
  an_hour_ago("empty k01", "form_emptied");
  EXPECT_FALSE(warned("K01", "Filled on top of what was in it"));
}

}  // namespace
}  // namespace ullage
