// SPDX-License-Identifier: GPL-3.0-or-later
//
// Due work moved to another day by mouse: what a drag carries and what is not taken, and
// a click on a day. The window system's own drag does not run on the offscreen platform.
#include <gmock/gmock.h>

#include <QApplication>
#include <QDragEnterEvent>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>
#include <memory>

#include "tests/journeys/demo_journey.h"
#include "ui/dialogs/put_off_dialog.h"

namespace ullage {
namespace {

class CleaningDrag : public DemoJourney {
 protected:
  CleaningDrag() : DemoJourney(QStringLiteral("JB"), QSize(1280, 860)) {}
  void show(std::unique_ptr<app::CellarSession> cellar) override {
    DemoJourney::show(std::move(cellar));
    ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    window_->run(ui::Command::page_cleaning);
    QApplication::processEvents();
    list_ = window_->findChild<QTreeWidget*>(QStringLiteral("due_list"));
    days_ = window_->findChild<QWidget*>(QStringLiteral("due_days"));
    why_ = window_->findChild<QLabel*>(QStringLiteral("due_why"));
    ASSERT_TRUE(list_ != nullptr && days_ != nullptr && why_ != nullptr);
  }
  [[nodiscard]] std::size_t entries() const { return cellar_->journal().entries().size(); }
  // The middle of a day, 0 being today.
  [[nodiscard]] QPoint day(int which) const {
    return {days_->width() * (2 * (which % 7) + 1) / 14,
            days_->height() * (2 * (which / 7) + 1) / 4};
  }
  void answer_move(QString* told) {
    auto* poll = new QTimer(window_.get());
    QObject::connect(poll, &QTimer::timeout, poll, [poll, told] {
      auto* dialog = qobject_cast<ui::PutOffDialog*>(QApplication::activeModalWidget());
      if (dialog == nullptr) return;
      poll->stop();
      poll->deleteLater();
      *told = dialog->consequence();
      dialog->findChild<QPushButton*>(QStringLiteral("move_it"))->click();
    });
    poll->start(10);
  }
  [[nodiscard]] const cellar::WorkMoved* last_moved() const {
    return get_if<cellar::WorkMoved>(&cellar_->journal().entries().back().payload);
  }

  QTreeWidget* list_ = nullptr;
  QWidget* days_ = nullptr;
  QLabel* why_ = nullptr;
};

// What the drag carries, and what is not taken.
TEST_F(CleaningDrag, OnlyDueWorkIsTaken) {
  const std::size_t before = entries();
  const std::unique_ptr<QMimeData> carried(list_->model()->mimeData({list_->currentIndex()}));
  ASSERT_NE(carried, nullptr);
  const QPoint last_day = day(13);
  QDragEnterEvent enter(last_day, Qt::MoveAction, carried.get(), Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(days_, &enter);
  EXPECT_TRUE(enter.isAccepted());
  EXPECT_TRUE(why_->text().contains(QStringLiteral("overdue"))) << why_->text().toStdString();
  QMimeData text;
  text.setText(QStringLiteral("K01"));
  QDragEnterEvent other(last_day, Qt::MoveAction, &text, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(days_, &other);
  EXPECT_FALSE(other.isAccepted());
  QDropEvent drop(last_day, Qt::MoveAction, &text, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(days_, &drop);
  QTest::qWait(30);
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
  EXPECT_EQ(entries(), before);
}

// A heading of the list is no work: nothing is carried from it.
TEST_F(CleaningDrag, AHeadingIsNotDragged) {
  QTreeWidgetItem* heading = list_->topLevelItem(0);
  ASSERT_NE(heading, nullptr);
  EXPECT_FALSE(heading->flags().testFlag(Qt::ItemIsDragEnabled));
}

// Without a drag: a click on the day moves the row that is chosen.
TEST_F(CleaningDrag, AClickOnADayMovesTheChosenRow) {
  const std::size_t before = entries();
  QString told;
  answer_move(&told);
  QTest::mouseClick(days_, Qt::LeftButton, {}, day(9));
  ASSERT_TRUE(QTest::qWaitFor([&] { return entries() == before + 1; }));
  ASSERT_NE(last_moved(), nullptr);
  EXPECT_EQ(last_moved()->to_day,
            cellar_->calendar().date_of(cellar_->now()) + std::chrono::days(9));
  EXPECT_TRUE(told.contains(QStringLiteral("overdue"))) << told.toStdString();
}

}  // namespace
}  // namespace ullage
