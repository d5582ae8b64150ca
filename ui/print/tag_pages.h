// SPDX-License-Identifier: GPL-3.0-or-later
//
// Tags on paper: four to a page to be cut apart (a quarter of A4 is A6; a quarter
// of Letter is a little wider and shorter), or one to a page of A6. Backs stand
// on the page behind their fronts, mirrored so that they meet when the sheet is
// turned over its long edge.
#pragma once

#include <QFont>
#include <QRectF>
#include <vector>

#include "core/report/tags.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

namespace ullage::ui {

enum class TagSheet { four_a_page, single };

struct TagPaper {
  Paper paper = Paper::a4;
  TagSheet sheet = TagSheet::four_a_page;
  bool backs = true;  // of keg tags; warnings have none
};

class TagPages final : public Pages {
 public:
  TagPages(std::vector<report::KegTag> tags, const TagPaper& paper, const QFont& base);
  TagPages(std::vector<report::WarningTag> tags, const TagPaper& paper, const QFont& base);

  [[nodiscard]] int count() const override;
  [[nodiscard]] QPageLayout layout() const override;
  void paint(QPainter& painter, int page) const override;

 private:
  [[nodiscard]] std::size_t tags() const { return kegs_.size() + warnings_.size(); }
  [[nodiscard]] std::size_t per_page() const { return paper_.sheet == TagSheet::single ? 1 : 4; }
  [[nodiscard]] QRectF slot(std::size_t which, bool back) const;
  void paint_cuts(QPainter& painter) const;

  std::vector<report::KegTag> kegs_;
  std::vector<report::WarningTag> warnings_;
  TagPaper paper_;
  QFont base_;
};

// One tag within `area`; used by TagPages.
void paint_keg_front(QPainter&, const QRectF& area, const report::KegTag&, const QFont& base);
void paint_keg_back(QPainter&, const QRectF& area, const report::KegTag&, const QFont& base);
void paint_warning(QPainter&, const QRectF& area, const report::WarningTag&, const QFont& base);

}  // namespace ullage::ui
