// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every form of the program's own list, field by field: what can't be read or
// can't be is refused with a sentence at its field, nothing typed is lost, units
// are taken as people write them, and what was logged the last time stands there.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>
#include <memory>

#include "core/cellar/field_walk.h"
#include "core/units/present.h"
#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/bottle_change.h"
#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/forms/form_memory.h"
#include "ui/dialogs/keg_change.h"
#include "ui/dialogs/register_kegs.h"
#include "ui/dialogs/stock_take.h"
#include "ui/dialogs/transfer_form.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/field_message.h"
#include "ui/widgets/quantity_edits.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage {
namespace {

class FormTable : public DemoJourney {
 protected:
  [[nodiscard]] std::size_t logged() const { return cellar_->journal().entries().size(); }
  [[nodiscard]] std::unique_ptr<ui::EntryForm> form_of(const ui::FormSpec& spec) {
    auto form = std::make_unique<ui::EntryForm>(
        context(), cellar::SuggestedTask{std::string(spec.kind), {}, {}, {}});
    form->show();
    return form;
  }
  // The typed editors share one meta object: told apart by their type alone.
  template <class Edit>
  static std::vector<Edit*> edits_of(const QWidget& form) {
    std::vector<Edit*> found;
    for (auto* each : form.findChildren<ui::QuantityEdit*>()) {
      if (auto* edit = dynamic_cast<Edit*>(each)) found.push_back(edit);
    }
    return found;
  }
  // As if typed, and the field left.
  static void type_over(QLineEdit& line, const QString& text) {
    line.selectAll();
    line.del();
    line.insert(text);
    emit line.editingFinished();
  }
  // The sentence on show inside the field; empty when there is none.
  static QString sentence_at(const QWidget& field) {
    for (const auto* message : field.findChildren<ui::FieldMessage*>()) {
      if (message->isVisibleTo(&field) && message->is_fault()) return message->text();
    }
    return {};
  }
  // Types `text` into each field of that type, one after the other, and tries to
  // log: it must be refused there, keep the text, and write nothing.
  template <class Edit>
  int refuse_in_each(const QString& text) {
    int tried = 0;
    for (const ui::FormSpec* spec : ui::all_form_specs()) {
      const auto form = form_of(*spec);
      for (Edit* edit : form->findChildren<Edit*>()) {
        if (!edit->isVisibleTo(form.get())) continue;
        auto* line = edit->template findChild<QLineEdit*>();
        if (!line) continue;
        const ::testing::ScopedTrace trace(
            __FILE__, __LINE__, std::string(spec->kind) + " " + edit->objectName().toStdString());
        const QString before = line->text();
        const std::size_t entries = logged();
        type_over(*line, text);
        EXPECT_FALSE(form->log());
        EXPECT_EQ(logged(), entries);
        EXPECT_EQ(line->text(), text);
        EXPECT_FALSE(sentence_at(*edit).isEmpty());
        type_over(*line, before);
        ++tried;
      }
    }
    return tried;
  }
};

TEST_F(FormTable, AQuantityThatCantBeReadIsRefusedAtItsField) {
  for (const char* nonsense : {"30 frogs", "nan", "1..2", "twelve"}) {
    EXPECT_GT(refuse_in_each<ui::QuantityEdit>(QString::fromLatin1(nonsense)), 60) << nonsense;
  }
}

TEST_F(FormTable, ATimeThatCantBeOrIsStillToComeIsRefusedAtItsField) {
  for (const char* wrong : {"some day", "25:99", "1 Jan 2199 12:00"}) {
    EXPECT_GT(refuse_in_each<ui::WhenEdit>(QString::fromLatin1(wrong)), 40) << wrong;
  }
  EXPECT_GT(refuse_in_each<ui::DateEdit>(QStringLiteral("32 Octember")), 5);
}

TEST_F(FormTable, TextOverItsLengthIsRefusedAtItsField) {
  EXPECT_GT(refuse_in_each<ui::TextEdit>(QString(5000, QLatin1Char('x'))), 60);
}

TEST_F(FormTable, AThingThatIsNotRegisteredIsRefusedAtItsField) {
  EXPECT_GT(refuse_in_each<ui::EntityPicker>(QStringLiteral("No such thing")), 60);
}

// Values worked out by hand from the definitions in NIST SP 811: 1 psi =
// 6894.757 Pa, °C = (°F - 32) / 1.8, 1 US gal = 3.785412 L, 1 lb = 0.45359237 kg.
TEST_F(FormTable, UnitsAreTakenAsPeopleWriteThemInEveryForm) {
  int pressures = 0;
  int temperatures = 0;
  int volumes = 0;
  int masses = 0;
  for (const ui::FormSpec* spec : ui::all_form_specs()) {
    const auto form = form_of(*spec);
    const ::testing::ScopedTrace trace(__FILE__, __LINE__, std::string(spec->kind));
    for (auto* edit : edits_of<ui::GaugePressureEdit>(*form)) {
      edit->set_text(QStringLiteral("30 psi"));
      ASSERT_TRUE(edit->value()) << edit->objectName().toStdString();
      EXPECT_NEAR(units::in_psi(present(edit->value())), 30, 1e-6);
      edit->set_text(QStringLiteral("2.1 bar"));
      ASSERT_TRUE(edit->value());
      EXPECT_NEAR(units::in_psi(present(edit->value())), 30.4579, 1e-3);
      ++pressures;
    }
    for (auto* edit : edits_of<ui::TemperatureEdit>(*form)) {
      edit->set_text(QStringLiteral("34F"));
      ASSERT_TRUE(edit->value()) << edit->objectName().toStdString();
      EXPECT_NEAR(units::in_celsius(present(edit->value())), 1.1111, 1e-3);
      ++temperatures;
    }
    for (auto* edit : edits_of<ui::VolumeEdit>(*form)) {
      edit->set_text(QStringLiteral("5 US gal"));
      ASSERT_TRUE(edit->value()) << edit->objectName().toStdString();
      EXPECT_NEAR(units::in_litres(present(edit->value())), 18.92706, 1e-4);
      ++volumes;
    }
    for (auto* edit : edits_of<ui::MassEdit>(*form)) {
      edit->set_text(QStringLiteral("10 lb"));
      ASSERT_TRUE(edit->value()) << edit->objectName().toStdString();
      EXPECT_NEAR(units::in_kilograms(present(edit->value())), 4.5359237, 1e-6);
      ++masses;
    }
  }
  EXPECT_GT(pressures, 5);
  EXPECT_GT(temperatures, 8);
  EXPECT_GT(volumes, 5);
  EXPECT_GT(masses, 5);
}

// Whether both entries say the same in the fields that a form is to remember.
bool remembers(const ui::FormSpec& spec, const cellar::Payload& shown,
               const cellar::Payload& last) {
  EXPECT_EQ(shown.index(), last.index());
  if (shown.index() != last.index()) return false;
  const std::vector<const void*> as_shown = cellar::fields_of(shown);
  bool same = true;
  std::size_t i = 0;
  cellar::for_each_field(last, [&]<class T>(std::string_view column, const T& value) {
    const T& shown_value = *static_cast<const T*>(as_shown[i++]);
    for (const ui::FieldSpec& field : spec.fields) {
      if (field.use == ui::Use::remembered && field.column == column && !(shown_value == value))
        same = false;
    }
  });
  return same;
}

TEST_F(FormTable, WhatWasLoggedTheLastTimeStandsInTheFormAgain) {
  int with_a_past = 0;
  for (const ui::FormSpec* spec : ui::all_form_specs()) {
    const bool any = std::any_of(spec->fields.begin(), spec->fields.end(), [](const auto& field) {
      return field.use == ui::Use::remembered;
    });
    const auto last = ui::last_of_kind(cellar_->journal(), spec->kind, {});
    if (!any || !last) continue;
    ++with_a_past;
    EXPECT_TRUE(remembers(*spec, form_of(*spec)->payload(), *last)) << spec->kind;
  }
  EXPECT_GT(with_a_past, 5);
}

// Leaving asks first, once something was typed, and only then.
template <class Dialog>
void leaves_only_when_asked(Dialog& dialog, testing::QueuedPrompts& prompts, const char* field,
                            const char* text) {
  dialog.show();
  auto* widget = dialog.template findChild<QWidget*>(QLatin1String(field));
  ASSERT_NE(widget, nullptr) << field;
  auto* line = qobject_cast<QLineEdit*>(widget);
  if (!line) line = widget->template findChild<QLineEdit*>();
  ASSERT_NE(line, nullptr) << field;
  line->setFocus();
  line->selectAll();
  QTest::keyClicks(line, QString::fromLatin1(text));
  prompts.confirmations.push_back(false);
  QTest::keyClick(&dialog, Qt::Key_Escape);
  EXPECT_TRUE(dialog.isVisible());
  EXPECT_EQ(line->text(), QString::fromLatin1(text));
  prompts.confirmations.push_back(true);
  QTest::keyClick(&dialog, Qt::Key_Escape);
  EXPECT_FALSE(dialog.isVisible());
  EXPECT_EQ(prompts.asked.size(), 2);
  EXPECT_EQ(prompts.risks, prompts.asked) << "Enter must go on typing";
  prompts.asked.clear();
  prompts.risks.clear();
}

TEST_F(FormTable, WhatWasTypedIsNotLostByASlipOfTheEscapeKey) {
  ui::KegChange change(context(), {}, {});
  leaves_only_when_asked(change, prompts_, "pressure", "12 psi");
  ui::BottleChange bottle(context(), {}, {});
  leaves_only_when_asked(bottle, prompts_, "weight", "9 kg");
  ui::RegisterKegs kegs(context());
  leaves_only_when_asked(kegs, prompts_, "tags", "Q1..Q3");
  ui::TransferForm transfer(context(), {});
  leaves_only_when_asked(transfer, prompts_, "cycles", "5");
  ui::EntryForm entry(context(), {"gas_set", {}, {}, {}});
  leaves_only_when_asked(entry, prompts_, "pressure_pa", "12 psi");
  ui::StockTake stock(context(), {cellar_->status()->keg_by_tag("K05")->record.keg});
  leaves_only_when_asked(stock, prompts_, "pressure_pa", "3 psi");
  ui::KegChange untouched(context(), {}, {});
  untouched.show();
  QTest::keyClick(&untouched, Qt::Key_Escape);
  EXPECT_FALSE(untouched.isVisible());
  EXPECT_TRUE(prompts_.asked.isEmpty());
}

TEST_F(FormTable, AKegChangeRefusesAPressureItCantReadAtTheField) {
  const auto status = cellar_->status();
  ui::KegChange form(context(), status->lines.front().record.line,
                     status->keg_by_tag("K04")->record.keg);
  form.show();
  auto* pressure = form.findChild<ui::GaugePressureEdit*>(QStringLiteral("pressure"));
  ASSERT_NE(pressure, nullptr);
  pressure->set_text(QStringLiteral("a lot"));
  const std::size_t entries = logged();
  EXPECT_FALSE(form.log());
  EXPECT_EQ(logged(), entries);
  EXPECT_FALSE(sentence_at(*pressure).isEmpty());
}

// The other window's settings may change while a form is open: a value is shown
// in the new unit, what is half typed stays.
TEST_F(FormTable, AChangeOfUnitsLosesNothingOfAnOpenForm) {
  ui::EntryForm form(context(), {"hold_reading", {}, {}, {}});
  form.show();
  auto* pressure = form.findChild<ui::GaugePressureEdit*>(QStringLiteral("pressure_pa"));
  auto* temperature = form.findChild<ui::TemperatureEdit*>(QStringLiteral("temperature_k"));
  ASSERT_TRUE(pressure && temperature);
  pressure->set_text(QStringLiteral("30 psi"));
  temperature->set_text(QStringLiteral("about 4"));
  own_.preferences.set_units(units::DisplayUnits::metric());
  ASSERT_TRUE(pressure->value());
  EXPECT_NEAR(units::in_psi(present(pressure->value())), 30, 1e-6);
  EXPECT_EQ(temperature->text(), QStringLiteral("about 4"));
}

}  // namespace
}  // namespace ullage
