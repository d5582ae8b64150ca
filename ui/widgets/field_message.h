// SPDX-License-Identifier: GPL-3.0-or-later
//
// The line under a field: quiet when it helps ("2.07 bar"), marked and in the
// danger ink when it refuses. Takes no room while it has nothing to say. Screen
// readers get the sentence as the description of the field.
#pragma once

#include "ui/widgets/ink_label.h"

namespace ullage::ui {

class FieldMessage : public InkLabel {
  Q_OBJECT
 public:
  FieldMessage(QWidget* field, QWidget* parent);
  void hint(const QString&);   // empty: hides
  void fault(const QString&);  // empty: hides
  [[nodiscard]] bool is_fault() const { return is_fault_; }

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  void put(const QString&, bool is_fault);
  QWidget* field_;
  bool is_fault_ = false;
};

// Set on the field while its message is a fault; the style draws its border so.
inline constexpr const char* fault_property = "ullage_fault";

}  // namespace ullage::ui
