// SPDX-License-Identifier: GPL-3.0-or-later
//
// How forms meet whoever fills them in: where the keyboard begins, what is folded
// away, what stands beside what, and that nothing is cut off.
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>
#include <QToolButton>
#include <map>

#include "core/cellar/limits.h"
#include "core/cellar/presets.h"
#include "core/units/present.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "tests/support/sample_status.h"
#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/forms/form_spec.h"
#include "ui/dialogs/register_kegs.h"
#include "ui/dialogs/stock_take.h"
#include "ui/theme/style.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/quantity_edits.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

// Opens no form: registers what it is asked for at once.
class RegisteringNavigator final : public Navigator {
 public:
  explicit RegisteringNavigator(testing::FakeFacade& facade) : facade_(facade) {}
  void open_task(const cellar::SuggestedTask& task) override {
    asked.push_back(task.kind);
    if (!task.prefill) return;
    if (const auto* place = get_if<cellar::PlaceRecord>(&*task.prefill)) {
      cellar::CellarStatus with = *facade_.status();
      cellar::PlaceStatus status;
      status.record = *place;
      status.record.name = "Shed";
      with.places.push_back(status);
      facade_.show(with);
    }
  }
  void show_page(PageId) override {}
  void show_keg(cellar::KegId) override {}
  void show_entries_of(cellar::SubjectRef) override {}
  void open_status_sheet() override {}
  void announce(const QString&, bool) override {}
  void call_to(PageId, const QString&) override {}
  std::vector<std::string> asked;

 private:
  testing::FakeFacade& facade_;
};

class EntryForms : public ::testing::Test {
 protected:
  static QWidget* field(QWidget& form, const char* name) {
    auto* found = form.findChild<QWidget*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  static bool holds_focus(const QWidget* widget) {
    const QWidget* at = QApplication::focusWidget();
    return at != nullptr && (at == widget || widget->isAncestorOf(at));
  }
  static void show(QWidget& form) {
    form.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
  }

  testing::FakeFacade facade{testing::sample_cellar()};
  testing::OwnPreferences own;
  testing::QueuedPrompts prompts;
  RegisteringNavigator navigator{facade};
  Context context{facade, own.preferences, prompts, navigator};
  cellar::KegId keg = facade.status()->kegs.front().record.keg;
};

TEST_F(EntryForms, TheKeyboardBeginsAtTheFirstThingStillToBeSaid) {
  EntryForm about(context, {"gas_set", cellar::subject(keg), {}, {}});
  show(about);
  EXPECT_TRUE(holds_focus(field(about, "pressure_pa")));  // the keg is known
  EntryForm open(context, {"gas_set", {}, {}, {}});
  show(open);
  EXPECT_TRUE(holds_focus(field(open, "keg")));
}

TEST_F(EntryForms, TabComesToTheFieldsBeforeTheButtons) {
  EntryForm form(context, {"vented", cellar::subject(keg), {}, {}});
  show(form);
  for (int i = 0; i < 40 && !holds_focus(field(form, "log_it")); ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  ASSERT_TRUE(holds_focus(field(form, "log_it")));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab);
  EXPECT_TRUE(holds_focus(field(form, "note")));  // the last field, right before it
}

// Every form of the table: with a letter underlined twice, Alt and the letter only
// wander between the two.
TEST_F(EntryForms, NoLetterIsUnderlinedTwiceAmongWhatIsOnShow) {
  for (const FormSpec* spec : all_form_specs()) {
    EntryForm form(context, {std::string(spec->kind), {}, {}, {}});
    form.show();
    std::map<QChar, QString> seen;
    const auto take = [&](const QString& text) {
      const auto at = text.indexOf(QLatin1Char('&'));
      if (at < 0 || at + 1 >= text.size()) return;
      const auto [first, fresh] = seen.emplace(text.at(at + 1).toLower(), text);
      EXPECT_TRUE(fresh) << spec->kind << ": " << text.toStdString() << " and "
                         << first->second.toStdString();
    };
    for (const QPushButton* button : form.findChildren<QPushButton*>()) {
      if (button->isVisible()) take(button->text());
    }
    for (const QLabel* label : form.findChildren<QLabel*>()) {
      if (label->isVisible() && label->buddy()) take(label->text());
    }
  }
}

TEST_F(EntryForms, WhatEnterPressesIsFilled) {
  EntryForm form(context, {"vented", cellar::subject(keg), {}, {}});
  const auto* log_it = qobject_cast<QPushButton*>(field(form, "log_it"));
  ASSERT_NE(log_it, nullptr);
  EXPECT_TRUE(log_it->isDefault());
  EXPECT_EQ(role_of(log_it), ButtonRole::primary);
}

// Turning a regulator down lets no gas out of the keg; with the tick both are one act.
TEST_F(EntryForms, GasTurnedDownAndVentedIsOneAct) {
  cellar::GasSet set;
  set.keg = keg;
  set.pressure = units::gauge_psi(11);
  cellar::SuggestedTask drop{"gas_set", cellar::subject(keg), cellar::Payload(set), {}};
  EntryForm raised(context, drop);
  EXPECT_FALSE(qobject_cast<QCheckBox*>(field(raised, "vented_down_to_it"))->isChecked());
  ASSERT_TRUE(raised.log());
  EXPECT_EQ(facade.logged().back().drafts.size(), 1U);
  drop.vent_to_it = true;
  EntryForm lowered(context, drop);
  EXPECT_TRUE(qobject_cast<QCheckBox*>(field(lowered, "vented_down_to_it"))->isChecked());
  ASSERT_TRUE(lowered.log());
  const auto& drafts = facade.logged().back().drafts;
  ASSERT_EQ(drafts.size(), 2U);
  EXPECT_TRUE(holds_alternative<cellar::GasSet>(drafts[0].payload));
  ASSERT_TRUE(holds_alternative<cellar::Vented>(drafts[1].payload));
  const auto& vented = get<cellar::Vented>(drafts[1].payload);
  EXPECT_EQ(vented.keg, keg);
  EXPECT_EQ(vented.to_pressure, set.pressure);
  EXPECT_EQ(drafts[1].happened_at, drafts[0].happened_at);
}

TEST_F(EntryForms, AnErrorStandsBesideItsValue) {
  EntryForm form(context, {"carbonation_reading", cellar::subject(keg), {}, {}});
  show(form);
  const QWidget* value = field(form, "co2_g_per_l");
  const QWidget* error = field(form, "co2_half_width_g_per_l");
  EXPECT_EQ(value->mapTo(&form, QPoint()).y(), error->mapTo(&form, QPoint()).y());
  EXPECT_LT(value->mapTo(&form, QPoint(value->width(), 0)).x(), error->mapTo(&form, QPoint()).x());
  EXPECT_FALSE(error->findChild<QLineEdit*>()->accessibleName().isEmpty());
}

// Every text of every form is as long as what may be logged, not a letter less or more.
TEST_F(EntryForms, TextsAreAsLongAsWhatMayBeLogged) {
  int texts = 0;
  for (const FormSpec* spec : all_form_specs()) {
    const std::string_view kind = spec->kind;
    const auto blank = cellar::make_payload(kind);
    ASSERT_TRUE(blank) << kind;
    const EntryFields fields(context, present(blank));
    for (auto* edit : fields.findChildren<TextEdit*>()) {
      const std::string column = s(edit->objectName());
      if (column.empty()) continue;  // part of a field, not one
      const std::size_t most = cellar::text_limit(kind, column);
      edit->set_value(std::string(most, 'x'));
      EXPECT_TRUE(edit->fault().isEmpty()) << kind << ' ' << column;
      edit->set_value(std::string(most + 1, 'x'));
      EXPECT_FALSE(edit->fault().isEmpty()) << kind << ' ' << column;
      ++texts;
    }
  }
  EXPECT_GT(texts, 20);
}

TEST_F(EntryForms, ADateThatNobodyGaveIsBlankAndNot1970) {
  EntryForm form(context, {"best_by_changed", {}, {}, {}});
  const auto* date = qobject_cast<DateEdit*>(field(form, "best_by_day"));
  ASSERT_NE(date, nullptr);
  EXPECT_TRUE(date->text().isEmpty());
  EXPECT_FALSE(date->fault().isEmpty());  // and it is asked for
}

TEST_F(EntryForms, APresetsFiguresAreFoldedUntilTheyAreWanted) {
  RegisterKegs form(context);
  show(form);
  EXPECT_TRUE(field(form, "place")->isVisible());
  EXPECT_FALSE(field(form, "tare_kg")->isVisible());
  auto* toggle = qobject_cast<QToolButton*>(field(form, "disclosure"));
  ASSERT_NE(toggle, nullptr);
  QTest::mouseClick(toggle, Qt::LeftButton);
  EXPECT_TRUE(field(form, "tare_kg")->isVisible());
  EXPECT_TRUE(field(form, "tare_half_width_kg")->isVisible());
}

TEST_F(EntryForms, WhatIsFoldedOpensForWhatIsMissingOrWrong) {
  const auto keg_of = [&](cellar::KegKind kind) {
    cellar::KegRecord record = cellar::keg_from_preset(kind);
    record.keg = facade.fresh<cellar::KegId>();
    record.tag = "Q1";
    return cellar::Payload(boost::variant2::in_place_type<cellar::KegRecord>, record);
  };
  EntryFields custom(context, keg_of(cellar::KegKind::custom));
  show(custom);
  EXPECT_TRUE(field(custom, "nominal_m3")->isVisible());  // of no known size: to be filled in
  EntryFields preset(context, keg_of(cellar::KegKind::keg_50));
  show(preset);
  EXPECT_FALSE(field(preset, "nominal_m3")->isVisible());
  dynamic_cast<VolumeEdit*>(field(preset, "nominal_m3"))->set_text("lots");
  EXPECT_TRUE(preset.show_faults());
  EXPECT_TRUE(field(preset, "nominal_m3")->isVisible());
}

TEST_F(EntryForms, APickerRegistersWhatItLacksAndPicksIt) {
  EntryForm form(context, {"moved", cellar::subject(keg), {}, {}});
  auto* place = dynamic_cast<PlacePicker*>(field(form, "place"));
  ASSERT_NE(place, nullptr);
  const int add = place->combo()->findText("New place", Qt::MatchStartsWith);
  ASSERT_GE(add, 0);
  emit place->combo()->activated(add);
  QCoreApplication::processEvents();
  EXPECT_EQ(navigator.asked, std::vector<std::string>{"place_record"});
  EXPECT_TRUE(place->combo()->currentText().startsWith("Shed"));
  EXPECT_EQ(place->value(), facade.status()->places.back().record.place);
}

TEST_F(EntryForms, StockTakingCutsNothingOffAndBeginsAtTheContents) {
  StockTake form(context, {keg, facade.status()->kegs.back().record.keg});
  show(form);
  const auto* scroll = form.findChild<QScrollArea*>();
  ASSERT_NE(scroll, nullptr);
  EXPECT_LE(scroll->widget()->width(), scroll->viewport()->width());
  EXPECT_TRUE(holds_focus(field(form, "contents")));
}

}  // namespace
}  // namespace ullage::ui
