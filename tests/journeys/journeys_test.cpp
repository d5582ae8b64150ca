// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whole tasks through the real windows on the real demo cellar.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <algorithm>
#include <memory>

#include "core/units/present.h"
#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/forms/entry_fields.h"
#include "ui/dialogs/forms/entry_form.h"
#include "ui/dialogs/keg_change.h"
#include "ui/dialogs/register_kegs.h"
#include "ui/dialogs/stock_take.h"
#include "ui/dialogs/transfer_form.h"
#include "ui/dialogs/transfer_step.h"
#include "ui/models/log_table.h"
#include "ui/pages/lines_page.h"
#include "ui/pages/log_page.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/quantity_edits.h"
#include "ui/widgets/tag_list_edit.h"
#include "ui/widgets/text_edit.h"

namespace ullage {
namespace {

class Journey : public DemoJourney {
 protected:
  [[nodiscard]] cellar::LineStatus line(std::string_view name) const {
    for (const cellar::LineStatus& each : cellar_->status()->lines) {
      if (each.record.name == name) return each;
    }
    ADD_FAILURE() << "no line " << name;
    return {};
  }
  static void type(QWidget& form, const char* field, const QString& text) {
    auto* edit = form.findChild<QWidget*>(QLatin1String(field));
    ASSERT_NE(edit, nullptr) << field;
    auto* typed = edit->findChild<QLineEdit*>();
    ASSERT_NE(typed, nullptr) << field;
    typed->setFocus();
    typed->selectAll();
    QTest::keyClicks(typed, text);
  }
  static void press(QWidget& form, const char* button) {
    auto* found = form.findChild<QPushButton*>(QLatin1String(button));
    ASSERT_NE(found, nullptr) << button;
    QTest::mouseClick(found, Qt::LeftButton);
  }
};

TEST_F(Journey, StockTakingRegistersARunOfKegsAndCountsThem) {
  ui::RegisterKegs form(context());
  form.show();
  type(form, "tags", QStringLiteral("Q01..Q03"));
  press(form, "log_it");
  ASSERT_EQ(form.registered().size(), 3U);
  EXPECT_EQ(keg("Q02").phase, cellar::Phase::unknown);

  ui::StockTake count(context(), form.registered());
  count.show();
  EXPECT_TRUE(count.log_and_go_on());  // "not known" is an answer
  count.skip();
  EXPECT_EQ(count.at(), 2U);
  EXPECT_EQ(cellar_->journal().story(cellar::subject(keg("Q01").record.keg)).size(), 2U);
  EXPECT_EQ(cellar_->journal().story(cellar::subject(keg("Q02").record.keg)).size(), 1U);
}

TEST_F(Journey, ATagIsNotGivenTwice) {
  ui::RegisterKegs form(context());
  form.show();
  type(form, "tags", QStringLiteral("K01"));
  press(form, "log_it");
  EXPECT_TRUE(form.registered().empty());
  EXPECT_EQ(form.tags().text(), QStringLiteral("K01"));  // nothing typed is lost
}

TEST_F(Journey, ATransferIsOneActAndOneUndo) {
  const cellar::KegId into = keg("K05").record.keg;
  const cellar::BatchId batch = present(keg("K01").contents).batch;
  const std::size_t before = cellar_->journal().entries().size();
  ui::TransferForm form(context(), into);
  form.show();
  form.choose_batch(batch);
  auto* filled = form.findChild<ui::TransferStep*>(QStringLiteral("step_filled"));
  auto* gas = form.findChild<ui::TransferStep*>(QStringLiteral("step_gas_set"));
  ASSERT_TRUE(filled && gas);
  type(*filled, "beer_volume_m3", QStringLiteral("18.5 L"));
  type(*filled, "temperature_k", QStringLiteral("39F"));
  type(*gas, "pressure_pa", QStringLiteral("0.9 bar"));
  QTest::qWait(400);
  EXPECT_FALSE(form.outlook().isEmpty());
  press(form, "log_it");
  ASSERT_TRUE(keg("K05").contents) << form.findChild<QWidget*>("refusal")->isVisible();
  EXPECT_EQ(present(keg("K05").contents).batch.uuid, batch.uuid);
  EXPECT_NEAR(units::in_psi(present(keg("K05").gas.set)), 13.05, 0.01);  // 0.9 bar, NIST SP 811
  EXPECT_NE(keg("K05").readiness.kind, cellar::ReadinessKind::nothing_in_it);
  EXPECT_GE(cellar_->journal().entries().size(), before + 2);

  window_->run(ui::Command::undo);
  EXPECT_FALSE(keg("K05").contents);
  EXPECT_EQ(keg("K05").phase, cellar::Phase::purged);
}

// What is known of the batch is found like what is known of the keg.
TEST_F(Journey, ATransferFindsTheGravityOfItsBatchInTheLog) {
  const cellar::BatchId batch = present(keg("K01").contents).batch;
  cellar::GravityRead read{.batch = batch};
  read.stage = cellar::GravityStage::final;
  read.gravity = units::specific_gravity(1.012);
  const cellar::Instant at = cellar_->now() - std::chrono::hours(72);
  ASSERT_TRUE(cellar_->log({{{cellar::Payload(read), at, {}, {}}}, "MK"}));

  ui::TransferForm form(context(), keg("K05").record.keg);
  form.show();
  auto* gravity = form.findChild<ui::TransferStep*>(QStringLiteral("step_gravity_read"));
  auto* lid = form.findChild<ui::TransferStep*>(QStringLiteral("step_leak_tested"));
  ASSERT_TRUE(gravity && lid);
  EXPECT_FALSE(gravity->done());
  EXPECT_EQ(gravity->state_words(), QStringLiteral("not done"));
  form.choose_batch(batch);
  EXPECT_TRUE(gravity->done());
  EXPECT_TRUE(gravity->state_words().contains(QStringLiteral("3 d ago")))
      << gravity->state_words().toStdString();
  EXPECT_FALSE(gravity->logs_now());
  // The lid is this keg's: nothing else is asked about.
  EXPECT_EQ(lid->findChild<QWidget*>(QStringLiteral("regulator")), nullptr);
  EXPECT_NE(lid->findChild<QWidget*>(QStringLiteral("leak_found")), nullptr);
}

// Refused in the middle of a long form: the keyboard is there, and the field is in sight.
TEST_F(Journey, WhatIsRefusedInATransferIsInSight) {
  ui::TransferForm form(context(), keg("K05").record.keg);
  form.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
  form.choose_batch(present(keg("K01").contents).batch);
  auto* filled = form.findChild<ui::TransferStep*>(QStringLiteral("step_filled"));
  auto* gas = form.findChild<ui::TransferStep*>(QStringLiteral("step_gas_set"));
  ASSERT_TRUE(filled && gas);
  type(*filled, "beer_volume_m3", QStringLiteral("50 L"));  // into a keg of 19
  // What nobody stated is not nought: the pressure is still to be filled in.
  const auto* pressure = gas->findChild<ui::GaugePressureEdit*>(QStringLiteral("pressure_pa"));
  ASSERT_NE(pressure, nullptr);
  EXPECT_EQ(pressure->text(), QString());
  press(form, "log_it");
  EXPECT_TRUE(pressure->isAncestorOf(QApplication::focusWidget()));
  type(*gas, "pressure_pa", QStringLiteral("12 psi"));
  press(form, "log_it");
  ASSERT_TRUE(form.isVisible());
  const auto* volume = filled->findChild<QWidget*>(QStringLiteral("beer_volume_m3"));
  EXPECT_TRUE(volume->isAncestorOf(QApplication::focusWidget()));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !volume->visibleRegion().isEmpty(); }));
  prompts_.confirmations.push_back(true);
  form.reject();
}

// The bar over the step says what the gas is for; the step does not ask it again.
TEST_F(Journey, ATransferAsksOnceHowItIsCarbonated) {
  ui::TransferForm form(context(), keg("K05").record.keg);
  form.show();
  auto* gas = form.findChild<ui::TransferStep*>(QStringLiteral("step_gas_set"));
  auto* way = form.findChild<ui::ChoiceBar*>(QStringLiteral("gas_way"));
  ASSERT_TRUE(gas && way);
  EXPECT_EQ(gas->findChild<QWidget*>(QStringLiteral("purpose")), nullptr);
  type(*gas, "pressure_pa", QStringLiteral("30 psi"));
  const auto logged = [&]() -> std::optional<cellar::GasSet> {
    for (const cellar::Draft& draft : form.act().drafts) {
      if (const auto* set = get_if<cellar::GasSet>(&draft.payload)) return *set;
    }
    return std::nullopt;
  };
  const auto buttons = way->findChildren<QAbstractButton*>();
  ASSERT_EQ(buttons.size(), 4);
  buttons.at(0)->click();
  ASSERT_TRUE(logged());
  EXPECT_EQ(present(logged()).purpose, cellar::GasPurpose::burst);
  EXPECT_NEAR(units::in_psi(present(logged()).pressure), 30, 0.01) << "kept while the way changes";
  buttons.at(1)->click();
  ASSERT_TRUE(logged());
  EXPECT_EQ(present(logged()).purpose, cellar::GasPurpose::set_and_wait);
  buttons.at(3)->click();
  EXPECT_FALSE(logged());
  prompts_.confirmations.push_back(true);
  form.reject();
}

TEST_F(Journey, AKegChangeTakesOneOffAndPutsAnotherOn) {
  ui::KegChange form(context(), line("Line 1").record.line, keg("K04").record.keg);
  form.show();
  EXPECT_EQ(form.in_words(), QStringLiteral("K03 off, K04 on tap 1"));
  press(form, "log_it");
  EXPECT_EQ(keg("K04").phase, cellar::Phase::on_tap);
  EXPECT_EQ(keg("K03").phase, cellar::Phase::dirty);
  EXPECT_EQ(line("Line 1").keg, keg("K04").record.keg);
}

TEST_F(Journey, ALockIsEndedOnlyByAPassedCheck) {
  ASSERT_TRUE(line("Line 2").lock);
  EXPECT_TRUE(keg("P01").lock);
  const cellar::SuggestedTask task{
      "line_released", cellar::subject(line("Line 2").record.line), {}, {}};
  {
    ui::EntryForm form(context(), task);
    form.show();
    type(form, "checked_by", QStringLiteral("JB"));
    EXPECT_FALSE(form.log());  // the check has not passed
    EXPECT_TRUE(line("Line 2").lock);
    prompts_.confirmations.push_back(true);
    form.reject();
  }
  ui::EntryForm form(context(), task);
  form.show();
  type(form, "checked_by", QStringLiteral("JB"));
  form.findChild<QCheckBox*>(QStringLiteral("passed"))->setChecked(true);
  EXPECT_TRUE(form.log()) << form.refusal().toStdString();
  EXPECT_FALSE(line("Line 2").lock);
  EXPECT_FALSE(keg("P01").lock);
}

TEST_F(Journey, TheSecondInitialsAreAskedForJustWhereTheLineAsksForTwo) {
  const cellar::LineStatus locked = line("Line 2");
  ASSERT_TRUE(locked.lock);
  const cellar::SuggestedTask task{"line_released", cellar::subject(locked.record.line), {}, {}};
  const auto asked = [](const ui::EntryForm& form) {
    return form.findChild<ui::TextEdit*>(QStringLiteral("countersigned_by"))->isVisibleTo(&form);
  };
  {
    const ui::EntryForm one(context(), task);
    EXPECT_FALSE(asked(one));
  }
  cellar::LineRecord strict = locked.record;
  strict.second_initials_to_release = true;
  ASSERT_TRUE(cellar_->log({{{cellar::Payload(strict), cellar_->now(), {}, {}}}, "MK"}));

  ui::EntryForm form(context(), task);
  form.show();
  ASSERT_TRUE(asked(form));
  const auto* second = form.findChild<ui::TextEdit*>(QStringLiteral("countersigned_by"));
  type(form, "checked_by", QStringLiteral("JB"));
  form.findChild<QCheckBox*>(QStringLiteral("passed"))->setChecked(true);
  for (const char* same : {"", "JB", "jb"}) {
    if (*same) type(form, "countersigned_by", QString::fromLatin1(same));
    EXPECT_FALSE(form.log()) << same;
    EXPECT_TRUE(second->fault().contains(QStringLiteral("a second person"))) << same;
    EXPECT_TRUE(line("Line 2").lock) << same;
  }
  // Another line of the same form that asks for nobody else.
  auto* which = dynamic_cast<ui::LinePicker*>(form.findChild<QWidget*>(QStringLiteral("line")));
  ASSERT_NE(which, nullptr);
  type(form, "countersigned_by", QStringLiteral(" "));
  which->set_value(line("Line 1").record.line);
  EXPECT_FALSE(asked(form));
  which->set_value(locked.record.line);
  ASSERT_TRUE(asked(form));
  type(form, "countersigned_by", QStringLiteral("CD"));
  EXPECT_TRUE(form.log()) << form.refusal().toStdString();
  EXPECT_FALSE(line("Line 2").lock);
}

// What a form warns of, by the headlines on show.
QString warned_by(const QWidget& form) {
  QStringList said;
  for (const auto* banner : form.findChildren<ui::Banner*>())
    if (banner->isVisible()) said << banner->headline();
  return said.join(QLatin1Char('|'));
}

TEST_F(Journey, ALockedLineIsNotServedFromBeforeItsRelease) {
  const cellar::LineId locked = line("Line 2").record.line;
  ASSERT_TRUE(line("Line 2").do_not_serve());
  // Somebody would serve from it all the same: the form says what is in it, and the
  // page offers no pour.
  {
    ui::KegChange serve(context(), locked, keg("K04").record.keg);
    serve.show();
    EXPECT_TRUE(warned_by(serve).contains(QStringLiteral("Do not serve from Line 2")))
        << warned_by(serve).toStdString();
    prompts_.confirmations.push_back(true);
    serve.reject();
  }
  window_->show_page(ui::PageId::lines);
  auto* page = window_->findChild<ui::LinesPage*>();
  page->show_line(locked);
  const auto offered = [&](const char* name) {
    const auto buttons = page->findChildren<QPushButton*>(QLatin1String(name));
    return std::any_of(buttons.begin(), buttons.end(),
                       [](const QPushButton* b) { return b->isVisible(); });
  };
  EXPECT_TRUE(QTest::qWaitFor([&] { return offered("line_released"); }));
  EXPECT_FALSE(offered("timed_pour"));
  EXPECT_TRUE(warned_by(*page).contains(QStringLiteral("DO NOT SERVE")));

  ui::EntryForm release(context(), {"line_released", cellar::subject(locked), {}, {}});
  release.show();
  type(release, "checked_by", QStringLiteral("JB"));
  release.findChild<QCheckBox*>(QStringLiteral("passed"))->setChecked(true);
  ASSERT_TRUE(release.log()) << release.refusal().toStdString();
  EXPECT_FALSE(line("Line 2").do_not_serve());
  ui::KegChange serve(context(), locked, keg("K04").record.keg);
  serve.show();
  EXPECT_FALSE(warned_by(serve).contains(QStringLiteral("Do not serve")));
  EXPECT_TRUE(serve.log());
  EXPECT_EQ(line("Line 2").keg, keg("K04").record.keg);
}

TEST_F(Journey, ALeakingKegIsNotServedBeforeATestFindsNone) {
  const auto test = [this](bool found) {
    cellar::LeakTested t;
    t.keg = keg("K04").record.keg;
    t.leak_found = found;
    if (found) t.where = "lid";
    cellar::Act act;
    act.by = "JB";
    act.drafts.push_back({cellar::Payload(t), cellar_->now(), {}, {}});
    ASSERT_TRUE(cellar_->log(act));
  };
  test(true);
  {
    ui::KegChange serve(context(), line("Line 1").record.line, keg("K04").record.keg);
    serve.show();
    EXPECT_TRUE(warned_by(serve).contains(QStringLiteral("Do not serve K04")))
        << warned_by(serve).toStdString();
    EXPECT_TRUE(serve.log());  // it happened: it is logged, and locks the line
  }
  ASSERT_TRUE(line("Line 1").keg_lock);
  EXPECT_TRUE(present(line("Line 1").keg_lock).leaks);
  window_->show_page(ui::PageId::lines);
  auto* page = window_->findChild<ui::LinesPage*>();
  page->show_line(line("Line 1").record.line);
  EXPECT_TRUE(warned_by(*page).contains(QStringLiteral("DO NOT SERVE")));
  const auto buttons = page->findChildren<QPushButton*>(QStringLiteral("leak_tested"));
  EXPECT_TRUE(std::any_of(buttons.begin(), buttons.end(),
                          [](const QPushButton* b) { return b->isVisible(); }));
  test(false);
  EXPECT_FALSE(line("Line 1").do_not_serve());
}

TEST_F(Journey, NonsenseIsRefusedAtItsFieldAndKept) {
  ui::EntryForm form(context(), {"gas_set", cellar::subject(keg("K04").record.keg), {}, {}});
  form.show();
  type(form, "pressure_pa", QStringLiteral("30 frogs"));
  const std::size_t before = cellar_->journal().entries().size();
  EXPECT_FALSE(form.log());
  EXPECT_EQ(cellar_->journal().entries().size(), before);
  auto* edit = form.findChild<ui::GaugePressureEdit*>(QStringLiteral("pressure_pa"));
  EXPECT_EQ(edit->text(), QStringLiteral("30 frogs"));
  EXPECT_FALSE(edit->fault().isEmpty());
  prompts_.confirmations.push_back(true);
  form.reject();
}

TEST_F(Journey, AnEntryIsStruckFromTheLogAndStaysReadable) {
  window_->show_page(ui::PageId::log);
  auto* page = window_->findChild<ui::LogPage*>();
  ASSERT_NE(page, nullptr);
  page->show_entries_of(cellar::subject(keg("K01").record.keg));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !page->table().searching(); }));
  const cellar::Entry* filled = nullptr;
  for (int row = 0; row < page->table().rowCount(); ++row) {
    const cellar::Entry* entry = page->table().entry_at(page->table().index(row, 0));
    if (holds_alternative<cellar::Filled>(entry->payload)) filled = entry;
  }
  ASSERT_NE(filled, nullptr);
  const cellar::EntryId id = filled->header.id;
  page->select(id);
  prompts_.reasons.emplace_back(QStringLiteral("wrong keg"));
  page->strike_selected();
  EXPECT_FALSE(keg("K01").contents);
  EXPECT_EQ(cellar_->journal().standing(id), cellar::Standing::struck);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !page->table().searching(); }));
  page->select(id);
  prompts_.reasons.emplace_back(QStringLiteral("it was right"));
  page->restore_selected();
  EXPECT_TRUE(keg("K01").contents);
}

}  // namespace
}  // namespace ullage
