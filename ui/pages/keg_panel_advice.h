// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cellar's advice about a keg: a card each, the most severe first, with the
// button that does what it says.
#pragma once

#include <QWidget>

#include "ui/pages/panel_subject.h"

class QVBoxLayout;

namespace ullage::ui {

struct Context;

class KegPanelAdvice final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelAdvice(Context&, QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 private:
  Context& context_;
  QVBoxLayout* cards_;
};

}  // namespace ullage::ui
