// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas and temperatures through the real window, on the real demo cellar.
#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <memory>

#include "core/cellar/gas_account.h"
#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/logger_import.h"
#include "ui/pages/gas_page.h"

namespace ullage {
namespace {

class GasJourney : public DemoJourney {};

// The demo's bottle gets lighter by 270 g a week, of which its kegs explain only
// a part.
TEST_F(GasJourney, TheGasPageTellsOfTheDemosLeak) {
  window_->run(ui::Command::page_gas);
  auto* page = window_->findChild<ui::GasPage*>();
  ASSERT_NE(page, nullptr);
  const auto status = cellar_->status();
  const cellar::BottleStatus* losing = nullptr;
  for (const cellar::BottleStatus& b : status->bottles) {
    if (b.account && b.account->alarm) losing = &b;
  }
  ASSERT_NE(losing, nullptr);
  EXPECT_GT(units::in_grams(losing->account->loss->per_day.value()), 5);
  EXPECT_LT(units::in_grams(losing->account->loss->per_day.value()), 270.0 / 7 + 1);
  EXPECT_FALSE(losing->account->suspects.empty());
  bool said = false;
  for (const QLabel* label : page->findChildren<QLabel*>())
    said = said || label->text().contains(QStringLiteral("that no keg explains"));
  EXPECT_TRUE(said);
}

TEST_F(GasJourney, ALoggersFileIsImportedAndUndoneAsOne) {
  const QString path = folder_.filePath(QStringLiteral("cold box.csv"));
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("Time;Temp (°C)\n");
  const QDateTime start = QDateTime::currentDateTimeUtc().addDays(-2);
  for (int i = 0; i < 200; ++i) {
    const int quarter = i / 50;
    const double celsius = 3.5 + quarter * 0.8;
    file.write(
        QStringLiteral("%1;%2\n")
            .arg(start.addSecs(qint64{600} * i).toString(QStringLiteral("yyyy-MM-dd hh:mm:ss")))
            .arg(celsius, 0, 'f', 1)
            .toUtf8());
  }
  file.close();
  prompts_.files.emplace_back(path);
  const std::size_t before = cellar_->journal().entries().size();

  // The dialog is modal: the rest of the task is done from within.
  QTimer::singleShot(0, [&] {
    ui::LoggerImport* form = nullptr;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return (form = window_->findChild<ui::LoggerImport*>()) != nullptr; }));
    QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("choose_file")), Qt::LeftButton);
    EXPECT_TRUE(form->in_words().startsWith(QStringLiteral("200 readings")))
        << form->in_words().toStdString();
    EXPECT_EQ(cellar_->journal().entries().size(), before);
    QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("import")), Qt::LeftButton);
    if (form->isVisible()) form->reject();
  });
  cellar::PlaceId box;
  for (const cellar::PlaceStatus& p : cellar_->status()->places) {
    if (p.record.name == "Cold box") box = p.record.place;
  }
  window_->open_task({"logger_import", cellar::subject(box), {}, {}});
  const std::size_t after = cellar_->journal().entries().size();
  EXPECT_GT(after, before + 3);
  EXPECT_LT(after, before + 60);  // what says nothing new is left out
  EXPECT_TRUE(window_->notice().contains(QStringLiteral("Imported")));

  window_->run(ui::Command::undo);
  int struck = 0;
  for (std::size_t i = before; i < after; ++i) {
    struck += cellar_->journal().standing(cellar_->journal().entries()[i].header.id) ==
                      cellar::Standing::struck
                  ? 1
                  : 0;
  }
  EXPECT_EQ(static_cast<std::size_t>(struck), after - before);
}

}  // namespace
}  // namespace ullage
