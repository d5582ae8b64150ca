// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/cleaning_list_pages.h"

#include <QPainter>
#include <numeric>

#include "ui/context.h"
#include "ui/print/lettering.h"
#include "ui/print/sheet_frame.h"

namespace ullage::ui {
namespace {

constexpr double list_indent_pt = 14;
constexpr double above_step_pt = 11;
constexpr double around_caution_pt = 3;
constexpr double thing_pt = 23;  // room for a pen in a wet glove
constexpr double tick_pt = 12;
constexpr double time_pt = 92;  // "time" and its line
constexpr double by_pt = 76;
// A longer step may go on overleaf.
constexpr double kept_together = 0.4;

double height_of(const auto& blocks) {
  return std::accumulate(blocks.begin(), blocks.end(), 0.0,
                         [](double sum, const auto& block) { return sum + block.height; });
}

}  // namespace

CleaningListPages::CleaningListPages(report::CleaningList list, Paper paper, const QFont& base)
    : list_(std::move(list)),
      paper_(paper),
      base_(base),
      name_(printed_font(base, 12, QFont::Bold)),
      text_(printed_font(base, 9.5, QFont::Normal)),
      strong_(printed_font(base, 9.5, QFont::DemiBold)),
      thing_(printed_font(base, 11, QFont::Normal)),
      body_(body_of(size())) {
  add_costs();
  for (const report::CleaningListStep& step : list_.steps) add_step(step);
  add_end();
  break_pages();
}

QPageLayout CleaningListPages::layout() const {
  return {page_size(paper_), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)};
}

CleaningListPages::Block CleaningListPages::words(const std::string& text, const QFont& font,
                                                  double indent, Block::Kind kind) const {
  Block block;
  block.kind = kind;
  block.lines = broken_lines(q(text), font, body_.width() - indent);
  block.height = static_cast<double>(block.lines.size()) * line_height(font);
  return block;
}

void CleaningListPages::add_costs() {
  Group group;
  for (const std::string& cost : list_.costs) {
    group.push_back(words(cost, text_, points(list_indent_pt), Block::Kind::words));
  }
  groups_.push_back(std::move(group));
}

void CleaningListPages::add_step(const report::CleaningListStep& step) {
  const double indent = points(list_indent_pt);
  Group group;
  Block name = words(step.what, name_, 0, Block::Kind::step);
  name.height += points(above_step_pt + 2);
  name.leads = true;
  group.push_back(std::move(name));
  if (!step.takes.empty()) {
    group.push_back(words(step.takes, text_, indent, Block::Kind::words));
    group.back().leads = true;
  }
  if (!step.caution.empty()) {
    Block caution = words("CAUTION: " + step.caution, strong_, 2 * indent, Block::Kind::caution);
    caution.height += points(2 * around_caution_pt);
    caution.leads = true;
    group.push_back(std::move(caution));
  }
  for (const report::CleaningListThing& thing : step.things) {
    const double written = thing.done ? 0 : points(time_pt + by_pt);
    Block row =
        words(thing.name, thing_, indent + points(tick_pt + 8) + written, Block::Kind::thing);
    row.height = std::max(points(thing_pt), row.height + points(6));
    row.done = thing.done;
    group.push_back(std::move(row));
  }
  groups_.push_back(std::move(group));
}

void CleaningListPages::add_end() {
  if (!list_.left_out.empty()) {
    Group group{words("Not on the list", name_, 0, Block::Kind::step)};
    group.back().height += points(above_step_pt + 2);
    group.back().leads = true;
    for (const std::string& left : list_.left_out) {
      group.push_back(words(left, text_, points(list_indent_pt), Block::Kind::words));
    }
    groups_.push_back(std::move(group));
  }
  if (!list_.assumed.empty()) {
    Group group{
        words("Amounts are for cleaners that are assumed, not yours", name_, 0, Block::Kind::step)};
    group.back().height += points(above_step_pt + 2);
    group.back().leads = true;
    for (const std::string& cleaner : list_.assumed) {
      group.push_back(words(cleaner, text_, points(list_indent_pt), Block::Kind::words));
    }
    groups_.push_back(std::move(group));
  }
  if (list_.signatures.empty()) return;
  groups_.push_back({Block{Block::Kind::signatures, {}, signatures_height(), false, false}});
}

void CleaningListPages::break_pages() {
  std::vector<Placed> page;
  double y = 0;
  const auto next_page = [&] {
    pages_.push_back(std::move(page));
    page.clear();
    y = 0;
  };
  for (const Group& group : groups_) {
    const double whole = height_of(group);
    const bool together = whole <= kept_together * body_.height();
    if (together && !page.empty() && y + whole > body_.height()) next_page();
    for (std::size_t i = 0; i < group.size(); ++i) {
      // With what it leads to.
      double needed = group[i].height;
      for (std::size_t j = i; group[j].leads && j + 1 < group.size(); ++j) {
        needed += group[j + 1].height;
      }
      if (!page.empty() && y + needed > body_.height()) next_page();
      page.push_back({group[i], y});
      y += group[i].height;
    }
  }
  if (!page.empty() || pages_.empty()) next_page();
}

void CleaningListPages::paint(QPainter& painter, int index) const {
  painter.save();
  painter.setPen(Qt::black);
  paint_frame(painter,
              {q(list_.title), q(list_.day), q(list_.cellar), q(list_.printed), q(list_.footnote)},
              body_, base_, index, count());
  for (const Placed& placed : pages_.at(static_cast<std::size_t>(index))) {
    paint_block(painter, placed.block, body_.top() + placed.y);
  }
  painter.restore();
}

void CleaningListPages::paint_block(QPainter& painter, const Block& block, double y) const {
  const double indent = points(list_indent_pt);
  switch (block.kind) {
    case Block::Kind::words:
      paint_lines(painter, block.lines, text_, body_.left() + indent, y);
      return;
    case Block::Kind::step:
      painter.setPen(printed_line(0.8));
      painter.drawLine(QPointF(body_.left(), y + points(above_step_pt / 2)),
                       QPointF(body_.right(), y + points(above_step_pt / 2)));
      painter.setPen(Qt::black);
      paint_lines(painter, block.lines, name_, body_.left(), y + points(above_step_pt));
      return;
    case Block::Kind::caution: {
      const double around = points(around_caution_pt);
      painter.fillRect(
          QRectF(body_.left() + indent, y + around, points(3), block.height - 2 * around),
          Qt::black);
      paint_lines(painter, block.lines, strong_, body_.left() + indent + points(9), y + around);
      return;
    }
    case Block::Kind::thing:
      return paint_thing(painter, block, y);
    case Block::Kind::signatures:
      return paint_signatures(painter, list_.signatures, text_, body_, y);
  }
}

void CleaningListPages::paint_thing(QPainter& painter, const Block& block, double y) const {
  const double side = points(tick_pt);
  const double text = y + points(5);
  const QRectF box(body_.left() + points(list_indent_pt), text + points(0.5), side, side);
  painter.setPen(printed_line(1));
  painter.drawRect(box);
  if (block.done) {
    const QRectF cross = box.adjusted(side / 5, side / 5, -side / 5, -side / 5);
    painter.setPen(printed_line(1.8));
    painter.drawLine(cross.topLeft(), cross.bottomRight());
    painter.drawLine(cross.bottomLeft(), cross.topRight());
  }
  painter.setPen(Qt::black);
  paint_lines(painter, block.lines, thing_, box.right() + points(8), text);
  if (block.done) return;
  const double by = body_.right() - points(by_pt);
  const double time = by - points(time_pt);
  const double line = text + side;
  paint_lines(painter, {QStringLiteral("time")}, text_, time, text);
  paint_lines(painter, {QStringLiteral("by")}, text_, by, text);
  painter.setPen(printed_line(0.5));
  painter.drawLine(QPointF(time + points(26), line), QPointF(by - points(10), line));
  painter.drawLine(QPointF(by + points(16), line), QPointF(body_.right(), line));
  painter.setPen(Qt::black);
}

}  // namespace ullage::ui
