// SPDX-License-Identifier: GPL-3.0-or-later
//
// One keg's tag, front and back, within a quarter of a page. Heights are in
// millimetres from the top; the tag is 105 x 148 mm on A4 and 108 x 140 on
// Letter, so what stands lowest is measured from the foot.
#include <QPainter>

#include "ui/context.h"
#include "ui/print/lettering.h"
#include "ui/print/square_code.h"
#include "ui/print/tag_pages.h"

namespace ullage::ui {
namespace {

constexpr double edge_mm = 7;
constexpr double hole_mm = 5;
constexpr double code_mm = 36;
// Digits of 25 mm: capitals and digits of the typeface are 0.727 of its size.
constexpr double number_mm = 25;
constexpr double number_pt = number_mm / 0.727 * 72 / 25.4;

double mm(double v) { return millimetres_on_paper(v); }

void paint_hole(QPainter& painter, const QRectF& tag) {
  painter.setPen(printed_line(0.5));
  painter.setBrush(Qt::NoBrush);
  const QPointF middle(tag.center().x(), tag.top() + mm(8));
  painter.drawEllipse(middle, mm(hole_mm / 2), mm(hole_mm / 2));
  painter.setPen(Qt::black);
}

// "label  value" or a line to write on.
void paint_fact(QPainter& painter, const QRectF& area, const report::TagFact& fact,
                const QFont& base) {
  const double label_width = area.width() * 0.42;
  paint_fitted(painter, QRectF(area.left(), area.top(), label_width, area.height()),
               Qt::AlignVCenter, q(fact.label), base, {7.5, 5, QFont::Normal});
  const QRectF value(area.left() + label_width + mm(1), area.top(),
                     area.width() - label_width - mm(2), area.height());
  if (!fact.value.empty()) {
    paint_fitted(painter, value, Qt::AlignVCenter, q(fact.value), base, {8.5, 5, QFont::DemiBold});
    return;
  }
  const double left = fact.label.empty() ? area.left() : value.left();
  painter.setPen(printed_line(0.5));
  painter.drawLine(QPointF(left, area.bottom() - mm(0.8)),
                   QPointF(value.right(), area.bottom() - mm(0.8)));
  painter.setPen(Qt::black);
}

void paint_facts(QPainter& painter, const QRectF& area, const std::vector<report::TagFact>& facts,
                 std::size_t columns, const QFont& base) {
  if (facts.empty()) return;
  const std::size_t rows = (facts.size() + columns - 1) / columns;
  const double height = area.height() / static_cast<double>(rows);
  const double width = area.width() / static_cast<double>(columns);
  for (std::size_t i = 0; i < facts.size(); ++i) {
    const std::size_t column = i / rows, row = i % rows;
    paint_fact(painter,
               QRectF(area.left() + width * static_cast<double>(column),
                      area.top() + height * static_cast<double>(row), width, height),
               facts[i], base);
  }
}

void paint_states(QPainter& painter, const QRectF& area, const std::vector<std::string>& states,
                  const QFont& base) {
  constexpr std::size_t columns = 3;
  const std::size_t rows = (states.size() + columns - 1) / columns;
  const double height = area.height() / static_cast<double>(rows);
  const double width = area.width() / columns;
  const double box = mm(4);
  for (std::size_t i = 0; i < states.size(); ++i) {
    const std::size_t column = i % columns, row = i / columns;
    const double x = area.left() + width * static_cast<double>(column);
    const double y = area.top() + height * static_cast<double>(row);
    painter.setPen(printed_line(0.8));
    painter.drawRect(QRectF(x, y + (height - box) / 2, box, box));
    painter.setPen(Qt::black);
    paint_fitted(painter, QRectF(x + box + mm(1.5), y, width - box - mm(2), height),
                 Qt::AlignVCenter, q(states[i]), base, {8.5, 5, QFont::DemiBold});
  }
}

// Beer, style, allergens and use-by, left of the code.
void paint_beer(QPainter& painter, const QRectF& area, const report::KegTag& tag,
                const QFont& base) {
  const double x = area.left();
  const double w = area.width();
  double y = area.top();
  if (tag.beer.empty()) {
    paint_fact(painter, QRectF(x, y, w, mm(13)), {"Beer", ""}, base);
  } else {
    paint_fitted(painter, QRectF(x, y, w, mm(13)), Qt::AlignVCenter, q(tag.beer), base,
                 {17, 8, QFont::Bold});
  }
  y += mm(13.5);
  paint_fitted(painter, QRectF(x, y, w, mm(4.5)), Qt::AlignVCenter, q(tag.kind), base,
               {9, 5, QFont::Normal});
  y += mm(4.5);
  if (!tag.allergens.empty()) {
    paint_fitted(painter, QRectF(x, y, w, mm(4.5)), Qt::AlignVCenter,
                 QStringLiteral("Contains: %1").arg(q(tag.allergens)), base,
                 {9, 5, QFont::DemiBold});
  }
  y += mm(5.5);
  paint_fitted(painter, QRectF(x, y, w, mm(4)), Qt::AlignLeft, QStringLiteral("USE BY"), base,
               {8, 5, QFont::Normal});
  if (tag.use_by.empty()) {
    paint_fact(painter, QRectF(x, y + mm(3), w, mm(7)), {"", ""}, base);
  } else {
    paint_fitted(painter, QRectF(x, y + mm(3.5), w, mm(8)), Qt::AlignLeft, q(tag.use_by), base,
                 {17, 8, QFont::Bold});
  }
}

}  // namespace

void paint_keg_front(QPainter& painter, const QRectF& area, const report::KegTag& tag,
                     const QFont& base) {
  const QRectF in = area.adjusted(mm(edge_mm), mm(edge_mm), -mm(edge_mm), -mm(edge_mm));
  paint_hole(painter, area);
  const double top = area.top() + mm(12);
  paint_fitted(painter, QRectF(in.left(), top, in.width(), mm(32)),
               Qt::AlignHCenter | Qt::AlignVCenter, q(tag.tag), base, {number_pt, 14, QFont::Bold});
  const double middle = top + mm(33);
  paint_square_code(painter, QRectF(in.right() - mm(code_mm), middle, mm(code_mm), mm(code_mm)),
                    tag.code);
  paint_beer(painter, QRectF(in.left(), middle, in.width() - mm(code_mm + 2), mm(code_mm)), tag,
             base);
  const double facts_top = middle + mm(code_mm + 1);
  const double caution = in.bottom() - mm(4.5);
  const double states = caution - mm(19);
  paint_facts(painter, QRectF(in.left(), facts_top, in.width(), states - mm(1.5) - facts_top),
              tag.facts, 2, base);
  painter.setPen(printed_line(0.8));
  painter.drawLine(QPointF(in.left(), states - mm(0.7)), QPointF(in.right(), states - mm(0.7)));
  painter.setPen(Qt::black);
  paint_states(painter, QRectF(in.left(), states, in.width(), mm(18.5)), tag.states, base);
  paint_fitted(painter, QRectF(in.left(), caution, in.width(), mm(4.5)),
               Qt::AlignHCenter | Qt::AlignVCenter, q(tag.caution), base,
               {8.5, 5, QFont::DemiBold});
}

void paint_keg_back(QPainter& painter, const QRectF& area, const report::KegTag& tag,
                    const QFont& base) {
  const QRectF in = area.adjusted(mm(edge_mm), mm(edge_mm), -mm(edge_mm), -mm(edge_mm));
  paint_hole(painter, area);
  paint_fitted(painter, QRectF(in.left(), area.top() + mm(12), in.width(), mm(16)),
               Qt::AlignHCenter | Qt::AlignVCenter, q(tag.tag), base, {36, 12, QFont::Bold});
  const double top = area.top() + mm(30);
  paint_facts(painter, QRectF(in.left(), top, in.width(), in.bottom() - top), tag.back, 1, base);
}

void paint_warning(QPainter& painter, const QRectF& area, const report::WarningTag& tag,
                   const QFont& base) {
  const QRectF frame = area.adjusted(mm(edge_mm), mm(edge_mm), -mm(edge_mm), -mm(edge_mm));
  const QRectF in = frame.adjusted(mm(3), mm(3), -mm(3), -mm(3));
  paint_hole(painter, area);
  const double top = area.top() + mm(13);
  painter.setPen(printed_line(4));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(frame.left(), top, frame.width(), frame.bottom() - top));
  // White on black: heard across the room without any colour.
  const QRectF band(frame.left(), top, frame.width(), mm(30));
  painter.fillRect(band, Qt::black);
  painter.setPen(Qt::white);
  paint_fitted(painter, band.adjusted(mm(4), mm(2), -mm(4), -mm(2)),
               Qt::AlignHCenter | Qt::AlignVCenter, q(tag.title), base, {40, 14, QFont::Bold});
  painter.setPen(Qt::black);
  double y = band.bottom() + mm(2);
  paint_fitted(painter, QRectF(in.left(), y, in.width(), mm(12)),
               Qt::AlignHCenter | Qt::AlignVCenter, q(tag.subtitle), base,
               {15, 8, QFont::DemiBold});
  y += mm(12);
  paint_fitted(painter, QRectF(in.left(), y, in.width(), mm(17)),
               Qt::AlignHCenter | Qt::AlignVCenter, q(tag.subject), base, {34, 10, QFont::Bold});
  y += mm(18);
  const double caution = in.bottom() - mm(20);
  paint_facts(painter, QRectF(in.left(), y, in.width(), caution - mm(2) - y), tag.facts, 1, base);
  paint_fitted(painter, QRectF(in.left(), caution, in.width() - mm(3), mm(20)), Qt::AlignBottom,
               q(tag.caution), base, {8.5, 5, QFont::DemiBold});
}

}  // namespace ullage::ui
