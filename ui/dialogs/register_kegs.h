// SPDX-License-Identifier: GPL-3.0-or-later
//
// Registers kegs of one kind, one or many at once: "K01..K08". The kind fills in
// volumes, tare and rating from its preset; each may be changed before and, keg
// by keg, afterwards. One act.
#pragma once

#include <QDialog>

#include "ui/context.h"
#include "ui/dialogs/leave_guard.h"

namespace ullage::ui {

class Banner;
class EntryFields;
class InkLabel;
class TagListEdit;

class RegisterKegs : public QDialog {
  Q_OBJECT
 public:
  explicit RegisterKegs(const Context& context, QWidget* parent = nullptr);
  ~RegisterKegs() override;

  [[nodiscard]] cellar::Act act() const;
  bool log();
  [[nodiscard]] std::vector<cellar::KegId> registered() const { return registered_; }
  [[nodiscard]] TagListEdit& tags() { return *tags_; }
  [[nodiscard]] EntryFields& fields() { return *fields_; }

  void reject() override;

 private:
  LeaveGuard guard_;
  void on_kind();
  void tell_count();

  Context context_;
  TagListEdit* tags_;
  EntryFields* fields_;
  InkLabel* source_;
  InkLabel* count_;
  Banner* refusal_;
  cellar::KegKind shown_kind_ = cellar::KegKind::ball_lock_19;
  std::vector<cellar::KegId> registered_;
};

}  // namespace ullage::ui
