// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every widget in one window, in both themes: named, reachable, readable, not
// clipped. With ULLAGE_LOOK set to a folder the pictures are kept there.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QGridLayout>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "tests/support/accessibility.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "tests/support/sample_status.h"
#include "ui/commands/shortcut_sheet.h"
#include "ui/commands/task_palette.h"
#include "ui/dialogs/backups.h"
#include "ui/dialogs/first_start.h"
#include "ui/dialogs/message_box.h"
#include "ui/dialogs/new_cellar.h"
#include "ui/dialogs/settings.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/chip.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/form_section.h"
#include "ui/widgets/quantity_edits.h"
#include "ui/widgets/status_mark.h"
#include "ui/widgets/tag_list_edit.h"
#include "ui/widgets/text_edit.h"
#include "ui/widgets/when_edit.h"

namespace ullage::ui {
namespace {

using testing::FakeFacade;

class Gallery : public ::testing::TestWithParam<bool> {
 protected:
  void SetUp() override { dress(GetParam() ? dark_theme() : light_theme()); }
  void TearDown() override { dress(light_theme()); }

  void judge(QWidget& window, const QString& name) {
    window.show();
    for (int i = 0; i < 3; ++i) QApplication::processEvents();
    EXPECT_THAT(testing::unnamed_controls(window), ::testing::IsEmpty()) << name.toStdString();
    EXPECT_THAT(testing::clipped_texts(window), ::testing::IsEmpty()) << name.toStdString();
    EXPECT_THAT(testing::contrast_faults(window), ::testing::IsEmpty()) << name.toStdString();
    EXPECT_THAT(testing::tab_order_faults(window), ::testing::IsEmpty()) << name.toStdString();
    const QString folder = qEnvironmentVariable("ULLAGE_LOOK");
    if (folder.isEmpty()) return;
    window.grab().save(QStringLiteral("%1/%2_%3_%4x.png")
                           .arg(folder, name, GetParam() ? "dark" : "light")
                           .arg(qApp->devicePixelRatio()));
  }

  FakeFacade facade{testing::sample_cellar()};
  testing::OwnPreferences own;
  testing::QueuedPrompts prompts;
  testing::RecordingNavigator navigator;
  Context context{facade, own.preferences, prompts, navigator};
};
INSTANTIATE_TEST_SUITE_P(LightAndDark, Gallery, ::testing::Bool(),
                         [](const auto& which) { return which.param ? "dark" : "light"; });

FormSection* readings(const Context& context, QWidget* parent) {
  const Preferences& preferences = context.preferences;
  auto* form = new FormSection("Readings", parent);
  auto* pressure = new GaugePressureEdit(preferences);
  pressure->set_last(units::gauge_psi(12));
  form->add("&Pressure", pressure, "On the dial, with the gas on.");
  auto* typed = new GaugePressureEdit(preferences);
  form->add("Pressure, &other unit", typed);
  typed->set_text("2.1 bar");
  auto* wrong = new TemperatureEdit(preferences);
  form->add("&Temperature", wrong);
  wrong->set_text("30 frogs");
  wrong->show_fault();
  auto* volume = new VolumeEdit(preferences);
  volume->set_value(units::litres(18.63));
  form->add("&Volume", volume);
  form->add("Gr&avity", new GravityEdit(preferences));
  auto* when = new WhenEdit(context.cellar);
  form->add("&When", when);
  auto* date = new DateEdit(context.cellar);
  date->set_text("24 Feb 2027");
  form->add("&Best by", date);
  form->add_caution("Vent the keg before you open it. It is under pressure until then.");
  form->add_caution("Caustic burns skin and eyes. Goggles and gloves; local rules come first.",
                    Caution::Weight::danger);
  return form;
}

FormSection* choices(const Context& context, QWidget* parent) {
  auto* form = new FormSection("Choices", parent);
  auto* keg = new KegPicker(context);
  keg->set_value(testing::numbered<cellar::KegId>(1));
  form->add("&Keg", keg);
  auto* place = new PlacePicker(context);
  place->set_optional("Nowhere in particular");
  form->add("P&lace", place);
  auto* tags = new TagListEdit(context.cellar);
  tags->set_text("B01..B08");
  form->add("Ta&gs", tags);
  form->add("&Method", new EnumPicker<int>({{0, "Cycles"}, {1, "Pushed out"}, {2, "Swept"}}));
  auto* five = new EnumPicker<int>(
      {{0, "Foam"}, {1, "Line cleaning"}, {2, "Spoiled"}, {3, "Short fill"}, {4, "Spill"}});
  five->set_value(1);
  form->add("&Reason", five);
  auto* note = new TextEdit(60, TextEdit::Lines::several);
  note->set_value("Lid seated at the second try.");
  form->add("&Note", note);
  auto* long_text = new TextEdit(8);
  long_text->set_value("far too long for this");
  form->add("&Initials", long_text);
  return form;
}

QLayout* all_marks(QWidget* box) {
  auto* marks = new QGridLayout;
  int at = 0;
  for (const auto& [mark, word] :
       std::initializer_list<std::pair<Mark, const char*>>{{Mark::ring, "Clean, not purged"},
                                                           {Mark::half_ring, "Dirty"},
                                                           {Mark::dot, "Ready since Mon"},
                                                           {Mark::clock, "Ready Fri 27 Nov"},
                                                           {Mark::cup, "On tap 1"},
                                                           {Mark::triangle, "Cleaning due"},
                                                           {Mark::octagon, "Over its rating"},
                                                           {Mark::padlock, "Do not serve"},
                                                           {Mark::bar, "Held back"},
                                                           {Mark::question, "Can’t tell yet"},
                                                           {Mark::info, "Note"}}) {
    marks->addWidget(new StatusMark(mark, word, box), at / 3, at % 3);
    ++at;
  }
  return marks;
}

QWidget* small_parts(QWidget* parent) {
  auto* box = new QWidget(parent);
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::m);
  auto* buttons = new QHBoxLayout;
  for (const auto& [word, role] : std::initializer_list<std::pair<const char*, ButtonRole>>{
           {"Log a transfer", ButtonRole::primary},
           {"Status sheet", ButtonRole::plain},
           {"Release line", ButtonRole::danger},
           {"Undo", ButtonRole::quiet}}) {
    auto* button = new QPushButton(word, box);
    set_role(button, role);
    buttons->addWidget(button);
  }
  auto* off = new QPushButton("Off", box);
  off->setEnabled(false);
  buttons->addWidget(off);
  buttons->addStretch(1);
  column->addLayout(buttons);
  auto* chips = new QHBoxLayout;
  for (const char* word : {"ready to tap", "carbonating", "need attention"}) {
    auto* chip = new Chip(word, box);
    chip->set_count(2);
    chip->setChecked(QString(word) == "carbonating");
    chips->addWidget(chip);
  }
  chips->addWidget(new Pill("12", Pill::Tone::plain, box));
  chips->addWidget(new Pill("1 locked", Pill::Tone::danger, box));
  chips->addStretch(1);
  column->addLayout(chips);
  auto* ticks = new QHBoxLayout;
  auto* tick = new QCheckBox("Seals lubricated", box);
  tick->setChecked(true);
  ticks->addWidget(tick);
  ticks->addWidget(new QCheckBox("Bubbles at the lid", box));
  auto* radio = new QRadioButton("Open", box);
  radio->setChecked(true);
  ticks->addWidget(radio);
  ticks->addWidget(new QRadioButton("Closed", box));
  ticks->addStretch(1);
  column->addLayout(ticks);
  column->addLayout(all_marks(box));
  auto* ready = new Banner(cellar::Severity::advice, "Ready Fri 27 Nov",
                           "At 30 psi, 1.1 °C. Drop to 11 psi Thu 14:00 and vent.", box);
  ready->add_action("Set gas…");
  column->addWidget(ready);
  column->addWidget(new Banner(cellar::Severity::warning, "Line 2 cleaning is due today",
                               "Last cleaned 18 Nov.", box));
  column->addWidget(new Banner(cellar::Severity::danger, "Line 3 has cleaner in it",
                               "Caustic since 14:10, by MK. Do not serve.", box));
  column->addStretch(1);
  return box;
}

TEST_P(Gallery, Widgets) {
  QWidget window;
  auto* row = new QHBoxLayout(&window);
  row->setContentsMargins(space::xl, space::xl, space::xl, space::xl);
  row->setSpacing(space::xxl);
  row->addWidget(readings(context, &window), 3);
  row->addWidget(choices(context, &window), 3);
  row->addWidget(small_parts(&window), 3);
  window.resize(1500, 780);
  judge(window, "widgets");
}

TEST_P(Gallery, EmptyState) {
  class EmptyState window(Icon::keg, "No kegs yet",
                          "Say which kegs you have and what is in them now; unknowns are fine.");
  window.add_action("Register kegs…");
  window.add_action("Stock-taking…");
  window.resize(640, 420);
  judge(window, "empty-state");
}

TEST_P(Gallery, FirstStart) {
  ui::FirstStart window;
  judge(window, "first-start");
}

TEST_P(Gallery, NewCellar) {
  ui::NewCellar window;
  judge(window, "new-cellar");
}

TEST_P(Gallery, Settings) {
  SettingsDialog window(own.preferences);
  judge(window, "settings");
}

TEST_P(Gallery, Backups) {
  BackupsDialog window({{"25 November 2026", "daily", "1.2 MB"},
                        {"24 November 2026", "daily", "1.2 MB"},
                        {"20 November 2026", "before the file was brought up to date", "1.1 MB"}});
  judge(window, "backups");
}

TEST_P(Gallery, MessageBox) {
  ui::MessageBox window("This file is damaged.",
                        "Page 12 can’t be read. A backup of yesterday is there.", nullptr);
  window.add_way("Restore a backup…", ButtonRole::primary);
  window.add_way("Save what can be read…", ButtonRole::plain);
  window.add_cancel();
  judge(window, "message-box");
}

TEST_P(Gallery, Shortcuts) {
  ShortcutSheet window;
  judge(window, "shortcuts");
}

TEST_P(Gallery, Palette) {
  const std::vector<TaskForm> tasks = {
      {"filled", "Fill a keg", "filled rack transfer", cellar::SubjectKind::keg},
      {"vented", "Vent a keg", "release pressure", cellar::SubjectKind::keg},
      {"gas_set", "Set the gas", "pressure psi regulator", cellar::SubjectKind::keg},
      {"line_locked", "Lock a line", "clean caustic do not serve", cellar::SubjectKind::line}};
  TaskPalette window(context, tasks);
  judge(window, "palette");
}

}  // namespace
}  // namespace ullage::ui
