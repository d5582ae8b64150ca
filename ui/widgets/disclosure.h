// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line that opens to show more: "Because", with what a number stands on.
#pragma once

#include <QToolButton>
#include <QWidget>

class QVBoxLayout;

namespace ullage::ui {

class Disclosure : public QWidget {
  Q_OBJECT
 public:
  // `about` is what the lines belong to; it completes the spoken name.
  Disclosure(const QString& word, const QString& about, QWidget* parent = nullptr);
  // Lines in small type; the disclosure hides itself when there are none.
  void set_lines(const QStringList&);
  void set_about(const QString&);
  void set_open(bool);
  [[nodiscard]] bool is_open() const { return toggle_->isChecked(); }

 signals:
  void opened(bool open);

 private:
  void show_open();
  QString word_;
  QToolButton* toggle_;
  QWidget* inside_;
  QVBoxLayout* lines_;
};

}  // namespace ullage::ui
