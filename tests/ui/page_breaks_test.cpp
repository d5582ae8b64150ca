// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where pages break, read back from PDFs page by page. Of a cleaning list: all of it is
// there, and no page ends with the name or the caution of a step whose first thing is
// overleaf. Of a table: its last row does not stand alone overleaf.
#include <gmock/gmock.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "ui/context.h"
#include "ui/print/cleaning_list_pages.h"
#include "ui/print/sheet_output.h"
#include "ui/print/table_sheet_pages.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::testing {
namespace {

QString printed_back(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
  return QString::fromUtf8(process.readAllStandardOutput())
      .normalized(QString::NormalizationForm_KC)
      .remove(QLatin1Char('\f'));
}

// `steps` steps of `things` lines each; the last step is longer than a page.
report::CleaningList a_long_list(int steps, int things) {
  report::CleaningList list;
  list.title = "Cleaning list";
  list.cellar = "Test cellar";
  list.day = "Sat 28 Nov 2026";
  list.printed = "Printed 2026-11-24 14:05 by MK";
  list.costs = {"about 287 ± 22 mL of beer lost"};
  for (int s = 0; s < steps; ++s) {
    report::CleaningListStep step;
    step.what = std::to_string(s + 1) + ". Step of the day · Cold room";
    step.takes = "takes 20 min of work";
    if (s % 2 == 0) step.caution = "Caustic burns eyes and skin: goggles, gloves, apron.";
    for (int t = 0; t < (s + 1 == steps ? 60 : things); ++t) {
      step.things.push_back({"Thing" + std::to_string(s) + "x" + std::to_string(t), t == 1});
    }
    list.steps.push_back(std::move(step));
  }
  list.left_out = {"Acid, Line 3: not enough time that day"};
  list.signatures = {"Cleaned by", "Checked by"};
  list.footnote = "The label of each cleaner comes first.";
  return list;
}

class CleaningListPdf : public ::testing::TestWithParam<std::tuple<ui::Paper, int>> {};

TEST_P(CleaningListPdf, KeepsAStepsNameWithWhatIsToBeDone) {
  const auto& [paper, things] = GetParam();
  const report::CleaningList list = a_long_list(14, things);
  ui::load_typeface();
  const ui::CleaningListPages pages(list, paper, ui::font_of(ui::TextRole::body));
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("list.pdf"));
  ASSERT_TRUE(ui::write_pdf(pages, path, QStringLiteral("Cleaning list")));
  const QString all = printed_back(QStringLiteral("pdftotext"), {"-layout", path, "-"});
  for (const report::CleaningListStep& step : list.steps) {
    EXPECT_TRUE(all.contains(ui::q(step.what).normalized(QString::NormalizationForm_KC)));
    for (const report::CleaningListThing& thing : step.things) {
      const QRegularExpression row(ui::q(thing.name) + QStringLiteral("\\b.*"));
      const QString found = row.match(all).captured();
      ASSERT_FALSE(found.isEmpty()) << thing.name;
      EXPECT_EQ(found.contains(QStringLiteral("time")), !thing.done) << found.toStdString();
    }
  }
  EXPECT_TRUE(all.contains(QStringLiteral("not enough time that day")));
  EXPECT_TRUE(all.contains(QStringLiteral("Checked by")));
  for (int page = 1; page <= pages.count(); ++page) {
    const QString number = QString::number(page);
    QStringList lines = printed_back(QStringLiteral("pdftotext"),
                                     {"-layout", "-f", number, "-l", number, path, "-"})
                            .split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 4) << page;
    EXPECT_TRUE(lines.last().contains(QStringLiteral("page %1 of %2").arg(page).arg(pages.count())))
        << lines.last().toStdString();
    const QString& last = lines.at(lines.size() - 2);
    EXPECT_FALSE(last.contains(QStringLiteral("Step of the day"))) << last.toStdString();
    EXPECT_FALSE(last.contains(QStringLiteral("CAUTION"))) << last.toStdString();
    EXPECT_FALSE(last.contains(QStringLiteral("takes 20 min"))) << last.toStdString();
  }
}

INSTANTIATE_TEST_SUITE_P(Papers, CleaningListPdf,
                         ::testing::Combine(::testing::Values(ui::Paper::a4, ui::Paper::letter),
                                            ::testing::Values(1, 3, 4, 7)));

TEST(TableBreaks, TheLastRowHasCompany) {
  ui::load_typeface();
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("table.pdf"));
  int broken = 0;
  for (int rows = 10; rows <= 45; ++rows) {
    report::TableSheet sheet;
    sheet.title = "Table";
    sheet.columns = {{"Name", 1}, {"Written", 1, true}};
    sheet.keys = {"name"};
    for (int i = 0; i < rows; ++i) {
      sheet.rows.emplace_back().cells = {"row" + std::to_string(i), std::string()};
    }
    const ui::TableSheetPages pages(sheet, ui::Paper::a4, ui::font_of(ui::TextRole::body));
    if (pages.count() < 2) continue;
    ++broken;
    ASSERT_TRUE(ui::write_pdf(pages, path, QStringLiteral("Table")));
    const QString number = QString::number(pages.count());
    const QString last = printed_back(QStringLiteral("pdftotext"),
                                      {"-layout", "-f", number, "-l", number, path, "-"});
    EXPECT_GE(last.count(QStringLiteral("row")), 2) << rows << " rows";
    const QString all = printed_back(QStringLiteral("pdftotext"), {"-layout", path, "-"});
    EXPECT_EQ(all.count(QStringLiteral("row")), rows);
    // In their order.
    EXPECT_LT(all.indexOf(QStringLiteral("row%1\n").arg(rows - 2)),
              all.indexOf(QStringLiteral("row%1\n").arg(rows - 1)));
  }
  EXPECT_GT(broken, 10);
}

TEST(TableBreaks, WhatGoesOnOverleafStandsUnderItsHeadingAgain) {
  ui::load_typeface();
  report::TableSheet sheet;
  sheet.columns = {{"Name", 1}};
  for (const char* place : {"First place", "Second place"}) {
    report::TableRow& heading = sheet.rows.emplace_back();
    heading.kind = report::RowKind::heading;
    heading.cells = {place};
    for (int i = 0; i < 50; ++i) sheet.rows.emplace_back().cells = {"row" + std::to_string(i)};
  }
  const ui::TableSheetPages pages(sheet, ui::Paper::letter, ui::font_of(ui::TextRole::body));
  ASSERT_GE(pages.count(), 4);
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("table.pdf"));
  ASSERT_TRUE(ui::write_pdf(pages, path, QStringLiteral("Table")));
  for (int page = 1; page <= pages.count(); ++page) {
    const QString number = QString::number(page);
    const QString words = printed_back(QStringLiteral("pdftotext"),
                                       {"-layout", "-f", number, "-l", number, path, "-"});
    const auto heading = words.indexOf(QStringLiteral(" place"));
    ASSERT_GE(heading, 0) << page;
    EXPECT_LT(heading, words.indexOf(QStringLiteral("row"))) << page;
  }
}

}  // namespace
}  // namespace ullage::testing
