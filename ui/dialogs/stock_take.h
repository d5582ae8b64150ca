// SPDX-License-Identifier: GPL-3.0-or-later
//
// Stock-taking: goes through the kegs one after the other and asks what is in
// each now. Every answer may be "not known", each keg is an act of its own, and
// whoever stops half way has lost nothing.
#pragma once

#include <QDialog>
#include <vector>

#include "ui/context.h"
#include "ui/dialogs/leave_guard.h"

class QPushButton;
class QScrollArea;

namespace ullage::ui {

class Banner;
class EntryFields;
class InkLabel;

class StockTake : public QDialog {
  Q_OBJECT
 public:
  // The kegs to go through; all of which nothing is known yet when empty.
  StockTake(const Context& context, std::vector<cellar::KegId> kegs, QWidget* parent = nullptr);

  [[nodiscard]] std::size_t at() const { return at_; }
  [[nodiscard]] std::size_t count() const { return kegs_.size(); }
  [[nodiscard]] EntryFields* fields() { return fields_; }
  bool log_and_go_on();
  void skip();

  void reject() override;

 private:
  LeaveGuard guard_;
  void show_keg();
  void tell_progress();
  void go_on();

  Context context_;
  std::vector<cellar::KegId> kegs_;
  std::size_t at_ = 0;
  int logged_ = 0;
  InkLabel* heading_;
  InkLabel* progress_;
  QScrollArea* scroll_;
  EntryFields* fields_ = nullptr;
  Banner* refusal_;
  QPushButton* log_;
};

}  // namespace ullage::ui
