// SPDX-License-Identifier: GPL-3.0-or-later
//
// What somebody sees who has no cellar yet: three ways to begin.
#pragma once

#include <QDialog>

class QVBoxLayout;

namespace ullage::ui {

class FirstStart : public QDialog {
  Q_OBJECT
 public:
  enum class Choice { none, create, open, demo };
  explicit FirstStart(QWidget* parent = nullptr);
  [[nodiscard]] Choice choice() const { return choice_; }

 private:
  void add_way(QVBoxLayout*, const QString& name, const QString& text, const QString& what, Choice,
               bool first);
  Choice choice_ = Choice::none;
};

}  // namespace ullage::ui
