// SPDX-License-Identifier: GPL-3.0-or-later
//
// One way through the window's own buttons and forms, by keyboard: a line that
// serves is locked to clean, somebody would serve from it all the same, and only a
// passed check lets it serve again.
#include <gtest/gtest.h>

#include <QPushButton>
#include <algorithm>

#include "core/units/present.h"
#include "tests/journeys/desk_journey.h"
#include "ui/pages/lines_page.h"
#include "ui/pages/log_page.h"
#include "ui/widgets/banner.h"

namespace ullage {
namespace {

class LockServeRelease : public DeskJourney {
 protected:
  void SetUp() override {
    typist_.expect(QStringLiteral("first_start"), [this] { typist_.chord("Alt+D"); });
    ASSERT_TRUE(desk_.start());
    typist_.finish();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  [[nodiscard]] cellar::LineStatus line() const {
    for (const cellar::LineStatus& each : cellar().status()->lines)
      if (each.record.name == "Line 1") return each;
    ADD_FAILURE() << "no line";
    return {};
  }
  [[nodiscard]] ui::LinesPage* page() const { return window().findChild<ui::LinesPage*>(); }
  [[nodiscard]] bool offered(const char* name) const {
    const auto buttons = page()->findChildren<QPushButton*>(QLatin1String(name));
    return std::any_of(buttons.begin(), buttons.end(),
                       [](const QPushButton* b) { return b->isVisible(); });
  }
  // By the headlines of the banners on show.
  [[nodiscard]] static QString warned(const QWidget& in) {
    QStringList said;
    for (const auto* banner : in.findChildren<ui::Banner*>())
      if (banner->isVisible()) said << banner->headline();
    return said.join(QLatin1Char('|'));
  }
  // What stands in the form in front, which then is left without logging.
  void read_and_leave(QString* said, const char* until) {
    QWidget* form = QApplication::activeModalWidget();
    ASSERT_NE(form, nullptr);
    (void)QTest::qWaitFor([&] { return warned(*form).contains(QLatin1String(until)); });
    *said = warned(*form);
    // What was filled in is asked about before it is thrown away.
    typist_.expect(QStringLiteral("message_box"), [this] { typist_.push("Leave"); });
    typist_.key(Qt::Key_Escape);
  }

  void lock_from_the_page() {
    typist_.expect("form_line_locked", [this] {
      typist_.choose("Agent", "Caustic");
      typist_.fill("by", "JB");
      log_it();
    });
    typist_.push("Lock to clean…, Line 1");
    typist_.finish();
    ASSERT_TRUE(line().lock);
    EXPECT_TRUE(QTest::qWaitFor([&] { return offered("line_released"); }));
    EXPECT_FALSE(offered("timed_pour"));
    EXPECT_FALSE(offered("keg_change"));
    EXPECT_TRUE(offered("print_line_tag"));
    EXPECT_TRUE(warned(*page()).contains("DO NOT SERVE"));
  }
  // The form says what is in the line; logged all the same, it is a fact, and the
  // line stays locked.
  void put_another_keg_on() {
    QString said;
    typist_.expect("keg_change", [this, &said] {
      typist_.fill("line", "line 1");
      typist_.fill("keg_on", "K04");
      (void)QTest::qWaitFor(
          [&] { return warned(*QApplication::activeModalWidget()).contains("Do not serve"); });
      said = warned(*QApplication::activeModalWidget());
      log_it();
    });
    typist_.chord("Ctrl+K");
    typist_.finish();
    EXPECT_TRUE(said.contains("Do not serve from Line 1")) << said.toStdString();
    EXPECT_TRUE(line().do_not_serve());
    EXPECT_TRUE(keg("K04").lock);
  }
  void try_to_time_a_pour() {
    QString said;
    task("timed pour", "form_timed_pour", [this, &said] {
      typist_.fill("line", "line 1");
      typist_.key(Qt::Key_Tab);
      read_and_leave(&said, "Do not serve");
    });
    EXPECT_TRUE(said.contains("Do not serve")) << said.toStdString();
    EXPECT_EQ(timed_pours(), timed_before_);
    EXPECT_TRUE(line().do_not_serve());
  }
  void release_by_a_passed_check() {
    typist_.chord("Ctrl+2");
    page()->show_line(line().record.line);
    typist_.expect("form_line_released", [this] {
      typist_.fill("checked_by", "MK");
      log_it();
      EXPECT_TRUE(line().lock) << "the check has not passed";
      typist_.push("passed");
      log_it();
    });
    typist_.push("Release by a check…, Line 1");
    typist_.finish();
    EXPECT_FALSE(line().do_not_serve());
    EXPECT_FALSE(keg("K04").lock);
  }
  void serve() {
    ASSERT_TRUE(QTest::qWaitFor([&] { return offered("timed_pour"); }));
    EXPECT_FALSE(warned(*page()).contains("DO NOT SERVE"));
    typist_.expect("form_timed_pour", [this] {
      typist_.fill("volume_m3", "0.5 L");
      typist_.fill("duration_s", "10 s");
      log_it();
    });
    typist_.push("Timed pour…, Line 1");
    typist_.finish();
    EXPECT_EQ(timed_pours(), timed_before_ + 1);
    EXPECT_EQ(keg("K04").phase, cellar::Phase::on_tap);
  }
  [[nodiscard]] std::ptrdiff_t timed_pours() const {
    const auto story = cellar().journal().story(cellar::subject(line().record.line));
    return std::count_if(story.begin(), story.end(), [](const cellar::Entry* e) {
      return cellar::kind_of(e->payload) == "timed_pour";
    });
  }

  // As far as the question, where Enter keeps the lock and leaves the form open.
  void correct_to_line_2(cellar::EntryId id) {
    window().findChild<ui::LogPage*>()->select(id);
    QString asked;
    typist_.expect("form_line_locked", [this, &asked] {
      typist_.fill("line", "line 2");
      typist_.fill("reason_of_correction", "the other line");
      typist_.expect("message_box", [this, &asked] {
        asked = words_in(*QApplication::activeModalWidget());
        typist_.key(Qt::Key_Return);
      });
      log_it();
      typist_.expect("message_box", [this] { typist_.push("Leave"); });
      typist_.key(Qt::Key_Escape);
    });
    typist_.push("log_correct");
    typist_.finish();
    EXPECT_TRUE(asked.contains("without a check")) << asked.toStdString();
  }

  std::ptrdiff_t timed_before_ = 0;
};

TEST_F(LockServeRelease, InOneGo) {
  timed_before_ = timed_pours();
  ASSERT_FALSE(line().do_not_serve());
  typist_.chord("Ctrl+2");
  page()->show_line(line().record.line);
  ASSERT_TRUE(QTest::qWaitFor([&] { return offered("timed_pour") && offered("keg_change"); }));
  lock_from_the_page();
  put_another_keg_on();
  try_to_time_a_pour();
  release_by_a_passed_check();
  serve();
}

// A slip of the undo key, or a strike in the log, must not end a lock: it is asked before,
// and Enter keeps it locked.
TEST_F(LockServeRelease, UndoAndStrikeAskBeforeTheyEndALock) {
  typist_.chord("Ctrl+2");
  page()->show_line(line().record.line);
  ASSERT_TRUE(QTest::qWaitFor([&] { return offered("timed_pour"); }));
  lock_from_the_page();
  QString asked;
  typist_.expect("message_box", [this, &asked] {
    asked = words_in(*QApplication::activeModalWidget());
    typist_.key(Qt::Key_Return);
  });
  typist_.chord("Ctrl+Z");
  typist_.finish();
  EXPECT_TRUE(asked.contains("without a check")) << asked.toStdString();
  EXPECT_TRUE(asked.contains("Line 1")) << asked.toStdString();
  ASSERT_TRUE(line().lock) << "undone without asking";

  const cellar::EntryId id = present(line().lock).entry;
  typist_.chord("Ctrl+8");
  window().findChild<ui::LogPage*>()->select(id);
  typist_.expect("message_box", [this] { typist_.key(Qt::Key_Return); });
  typist_.push("log_strike");
  typist_.finish();
  ASSERT_TRUE(line().lock) << "struck without asking";

  correct_to_line_2(id);
  ASSERT_TRUE(line().lock) << "corrected to another line without asking";

  typist_.expect("message_box", [this] { typist_.push("None went in: take it off"); });
  typist_.chord("Ctrl+Z");
  typist_.finish();
  EXPECT_FALSE(line().lock) << "a lock logged by mistake can be taken back";
  typist_.chord("Ctrl+Shift+Z");
  EXPECT_TRUE(line().lock) << "redone without a question: it makes nothing less safe";
}

}  // namespace
}  // namespace ullage
