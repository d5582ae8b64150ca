// SPDX-License-Identifier: GPL-3.0-or-later
//
// Switching the units with everything open: no number and no label on any page or
// form stays in the old unit, and the file does not change by a byte.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include "app/demo_cellar.h"
#include "app/surroundings.h"
#include "tests/support/fake_surroundings.h"
#include "ui/commands/commands.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/main_window.h"
#include "ui/preferences.h"

namespace ullage {
namespace {

// Whatever of the window a person can read or have read out.
QStringList texts_in(const QWidget& window) {
  QStringList all;
  for (const QWidget* widget : window.findChildren<QWidget*>()) {
    if (!widget->isVisible()) continue;
    all << widget->accessibleName() << widget->accessibleDescription() << widget->toolTip();
    if (const auto* label = qobject_cast<const QLabel*>(widget)) all << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) all << button->text();
    if (const auto* edit = qobject_cast<const QLineEdit*>(widget)) {
      all << edit->text() << edit->placeholderText();
    }
    if (const auto* combo = qobject_cast<const QComboBox*>(widget)) {
      for (int i = 0; i < combo->count(); ++i) all << combo->itemText(i);
    }
    const auto* view = qobject_cast<const QTableView*>(widget);
    if (!view) continue;
    for (int column = 0; column < view->model()->columnCount(); ++column) {
      all << view->model()->headerData(column, Qt::Horizontal).toString();
      for (int row = 0; row < view->model()->rowCount(); ++row) {
        const QModelIndex at = view->model()->index(row, column);
        all << at.data(Qt::AccessibleTextRole).toString() << at.data().toString()
            << at.data(Qt::ToolTipRole).toString();
      }
    }
  }
  return all;
}

// A unit after a number, or alone, or at the end as in the head of a column.
QRegularExpression any_of(const char* units) {
  return QRegularExpression(
      QStringLiteral("\\d\\s?(%1)(?![\\w/])|(^|, )(%1)$").arg(QString::fromUtf8(units)));
}

const char* const metric_units = "bar|°C|kg|g/L|L|mL|m|cm|mm|°P";
// "in" is a word too: "3 in use", "CO2 in it", "9 in kegs".
const char* const us_units = "psi|°F|lb|oz|gal|qt|ft|in(?! (?:use|it|kegs)\\b)|vol";

class UnitFlip : public ::testing::Test {
 protected:
  void SetUp() override {
    auto made = app::make_demo(file(), {clock_, ids_});
    ASSERT_TRUE(made);
    cellar_ = std::move(*made);
    window_ = std::make_unique<ui::MainWindow>(*cellar_, preferences_, prompts_, ui::AppCommands{});
    window_->show();
  }
  [[nodiscard]] std::string file() const {
    return folder_.filePath(QStringLiteral("demo.cellar")).toStdString();
  }
  [[nodiscard]] QByteArray stored() const {
    QByteArray all;
    for (const char* tail : {"", "-wal"}) {
      QFile part(QString::fromStdString(file()) + QLatin1String(tail));
      if (part.open(QIODevice::ReadOnly)) all += part.readAll();
    }
    return all;
  }
  // Both ways, so that nothing is right only because it never changes.
  void flip_and_read(const QWidget& screen, const std::string& name) {
    const auto read = [&](const units::DisplayUnits& to, const char* forbidden) {
      preferences_.set_units(to);
      QTest::qWait(30);
      const QRegularExpression old = any_of(forbidden);
      for (const QString& text : texts_in(screen)) {
        EXPECT_FALSE(text.contains(old)) << name << ": “" << text.toStdString() << "”";
      }
    };
    preferences_.set_units(units::DisplayUnits::metric());
    QTest::qWait(30);
    read(units::DisplayUnits::us(), metric_units);
    read(units::DisplayUnits::metric(), us_units);
  }

  QTemporaryDir folder_;
  app::SystemClock clock_;
  app::RandomIds ids_;
  QSettings settings_{folder_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
  ui::Preferences preferences_{settings_};
  testing::QueuedPrompts prompts_;
  std::unique_ptr<app::CellarSession> cellar_;
  std::unique_ptr<ui::MainWindow> window_;
};

TEST_F(UnitFlip, ChangesEveryPageAndNothingStored) {
  const QByteArray before = stored();
  ASSERT_FALSE(before.isEmpty());
  for (const ui::CommandSpec& spec : ui::commands()) {
    if (spec.menu != ui::Menu::view) continue;
    window_->run(spec.command);
    flip_and_read(*window_, spec.does);
  }
  EXPECT_EQ(stored(), before);
}

TEST_F(UnitFlip, ChangesThePanelOfEveryKeg) {
  window_->run(ui::Command::page_kegs);
  for (const cellar::KegStatus& keg : cellar_->status()->kegs) {
    window_->show_keg(keg.record.keg);
    flip_and_read(*window_, keg.record.tag);
  }
}

TEST_F(UnitFlip, ChangesEveryOpenForm) {
  const cellar::SubjectRef keg = cellar::subject(cellar_->status()->kegs.front().record.keg);
  for (const ui::TaskForm& form : ui::task_forms()) {
    const bool of_keg = form.about == cellar::SubjectKind::keg;
    const std::unique_ptr<QDialog> dialog(ui::make_task_dialog(
        window_->context(), {form.kind, of_keg ? std::optional(keg) : std::nullopt, {}, {}},
        nullptr));
    dialog->show();
    flip_and_read(*dialog, form.kind);
  }
}

}  // namespace
}  // namespace ullage
