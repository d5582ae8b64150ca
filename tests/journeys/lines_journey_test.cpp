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
#include <QSlider>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <cmath>
#include <memory>

#include "core/cellar/pour_state.h"
#include "core/units/present.h"
#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/pages/line_panel.h"
#include "ui/pages/lines_page.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/quantity_edit.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage {
namespace {

class FoamyLine : public DemoJourney {
 protected:
  FoamyLine() : DemoJourney(QStringLiteral("MK"), {1280, 860}) {}
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

  // To the nearest step of the control, by the arrow keys.
  void slide_to(const char* name, double value) const {
    auto* control = page()->findChild<ui::QuantitySlider*>(QLatin1String(name));
    ASSERT_NE(control, nullptr) << name;
    control->slider()->setFocus();
    QTest::keyClick(control->slider(), Qt::Key_Left);
    for (int guard = 0; guard < 200; ++guard) {
      const double at = present(control->value());
      QTest::keyClick(control->slider(), at < value ? Qt::Key_Right : Qt::Key_Left);
      if ((at < value) != (present(control->value()) < value)) break;
    }
    if (std::abs(present(control->value()) - value) > 1e-6)
      QTest::keyClick(control->slider(),
                      present(control->value()) < value ? Qt::Key_Right : Qt::Key_Left);
    EXPECT_NEAR(present(control->value()), value, 1e-6);
  }
  void fill_the_timed_pour() {
    ui::EntryForm* form = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] {
      form = window_->findChild<ui::EntryForm*>(QStringLiteral("form_timed_pour"));
      return form != nullptr && form->isVisible();
    }));
    const auto type = [form](const char* field, const char* text) {
      auto* edit = form->findChild<ui::QuantityEdit*>(QLatin1String(field));
      ASSERT_NE(edit, nullptr) << field;
      QTest::mouseClick(edit->line_edit(), Qt::LeftButton);
      edit->select_all();
      QTest::keyClicks(edit->line_edit(), QLatin1String(text));
      QTest::keyClick(edit->line_edit(), Qt::Key_Tab);
    };
    type("volume_m3", "0.5 L");
    type("duration_s", "11 s");
    QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("log_it")), Qt::LeftButton);
    EXPECT_TRUE(form->refusal().isEmpty()) << form->refusal().toStdString();
    if (form->isVisible()) {
      prompts_leave();
      form->reject();
    }
  }
  void prompts_leave() { prompts_.confirmations = {true}; }

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

  // Try a narrower, longer hose, with the arrow keys; nothing is written yet.
  const std::size_t entries = cellar_->journal().entries().size();
  slide_to("try_bore", 4.8e-3);
  slide_to("try_length", 2.0);
  EXPECT_EQ(cellar_->journal().entries().size(), entries);
  EXPECT_FALSE(advised().join(QLatin1Char('|')).contains("too fast"));

  // Apply: one act, one undo.
  prompts_.confirmations = {true};
  QTest::mouseClick(page()->findChild<QPushButton*>(QStringLiteral("apply_what_if")),
                    Qt::LeftButton);
  EXPECT_EQ(cellar_->journal().entries().size(), entries + 1);
  EXPECT_NEAR(units::in_metres(present(line().record.length)), 2.0, 1e-6);
  EXPECT_NEAR(units::in_millimetres(present(line().record.bore)), 4.8, 1e-6);
  EXPECT_FALSE(advised().join(QLatin1Char('|')).contains("too fast"));

  // Time a pour with the form; the page believes it from then on. The form is
  // modal: what is typed into it is said beforehand.
  ASSERT_EQ(line().pour->setting.timed_pours, 0);
  QTimer::singleShot(0, [this] { fill_the_timed_pour(); });
  QTest::mouseClick(page()->findChild<QPushButton*>(QStringLiteral("timed_pour")), Qt::LeftButton);
  EXPECT_EQ(window_->findChild<ui::EntryForm*>(), nullptr);
  const cellar::LineStatus after = line();
  EXPECT_EQ(after.pour->setting.timed_pours, 1);
  const double glass = units::in_litres(after.pour->setting.glass);
  EXPECT_NEAR(units::in_seconds(present(after.pour->outlook.glass_time).likely), 11 * glass / 0.5,
              0.1);
}

}  // namespace
}  // namespace ullage
