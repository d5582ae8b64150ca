// SPDX-License-Identifier: GPL-3.0-or-later
//
// Renders every page, dialog and sheet of the real program to PNG files, from
// the demo and from an empty cellar, light and dark, metric and US, wide and at
// 1024x640. One run takes the pictures of one size of screen; tests/look gives it
// that screen, at one and at two device pixels a point.
#include <QApplication>
#include <QDir>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>
#include <memory>

#include "app/demo_cellar.h"
#include "app/language.h"
#include "app/surroundings.h"
#include "core/report/slate/computation.h"
#include "tests/support/fake_surroundings.h"
#include "ui/commands/shortcut_sheet.h"
#include "ui/commands/task_palette.h"
#include "ui/dialogs/as_of_dialog.h"
#include "ui/dialogs/backups.h"
#include "ui/dialogs/cleaning_list_preview.h"
#include "ui/dialogs/first_start.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/dialogs/kit_dialog.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/message_box.h"
#include "ui/dialogs/new_cellar.h"
#include "ui/dialogs/put_off_dialog.h"
#include "ui/dialogs/recall.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/rules_dialog.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/settings.h"
#include "ui/dialogs/sheet_preview.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/dialogs/trace.h"
#include "ui/main_window.h"
#include "ui/pages/cleaning_page.h"
#include "ui/preferences.h"
#include "ui/print/sheet_output.h"
#include "ui/theme/theme_switch.h"

namespace ullage {
namespace {

struct Look {
  const char* name;
  ui::ThemeChoice theme;
  units::DisplayUnits units;
  report::RegionalWords words;
  QSize size;
};

// Those for a screen of this size: a dialog asks the screen how large it may be.
std::vector<Look> looks(const QString& size) {
  using enum ui::ThemeChoice;
  const auto metric = units::DisplayUnits::metric();
  const auto us = units::DisplayUnits::us();
  const auto gb = report::RegionalWords::british;
  const auto american = report::RegionalWords::us;
  if (size == QLatin1String("wide")) {
    return {{"light-metric-wide", light, metric, gb, {1440, 860}},
            {"dark-us-wide", dark, us, american, {1440, 860}}};
  }
  return {{"light-us-1024x640", light, us, american, {1024, 640}},
          {"dark-metric-1024x640", dark, metric, gb, {1024, 640}}};
}

class Studio {
 public:
  Studio(QString folder, QSettings& settings, app::CellarSession& cellar, QString cellar_name)
      : folder_(std::move(folder)),
        preferences_(settings),
        theme_(preferences_),
        cellar_(cellar),
        cellar_name_(std::move(cellar_name)) {}

  void take_all(const QString& size) {
    for (const Look& look : looks(size)) {
      preferences_.set_theme(look.theme);
      preferences_.set_units(look.units);
      preferences_.set_words(look.words);
      preferences_.set_initials(QStringLiteral("MK"));
      look_ = &look;
      window_ =
          std::make_unique<ui::MainWindow>(cellar_, preferences_, prompts_, ui::AppCommands{});
      window_->resize(look.size);
      window_->show();
      take_pages();
      take_dialogs();
      window_.reset();
    }
  }

 private:
  void save(QWidget& widget, const QString& what) {
    widget.ensurePolished();
    for (int i = 0; i < 4; ++i) QApplication::processEvents();
    const QString scale = QString::number(qApp->devicePixelRatio());
    widget.grab().save(QStringLiteral("%1/%2_%3_%4_%5x.png")
                           .arg(folder_, cellar_name_, what, QLatin1String(look_->name), scale));
  }

  void take_pages() {
    const auto status = cellar_.status();
    window_->show_page(ui::PageId::kegs);
    if (const cellar::KegStatus* keg = status->keg_by_tag("K01"))
      window_->show_keg(keg->record.keg);
    save(*window_, QStringLiteral("kegs"));
    preferences_.set_compact_rows(true);
    save(*window_, QStringLiteral("kegs-compact"));
    preferences_.set_compact_rows(false);
    take_whole_pages();
    window_->show_page(ui::PageId::lines);
    save(*window_, QStringLiteral("lines"));
    window_->show_page(ui::PageId::cleaning);
    save(*window_, QStringLiteral("cleaning"));
    window_->show_page(ui::PageId::beers);
    save(*window_, QStringLiteral("beers"));
    window_->show_page(ui::PageId::slate);
    save(*window_, QStringLiteral("slate"));
    if (const cellar::KegStatus* keg = status->keg_by_tag("K01")) {
      for (const char* computation : {"burst", "pressure_to_set", "purge_cycles"}) {
        window_->work_out(computation, keg->record.keg);
        save(*window_, QStringLiteral("slate-") + QLatin1String(computation));
      }
    }
    take_slate();
    window_->show_page(ui::PageId::gas);
    save(*window_, QStringLiteral("gas"));
    window_->show_page(ui::PageId::safety);
    save(*window_, QStringLiteral("safety"));
    window_->show_page(ui::PageId::log);
    save(*window_, QStringLiteral("log"));
  }

  // Every computation as it stands without a keg; the same for any cellar.
  void take_slate() {
    if (cellar_name_ != QLatin1String("demo")) return;
    for (const report::slate::Computation& c : report::slate::computations()) {
      window_->work_out(std::string(c.key), std::nullopt);
      save(*window_, QStringLiteral("slate-no-keg-") +
                         QString::fromUtf8(c.key.data(), static_cast<qsizetype>(c.key.size())));
    }
  }

  // In a window high enough that nothing is scrolled out of sight.
  void take_whole_pages() {
    const QSize before = window_->size();
    window_->resize(before.width(), 2200);
    const auto status = cellar_.status();
    for (const char* tag : {"K01", "K07"}) {
      const cellar::KegStatus* keg = status->keg_by_tag(tag);
      if (keg == nullptr) continue;
      window_->show_page(ui::PageId::kegs);
      window_->show_keg(keg->record.keg);
      save(*window_, QStringLiteral("whole-kegs-") + QLatin1String(tag));
    }
    for (const auto& [page, name] :
         {std::pair{ui::PageId::lines, "whole-lines"}, std::pair{ui::PageId::gas, "whole-gas"},
          std::pair{ui::PageId::safety, "whole-safety"}}) {
      window_->show_page(page);
      save(*window_, QLatin1String(name));
    }
    window_->resize(before);
  }

  void take_dialogs() {
    ui::Context& context = window_->context();
    const auto status = cellar_.status();
    std::optional<cellar::SubjectRef> about;
    if (!status->kegs.empty()) about = cellar::subject(status->kegs.front().record.keg);
    for (const ui::TaskForm& form : ui::task_forms()) {
      const bool keg_form = form.about == cellar::SubjectKind::keg;
      const std::unique_ptr<QDialog> dialog(ui::make_task_dialog(
          context, {form.kind, keg_form ? about : std::nullopt, {}, {}}, nullptr));
      dialog->show();
      save(*dialog, QStringLiteral("form-") + QString::fromStdString(form.kind));
    }
    ui::RoundDialog round(context);
    round.show();
    round.skip();
    save(round, QStringLiteral("round"));
    if (!status->batches.empty()) {
      ui::RecallDialog recall(context, status->batches.front().batch);
      recall.show();
      save(recall, QStringLiteral("recall"));
      ui::TraceDialog trace(context, status->batches.front().batch);
      trace.show();
      save(trace, QStringLiteral("trace"));
    }
    ui::SettingsDialog settings(preferences_, nullptr);
    settings.show();
    save(settings, QStringLiteral("settings"));
    ui::NewCellar new_cellar;
    new_cellar.show();
    save(new_cellar, QStringLiteral("new-cellar"));
    ui::FirstStart first;
    first.show();
    save(first, QStringLiteral("first-start"));
    ui::RulesDialog rules(context);
    rules.show();
    save(rules, QStringLiteral("rules"));
    ui::KitDialog kit(context);
    kit.show();
    save(kit, QStringLiteral("cleaner-and-time"));
    take_cleaning_dialogs();
    take_boxes(context);
    ui::SheetPreview sheet(context);
    sheet.show();
    save(sheet, QStringLiteral("sheet"));
    take_papers(context);
  }

  void take_boxes(ui::Context& context) {
    const auto shown = [this](QDialog&& dialog, const char* name) {
      dialog.show();
      save(dialog, QLatin1String(name));
    };
    shown(ui::AsOfDialog(context, nullptr), "as-of");
    shown(ui::BackupsDialog({{"29 November 2026", "daily", "1.2 MB"},
                             {"28 November 2026", "made by hand", "1.2 MB"},
                             {"20 November 2026", "put aside by a restore", "1 MB"}}),
          "backups");
    shown(ui::ShortcutSheet(), "shortcuts");
    shown(ui::TaskPalette(context, ui::task_forms()), "task-palette");
    ui::MessageBox damaged(
        "“home.cellar” is damaged. Restore a backup, or recover what can still "
        "be read into a new file; the damaged file is kept.",
        "Tree 12 page 34: error code 11", nullptr);
    damaged.add_way("Restore a backup…", ui::ButtonRole::primary);
    damaged.add_way("Save what can be read…", ui::ButtonRole::plain);
    damaged.add_cancel();
    damaged.show();
    save(damaged, QStringLiteral("box-ways-out"));
    QStringList lines = {QStringLiteral("60 entries could not be saved:")};
    for (int i = 1; i <= 60; ++i) {
      lines << QStringLiteral("Entry %1, 27 Nov 11:00 by MK: Gas set – K0%2").arg(i).arg(i % 10);
    }
    ui::MessageBox told("184 entries were saved", lines.join(QLatin1Char('\n')), nullptr);
    told.add_way("Close", ui::ButtonRole::plain);
    told.show();
    save(told, QStringLiteral("box-long"));
  }

  void take_papers(const ui::Context& context) {
    ui::LogPreview cleaning(context, report::LogBook::line_cleaning);
    cleaning.show();
    save(cleaning, QStringLiteral("paper-line-cleaning"));
    ui::LogPreview round(context, report::LogBook::round);
    round.show();
    save(round, QStringLiteral("paper-round"));
    ui::TagPreview tags(context, ui::TagKind::kegs);
    tags.show();
    save(tags, QStringLiteral("paper-tags"));
    ui::TagPreview warnings(context, ui::TagKind::warnings);
    warnings.show();
    save(warnings, QStringLiteral("paper-warnings"));
    const auto status = cellar_.status();
    if (status->kegs.empty()) return;
    ui::ScanOffer offer(context);
    offer.show_keg(status->kegs.front().record.keg);
    offer.show();
    save(offer, QStringLiteral("scan"));
  }

  void take_cleaning_dialogs() {
    const auto* page = window_->findChild<ui::CleaningPage*>();
    if (page == nullptr || page->shown_day() == nullptr) return;
    ui::CleaningListPreview list(window_->context(), *page->shown_day());
    list.show();
    save(list, QStringLiteral("cleaning-list"));
    const auto& tasks = page->shown_day()->tasks;
    if (tasks.empty()) return;
    ui::PutOffDialog move(window_->context(), tasks.front(), tasks);
    move.show();
    save(move, QStringLiteral("move-work"));
  }

  QString folder_;
  ui::Preferences preferences_;
  ui::ThemeSwitch theme_;
  app::CellarSession& cellar_;
  QString cellar_name_;
  testing::QueuedPrompts prompts_;
  std::unique_ptr<ui::MainWindow> window_;
  const Look* look_ = nullptr;
};

int run(const QString& folder, const QString& size) {
  QDir().mkpath(folder);
  const QTemporaryDir files;
  QSettings settings(files.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
  const app::SystemClock clock;
  app::RandomIds ids;
  auto demo =
      app::make_demo(files.filePath(QStringLiteral("demo.cellar")).toStdString(), {clock, ids});
  cellar::CellarDescribed described;
  described.name = "New cellar";
  described.time_zone = "UTC";
  auto empty = app::CellarSession::create(
      files.filePath(QStringLiteral("empty.cellar")).toStdString(), described, {clock, ids});
  if (!demo || !empty) {
    QTextStream(stderr) << "The cellars to look at could not be made.\n";
    return 1;
  }
  Studio(folder, settings, **demo, QStringLiteral("demo")).take_all(size);
  Studio(folder, settings, **empty, QStringLiteral("empty")).take_all(size);
  return 0;
}

}  // namespace
}  // namespace ullage

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  ullage::app::speak(application, QStringLiteral("en"));
  const QString size = argc == 3 ? QString::fromLocal8Bit(argv[2]) : QString();
  if (size != QLatin1String("wide") && size != QLatin1String("1024x640")) {
    QTextStream(stderr) << "usage: look FOLDER wide|1024x640\n";
    return 2;
  }
  return ullage::run(QString::fromLocal8Bit(argv[1]), size);
}
