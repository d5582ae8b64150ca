// SPDX-License-Identifier: GPL-3.0-or-later
//
// When the keg can be used, why, what to do, and what that stands on.
#pragma once

#include <QWidget>

#include "ui/pages/panel_subject.h"
#include "ui/widgets/card.h"

class QVBoxLayout;

namespace ullage::ui {

class Disclosure;
class InkLabel;
class StatusMark;

class KegPanelReadiness final : public Card {
  Q_OBJECT
 public:
  explicit KegPanelReadiness(QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 private:
  StatusMark* mark_;
  InkLabel* headline_;
  QVBoxLayout* reasons_;
  InkLabel* to_do_;
  Disclosure* because_;
};

}  // namespace ullage::ui
