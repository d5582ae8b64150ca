// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaning day's clock and kit through the main window: a timer that runs out while
// one looks on or elsewhere, what a tick then writes, the other day, the kit's figures,
// rules by their forms.
#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QTreeWidget>
#include <ranges>

#include "core/report/cleaning_words.h"
#include "core/units/present.h"
#include "tests/journeys/cleaning_journey.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/kit_dialog.h"
#include "ui/dialogs/rules_dialog.h"
#include "ui/pages/cleaning_kit.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage {
namespace {

using cellar::StepKind;
using std::chrono::minutes;

constexpr int a_few_seconds = 6000;  // the page looks at the clock each second

class CleaningTimer : public CleaningJourney {
 protected:
  void start_timer(int step) {
    auto* start = page_->findChild<QPushButton*>(QStringLiteral("timer_%1").arg(step));
    ASSERT_NE(start, nullptr);
    start->click();
    settle();
  }
  [[nodiscard]] bool timer_says(int step, const char* words) const {
    return QTest::qWaitFor(
        [&] {
          const auto* left = page_->findChild<QLabel*>(QStringLiteral("timer_left_%1").arg(step));
          return left != nullptr && left->text().contains(QLatin1String(words));
        },
        a_few_seconds);
  }
  [[nodiscard]] bool notice_says(const char* words) const {
    return QTest::qWaitFor([&] { return window_->notice().contains(QLatin1String(words)); },
                           a_few_seconds);
  }
  // The contact time of the last line cleaning in the journal.
  [[nodiscard]] std::optional<units::Duration> last_contact() const {
    const auto& entries = cellar_->journal().entries();
    for (const cellar::Entry& entry : std::views::reverse(entries)) {
      if (const auto* c = get_if<cellar::LineCleaned>(&entry.payload)) return c->contact;
    }
    ADD_FAILURE() << "no cleaning";
    return std::nullopt;
  }
  void get_ready(cellar::SubjectRef about) {
    for (const StepKind kind : {StepKind::lock, StepKind::vent, StepKind::flush}) {
      click(kind, about);
    }
  }
};

TEST_F(CleaningTimer, SaysThatTheTimeIsUpAndThatItIsLongOver) {
  const cellar::SubjectRef about = some_line();
  get_ready(about);
  const int step = spot(StepKind::caustic, about).step;
  start_timer(step);
  EXPECT_TRUE(timer_says(step, "left"));
  clock_.ahead += minutes(21);
  EXPECT_TRUE(timer_says(step, "Time is up"));
  EXPECT_FALSE(window_->notice().contains(QStringLiteral("contact time"))) << "the card says it";
  clock_.ahead += minutes(60);
  EXPECT_TRUE(timer_says(step, "Over an hour too long"));
  click(StepKind::caustic, about);
  ASSERT_TRUE(last_contact());
  EXPECT_NEAR(units::in_minutes(present(last_contact())), 81, 0.5) << "as measured, not as planned";
}

TEST_F(CleaningTimer, ATickAloneStatesNoContactTimeAndAStoppedTimerStatesItsOwn) {
  const cellar::SubjectRef about = some_line();
  get_ready(about);
  click(StepKind::caustic, about);
  EXPECT_FALSE(last_contact()) << "nobody measured it";
  click(StepKind::caustic, about);
  const int step = spot(StepKind::caustic, about).step;
  start_timer(step);
  clock_.ahead += minutes(12);
  start_timer(step);  // stops it
  EXPECT_TRUE(timer_says(step, "Stood 1"));
  clock_.ahead += minutes(30);
  restart();
  ASSERT_TRUE(page_->begun());
  EXPECT_TRUE(timer_says(step, "Stood 1")) << "kept with the list";
  click(StepKind::caustic, about);
  ASSERT_TRUE(last_contact());
  EXPECT_NEAR(units::in_minutes(present(last_contact())), 12, 0.5);
}

TEST_F(CleaningTimer, AnotherPageIsToldOnceAndLedBack) {
  const cellar::SubjectRef about = some_line();
  get_ready(about);
  const int step = spot(StepKind::caustic, about).step;
  start_timer(step);
  window_->run(ui::Command::page_kegs);
  clock_.ahead += minutes(21);
  ASSERT_TRUE(notice_says("the contact time is up"));
  auto* follow = window_->findChild<QPushButton*>(QStringLiteral("notice_follow"));
  ASSERT_NE(follow, nullptr);
  EXPECT_TRUE(follow->isVisible());
  follow->click();
  EXPECT_EQ(window_->page(), ui::PageId::cleaning);
  window_->run(ui::Command::page_kegs);
  QTest::qWait(2200);
  EXPECT_EQ(window_->notice(), QString()) << "said once";
}

TEST_F(CleaningTimer, TheOtherDayIsChosenAndItsListShown) {
  ASSERT_EQ(page_->proposed().size(), 2U);
  EXPECT_EQ(page_->shown_day()->day, page_->proposed()[0].day);
  auto* other = page_->findChild<QAbstractButton*>(QStringLiteral("day_1"));
  ASSERT_NE(other, nullptr);
  other->click();
  settle();
  EXPECT_EQ(page_->shown_day()->day, page_->proposed()[1].day);
  EXPECT_TRUE(page_->findChild<QAbstractButton*>(QStringLiteral("day_1"))->isChecked());
  EXPECT_FALSE(page_->findChild<QAbstractButton*>(QStringLiteral("day_0"))->isChecked());
  page_->choose_day(0);
  EXPECT_EQ(page_->shown_day()->day, page_->proposed()[0].day);
}

TEST_F(CleaningTimer, KeepingTheKitChangesTheListsAmountsAndTimes) {
  const cellar::SubjectRef about = some_line();
  const auto step = [&](StepKind kind) {
    return page_->shown_day()->steps[static_cast<std::size_t>(spot(kind, about).step)];
  };
  const auto before = step(StepKind::caustic);
  const auto rinse = step(StepKind::rinse);
  on_next<ui::KitDialog>([](ui::KitDialog& dialog) {
    auto* amounts = dialog.findChild<QWidget*>(QStringLiteral("kit_amounts"));
    EXPECT_FALSE(amounts->isVisible()) << "folded";
    dialog.findChild<QToolButton*>(QStringLiteral("kit_unfold"))->click();
    EXPECT_TRUE(amounts->isVisible());
    const auto type = [&](const char* name, const char* text) {
      auto* edit = dialog.findChild<ui::QuantityEdit*>(QLatin1String(name));
      ASSERT_NE(edit, nullptr) << name;
      edit->set_text(QLatin1String(text));
    };
    type("kit_pot", "7 L");
    type("kit_rinses", "4");
    type("kit_purge_cycles", "8");
    type("kit_purge_to", "1.5 bar");
    type("kit_keg_fill", "6 L");
    type("kit_minutes_line", "3");
    dialog.findChild<QPushButton*>(QStringLiteral("keep_kit"))->click();
  });
  page_->findChild<QPushButton*>(QStringLiteral("kit"))->click();
  settle();
  const auto after = step(StepKind::caustic);
  EXPECT_NEAR(units::in_litres(present(after.solution)),
              units::in_litres(present(before.solution)) + 5, 1e-6);
  EXPECT_GT(units::in_grams(present(after.concentrate_mass)),
            units::in_grams(present(before.concentrate_mass)));
  EXPECT_NEAR(units::in_minutes(after.hands_on), 3.0 * static_cast<double>(after.things.size()),
              1e-6);
  EXPECT_NEAR(units::in_litres(present(step(StepKind::rinse).water)),
              units::in_litres(present(rinse.water)) * 4 / 3, 1e-6);
  const cellar::CleaningKit kept = ui::cleaning_habits(own_.preferences).kit;
  EXPECT_EQ(kept.purge_cycles, 8);
  EXPECT_NEAR(units::in_bar(kept.purge_to), 1.5, 1e-9);
  EXPECT_NEAR(units::in_litres(kept.keg_fill), 6, 1e-9);
  EXPECT_NEAR(units::in_minutes(kept.minutes.seals), 10, 1e-9) << "as it was";
}

TEST_F(CleaningTimer, RulesAreMadeAndChangedByTheirForm) {
  ui::RulesDialog dialog(window_->context());
  dialog.show();
  const std::size_t before = cellar_->status()->rules.size();
  const auto type = [](ui::EntryForm& form, const char* field, const char* text) {
    auto* row = form.findChild<QWidget*>(QLatin1String(field));
    ASSERT_NE(row, nullptr) << field;
    if (auto* number = qobject_cast<ui::QuantityEdit*>(row))
      return number->set_text(QLatin1String(text));
    auto* edit = qobject_cast<QLineEdit*>(row);
    if (edit == nullptr) edit = row->findChild<QLineEdit*>();
    ASSERT_NE(edit, nullptr) << field;
    edit->setText(QLatin1String(text));
  };
  on_next<ui::EntryForm>([&](ui::EntryForm& form) {
    type(form, "interval_days", "9");
    type(form, "source", "the new rule");
    EXPECT_TRUE(form.log()) << form.refusal().toStdString();
    form.accept();
  });
  dialog.findChild<QPushButton*>(QStringLiteral("rule_new"))->click();
  const auto made = cellar_->status()->rules;
  ASSERT_EQ(made.size(), before + 1);
  const auto rule =
      std::ranges::find(made, std::string("the new rule"), &cellar::RuleRecord::source);
  ASSERT_NE(rule, made.end());
  EXPECT_EQ(rule->interval_days, 9);

  auto* table = dialog.findChild<QTreeWidget*>(QStringLiteral("rules_table"));
  ASSERT_EQ(table->topLevelItemCount(), static_cast<int>(made.size()));
  table->setCurrentItem(table->topLevelItem(static_cast<int>(rule - made.begin())));
  on_next<ui::EntryForm>([&](ui::EntryForm& form) {
    type(form, "interval_days", "11");
    EXPECT_TRUE(form.log()) << form.refusal().toStdString();
    form.accept();
  });
  dialog.findChild<QPushButton*>(QStringLiteral("rule_change"))->click();
  const auto changed = cellar_->status()->rules;
  ASSERT_EQ(changed.size(), before + 1) << "changed, not added";
  const auto same = std::ranges::find(changed, rule->rule, &cellar::RuleRecord::rule);
  ASSERT_NE(same, changed.end());
  EXPECT_EQ(same->interval_days, 11);
  EXPECT_EQ(same->source, "the new rule");
}

}  // namespace
}  // namespace ullage
