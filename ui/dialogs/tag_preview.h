// SPDX-License-Identifier: GPL-3.0-or-later
//
// Tags before they are printed: of kegs, or warnings. Which ones, four to a page
// or one, with their backs or without.
#pragma once

#include <functional>
#include <vector>

#include "core/report/tags.h"
#include "ui/dialogs/paper_preview.h"

class QCheckBox;

namespace ullage::ui {

enum class TagKind { kegs, warnings };

class TagPreview final : public PaperPreview {
  Q_OBJECT
 public:
  // All kegs at hand, or one; for warnings, all that the cellar gives reason for,
  // or that of one line.
  TagPreview(const Context& context, TagKind kind, QWidget* parent = nullptr,
             std::optional<cellar::KegId> keg = {}, std::optional<cellar::LineId> line = {});

 protected:
  [[nodiscard]] std::unique_ptr<Pages> make_pages() override;

 private:
  void add_kegs(std::optional<cellar::KegId> chosen);
  void add_warnings(std::optional<cellar::LineId> chosen);
  void add_warning(const QString& words, std::function<std::vector<report::WarningTag>()> make);

  TagKind kind_;
  QComboBox* which_ = nullptr;
  QComboBox* size_ = nullptr;
  QCheckBox* backs_ = nullptr;
  std::vector<cellar::KegId> kegs_;
  std::vector<std::function<std::vector<report::WarningTag>()>> warnings_;
};

}  // namespace ullage::ui
