// SPDX-License-Identifier: GPL-3.0-or-later
//
// As every_screen_test.cpp, of what a page or a dialog comes to when it is used: each
// keg and line beside its list, each computation, the stations of a round, forms that
// refuse, the boxes that ask and tell, menus, the reasons behind a number. And that no
// dialog of the program is left out by both.
#include <QDirIterator>
#include <QFile>
#include <QLineEdit>
#include <QMap>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QTimer>
#include <functional>
#include <typeinfo>

#include "core/report/slate/computation.h"
#include "tests/journeys/every_screen.h"
#include "ui/commands/commands.h"
#include "ui/dialogs/box_prompts.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/round.h"
#include "ui/pages/lines_page.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage {
namespace {

class EveryState : public EveryScreen {
 protected:
  // Of the box that `ask` opens, which is then left.
  void judge_box(const char* name, const std::function<void(ui::Prompts&)>& ask) {
    bool judged = false;
    QTimer::singleShot(0, window_.get(), [&] {
      auto* box = qobject_cast<QDialog*>(QApplication::activeModalWidget());
      ASSERT_NE(box, nullptr) << name;
      ASSERT_TRUE(QTest::qWaitForWindowActive(box));
      judge_dialog(*box, name);
      // Once more with what is missing said.
      for (QPushButton* button : box->findChildren<QPushButton*>()) {
        if (box->isVisible() && button->isDefault() && box->findChild<QLineEdit*>())
          button->click();
      }
      if (box->isVisible()) judge_looks(*box, std::string(name) + ", refused");
      judged = true;
      box->reject();
    });
    ui::BoxPrompts prompts;
    ask(prompts);
    EXPECT_TRUE(judged) << name;
  }
};

INSTANTIATE_TEST_SUITE_P(Looks, EveryState, ::testing::ValuesIn(looks),
                         [](const auto& which) { return which.param.name; });

TEST_P(EveryState, OfEachKegBesideItsList) {
  window_->run(ui::Command::page_kegs);
  for (const cellar::KegStatus& keg : cellar_->status()->kegs) {
    window_->show_keg(keg.record.keg);
    judge_looks(*window_, keg.record.tag);
  }
}

TEST_P(EveryState, OfEachLineBesideItsList) {
  window_->run(ui::Command::page_lines);
  auto* page = window_->findChild<ui::LinesPage*>();
  ASSERT_NE(page, nullptr);
  for (const cellar::LineStatus& line : cellar_->status()->lines) {
    page->show_line(line.record.line);
    judge_looks(*window_, line.record.name);
  }
}

TEST_P(EveryState, OfEachComputation) {
  for (const report::slate::Computation& each : report::slate::computations()) {
    const std::string key(each.key);
    window_->work_out(key, std::nullopt);
    judge_looks(*window_, key);
  }
}

// Each form when it refuses: its sentences stand at the fields and below.
TEST_P(EveryState, OfEachFormThatRefuses) {
  const QString nonsense = QStringLiteral("30 frogs");
  for (const ui::TaskForm& form : ui::task_forms()) {
    const auto about = form.about ? first(*form.about) : std::nullopt;
    const std::unique_ptr<QDialog> dialog(
        ui::make_task_dialog(window_->context(), {form.kind, about, {}, {}}, nullptr));
    ASSERT_NE(dialog, nullptr) << form.kind;
    dialog->show();
    for (QLineEdit* edit : dialog->findChildren<QLineEdit*>()) {
      if (!edit->isVisible() || !edit->isEnabled() || edit->isReadOnly()) continue;
      edit->setText(nonsense);
      emit edit->textEdited(nonsense);  // as if typed
    }
    auto* log_it = dialog->findChild<QPushButton*>(QStringLiteral("log_it"));
    if (log_it && log_it->isEnabled()) log_it->click();
    if (!dialog->isVisible()) continue;  // nothing in it could be refused
    judge_looks(*dialog, form.kind);
    expect_fits(*dialog, form.kind);
  }
}

TEST_P(EveryState, OfEachStationOfTheRound) {
  ui::RoundDialog round(window_->context());
  round.show();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&round));
  int stations = 0;
  for (; !round.at_end() && stations < 200; ++stations) {
    judge_looks(round, round.station_name().toStdString());
    expect_fits(round, round.station_name().toStdString());
    round.skip();
  }
  EXPECT_TRUE(round.at_end());
  EXPECT_GE(stations, GetParam().demo ? 10 : 0);
  judge(round, "the end of the round");
}

TEST_P(EveryState, OfEachLogOnPaper) {
  for (int book = 0; book <= static_cast<int>(report::LogBook::beers); ++book) {
    ui::LogPreview log(window_->context(), static_cast<report::LogBook>(book));
    judge_dialog(log, "log on paper " + std::to_string(book));
  }
}

TEST_P(EveryState, OfTheBoxes) {
  judge_box("asked",
            [](ui::Prompts& p) { p.confirm(nullptr, "Log this?", "It is so.", "Log it"); });
  judge_box("asked of a risk", [](ui::Prompts& p) {
    p.confirm_risk(nullptr, "Leave?", "What you typed would be lost.", "Leave", "Go on typing");
  });
  judge_box("told", [](ui::Prompts& p) {
    p.tell(nullptr, "The backup is in place.", "What the file was before is kept as x.cellar.");
  });
  judge_box("ways out", [](ui::Prompts& p) {
    p.choose(nullptr, "“home.cellar” is damaged.", "Page 12 can’t be read.",
             {"Restore a backup…", "Save what can be read…", "Choose another file…"});
  });
  judge_box("asked why",
            [](ui::Prompts& p) { p.ask_reason(nullptr, "Why is this entry struck?"); });
}

TEST_P(EveryState, OfTheMenus) {
  const QList<QAction*> all = window_->menuBar()->actions();
  ASSERT_GE(all.size(), 4);
  for (const QAction* action : all) {
    QMenu* menu = action->menu();
    ASSERT_NE(menu, nullptr);
    menu->popup(window_->mapToGlobal(QPoint(0, 40)));
    judge_looks(*menu, action->text().toStdString());
    menu->close();
  }
}

TEST_P(EveryState, OfTheReasonsBehindTheNumbersOfAKeg) {
  window_->run(ui::Command::page_kegs);
  const auto status = cellar_->status();
  const cellar::KegStatus* keg = status->keg_by_tag("K01");
  ASSERT_EQ(keg != nullptr, GetParam().demo);
  if (!keg) return;
  window_->show_keg(keg->record.keg);
  int opened = 0;
  for (ui::Figure* figure : window_->findChildren<ui::Figure*>()) {
    if (!figure->isVisible() || !figure->has_reasons()) continue;
    figure->open_reasons();
    auto* reasons = qobject_cast<ui::ReasonsPopup*>(QApplication::activePopupWidget());
    ASSERT_NE(reasons, nullptr) << figure->accessibleName().toStdString();
    judge_looks(*reasons, figure->accessibleName().toStdString());
    reasons->close();
    QApplication::processEvents();
    ++opened;
  }
  EXPECT_GE(opened, 5);
}

// --- whether a dialog of the program is judged at all

// Every class of the headers by the class that it is made from.
QMap<QString, QString> classes_of_the_windows() {
  static const QRegularExpression made(QStringLiteral("^class (\\w+)(?: final)? : public (\\w+)"),
                                       QRegularExpression::MultilineOption);
  QMap<QString, QString> from;
  QDirIterator files(QStringLiteral(ULLAGE_SOURCE_DIR "/ui"), {QStringLiteral("*.h")}, QDir::Files,
                     QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    auto found = made.globalMatch(QString::fromUtf8(file.readAll()));
    while (found.hasNext()) {
      const QRegularExpressionMatch each = found.next();
      from[each.captured(1)] = each.captured(2);
    }
  }
  return from;
}

QString judged_by_name() {
  QString text;
  for (const char* name : {"every_screen_test.cpp", "every_state_test.cpp"}) {
    QFile file(QStringLiteral(ULLAGE_TESTS_DIR "/journeys/") + QLatin1String(name));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    text += QString::fromUtf8(file.readAll());
  }
  return text;
}

class EveryDialog : public EveryScreen {};
INSTANTIATE_TEST_SUITE_P(Once, EveryDialog, ::testing::Values(looks[0]));

TEST_P(EveryDialog, IsJudgedSomewhereHere) {
  const QMap<QString, QString> from = classes_of_the_windows();
  QString judged = judged_by_name();
  for (const ui::TaskForm& form : ui::task_forms()) {
    const std::unique_ptr<QDialog> dialog(
        ui::make_task_dialog(window_->context(), {form.kind, {}, {}, {}}, nullptr));
    const QDialog& of = *dialog;
    judged += QLatin1Char('\n') + QLatin1String(typeid(of).name());
  }
  int dialogs = 0;
  for (auto each = from.begin(); each != from.end(); ++each) {
    QString root = each.key();
    while (from.contains(root)) root = from[root];
    const bool only_a_beginning = from.values().contains(each.key());
    if (root != QLatin1String("QDialog") || only_a_beginning) continue;
    ++dialogs;
    // "ui::Name" in the text of a test, or "4Name" in the name of a type.
    const QString named = QStringLiteral("ui::%1\\b|\\d%1(?![a-z])").arg(each.key());
    EXPECT_TRUE(judged.contains(QRegularExpression(named))) << each.key().toStdString();
  }
  EXPECT_GE(dialogs, 20);
}

}  // namespace
}  // namespace ullage
