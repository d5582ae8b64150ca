// SPDX-License-Identifier: GPL-3.0-or-later
//
// For journeys by keyboard: the desk with its real boxes, files in a folder of
// the test's own, and a typist.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <functional>
#include <string_view>

#include "app/demo_cellar.h"
#include "app/desk.h"
#include "app/surroundings.h"
#include "tests/support/typist.h"
#include "ui/dialogs/box_prompts.h"

namespace ullage {

class DeskJourney : public ::testing::Test {
 protected:
  [[nodiscard]] QString path(const char* name) const {
    return folder_.filePath(QString::fromLatin1(name));
  }
  [[nodiscard]] ui::MainWindow& window() const { return *desk_.windows().back(); }
  [[nodiscard]] app::CellarSession& cellar() const { return *desk_.session_of(&window()); }
  [[nodiscard]] cellar::KegStatus keg(std::string_view tag) const {
    const auto status = cellar().status();
    const cellar::KegStatus* found = status->keg_by_tag(tag);
    EXPECT_NE(found, nullptr) << tag;
    return found ? *found : cellar::KegStatus{};
  }
  // The demo's story in a file of its own, opened as any cellar is.
  void open_demo_file() {
    const std::filesystem::path file = path("home.cellar").toStdString();
    desk_.preferences().set_units(units::DisplayUnits::british());
    ASSERT_TRUE(app::make_demo(file, {clock_, ids_}));
    ASSERT_TRUE(desk_.open(file));
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  // A task by its name in the palette.
  void task(const char* words, const QString& form, std::function<void()> body) {
    typist_.expect(QStringLiteral("task_palette"), [this, words] {
      typist_.keys(QString::fromLatin1(words));
      typist_.key(Qt::Key_Return);
    });
    typist_.expect(form, std::move(body));
    typist_.chord("Ctrl+L");
    typist_.finish();
  }
  void log_it() { typist_.push(QStringLiteral("log_it")); }
  // "Alt+C" and then the letters that the menu underlines.
  void menu(const char* opens, const char* letters) {
    typist_.chord(opens);
    ASSERT_TRUE(QTest::qWaitFor([] { return QApplication::activePopupWidget() != nullptr; }));
    typist_.keys(QString::fromLatin1(letters));
  }
  void answer_file_dialog(const QString& file) {
    typist_.expect(QStringLiteral("QFileDialog"), [this, file] {
      typist_.paste(file);
      typist_.key(Qt::Key_Return);
    });
  }
  // Reads the box in front and closes it by its first button.
  void answer_box(QString* told = nullptr) {
    typist_.expect(QStringLiteral("message_box"), [this, told] {
      if (told) *told = words_in(*QApplication::activeModalWidget());
      typist_.key(Qt::Key_Return);
    });
  }
  static QString words_in(const QWidget& widget) {
    QStringList words;
    for (const QLabel* label : widget.findChildren<QLabel*>()) {
      if (label->isVisible()) words << label->text();
    }
    return words.join(QLatin1Char('\n'));
  }

  QTemporaryDir folder_;
  app::SystemClock clock_;
  app::RandomIds ids_;
  QSettings settings_{path("settings.ini"), QSettings::IniFormat};
  ui::BoxPrompts prompts_;
  app::Desk desk_{{clock_, ids_, settings_, prompts_, std::chrono::milliseconds(60000)}};
  testing::Typist typist_;
};

}  // namespace ullage
