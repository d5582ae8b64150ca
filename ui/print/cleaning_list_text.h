// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaning list as flowing text on pages of a paper.
#pragma once

#include <QFont>
#include <QTextDocument>
#include <memory>

#include "core/report/cleaning_list.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

namespace ullage::ui {

class CleaningListPages final : public Pages {
 public:
  CleaningListPages(const report::CleaningList&, Paper, const QFont& base);

  [[nodiscard]] int count() const override { return text_->pageCount(); }
  [[nodiscard]] QPageLayout layout() const override;
  void paint(QPainter& painter, int page) const override;

 private:
  Paper paper_;
  std::unique_ptr<QTextDocument> text_;  // at 96 dots an inch
};

}  // namespace ullage::ui
