// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Kegs page in a real window, over a cellar made by hand.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/sample_status.h"
#include "ui/pages/kegs_page.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/keg_table_view.h"

namespace ullage::testing {

class KegsWindow : public ::testing::Test {
 protected:
  KegsWindow()
      : settings_(folder_.filePath("settings.ini"), QSettings::IniFormat),
        preferences_(settings_),
        cellar_(sample_cellar()) {
    ui::dress(ui::light_theme());
    preferences_.set_units(units::DisplayUnits::british());
    preferences_.set_words(report::RegionalWords::british);
    cellar_.show_curve(numbered<cellar::KegId>(1), sample_curve());
  }

  void open(QSize size = {1284, 860}) {
    page_ = std::make_unique<ui::KegsPage>(context_);
    page_->resize(size);
    page_->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
  }

  template <class Widget>
  [[nodiscard]] Widget* part(const char* name) const {
    auto* found = page_->findChild<Widget*>(QLatin1String(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
  }
  [[nodiscard]] ui::KegTableView* table() const { return part<ui::KegTableView>("keg_table"); }
  [[nodiscard]] QStringList tags() const {
    QStringList all;
    const QAbstractItemModel* model = table()->model();
    for (int row = 0; row < model->rowCount(); ++row) {
      all << model->index(row, 0).data().toString();
    }
    return all;
  }
  [[nodiscard]] QString chosen_tag() const {
    return table()->currentIndex().siblingAtColumn(0).data().toString();
  }
  // Keys go where they would go: to whatever has the focus.
  void press(int key) { QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key)); }
  void type(const QString& text) {
    for (const QChar c : text) QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
  }
  void click(QWidget* widget) { QTest::mouseClick(widget, Qt::LeftButton); }
  void click_chip(ui::KegFilter filter) {
    click(part<QWidget>(
        QStringLiteral("chip_%1").arg(static_cast<int>(filter)).toLatin1().constData()));
  }

  QTemporaryDir folder_;
  QSettings settings_;
  ui::Preferences preferences_;
  FakeFacade cellar_;
  RecordingNavigator navigator_;
  QueuedPrompts prompts_;
  ui::Context context_{cellar_, preferences_, prompts_, navigator_};
  std::unique_ptr<ui::KegsPage> page_;
};

}  // namespace ullage::testing
