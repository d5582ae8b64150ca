// SPDX-License-Identifier: GPL-3.0-or-later
//
// The printed sheet read back: as text by an independent reader (poppler's
// pdftotext), and as pixels for what must not touch the paper's edge.
#include <gtest/gtest.h>

#include <QFont>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "core/units/present.h"
#include "tests/support/fake_facade.h"
#include "tests/support/sample_status.h"
#include "ui/context.h"
#include "ui/print/sheet_output.h"
#include "ui/print/status_sheet_pages.h"

namespace ullage {
namespace {

using testing::sample_cellar_of;

report::Speaker speaker_of(const cellar::LocalCalendar& calendar) {
  report::Speaker speaker;
  speaker.printer.units = units::DisplayUnits::british();
  speaker.calendar = &calendar;
  speaker.now = testing::sample_now;
  return speaker;
}

ui::StatusSheetPages pages_of(std::size_t kegs, ui::Paper paper) {
  static const testing::FixedCalendar calendar;
  return {report::status_sheet(sample_cellar_of(kegs), speaker_of(calendar), "JB"), paper, QFont()};
}

QString run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  if (!process.waitForFinished(30000) || process.exitCode() != 0) return {};
  // Fonts may join letters ("fi"); the words are the same.
  return QString::fromUtf8(process.readAllStandardOutput())
      .normalized(QString::NormalizationForm_KC);
}

TEST(StatusSheetPdf, HoldsEveryKegAsText) {
  const QTemporaryDir folder;
  for (const ui::Paper paper : {ui::Paper::a4, ui::Paper::letter}) {
    const ui::StatusSheetPages pages = pages_of(60, paper);
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(ui::write_pdf(pages, path, QStringLiteral("Status sheet")));
    const QString text = run(QStringLiteral("pdftotext"), {"-layout", path, "-"});
    for (const cellar::KegStatus& keg : sample_cellar_of(60).kegs) {
      EXPECT_TRUE(text.contains(ui::q(keg.record.tag))) << keg.record.tag;
    }
    ASSERT_GT(pages.count(), 1);
    for (int page = 1; page <= pages.count(); ++page) {
      EXPECT_TRUE(text.contains(QStringLiteral("page %1 of %2").arg(page).arg(pages.count())));
    }
    EXPECT_TRUE(text.contains(QStringLiteral("Countersigned by")));
    EXPECT_TRUE(text.contains(QStringLiteral("Do not serve"), Qt::CaseInsensitive));
  }
}

// "Conditionin-g fridge" is wider than the column of places at first is on Letter.
TEST(StatusSheetPdf, BreaksNoWordInTwo) {
  static const testing::FixedCalendar calendar;
  cellar::CellarStatus status = sample_cellar_of(3);
  qsizetype kegs_there = 0;
  for (cellar::KegStatus& keg : status.kegs) {
    if (!keg.place) continue;
    keg.place->name = "Conditioning fridge";
    ++kegs_there;
  }
  ASSERT_GT(kegs_there, 0);
  const QTemporaryDir folder;
  for (const ui::Paper paper : {ui::Paper::a4, ui::Paper::letter}) {
    const ui::StatusSheetPages pages(report::status_sheet(status, speaker_of(calendar), "JB"),
                                     paper, QFont());
    const QString path = folder.filePath(QStringLiteral("words.pdf"));
    ASSERT_TRUE(ui::write_pdf(pages, path, QStringLiteral("Words")));
    const QString text = run(QStringLiteral("pdftotext"), {path, "-"});
    EXPECT_GE(text.count(QStringLiteral("Conditioning")), kegs_there) << text.toStdString();
  }
}

void expect_every_word(const report::StatusSheet& sheet, const QString& text) {
  static const QRegularExpression space(QStringLiteral("\\s+"));
  for (const report::SheetRow& row : sheet.rows) {
    for (const std::string& cell : report::cells(row)) {
      const QString plain = ui::q(cell).normalized(QString::NormalizationForm_KC);
      for (const QString& word : plain.split(space, Qt::SkipEmptyParts)) {
        EXPECT_TRUE(text.contains(word)) << row.keg << word.toStdString();
      }
    }
  }
}

// Every word of every cell, wherever lines were broken, on both papers.
TEST(StatusSheetPdf, DropsNoWordOfSixtyKegs) {
  static const testing::FixedCalendar calendar;
  cellar::CellarStatus status = sample_cellar_of(60);
  for (cellar::KegStatus& keg : status.kegs) {
    if (!keg.gas.on) continue;
    keg.gas.co2 = units::mole_fraction(0.3);
    keg.gas.should_be_errors = {{{"weather"}, units::psi(0.6).value()}};
    present(keg.place).set_temperature = units::celsius(3);
  }
  for (const units::DisplayUnits& units :
       {units::DisplayUnits::british(), units::DisplayUnits::us()}) {
    report::Speaker speaker = speaker_of(calendar);
    speaker.printer.units = units;
    const report::StatusSheet sheet = report::status_sheet(status, speaker, "JB");
    for (const ui::Paper paper : {ui::Paper::a4, ui::Paper::letter}) {
      const QTemporaryDir folder;
      const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
      const ui::StatusSheetPages pages(sheet, paper, QFont());
      ASSERT_TRUE(ui::write_pdf(pages, path, {}));
      expect_every_word(sheet, run(QStringLiteral("pdftotext"), {"-layout", path, "-"}));
    }
  }
}

TEST(StatusSheetPdf, IsOnThePaperAskedFor) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
  ASSERT_TRUE(ui::write_pdf(pages_of(3, ui::Paper::letter), path, {}));
  // US Letter is 8.5 by 11 inches: 612 by 792 points.
  EXPECT_TRUE(run(QStringLiteral("pdfinfo"), {path}).contains(QStringLiteral("792 x 612 pts")));
  ASSERT_TRUE(ui::write_pdf(pages_of(3, ui::Paper::a4), path, {}));
  // A4 is 210 by 297 mm (ISO 216): 595 by 842 points, to the nearest point.
  EXPECT_TRUE(run(QStringLiteral("pdfinfo"), {path}).contains(QStringLiteral("(A4)")));
}

TEST(StatusSheetPdf, LeavesTheMarginsWhite) {
  for (const ui::Paper paper : {ui::Paper::a4, ui::Paper::letter}) {
    const ui::StatusSheetPages pages = pages_of(60, paper);
    for (int page = 0; page < pages.count(); ++page) {
      const QImage image = ui::picture_of(pages, page, 1200);
      const int margin = 20;  // 5 mm of 297 mm
      for (int x = 0; x < image.width(); ++x) {
        for (const int y : {margin / 2, image.height() - margin / 2}) {
          ASSERT_EQ(image.pixelColor(x, y), QColor(Qt::white)) << page << " " << x << "," << y;
        }
      }
      for (int y = 0; y < image.height(); ++y) {
        for (const int x : {margin / 2, image.width() - margin / 2}) {
          ASSERT_EQ(image.pixelColor(x, y), QColor(Qt::white)) << page << " " << x << "," << y;
        }
      }
    }
  }
}

TEST(StatusSheetPdf, SaysSoWhenTheFolderIsNotThere) {
  const auto written = ui::write_pdf(pages_of(1, ui::Paper::a4),
                                     QStringLiteral("/nonexistent/folder/sheet.pdf"), {});
  ASSERT_FALSE(written);
  EXPECT_TRUE(written.error().contains(QStringLiteral("/nonexistent/folder/sheet.pdf")));
}

TEST(StatusSheet, OfAnEmptyCellarStillHasAPage) {
  static const testing::FixedCalendar calendar;
  cellar::CellarStatus empty;
  empty.now = testing::sample_now;
  const ui::StatusSheetPages pages(report::status_sheet(empty, speaker_of(calendar), {}),
                                   ui::Paper::a4, QFont());
  EXPECT_EQ(pages.count(), 1);
}

TEST(StatusSheet, PutsWhatIsOnTapFirst) {
  static const testing::FixedCalendar calendar;
  const cellar::CellarStatus status = sample_cellar_of(12);
  const report::StatusSheet sheet = report::status_sheet(status, speaker_of(calendar), "JB");
  ASSERT_EQ(sheet.rows.size(), status.kegs.size());
  bool past_taps = false;
  for (const report::SheetRow& row : sheet.rows) {
    const cellar::KegStatus* keg = status.keg_by_tag(row.keg);
    ASSERT_NE(keg, nullptr);
    const bool on_tap = keg->phase == cellar::Phase::on_tap;
    EXPECT_FALSE(on_tap && past_taps) << row.keg;
    past_taps = past_taps || !on_tap;
  }
}

}  // namespace
}  // namespace ullage
