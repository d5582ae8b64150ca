// SPDX-License-Identifier: GPL-3.0-or-later
//
// A foamy line through the real window: advice, what-if, the change applied, the
// timed pour that settles it.
#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <memory>

#include "app/demo_cellar.h"
#include "app/surroundings.h"
#include "core/cellar/pour_state.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/main_window.h"
#include "ui/pages/line_panel.h"
#include "ui/pages/lines_page.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage {
namespace {

class FoamyLine : public ::testing::Test {
 protected:
  void SetUp() override {
    auto made = app::make_demo(folder_.filePath(QStringLiteral("demo.cellar")).toStdString(),
                               {clock_, ids_});
    ASSERT_TRUE(made);
    cellar_ = std::move(*made);
    own_.preferences.set_initials(QStringLiteral("MK"));
    window_ =
        std::make_unique<ui::MainWindow>(*cellar_, own_.preferences, prompts_, ui::AppCommands{});
    window_->resize(1280, 860);
    window_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
  }

  // The first line of the demo that has a keg and pours.
  [[nodiscard]] cellar::LineStatus line() const {
    for (const cellar::LineStatus& each : cellar_->status()->lines)
      if (each.pour && !each.do_not_serve() && (!id_ || each.record.line == *id_)) return each;
    ADD_FAILURE() << "no line pours";
    return {};
  }
  void log(cellar::Payload payload) {
    cellar::Act act;
    act.by = "MK";
    act.drafts.push_back({std::move(payload), cellar_->now(), {}, {}});
    ASSERT_TRUE(cellar_->log(act));
  }
  [[nodiscard]] QStringList advised() const {
    QStringList said;
    for (const auto* banner : page()->findChildren<ui::Banner*>())
      if (banner->isVisible()) said << banner->headline();
    return said;
  }
  [[nodiscard]] ui::LinesPage* page() const {
    auto* found = window_->findChild<ui::LinesPage*>(QStringLiteral("lines_page"));
    EXPECT_NE(found, nullptr);
    return found;
  }

  QTemporaryDir folder_;
  app::SystemClock clock_;
  app::RandomIds ids_;
  testing::OwnPreferences own_;
  testing::QueuedPrompts prompts_;
  std::unique_ptr<app::CellarSession> cellar_;
  std::unique_ptr<ui::MainWindow> window_;
  std::optional<cellar::LineId> id_;
};

TEST_F(FoamyLine, FromAdviceToWhatIfToChangeToTimedPour) {
  // Somebody fitted a short wide hose: it gushes.
  const cellar::LineStatus before = line();
  id_ = before.record.line;
  cellar::LineRecord wide = before.record;
  wide.length = units::metres(0.6);
  wide.bore = units::millimetres(8);
  for (const cellar::SegmentRecord& piece : cellar_->status()->segments) {
    if (piece.line != *id_) continue;
    cellar::SegmentRecord gone = piece;
    gone.in_use = false;
    log(cellar::Payload(gone));
  }
  log(cellar::Payload(wide));
  window_->show_page(ui::PageId::lines);
  page()->show_line(*id_);
  const QString said = advised().join(QLatin1Char('|'));
  EXPECT_TRUE(said.contains("too fast")) << said.toStdString();

  // Try a narrower, longer hose, with the keys; nothing is written yet.
  const std::size_t entries = cellar_->journal().entries().size();
  auto* bore = page()->findChild<ui::QuantitySlider*>(QStringLiteral("try_bore"));
  auto* length = page()->findChild<ui::QuantitySlider*>(QStringLiteral("try_length"));
  ASSERT_TRUE(bore && length);
  bore->set_value(4.8e-3);
  length->set_value(2.0);
  EXPECT_EQ(cellar_->journal().entries().size(), entries);
  EXPECT_FALSE(advised().join(QLatin1Char('|')).contains("too fast"));

  // Apply: one act, one undo.
  prompts_.confirmations = {true};
  QTest::mouseClick(page()->findChild<QPushButton*>(QStringLiteral("apply_what_if")),
                    Qt::LeftButton);
  EXPECT_EQ(cellar_->journal().entries().size(), entries + 1);
  EXPECT_NEAR(units::in_metres(*line().record.length), 2.0, 1e-6);
  EXPECT_NEAR(units::in_millimetres(*line().record.bore), 4.8, 1e-6);
  EXPECT_FALSE(advised().join(QLatin1Char('|')).contains("too fast"));

  // Time a pour with the form; the page believes it from then on.
  ASSERT_EQ(line().pour->setting.timed_pours, 0);
  cellar::TimedPour pour;
  pour.line = *id_;
  pour.volume = units::litres(0.5);
  pour.duration = units::seconds(11);
  log(cellar::Payload(pour));
  const cellar::LineStatus after = line();
  EXPECT_EQ(after.pour->setting.timed_pours, 1);
  const double glass = units::in_litres(after.pour->setting.glass);
  EXPECT_NEAR(units::in_seconds(after.pour->outlook.glass_time->likely), 11 * glass / 0.5, 0.1);
}

}  // namespace
}  // namespace ullage
