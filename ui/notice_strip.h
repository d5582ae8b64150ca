// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line at the foot of the window that says what was just done, with Undo
// beside it. It goes by itself; nothing depends on catching it.
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
  [[nodiscard]] QString sentence() const;

 signals:
  void undo_asked();

 private:
  InkLabel* words_;
  QPushButton* undo_;
  QTimer leaves_;
};

}  // namespace ullage::ui
