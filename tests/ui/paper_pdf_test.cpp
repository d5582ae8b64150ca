// SPDX-License-Identifier: GPL-3.0-or-later
//
// Logs, lists and tags read back from their PDFs by independent readers: text by
// poppler's pdftotext, the square code by zbar from the rendered page, the edges
// of the paper pixel by pixel.
#include <gtest/gtest.h>

#include <QDir>
#include <QFont>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <set>

#include "core/report/cellar_lists.h"
#include "core/report/keg_code.h"
#include "core/report/period_logs.h"
#include "core/report/recall_list.h"
#include "core/report/register_lists.h"
#include "tests/report/book.h"
#include "ui/context.h"
#include "ui/print/sheet_output.h"
#include "ui/print/table_sheet_pages.h"
#include "ui/print/tag_pages.h"

namespace ullage::testing {
namespace {

using ui::Paper;
using ui::TagSheet;

QString output_of(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  if (!process.waitForFinished(60000)) return QStringLiteral("%1 did not end").arg(program);
  return QString::fromUtf8(process.readAllStandardOutput())
      .normalized(QString::NormalizationForm_KC);
}

struct PaperPdf : ::testing::Test {
  Book book;
  Journal journal = book.journal();
  CellarStatus now = Replay(journal, book.s.calendar).status(Book::now());
  report::Speaker speaker = book.speaker();
  report::Period period{date(0), date(28)};
  QTemporaryDir folder;

  [[nodiscard]] std::vector<report::TableSheet> sheets() const {
    return {report::line_cleaning_log(journal, now, period, speaker, "MK"),
            report::temperature_log(journal, now, period, speaker, "MK"),
            report::gas_log(journal, now, period, speaker, "MK"),
            report::wastage_book(journal, now, period, speaker, "MK"),
            report::round_sheet(journal, now, speaker, "MK"),
            report::custody_list(journal, now, speaker, "MK"),
            report::keg_list(now, speaker, "MK"),
            report::bottle_list(now, speaker, "MK"),
            report::regulator_list(now, speaker, "MK"),
            report::place_list(now, speaker, "MK"),
            report::instrument_list(now, speaker, "MK"),
            report::hose_list(now, speaker, "MK"),
            report::beer_list(now, speaker, "MK"),
            report::recall_list(journal, now, book.lager, speaker, "MK")};
  }
  [[nodiscard]] QString pdf_of(const ui::Pages& pages) const {
    const QString path = folder.filePath(QStringLiteral("paper.pdf"));
    const auto written = ui::write_pdf(pages, path, QStringLiteral("Paper"));
    EXPECT_TRUE(written) << (written ? "" : written.error().toStdString());
    return path;
  }
  [[nodiscard]] QString text_of(const ui::Pages& pages) const {
    return output_of(QStringLiteral("pdftotext"), {"-layout", pdf_of(pages), "-"});
  }
};

// Every word of `said`, wherever lines were broken.
void expect_words(const QString& text, const std::string& said, const std::string& where) {
  static const QRegularExpression space(QStringLiteral("\\s+"));
  for (const QString& word : ui::q(said).normalized(QString::NormalizationForm_KC).split(space)) {
    if (word.isEmpty()) continue;
    EXPECT_TRUE(text.contains(word)) << where << ": " << word.toStdString();
  }
}

void expect_white_margins(const ui::Pages& pages) {
  for (int page = 0; page < pages.count(); ++page) {
    const QImage image = ui::picture_of(pages, page, 1200);
    const int margin = 16;  // 4 mm of 297 mm
    int inked = 0;
    for (int x = 0; x < image.width(); ++x) {
      for (int y = 0; y < image.height(); ++y) {
        const bool edge =
            x < margin || y < margin || x >= image.width() - margin || y >= image.height() - margin;
        if (edge && image.pixelColor(x, y) != QColor(Qt::white)) ++inked;
      }
    }
    EXPECT_EQ(inked, 0) << "page " << page;
  }
}

TEST_F(PaperPdf, SheetsHoldEveryCellAsText) {
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    for (const report::TableSheet& sheet : sheets()) {
      const ui::TableSheetPages pages(sheet, paper, QFont());
      const QString text = text_of(pages);
      expect_words(text, sheet.title, sheet.title);
      expect_words(text, sheet.period, sheet.title);
      expect_words(text, sheet.footnote, sheet.title);
      for (const report::TableRow& row : sheet.rows) {
        for (const std::string& cell : row.cells) expect_words(text, cell, sheet.title);
        expect_words(text, row.standing, sheet.title);
      }
      for (const report::SheetBox& box : sheet.boxes) {
        for (const std::string& line : box.lines) expect_words(text, line, sheet.title);
      }
      for (const std::string& who : sheet.signatures) expect_words(text, who, sheet.title);
      EXPECT_TRUE(text.contains(QStringLiteral("page 1 of %1").arg(pages.count())));
      expect_white_margins(pages);
    }
  }
}

// Sixty rows, one of them with a remark longer than a page: each word is
// numbered, and each must be there once.
TEST_F(PaperPdf, NothingIsClippedOverSeveralPages) {
  report::TableSheet sheet = sheets().front();
  const report::TableRow row = sheet.rows.front();
  for (int i = 0; i < 60; ++i) {
    sheet.rows.push_back(row);
    sheet.rows.back().cells.front() = "row" + std::to_string(1000 + i);
  }
  std::string remark;
  for (int i = 0; i < 1500; ++i) remark += "w" + std::to_string(10000 + i) + " ";
  sheet.rows[30].cells.back() = remark;
  sheet.boxes.push_back({"Many", {}});
  for (int i = 0; i < 90; ++i) {
    sheet.boxes.back().lines.push_back("line" + std::to_string(1000 + i) + " of a long box");
  }
  const ui::TableSheetPages pages(sheet, Paper::a4, QFont());
  ASSERT_GT(pages.count(), 4);
  const QString text = text_of(pages);
  for (int i = 0; i < 60; ++i) EXPECT_EQ(text.count(QStringLiteral("row%1").arg(1000 + i)), 1) << i;
  for (int i = 0; i < 1500; ++i) {
    EXPECT_EQ(text.count(QStringLiteral("w%1").arg(10000 + i)), 1) << i;
  }
  for (int i = 0; i < 90; ++i) EXPECT_EQ(text.count(QStringLiteral("line%1").arg(1000 + i)), 1);
  for (int page = 1; page <= pages.count(); ++page) {
    EXPECT_TRUE(text.contains(QStringLiteral("page %1 of %2").arg(page).arg(pages.count())));
  }
  expect_white_margins(pages);
}

TEST_F(PaperPdf, AnEmptyLogHasOnePageThatSaysSo) {
  const auto none = report::gas_log(journal, now, {date(60), date(61)}, speaker, {});
  const ui::TableSheetPages pages(none, Paper::a4, QFont());
  EXPECT_TRUE(text_of(pages).contains(QStringLiteral("Nothing about gas was logged")));
}

TEST_F(PaperPdf, WhatWasStruckIsCrossedThrough) {
  report::TableSheet sheet = sheets().front();
  for (report::TableRow& row : sheet.rows) row.struck = false;
  const QImage before = ui::picture_of(ui::TableSheetPages(sheet, Paper::a4, QFont()), 0, 1600);
  sheet.rows.front().struck = true;
  const QImage after = ui::picture_of(ui::TableSheetPages(sheet, Paper::a4, QFont()), 0, 1600);
  ASSERT_EQ(before.size(), after.size());
  int darker = 0;
  for (int y = 0; y < before.height(); ++y) {
    for (int x = 0; x < before.width(); ++x) {
      if (qGray(after.pixel(x, y)) + 60 < qGray(before.pixel(x, y))) ++darker;
    }
  }
  // A stroke through a line of ten letters is some fifty pixels long at this size.
  EXPECT_GT(darker, 200);
}

std::set<QString> codes_on(const QString& pdf, int page, const QTemporaryDir& folder) {
  const QString picture = folder.filePath(QStringLiteral("page"));
  output_of(QStringLiteral("pdftoppm"),
            {"-r", "150", "-png", "-singlefile", "-f", QString::number(page), "-l",
             QString::number(page), pdf, picture});
  const QString read = output_of(QStringLiteral("zbarimg"),
                                 {"-q", "--raw", "-Sdisable", "-Sqrcode.enable", picture + ".png"});
  std::set<QString> codes;
  for (const QString& line : read.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) codes.insert(line);
  return codes;
}

TEST_F(PaperPdf, AnIndependentReaderReadsEveryTagsCode) {
  std::vector<report::KegTag> tags = report::keg_tags(journal, now, speaker);
  report::KegTag odd = tags.front();
  odd.tag = "Fass 12/ä";
  odd.code = report::keg_code(odd.tag);
  tags.push_back(odd);
  ASSERT_EQ(tags.size(), 5U);
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    for (const TagSheet sheet : {TagSheet::four_a_page, TagSheet::single}) {
      const ui::TagPages pages(tags, {paper, sheet, true}, QFont());
      const QString pdf = pdf_of(pages);
      std::set<QString> read;
      for (int page = 1; page <= pages.count(); page += 2) read.merge(codes_on(pdf, page, folder));
      std::set<QString> expected;
      for (const report::KegTag& tag : tags) expected.insert(ui::q(tag.code));
      EXPECT_EQ(read, expected);
    }
  }
}

TEST_F(PaperPdf, TagsHoldTheirFactsAsText) {
  const std::vector<report::KegTag> tags = report::keg_tags(journal, now, speaker);
  const QString text =
      text_of(ui::TagPages(tags, {Paper::a4, TagSheet::four_a_page, true}, QFont()));
  for (const report::KegTag& tag : tags) {
    expect_words(text, tag.tag + " " + tag.beer + " " + tag.kind + " " + tag.use_by, tag.tag);
    for (const std::string& state : tag.states) expect_words(text, state, tag.tag);
    for (const report::TagFact& fact : tag.facts)
      expect_words(text, fact.label + " " + fact.value, tag.tag);
    for (const report::TagFact& fact : tag.back)
      expect_words(text, fact.label + " " + fact.value, tag.tag);
    expect_words(text, tag.caution, tag.tag);
  }
}

TEST_F(PaperPdf, WarningsHoldTheirWordsAndCautions) {
  auto tags = report::warning_tags(journal, now, speaker);
  for (const KegStatus& keg : now.kegs) tags.push_back(report::vent_first_tag(keg, speaker));
  ASSERT_GE(tags.size(), 8U);
  const ui::TagPages pages(tags, {Paper::letter, TagSheet::four_a_page, true}, QFont());
  EXPECT_EQ(pages.count(), static_cast<int>((tags.size() + 3) / 4));
  const QString text = text_of(pages);
  for (const report::WarningTag& tag : tags) {
    expect_words(text, tag.title + " " + tag.subtitle + " " + tag.subject + " " + tag.caution,
                 tag.title);
    for (const report::TagFact& fact : tag.facts)
      expect_words(text, fact.label + " " + fact.value, tag.title);
  }
}

TEST_F(PaperPdf, TagsAreTheSizeTheyClaim) {
  const auto tags = report::keg_tags(journal, now, speaker);
  // A6 is 105 by 148 mm (ISO 216): 298 by 420 points.
  const QString single =
      output_of(QStringLiteral("pdfinfo"),
                {pdf_of(ui::TagPages(tags, {Paper::a4, TagSheet::single, false}, QFont()))});
  EXPECT_TRUE(single.contains(
      QRegularExpression(QStringLiteral("Page size:\\s+29[78](\\.\\d+)? x (419|420)"))))
      << single.toStdString();
  const QString four =
      output_of(QStringLiteral("pdfinfo"),
                {pdf_of(ui::TagPages(tags, {Paper::a4, TagSheet::four_a_page, false}, QFont()))});
  EXPECT_TRUE(four.contains(QStringLiteral("(A4)")));
  EXPECT_TRUE(four.contains(QRegularExpression(QStringLiteral("Pages:\\s+1\n"))));
}

TEST_F(PaperPdf, ALongTagNumberStaysOnItsTag) {
  report::KegTag tag = report::keg_tags(journal, now, speaker).front();
  tag.tag = "WWWWWWWWWWWWWWWW";  // the longest there may be, in the widest letter
  tag.beer =
      "An extraordinarily long name of a beer, with Donaudampfschifffahrtsgesellschaft in it";
  const ui::TagPages pages(std::vector{tag}, {Paper::a4, TagSheet::single, true}, QFont());
  expect_white_margins(pages);
  expect_words(text_of(pages), tag.tag + " " + tag.beer, "long");
}

}  // namespace
}  // namespace ullage::testing
