// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/cleaning_list_text.h"

#include <QPainter>
#include <QTextBlockFormat>
#include <QTextCursor>
#include <QTextFrame>

#include "ui/context.h"

namespace ullage::ui {
namespace {

// The raster of the text, so that it is the same on every screen.
constexpr double list_dots_per_inch = 96;
constexpr double list_margin = 57;  // 15 mm

// Writes block after block; a block that must stay with the next one says so.
class CleaningListWriter {
 public:
  CleaningListWriter(QTextDocument& document, const QFont& base)
      : cursor_(&document), base_(base) {}

  void line(const QString& text, int size, bool bold = false, double above = 0, double indent = 0) {
    QTextBlockFormat block;
    block.setTopMargin(above);
    block.setLeftMargin(indent);
    block.setNonBreakableLines(false);
    if (first_) {
      cursor_.setBlockFormat(block);
    } else {
      cursor_.insertBlock(block);
    }
    first_ = false;
    QTextCharFormat letters;
    QFont font = base_;
    font.setPixelSize(size);
    font.setWeight(bold ? QFont::DemiBold : QFont::Normal);
    // Ligatures and contextual forms off: text copied from the PDF is then the text that was
    // written.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.01);
    font.setStyleStrategy(QFont::PreferNoShaping);
    letters.setFont(font);
    letters.setForeground(Qt::black);
    cursor_.insertText(text, letters);
  }

 private:
  QTextCursor cursor_;
  QFont base_;
  bool first_ = true;
};

std::unique_ptr<QTextDocument> cleaning_list_text(const report::CleaningList& list, Paper paper,
                                                  const QFont& base) {
  auto document = std::make_unique<QTextDocument>();
  document->setDocumentMargin(0);
  document->setDefaultFont(base);
  document->setPageSize(page_size(paper).size(QPageSize::Inch) * list_dots_per_inch);
  QTextFrameFormat frame = document->rootFrame()->frameFormat();
  frame.setMargin(list_margin);
  document->rootFrame()->setFrameFormat(frame);
  CleaningListWriter out(*document, base);
  out.line(q(list.title + ", " + list.day), 23, true);
  out.line(q(list.cellar + "   " + list.printed), 12);
  for (const std::string& cost : list.costs) out.line(q(cost), 12, false, 1);
  for (const report::CleaningListStep& step : list.steps) {
    out.line(q(step.what), 15, true, 12);
    out.line(q(step.takes), 12, false, 1, 14);
    if (!step.caution.empty()) out.line(q("CAUTION: " + step.caution), 12, true, 1, 14);
    for (const std::string& thing : step.things) {
      out.line(QStringLiteral("[   ]  %1     time ________  by ____").arg(q(thing)), 14, false, 4,
               14);
    }
  }
  if (!list.left_out.empty()) out.line(QObject::tr("Not on the list"), 15, true, 10);
  for (const std::string& left : list.left_out) out.line(q(left), 12, false, 1, 14);
  for (const std::string& sign : list.signatures) {
    out.line(q(sign) + QStringLiteral("  ____________________________   ") + QObject::tr("date") +
                 QStringLiteral("  ______________"),
             13, false, 30);
  }
  out.line(q(list.footnote), 11, false, 16);
  return document;
}

}  // namespace

CleaningListPages::CleaningListPages(const report::CleaningList& list, Paper paper,
                                     const QFont& base)
    : paper_(paper), text_(cleaning_list_text(list, paper, base)) {}

QPageLayout CleaningListPages::layout() const {
  return {page_size(paper_), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0), QPageLayout::Point};
}

void CleaningListPages::paint(QPainter& painter, int page) const {
  const QSizeF size = text_->pageSize();
  const double scale = dots_per_inch / list_dots_per_inch;
  painter.save();
  painter.scale(scale, scale);
  painter.translate(0, -page * size.height());
  text_->drawContents(&painter, QRectF(0, page * size.height(), size.width(), size.height()));
  painter.restore();
}

}  // namespace ullage::ui
