// SPDX-License-Identifier: GPL-3.0-or-later
//
// The status sheet before it is printed, of now or of a past moment.
#pragma once

#include <optional>

#include "ui/dialogs/paper_preview.h"

namespace ullage::ui {

class SheetPreview final : public PaperPreview {
  Q_OBJECT
 public:
  explicit SheetPreview(const Context& context, QWidget* parent = nullptr,
                        const std::optional<cellar::AsOf>& as_of = {});

 protected:
  [[nodiscard]] std::unique_ptr<Pages> make_pages() override;
  [[nodiscard]] std::optional<std::string> csv() const override;

 private:
  [[nodiscard]] std::shared_ptr<const cellar::CellarStatus> shown_status() const;

  std::optional<cellar::AsOf> as_of_;
};

}  // namespace ullage::ui
