// SPDX-License-Identifier: GPL-3.0-or-later
//
// For journeys through the main window: the demo cellar in a file of the test's own, and
// boxes that the test answers.
#pragma once

#include <gtest/gtest.h>

#include <QSize>
#include <QTemporaryDir>
#include <QTest>
#include <memory>
#include <string_view>

#include "app/demo_cellar.h"
#include "app/surroundings.h"
#include "tests/support/ahead_clock.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "ui/main_window.h"

namespace ullage {

class DemoJourney : public ::testing::Test {
 protected:
  // Whose initials the forms begin with, and how large the window is; nobody's and its own
  // size when left out.
  explicit DemoJourney(const QString& initials = {}, QSize size = {}) : size_(size) {
    if (!initials.isEmpty()) own_.preferences.set_initials(initials);
  }
  void SetUp() override {
    auto made = app::make_demo(path().toStdString(), {clock_, ids_});
    ASSERT_TRUE(made);
    show(std::move(*made));
  }
  // The window on a cellar, in place of the one before.
  virtual void show(std::unique_ptr<app::CellarSession> cellar) {
    window_.reset();
    cellar_ = std::move(cellar);
    window_ =
        std::make_unique<ui::MainWindow>(*cellar_, own_.preferences, prompts_, ui::AppCommands{});
    if (size_.isValid()) window_->resize(size_);
    window_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
  }
  [[nodiscard]] QString path() const { return folder_.filePath(QStringLiteral("demo.cellar")); }
  [[nodiscard]] ui::Context& context() { return window_->context(); }
  [[nodiscard]] cellar::KegStatus keg(std::string_view tag) const {
    const auto status = cellar_->status();
    const cellar::KegStatus* found = status->keg_by_tag(tag);
    EXPECT_NE(found, nullptr) << tag;
    return found ? *found : cellar::KegStatus{};
  }

  QTemporaryDir folder_;
  testing::AheadClock clock_;
  app::RandomIds ids_;
  testing::OwnPreferences own_;
  testing::QueuedPrompts prompts_;
  std::unique_ptr<app::CellarSession> cellar_;
  std::unique_ptr<ui::MainWindow> window_;

 private:
  QSize size_;
};

}  // namespace ullage
