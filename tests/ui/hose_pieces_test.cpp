// SPDX-License-Identifier: GPL-3.0-or-later
//
// The pieces of a hose in a line's form: told, changed, moved and taken out by
// keyboard and mouse, and logged as one act with the line.
#include "ui/dialogs/forms/hose_pieces.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <memory>

#include "core/units/present.h"
#include "tests/cellar/pour_scene.h"
#include "tests/support/accessibility.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::testing {
namespace {

class HoseForm : public ::testing::Test {
 protected:
  HoseForm() { ui::dress(ui::light_theme()); }

  SegmentRecord registered(std::int64_t position, double metres,
                           std::optional<PlaceId> place = {}) {
    SegmentRecord piece;
    piece.segment = scene_.counted.make<SegmentId>();
    piece.line = scene_.line;
    piece.position = position;
    piece.length = units::metres(metres);
    piece.bore = units::millimetres(5);
    piece.place = place;
    scene_.log(day(21, 1), piece);
    return piece;
  }
  void open() {
    form_.reset();  // before the cellar it speaks of
    cellar_ = std::make_unique<FakeFacade>(scene_.cellar(day(22)));
    context_ = std::make_unique<ui::Context>(
        ui::Context{*cellar_, own_.preferences, prompts_, navigator_});
    own_.preferences.set_units(units::DisplayUnits::metric());
    form_ = std::make_unique<ui::EntryForm>(
        *context_, SuggestedTask{"line_record", subject(scene_.line), Payload(scene_.record), {}});
    form_->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(form_.get()));
  }
  [[nodiscard]] ui::HosePieces* pieces() const {
    return form_->findChild<ui::HosePieces*>(QStringLiteral("hose_pieces"));
  }
  // By the name a screen reader says.
  template <class W>
  [[nodiscard]] W* named(const QString& name) const {
    for (W* w : pieces()->findChildren<W*>())
      if (w->isVisible() && w->accessibleName() == name) return w;
    ADD_FAILURE() << "nothing is named " << name.toStdString();
    return nullptr;
  }
  void type(const QString& name, const QString& text) {
    auto* edit = named<QLineEdit>(name);
    ASSERT_TRUE(edit);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
    QTest::keyClick(edit, Qt::Key_Tab);
  }
  void press(const QString& name) {
    auto* button = named<QPushButton>(name);
    ASSERT_TRUE(button);
    QTest::mouseClick(button, Qt::LeftButton);
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  void log() {
    QTest::mouseClick(form_->findChild<QPushButton*>(QStringLiteral("log_it")), Qt::LeftButton);
  }
  [[nodiscard]] std::vector<SegmentRecord> logged() const {
    std::vector<SegmentRecord> out;
    for (const Draft& d : cellar_->logged().at(0).drafts)
      if (const auto* s = get_if<SegmentRecord>(&d.payload)) out.push_back(*s);
    return out;
  }

  PourScene scene_;
  std::unique_ptr<FakeFacade> cellar_;
  OwnPreferences own_;
  RecordingNavigator navigator_;
  QueuedPrompts prompts_;
  std::unique_ptr<ui::Context> context_;
  std::unique_ptr<ui::EntryForm> form_;
};

TEST_F(HoseForm, TheFirstPieceIsTheLinesOwnHoseAndTheNextOneOfTheSameBore) {
  open();
  EXPECT_TRUE(pieces()->pieces().empty());
  QTest::mouseClick(pieces()->findChild<QPushButton*>("add_piece"), Qt::LeftButton);
  ASSERT_EQ(pieces()->pieces().size(), 1U);
  EXPECT_EQ(pieces()->pieces()[0].length, present(scene_.record.length));
  EXPECT_EQ(pieces()->pieces()[0].bore, present(scene_.record.bore));
  QTest::mouseClick(pieces()->findChild<QPushButton*>("add_piece"), Qt::LeftButton);
  type("Length of piece 2", "1.5 m");
  type("Rise of piece 2", "0.5 m");
  log();
  ASSERT_EQ(cellar_->logged().size(), 1U) << "one act";
  EXPECT_EQ(kind_of(cellar_->logged()[0].drafts[0].payload), "line_record");
  const auto out = logged();
  ASSERT_EQ(out.size(), 2U);
  EXPECT_EQ(out[0].position, 1);
  EXPECT_EQ(out[1].position, 2);
  EXPECT_NEAR(units::in_metres(out[1].length), 1.5, 1e-9);
  EXPECT_NEAR(units::in_metres(present(out[1].rise)), 0.5, 1e-9);
  EXPECT_EQ(out[1].bore, present(scene_.record.bore));
  EXPECT_NE(out[0].segment, out[1].segment);
}

TEST_F(HoseForm, OnlyWhatWasChangedIsLogged) {
  registered(1, 2);
  const SegmentRecord second = registered(2, 3);
  open();
  type("Length of piece 2", "3.5 m");
  log();
  const auto out = logged();
  ASSERT_EQ(out.size(), 1U);
  EXPECT_EQ(out[0].segment, second.segment);
  EXPECT_NEAR(units::in_metres(out[0].length), 3.5, 1e-9);
}

TEST_F(HoseForm, PiecesAreMovedByKeysAndTakenOutByTheirButton) {
  const SegmentRecord a = registered(1, 1), b = registered(2, 2), c = registered(3, 3);
  open();
  // The last one up by the keyboard, from within its length.
  auto* last = named<QLineEdit>("Length of piece 3");
  ASSERT_TRUE(last);
  last->setFocus();
  QTest::keyClick(last, Qt::Key_Up, Qt::AltModifier);
  EXPECT_EQ(pieces()->pieces()[1].segment, c.segment);
  EXPECT_TRUE(last->hasFocus());
  // The first one down by the mouse, then out.
  press("Move piece 1 towards the tap");
  EXPECT_EQ(pieces()->pieces()[0].segment, c.segment);
  EXPECT_EQ(pieces()->pieces()[1].segment, a.segment);
  press("Take out piece 2");
  ASSERT_EQ(pieces()->pieces().size(), 2U);
  log();
  bool gone = false;
  for (const SegmentRecord& s : logged()) {
    if (s.segment == a.segment) gone = !s.in_use;
    EXPECT_EQ(s.in_use, s.segment != a.segment);
  }
  EXPECT_TRUE(gone);
  const auto now = pieces()->pieces();
  EXPECT_EQ(now[0].segment, c.segment);
  EXPECT_EQ(now[1].segment, b.segment);
  EXPECT_LT(now[0].position, now[1].position);
}

TEST_F(HoseForm, APieceWithoutLengthIsNotLoggedAndKeepsWhatIsTyped) {
  registered(1, 2);
  open();
  QTest::mouseClick(pieces()->findChild<QPushButton*>("add_piece"), Qt::LeftButton);
  log();
  EXPECT_TRUE(cellar_->logged().empty());
  EXPECT_TRUE(named<QLineEdit>("Length of piece 2")->hasFocus());
  // A refusal of the file stands at the piece it is about.
  type("Length of piece 2", "1 m");
  cellar_->refuse_with({Fault{1, "bore_m", message(MessageKey::pour_hose_unlikely)}});
  log();
  EXPECT_TRUE(cellar_->logged().empty());
  EXPECT_EQ(pieces()->pieces().size(), 2U);
}

TEST_F(HoseForm, IsNamedReachedByTabReadableAndWhole) {
  registered(1, 2, scene_.box);
  registered(2, 3);
  for (const ui::Theme* theme : {&ui::dark_theme(), &ui::light_theme()}) {
    ui::dress(*theme);
    open();
    form_->resize(std::max(form_->minimumSizeHint().width(), 760), 620);
    QTest::qWait(30);
    EXPECT_LE(form_->width(), 1000) << "fits a small screen";
    EXPECT_EQ(unnamed_controls(*form_), std::vector<std::string>{});
    EXPECT_EQ(tab_order_faults(*form_), std::vector<std::string>{});
    EXPECT_EQ(contrast_faults(*form_), std::vector<std::string>{});
    EXPECT_EQ(clipped_texts(*form_), std::vector<std::string>{});
  }
}

}  // namespace
}  // namespace ullage::testing
