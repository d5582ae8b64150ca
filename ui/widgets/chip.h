// SPDX-License-Identifier: GPL-3.0-or-later
//
// Chip: a filter that is on or off, with how many it would show. Pill: a count
// or a short word that can't be pressed.
#pragma once

#include <QAbstractButton>
#include <QLabel>

namespace ullage::ui {

class Chip : public QAbstractButton {
  Q_OBJECT
 public:
  explicit Chip(const QString& word, QWidget* parent = nullptr);
  void set_count(int);  // -1: no number
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  int count_ = -1;
};

class Pill : public QLabel {
  Q_OBJECT
 public:
  enum class Tone { plain, accent, warning, danger };
  explicit Pill(const QString& text = {}, Tone tone = Tone::plain, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  Tone tone_;
};

}  // namespace ullage::ui
