// SPDX-License-Identifier: GPL-3.0-or-later
//
// Stock-taking by keyboard alone where the kegs come full: what is missing is
// registered on the way, a delivery of several kegs is one act, and what was
// registered is changed in one list.
#include "core/units/present.h"
#include "tests/journeys/desk_journey.h"
#include "ui/dialogs/register_list.h"

namespace ullage {
namespace {

class StockOfAPub : public DeskJourney {
 protected:
  void SetUp() override {
    const std::filesystem::path file = path("pub.cellar").toStdString();
    desk_.preferences().set_units(units::DisplayUnits::british());
    cellar::CellarDescribed described;
    described.name = "The Heron";
    described.time_zone = "Etc/UTC";
    ASSERT_TRUE(app::CellarSession::create(file, described, {clock_, ids_}));
    ASSERT_TRUE(desk_.open(file));
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  // From a field that chooses a thing: the last row of its list.
  void add_in(const char* field, const QString& name, const QString& form,
              std::function<void()> body) {
    typist_.fill(field, name);
    typist_.key(Qt::Key_Tab);  // nothing is called that
    typist_.expect(form, std::move(body));
    ASSERT_TRUE(typist_.tab_to(field));
    typist_.key(Qt::Key_End);
    typist_.key(Qt::Key_Down, Qt::AltModifier);
    typist_.key(Qt::Key_End);
    typist_.key(Qt::Key_Return);
  }
  void cold_room() {
    task("place", "form_place_record", [this] {
      typist_.fill("name", "Cold room");
      typist_.fill("set_temperature_k", "4 C");
      log_it();
    });
  }
  void thermometer() {
    task("instrument", "form_instrument_record", [this] {
      typist_.fill("name", "Probe");
      typist_.choose("instrument_kind", "Thermometer");
      log_it();
    });
  }
  template <class Record>
  [[nodiscard]] const Record& only(const std::vector<Record>& records) const {
    EXPECT_EQ(records.size(), 1U);
    static const Record none;
    return records.empty() ? none : records.front();
  }
};

TEST_F(StockOfAPub, AFullKegComesInBeforeAnythingOfItIsRegistered) {
  cold_room();
  task("received", "form_received", [this] {
    add_in("keg", "S1", "form_keg_record", [this] { log_it(); });  // its tag came along
    add_in("batch", "G1186", "form_batch_record", [this] {
      add_in("beer", "Heron Pale", "form_beer_record", [this] {
        typist_.fill("style", "English ordinary bitter");
        log_it();
      });
      log_it();
    });
    typist_.fill("best_by_day", "1 Mar 2199");
    typist_.fill("temperature_k", "11 C");
    typist_.choose("Seal intact", "Yes");
    log_it();
  });
  const cellar::KegStatus keg = this->keg("S1");
  ASSERT_TRUE(keg.contents);
  EXPECT_EQ(keg.record.owner, cellar::Owner::supplier);
  EXPECT_EQ(present(keg.contents).beer.name, "Heron Pale");
  EXPECT_EQ(present(keg.contents).batch_record.name, "G1186");
  EXPECT_EQ(present(keg.contents).batch_record.origin, cellar::BatchOrigin::delivered);
  // Judged by date, seal and hours in the cold, not by how it was prepared.
  EXPECT_EQ(keg.readiness.kind, cellar::ReadinessKind::ready_at);
  ASSERT_TRUE(keg.readiness.when);
  EXPECT_GE(present(keg.readiness.when).likely, cellar().now() + std::chrono::hours(23));
}

TEST_F(StockOfAPub, ADeliveryOfSeveralKegsIsOneActAndOneUndo) {
  cold_room();
  typist_.expect("register_kegs", [this] {
    typist_.keys("S1..S6");
    log_it();
  });
  typist_.chord("Ctrl+Shift+K");
  typist_.finish();
  task("beer", "form_beer_record", [this] {
    typist_.fill("name", "Heron Pale");
    log_it();
  });
  task("batch", "form_batch_record", [this] {
    typist_.fill("beer", "heron");
    typist_.fill("name", "G1186");
    log_it();
  });
  const std::size_t before = cellar().journal().entries().size();
  task("received s1", "form_received", [this] {
    typist_.fill("batch", "heron");
    typist_.fill("also_kegs", "S2..S5, S9");
    log_it();
    EXPECT_EQ(testing::Typist::spoken(), "And of kegs");  // S9 is not there
    typist_.fill("also_kegs", "S2..S6");
    log_it();
  });
  ASSERT_EQ(cellar().journal().entries().size(), before + 6);
  const auto& entries = cellar().journal().entries();
  for (std::size_t i = before; i < entries.size(); ++i) {
    EXPECT_EQ(entries[i].header.act, entries[before].header.act);
    EXPECT_TRUE(holds_alternative<cellar::Received>(entries[i].payload));
  }
  for (const char* tag : {"S1", "S2", "S6"}) EXPECT_TRUE(keg(tag).contents) << tag;
  typist_.chord("Ctrl+Z");
  for (const char* tag : {"S1", "S2", "S6"}) EXPECT_FALSE(keg(tag).contents) << tag;
}

// Its usual errors stand in the form, and another kind brings its own.
TEST_F(StockOfAPub, AnInstrumentStartsWithTheErrorsOfItsKind) {
  task("instrument", "form_instrument_record", [this] {
    typist_.fill("name", "Dial 1");
    typist_.fill("pressure_bias_pa", "1 psi");
    log_it();
  });
  const cellar::InstrumentRecord dial = only(cellar().status()->instruments);
  EXPECT_EQ(dial.instrument_kind, cellar::InstrumentKind::regulator_dial);
  // Defaults of the design: a 0-60 psi dial repeats within 0.5 psi (common practice, no source).
  ASSERT_TRUE(dial.pressure_bias && dial.pressure_repeatability);
  EXPECT_NEAR(units::in_psi(present(dial.pressure_bias)), 1, 1e-9);
  EXPECT_NEAR(units::in_psi(present(dial.pressure_repeatability)), 0.5, 1e-6);
  thermometer();
  const auto instruments = cellar().status()->instruments;
  ASSERT_EQ(instruments.size(), 2U);
  const auto probe = std::find_if(instruments.begin(), instruments.end(),
                                  [](const auto& i) { return i.name == "Probe"; });
  ASSERT_NE(probe, instruments.end());
  EXPECT_FALSE(probe->pressure_bias);
  ASSERT_TRUE(probe->temperature_bias);
  EXPECT_NEAR(units::in_kelvin(*probe->temperature_bias), 0.5, 1e-6);
}

TEST_F(StockOfAPub, WhatIsRegisteredIsChangedInOneListAndTheLogKeepsWhatItWas) {
  thermometer();
  const cellar::InstrumentRecord before = only(cellar().status()->instruments);
  typist_.expect("register_list", [this] {
    typist_.keys("probe");
    typist_.expect("form_instrument_record", [this] {
      typist_.fill("temperature_bias_k", "0.2");
      log_it();
    });
    typist_.push("register_change");
    typist_.push("register_use");
    typist_.key(Qt::Key_Escape);
  });
  menu("Alt+R", "e");
  typist_.finish();
  const cellar::InstrumentRecord after = only(cellar().status()->instruments);
  EXPECT_EQ(after.instrument, before.instrument);
  ASSERT_TRUE(after.temperature_bias);
  EXPECT_NEAR(units::in_kelvin(present(after.temperature_bias)), 0.2, 1e-9);
  EXPECT_FALSE(after.in_use);
  EXPECT_EQ(cellar().journal().story(cellar::subject(before.instrument)).size(), 3U);
}

}  // namespace
}  // namespace ullage
