// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaning list on pages, upright. A step stays on one page unless it is long;
// its name never stands at the foot without the first thing to be done. Each thing
// has a box to tick, a time and a name to be written.
#pragma once

#include <QFont>
#include <QRectF>
#include <QStringList>
#include <vector>

#include "core/report/cleaning_list.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

namespace ullage::ui {

class CleaningListPages final : public Pages {
 public:
  CleaningListPages(report::CleaningList, Paper, const QFont& base);

  [[nodiscard]] int count() const override { return static_cast<int>(pages_.size()); }
  [[nodiscard]] QPageLayout layout() const override;
  void paint(QPainter& painter, int page) const override;

 private:
  // What is set as one piece.
  struct Block {
    enum class Kind { words, step, caution, thing, signatures };
    Kind kind = Kind::words;
    QStringList lines;
    double height = 0;
    bool done = false;   // of a thing
    bool leads = false;  // stays with the next one
  };
  using Group = std::vector<Block>;  // a step with what belongs to it
  struct Placed {
    Block block;
    double y = 0;
  };

  void add_costs();
  void add_step(const report::CleaningListStep&);
  void add_end();
  [[nodiscard]] Block words(const std::string& text, const QFont& font, double indent,
                            Block::Kind kind) const;
  void break_pages();
  void paint_block(QPainter& painter, const Block& block, double y) const;
  void paint_thing(QPainter& painter, const Block& block, double y) const;

  report::CleaningList list_;
  Paper paper_;
  QFont base_, name_, text_, strong_, thing_;
  QRectF body_;
  std::vector<Group> groups_;
  std::vector<std::vector<Placed>> pages_;
};

}  // namespace ullage::ui
