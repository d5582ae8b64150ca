// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line at the foot of the window that says what was just done, with Undo
// beside it. It goes by itself; nothing depends on catching it. A call to another
// page stays, with a button that leads there.
#pragma once

#include <QFrame>
#include <QTimer>

class QPushButton;

namespace ullage::ui {

class InkLabel;

class NoticeStrip : public QFrame {
  Q_OBJECT
 public:
  explicit NoticeStrip(QWidget* parent = nullptr);
  void say(const QString& sentence, bool with_undo);
  void call(const QString& sentence);
  [[nodiscard]] QString sentence() const;

 signals:
  void undo_asked();
  void followed();

 private:
  void show_words(const QString& sentence);

  InkLabel* words_;
  QPushButton* undo_;
  QPushButton* follow_;
  QTimer leaves_;
};

}  // namespace ullage::ui
