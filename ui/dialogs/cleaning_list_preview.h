// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cleaning day's list before it is printed.
#pragma once

#include "core/cellar/cleaning_plan.h"
#include "ui/dialogs/paper_preview.h"

namespace ullage::ui {

class CleaningListPreview final : public PaperPreview {
  Q_OBJECT
 public:
  CleaningListPreview(const Context& context, cellar::PlannedDay day, QWidget* parent = nullptr);

 protected:
  [[nodiscard]] std::unique_ptr<Pages> make_pages() override;

 private:
  cellar::PlannedDay day_;
};

}  // namespace ullage::ui
