// SPDX-License-Identifier: GPL-3.0-or-later
//
// The latest entries about a keg, newest first; a click shows them on the Log
// page, where they are corrected and struck.
#pragma once

#include <QWidget>

#include "ui/pages/panel_subject.h"

class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class InkLabel;
struct Context;

class KegPanelEntries final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelEntries(Context&, QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

  static constexpr std::size_t at_most = 10;

 private:
  Context& context_;
  cellar::SubjectRef about_;
  QVBoxLayout* lines_;
  QPushButton* all_;
  InkLabel* none_;
};

}  // namespace ullage::ui
