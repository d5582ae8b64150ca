// SPDX-License-Identifier: GPL-3.0-or-later
//
// Too much CO2, through the real window: the card tells how many vents, its button
// logs one in the form, and the card says what remains.
#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <memory>

#include "core/units/present.h"
#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/pages/keg_panel_card.h"
#include "ui/widgets/figure.h"

namespace ullage {
namespace {

class RescueJourney : public DemoJourney {
 protected:
  RescueJourney() : DemoJourney(QStringLiteral("MK"), {1280, 860}) {}
  // A keg of the demo that stands empty, found half full of beer with far too much CO2.
  void find_one_over_carbonated() {
    const auto status = cellar_->status();
    const cellar::KegStatus* empty = nullptr;
    const cellar::KegStatus* other = nullptr;
    for (const cellar::KegStatus& k : status->kegs) {
      if (!k.contents && k.place && k.registered_now && !k.lent_to && empty == nullptr) empty = &k;
      if (k.contents && k.co2.target_high && k.co2.target_high->count() < 3) other = &k;
    }
    ASSERT_TRUE(empty != nullptr && other != nullptr);
    keg_ = empty->record.keg;
    cellar::Found found{.keg = keg_};
    found.contents = cellar::FoundContents::beer;
    found.batch = present(other->contents).batch;
    found.volume = empty->record.nominal * 0.5;
    const cellar::PlaceStatus* place = status->find(present(empty->place).place);
    ASSERT_TRUE(place != nullptr && place->temperature);
    found.temperature = place->temperature;  // so that nothing warms or cools meanwhile
    found.co2 = units::to_concentration(units::volumes_of_co2(3.9));
    cellar::Act act;
    act.by = "MK";
    act.drafts.push_back({found, cellar_->now() - std::chrono::minutes(5), {}, {}});
    ASSERT_TRUE(cellar_->log(act));
  }
  [[nodiscard]] ui::KegPanelCard* card() const {
    return window_->findChild<ui::KegPanelCard*>(QStringLiteral("rescue"));
  }
  [[nodiscard]] QString verdict() const {
    return card()->findChild<QLabel*>(QStringLiteral("rescue_verdict"))->text();
  }
  [[nodiscard]] int vents(const QString& name) const {
    for (const ui::Figure* f : card()->findChildren<ui::Figure*>()) {
      if (f->isVisible() && f->grounds().name == name.toStdString())
        return f->text().section(' ', 0, 0).toInt();
    }
    return -1;
  }

  cellar::KegId keg_;
};

TEST_F(RescueJourney, FromTheCardToALoggedVentToWhatRemains) {
  find_one_over_carbonated();
  window_->show_keg(keg_);
  ASSERT_NE(card(), nullptr);
  ASSERT_TRUE(card()->isVisible());
  const int before = vents(QStringLiteral("Vents"));
  ASSERT_GE(before, 2) << verdict().toStdString();
  const std::size_t entries = cellar_->journal().entries().size();

  // The form is modal: it is logged from within.
  QTimer::singleShot(0, [&] {
    ui::EntryForm* form = nullptr;
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return (form = window_->findChild<ui::EntryForm*>()) != nullptr; }));
    EXPECT_TRUE(form->log()) << form->refusal().toStdString();
    if (form->isVisible()) form->reject();
  });
  QTest::mouseClick(card()->findChild<QPushButton*>(QStringLiteral("rescue_vented")),
                    Qt::LeftButton);
  ASSERT_EQ(cellar_->journal().entries().size(), entries + 1);
  const auto& logged = cellar_->journal().entries().back().payload;
  ASSERT_TRUE(holds_alternative<cellar::Vented>(logged));
  EXPECT_EQ(get<cellar::Vented>(logged).to_pressure, units::gauge_psi(0));

  ASSERT_TRUE(card()->isVisible());
  EXPECT_TRUE(verdict().startsWith("Vented 1 time")) << verdict().toStdString();
  EXPECT_TRUE(verdict().contains("wait until about")) << verdict().toStdString();
  EXPECT_EQ(vents(QStringLiteral("Vents still to do")), before - 1) << verdict().toStdString();

  // Undone, all of it is to do again.
  window_->run(ui::Command::undo);
  EXPECT_EQ(vents(QStringLiteral("Vents")), before);
}

}  // namespace
}  // namespace ullage
