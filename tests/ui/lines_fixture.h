// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Lines page over a cellar told entry by entry, which logs nothing.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QSlider>
#include <QTableWidget>
#include <QTest>
#include <cmath>
#include <memory>

#include "tests/cellar/pour_scene.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "ui/pages/lines_page.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage::testing {

class LinesWindow : public ::testing::Test {
 protected:
  LinesWindow() { ui::dress(ui::light_theme()); }

  void open(QSize size = {1240, 820}) {
    own_.preferences.set_units(units::DisplayUnits::us());
    own_.preferences.set_words(report::RegionalWords::us);
    page_ = std::make_unique<ui::LinesPage>(context_);
    page_->resize(size);
    page_->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
  }
  void tell(Instant when = day(22)) { cellar_.show(scene_.cellar(when)); }

  template <class Widget>
  [[nodiscard]] Widget* part(const char* name) const {
    auto* found = page_->findChild<Widget*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  [[nodiscard]] QString cell(int row, int column) const {
    return part<QTableWidget>("lines_table")->item(row, column)->text();
  }
  void slide(const char* name, int steps) {
    auto* slider = part<ui::QuantitySlider>(name)->slider();
    slider->setFocus();
    for (int i = 0; i < std::abs(steps); ++i)
      QTest::keyClick(slider, steps > 0 ? Qt::Key_Right : Qt::Key_Left);
  }

  PourScene scene_;
  FakeFacade cellar_{scene_.cellar(day(22))};
  OwnPreferences own_;
  RecordingNavigator navigator_;
  QueuedPrompts prompts_;
  ui::Context context_{cellar_, own_.preferences, prompts_, navigator_};
  std::unique_ptr<ui::LinesPage> page_;
};

}  // namespace ullage::testing
