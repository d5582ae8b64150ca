// SPDX-License-Identifier: GPL-3.0-or-later
//
// For tests of how everything looks: the program's window on the demo and on an empty
// cellar, in both themes, in metric and US units, in both languages, wide and at
// 1024x640, and what must hold of each of its screens.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>
#include <memory>
#include <optional>
#include <string>

#include "app/demo_cellar.h"
#include "app/surroundings.h"
#include "tests/support/accessibility.h"
#include "tests/support/fake_surroundings.h"
#include "ui/main_window.h"
#include "ui/preferences.h"
#include "ui/theme/theme_switch.h"

namespace ullage {

inline constexpr QSize small_screen(1024, 640);
inline constexpr QSize wide_window(1440, 860);
inline constexpr int title_bar = 32;

struct Look {
  const char* name;
  QSize window;
  ui::ThemeChoice theme;
  bool demo;
  bool us;
  bool german = false;  // whose words are longer
};

inline const Look looks[] = {
    {"DemoLightMetricWide", wide_window, ui::ThemeChoice::light, true, false},
    {"DemoDarkMetricSmall", small_screen, ui::ThemeChoice::dark, true, false},
    {"DemoLightUsSmall", small_screen, ui::ThemeChoice::light, true, true},
    {"DemoDarkUsWide", wide_window, ui::ThemeChoice::dark, true, true},
    {"EmptyLightUsWide", wide_window, ui::ThemeChoice::light, false, true},
    {"EmptyDarkMetricSmall", small_screen, ui::ThemeChoice::dark, false, false},
    {"DemoLightGermanSmall", small_screen, ui::ThemeChoice::light, true, false, true},
    {"EmptyDarkGermanSmall", small_screen, ui::ThemeChoice::dark, false, false, true},
};

inline void PrintTo(const Look& look, std::ostream* to) { *to << look.name; }

class EveryScreen : public ::testing::TestWithParam<Look> {
 protected:
  void SetUp() override {
    const Look& look = GetParam();
    if (look.german) {
      ASSERT_TRUE(german_.load(QStringLiteral(":/translations/ullage_de.qm")));
      QCoreApplication::installTranslator(&german_);
    }
    preferences_.set_theme(look.theme);
    preferences_.set_units(look.us ? units::DisplayUnits::us() : units::DisplayUnits::metric());
    preferences_.set_words(look.us ? report::RegionalWords::us : report::RegionalWords::british);
    preferences_.set_initials(QStringLiteral("MK"));
    const std::string file = folder_.filePath(QStringLiteral("looked-at.cellar")).toStdString();
    const cellar::CellarDescribed blank{.name = "Back room", .time_zone = "Europe/London"};
    auto made = look.demo ? app::make_demo(file, {clock_, ids_})
                          : app::CellarSession::create(file, blank, {clock_, ids_});
    ASSERT_TRUE(made);
    cellar_ = std::move(*made);
    window_ = std::make_unique<ui::MainWindow>(*cellar_, preferences_, prompts_, ui::AppCommands{});
    window_->resize(look.window);
    window_->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
  }

  void TearDown() override { QCoreApplication::removeTranslator(&german_); }

  // What can be seen and heard of it; walking it by Tab, which takes its time, apart.
  static void judge_looks(QWidget& screen, const std::string& name) {
    // What was taken off the screen goes, and what is laid out in several steps settles.
    QTest::qWait(20);
    (void)QTest::qWaitFor([&] { return testing::clipped_texts(screen).empty(); }, 1000);
    const ::testing::ScopedTrace trace(__FILE__, __LINE__, name);
    EXPECT_THAT(testing::unnamed_controls(screen), ::testing::IsEmpty());
    EXPECT_THAT(testing::clipped_texts(screen), ::testing::IsEmpty());
    EXPECT_THAT(testing::contrast_faults(screen), ::testing::IsEmpty());
  }
  static void judge(QWidget& screen, const std::string& name) {
    judge_looks(screen, name);
    const ::testing::ScopedTrace trace(__FILE__, __LINE__, name);
    EXPECT_THAT(testing::tab_order_faults(screen), ::testing::IsEmpty());
  }
  static void expect_fits(const QWidget& dialog, const std::string& name) {
    EXPECT_LE(dialog.width(), small_screen.width()) << name;
    EXPECT_LE(dialog.height(), small_screen.height() - title_bar) << name;
  }
  static void judge_dialog(QDialog& dialog, const std::string& name) {
    dialog.show();
    judge(dialog, name);
    expect_fits(dialog, name);
  }

  // The first thing of its kind, for a form that is about one.
  [[nodiscard]] std::optional<cellar::SubjectRef> first(cellar::SubjectKind kind) const {
    const auto status = cellar_->status();
    const auto of = [](const auto& all, auto subject) -> std::optional<cellar::SubjectRef> {
      return all.empty() ? std::nullopt : std::optional(subject(all.front()));
    };
    switch (kind) {
      case cellar::SubjectKind::keg:
        return of(status->kegs, [](const auto& k) { return cellar::subject(k.record.keg); });
      case cellar::SubjectKind::line:
        return of(status->lines, [](const auto& l) { return cellar::subject(l.record.line); });
      case cellar::SubjectKind::place:
        return of(status->places, [](const auto& p) { return cellar::subject(p.record.place); });
      case cellar::SubjectKind::bottle:
        return of(status->bottles, [](const auto& b) { return cellar::subject(b.record.bottle); });
      default:
        return std::nullopt;
    }
  }

  QTranslator german_;
  QTemporaryDir folder_;
  app::SystemClock clock_;
  app::RandomIds ids_;
  QSettings settings_{folder_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
  ui::Preferences preferences_{settings_};
  ui::ThemeSwitch theme_{preferences_};
  testing::QueuedPrompts prompts_;
  std::unique_ptr<app::CellarSession> cellar_;
  std::unique_ptr<ui::MainWindow> window_;
};

}  // namespace ullage
