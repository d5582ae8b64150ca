// SPDX-License-Identifier: GPL-3.0-or-later
//
// A message that stays in the page: its mark, a sentence, maybe a detail and
// actions. The tint follows the severity; the mark and the words carry it.
#pragma once

#include <QFrame>

#include "core/cellar/status.h"

class QAbstractButton;
class QHBoxLayout;
class QLabel;

namespace ullage::ui {

class Banner : public QFrame {
  Q_OBJECT
 public:
  Banner(cellar::Severity, const QString& headline, const QString& detail = {},
         QWidget* parent = nullptr);
  void set(cellar::Severity, const QString& headline, const QString& detail = {});
  // An action at the foot of the banner; connect to its clicked().
  QAbstractButton* add_action(const QString& text);
  void clear_actions();
  [[nodiscard]] QString headline() const;

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  cellar::Severity severity_;
  QLabel* headline_;
  QLabel* detail_;
  QHBoxLayout* actions_;
};

}  // namespace ullage::ui
