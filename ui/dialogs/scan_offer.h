// SPDX-License-Identifier: GPL-3.0-or-later
//
// What comes up when a keg's tag is scanned: which keg it is, how it stands, and
// its likely next task on the button that Enter presses. Scanning another tag
// shows that keg in its place.
#pragma once

#include <QDialog>

#include "ui/context.h"

class QLabel;
class QPushButton;

namespace ullage::ui {

// What is most likely done next: what the cellar advises most urgently with a
// form of its own, else what usually follows the keg's state.
[[nodiscard]] cellar::SuggestedTask next_task(const cellar::KegStatus&, report::RegionalWords);

class ScanOffer final : public QDialog {
  Q_OBJECT
 public:
  explicit ScanOffer(const Context& context, QWidget* parent = nullptr);

  void show_keg(cellar::KegId keg);
  [[nodiscard]] cellar::KegId keg() const { return keg_; }

 private:
  void open_form(const cellar::SuggestedTask& task);

  Context context_;
  cellar::KegId keg_;
  cellar::SuggestedTask task_;
  QLabel* tag_ = nullptr;
  QLabel* state_ = nullptr;
  QPushButton* likely_ = nullptr;
};

}  // namespace ullage::ui
