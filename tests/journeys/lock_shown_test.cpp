// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line with cleaner in it, and the keg on it, are met in many places. Wherever somebody
// could come to serve from them, "do not serve" stands there too. (The Gas page names kegs
// by the regulator that feeds them, the Log page tells of the past.)
#include <QProcess>

#include "core/report/log_book.h"
#include "core/units/present.h"
#include "tests/journeys/demo_journey.h"
#include "tests/support/readable_texts.h"
#include "ui/commands/commands.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/sheet_preview.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/dialogs/trace.h"
#include "ui/pages/lines_page.h"

namespace ullage {
namespace {

class LockShown : public DemoJourney {
 protected:
  void SetUp() override {
    DemoJourney::SetUp();
    for (const cellar::LineStatus& line : cellar_->status()->lines) {
      if (line.lock) locked_ = line;
    }
    ASSERT_EQ(locked_.record.name, "Line 2");
    on_it_ = keg("P01");
    ASSERT_TRUE(on_it_.lock);
  }
  [[nodiscard]] static bool names_it(const QString& text) {
    return text.contains(QStringLiteral("P01")) || text.contains(QStringLiteral("Line 2"));
  }
  [[nodiscard]] static bool warns(const QString& text) {
    return text.contains(QStringLiteral("do not serve"), Qt::CaseInsensitive);
  }
  // A screen that names the line or its keg warns of it.
  static void expect_warned(QWidget& screen, const std::string& name, bool must_name_it = true) {
    QTest::qWait(350);  // forms settle before they tell
    const QString all = testing::readable_texts(screen).join(QLatin1Char('\n'));
    EXPECT_TRUE(names_it(all) || !must_name_it) << name << " does not name it:\n"
                                                << all.toStdString();
    EXPECT_TRUE(warns(all) || !names_it(all)) << name << " names it and does not warn";
  }
  void expect_warned_on_paper(ui::PaperPreview& paper, const std::string& name) {
    const QString pdf = folder_.filePath(QStringLiteral("paper.pdf"));
    paper.show();
    ASSERT_TRUE(paper.save_pdf(pdf)) << name;
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, "-"});
    ASSERT_TRUE(reader.waitForFinished());
    const QString text =
        QString::fromUtf8(reader.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
    EXPECT_TRUE(names_it(text)) << name;
    EXPECT_TRUE(warns(text.simplified())) << name << "\n" << text.toStdString();
  }

  cellar::LineStatus locked_;
  cellar::KegStatus on_it_;
};

TEST_F(LockShown, OnEveryPageThatNamesIt) {
  for (const ui::Command page :
       {ui::Command::page_kegs, ui::Command::page_lines, ui::Command::page_safety,
        ui::Command::page_cleaning, ui::Command::page_beers}) {
    window_->run(page);
    expect_warned(*window_, ui::spec_of(page).does, false);
  }
  window_->show_keg(on_it_.record.keg);
  expect_warned(*window_, "the keg beside its list");
  window_->run(ui::Command::page_lines);
  window_->findChild<ui::LinesPage*>()->show_line(locked_.record.line);
  expect_warned(*window_, "the line beside its list");
}

TEST_F(LockShown, InEveryFormThatWouldServe) {
  const auto form = [&](const char* kind, cellar::SubjectRef about) {
    const std::unique_ptr<QDialog> dialog(
        ui::make_task_dialog(context(), {kind, about, {}, {}}, nullptr));
    ASSERT_NE(dialog, nullptr) << kind;
    dialog->show();
    expect_warned(*dialog, kind);
  };
  form("timed_pour", cellar::subject(locked_.record.line));
  form("keg_change", cellar::subject(locked_.record.line));
  form("tapped", cellar::subject(on_it_.record.keg));
}

TEST_F(LockShown, OnTheRoundAndWhenItsTagIsScanned) {
  ui::ScanOffer offer(context());
  offer.show_keg(on_it_.record.keg);
  offer.show();
  expect_warned(offer, "scanned keg");
  ui::RoundDialog round(context());
  round.show();
  int met = 0;
  for (int station = 0; !round.at_end() && station < 200; ++station) {
    const QString name = round.station_name();
    if (names_it(name) || name.contains(QStringLiteral("Tap 2"))) {
      ++met;
      expect_warned(round, name.toStdString());
    }
    round.skip();
  }
  EXPECT_GE(met, 1);
}

TEST_F(LockShown, OnPaper) {
  ui::SheetPreview sheet(context());
  expect_warned_on_paper(sheet, "status sheet");
  ui::TagPreview warnings(context(), ui::TagKind::warnings);
  expect_warned_on_paper(warnings, "warning tags");
  for (const report::LogBook book :
       {report::LogBook::kegs, report::LogBook::lines, report::LogBook::round}) {
    ui::LogPreview list(context(), book);
    expect_warned_on_paper(list, "list " + std::to_string(static_cast<int>(book)));
  }
}

// Told of what a batch went into.
TEST_F(LockShown, InTheTraceOfItsBatch) {
  ui::TraceDialog trace(context(), present(on_it_.contents).batch);
  trace.show();
  expect_warned(trace, "trace");
}

}  // namespace
}  // namespace ullage
