// SPDX-License-Identifier: GPL-3.0-or-later
//
// Switching the units with everything open: no number and no label on any page, form,
// dialog or paper stays in the old unit, whichever unit it is, and the file does not
// change by a byte.
#include <gtest/gtest.h>

#include <QDialog>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <array>
#include <functional>
#include <string_view>

#include "app/demo_cellar.h"
#include "app/surroundings.h"
#include "core/cellar/due_work.h"
#include "core/report/slate/computation.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/readable_texts.h"
#include "ui/commands/commands.h"
#include "ui/dialogs/cleaning_list_preview.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/dialogs/kit_dialog.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/put_off_dialog.h"
#include "ui/dialogs/recall.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/rules_dialog.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/sheet_preview.h"
#include "ui/dialogs/tag_preview.h"
#include "ui/dialogs/trace.h"
#include "ui/main_window.h"
#include "ui/pages/cleaning_page.h"
#include "ui/pages/lines_page.h"
#include "ui/preferences.h"

namespace ullage {
namespace {

// A unit after a number, or alone, or at the end as in the head of a column.
QRegularExpression any_of(const QString& units) {
  // "5 g…" is "5 gal" cut short.
  return QRegularExpression(QStringLiteral("\\d\\s?(%1)(?![\\w/…])|(^|, )(%1)$").arg(units));
}

const QString metric_units = QStringLiteral("bar|°C|kg|g|g/L|L|mL|m|cm|mm|°P");
// "in" is a word too: "3 in use", "CO2 in it", "9 in kegs".
const QString inches = QStringLiteral("in(?! (?:use|it|kegs)\\b)");
const QString us_units = QStringLiteral("psi|°F|lb|oz|fl oz|gal|qt|ft|vol|") + inches;

// A choice of the settings, and how its values are written.
struct Choice {
  const char* name;
  std::function<void(units::DisplayUnits&)> make;
  QString written;
};
// What the choices of one line are among; each at a time, no other of the line is seen.
using Dimension = std::vector<Choice>;

std::vector<Dimension> dimensions() {
  using namespace units;
  const auto one = [](const char* name, auto DisplayUnits::* which, auto unit, QString written) {
    return Choice{name, [which, unit](DisplayUnits& u) { u.*which = unit; }, std::move(written)};
  };
  return {{one("psi", &DisplayUnits::pressure, PressureUnit::psi, "psi"),
           one("bar", &DisplayUnits::pressure, PressureUnit::bar, "m?bar"),
           one("kPa", &DisplayUnits::pressure, PressureUnit::kilopascal, "kPa")},
          {one("°C", &DisplayUnits::temperature, TemperatureUnit::celsius, "°C"),
           one("°F", &DisplayUnits::temperature, TemperatureUnit::fahrenheit, "°F")},
          {one("L", &DisplayUnits::volume, VolumeUnit::litre, "L"),
           one("gal", &DisplayUnits::volume, VolumeUnit::us_gallon, "gal|fl oz"),
           one("imp gal", &DisplayUnits::volume, VolumeUnit::imperial_gallon, "imp gal|imp fl oz")},
          {one("kg", &DisplayUnits::mass, MassUnit::kilogram, "kg|g"),
           one("lb", &DisplayUnits::mass, MassUnit::pound, "lb|oz")},
          {one("m", &DisplayUnits::length, LengthUnit::metre, "m|cm"),
           one("ft", &DisplayUnits::length, LengthUnit::foot, "ft")},
          {one("mm", &DisplayUnits::bore, BoreUnit::millimetre, "mm"),
           one("in", &DisplayUnits::bore, BoreUnit::inch, inches)},
          {one("vol", &DisplayUnits::co2, Co2Unit::volumes, "vol"),
           one("g/L", &DisplayUnits::co2, Co2Unit::grams_per_litre, "g/L")},
          {one("US pint", &DisplayUnits::glass, GlassUnit::us_pint, "US pints?"),
           one("pint", &DisplayUnits::glass, GlassUnit::imperial_pint, "pints?"),
           one("half litre", &DisplayUnits::glass, GlassUnit::half_litre, "half litres?"),
           one("third litre", &DisplayUnits::glass, GlassUnit::third_litre, "third litres?")},
          {one("°P", &DisplayUnits::gravity, GravityUnit::plato, "°P")}};
}

// A gravity has no unit: 1.012, 0.998.
const QRegularExpression a_gravity(QStringLiteral("\\b(1[.,][01]\\d\\d|0[.,]99\\d)\\b"));

class UnitFlip : public ::testing::Test {
 protected:
  void SetUp() override {
    auto made = app::make_demo(file(), {clock_, ids_});
    ASSERT_TRUE(made);
    cellar_ = std::move(*made);
    window_ = std::make_unique<ui::MainWindow>(*cellar_, preferences_, prompts_, ui::AppCommands{});
    window_->show();
  }
  [[nodiscard]] std::string file() const {
    return folder_.filePath(QStringLiteral("demo.cellar")).toStdString();
  }
  [[nodiscard]] QByteArray stored() const {
    QByteArray all;
    for (const char* tail : {"", "-wal"}) {
      QFile part(QString::fromStdString(file()) + QLatin1String(tail));
      if (part.open(QIODevice::ReadOnly)) all += part.readAll();
    }
    return all;
  }
  static void expect_none(QWidget& screen, const QRegularExpression& of, const std::string& name) {
    for (const QString& text : testing::readable_texts(screen)) {
      EXPECT_FALSE(text.contains(of)) << name << ": “" << text.toStdString() << "”";
    }
  }
  void set_units(const units::DisplayUnits& to) {
    preferences_.set_units(to);
    QTest::qWait(30);
  }
  // Both ways, so that nothing is right only because it never changes.
  void flip_and_read(QWidget& screen, const std::string& name) {
    set_units(units::DisplayUnits::metric());
    set_units(units::DisplayUnits::us());
    expect_none(screen, any_of(metric_units), name + " in US units");
    set_units(units::DisplayUnits::metric());
    expect_none(screen, any_of(us_units), name + " in metric units");
    expect_none(screen, a_gravity, name + " in metric units");
  }
  // Of what is printed, read back by a program not ours.
  void flip_and_print(ui::PaperPreview& preview, const std::string& name) {
    preview.show();
    flip_and_read(preview, name);
    for (const bool us : {true, false}) {
      set_units(us ? units::DisplayUnits::us() : units::DisplayUnits::metric());
      const QString pdf = folder_.filePath(QStringLiteral("paper.pdf"));
      if (!preview.save_pdf(pdf)) continue;  // nothing to print
      QProcess reader;
      reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, "-"});
      ASSERT_TRUE(reader.waitForFinished());
      const QString text = QString::fromUtf8(reader.readAllStandardOutput());
      const auto old = any_of(us ? metric_units : us_units).match(text);
      EXPECT_FALSE(old.hasMatch()) << name << ": “" << old.captured(0).toStdString() << "” in\n"
                                   << text.toStdString();
    }
  }
  void for_each_page(const std::function<void(const std::string&)>& look) {
    for (const ui::CommandSpec& spec : ui::commands()) {
      if (spec.menu != ui::Menu::view) continue;
      window_->run(spec.command);
      look(spec.does);
    }
  }
  // And each keg and line beside its list.
  void for_each_screen(const std::function<void(const std::string&)>& look) {
    for_each_page(look);
    for (const cellar::KegStatus& keg : cellar_->status()->kegs) {
      window_->show_keg(keg.record.keg);
      look(keg.record.tag);
    }
    window_->run(ui::Command::page_lines);
    for (const cellar::LineStatus& line : cellar_->status()->lines) {
      window_->findChild<ui::LinesPage*>()->show_line(line.record.line);
      look(line.record.name);
    }
  }

  QTemporaryDir folder_;
  app::SystemClock clock_;
  app::RandomIds ids_;
  QSettings settings_{folder_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
  ui::Preferences preferences_{settings_};
  testing::QueuedPrompts prompts_;
  std::unique_ptr<app::CellarSession> cellar_;
  std::unique_ptr<ui::MainWindow> window_;
};

TEST_F(UnitFlip, ChangesEveryPageAndNothingStored) {
  const QByteArray before = stored();
  ASSERT_FALSE(before.isEmpty());
  for_each_screen([&](const std::string& name) { flip_and_read(*window_, name); });
  EXPECT_EQ(stored(), before);
}

// Each unit of each line of the settings for itself, on every page. Small volumes beside
// imperial gallons stay in mL, as they are sold.
TEST_F(UnitFlip, ChangesOneDimensionAtATimeAndNothingStored) {
  const QByteArray before = stored();
  for (const Dimension& dimension : dimensions()) {
    for (const Choice& chosen : dimension) {
      units::DisplayUnits units = units::DisplayUnits::british();
      chosen.make(units);
      QStringList others;
      for (const Choice& other : dimension) {
        if (&other != &chosen) others << other.written;
      }
      const QRegularExpression old =
          others.isEmpty() ? a_gravity : any_of(others.join(QLatin1Char('|')));
      for_each_page([&](const std::string& name) {
        set_units(units::DisplayUnits::us());
        set_units(units);
        expect_none(*window_, old, name + " in " + chosen.name);
      });
    }
  }
  EXPECT_EQ(stored(), before);
}

TEST_F(UnitFlip, ChangesEveryOpenForm) {
  const QByteArray before = stored();
  const cellar::SubjectRef keg = cellar::subject(cellar_->status()->kegs.front().record.keg);
  for (const ui::TaskForm& form : ui::task_forms()) {
    const bool of_keg = form.about == cellar::SubjectKind::keg;
    const std::unique_ptr<QDialog> dialog(ui::make_task_dialog(
        window_->context(), {form.kind, of_keg ? std::optional(keg) : std::nullopt, {}, {}},
        nullptr));
    dialog->show();
    flip_and_read(*dialog, form.kind);
  }
  EXPECT_EQ(stored(), before);
}

// Some tell a quantity in more than one unit, whatever the person reads: that is their
// purpose. An extract has no gravity to be told as; a cleaner is measured as its label says.
TEST_F(UnitFlip, ChangesEveryComputationOfTheSlate) {
  static constexpr auto in_units_of_their_own = std::to_array<std::string_view>(
      {"alcohol", "gravity_scales", "convert", "cleaning_solution"});
  for (const report::slate::Computation& each : report::slate::computations()) {
    if (std::ranges::find(in_units_of_their_own, each.key) != in_units_of_their_own.end()) continue;
    window_->work_out(std::string(each.key), std::nullopt);
    flip_and_read(*window_, std::string(each.key));
  }
}

TEST_F(UnitFlip, ChangesEveryOtherOpenDialog) {
  const ui::Context& context = window_->context();
  const auto flip = [&](QDialog&& dialog, const char* name) {
    dialog.show();
    flip_and_read(dialog, name);
  };
  flip(ui::RulesDialog(context), "rules");
  flip(ui::KitDialog(context), "cleaner and time");
  const cellar::BatchId batch = cellar_->status()->batches.front().batch;
  flip(ui::RecallDialog(context, batch), "recall");
  flip(ui::TraceDialog(context, batch), "trace");
  const auto due = cellar::due_work(cellar_->journal(), *cellar_->status(), cellar_->calendar());
  ASSERT_FALSE(due.empty());
  flip(ui::PutOffDialog(context, due.front(), due), "move work");
}

// Nobody reaches the settings while these are open: opened after a switch, they speak in the
// new units from the first word on.
TEST_F(UnitFlip, IsInForceInWhatIsOpenedNext) {
  const ui::Context& context = window_->context();
  for (const bool us : {true, false}) {
    set_units(us ? units::DisplayUnits::us() : units::DisplayUnits::metric());
    const QRegularExpression old = any_of(us ? metric_units : us_units);
    ui::ScanOffer offer(context);
    offer.show_keg(cellar_->status()->kegs.front().record.keg);
    offer.show();
    expect_none(offer, old, "scanned keg");
    ui::RoundDialog round(context);
    round.show();
    for (int station = 0; !round.at_end() && station < 200; ++station) {
      expect_none(round, old, round.station_name().toStdString());
      round.skip();
    }
  }
}

TEST_F(UnitFlip, ChangesEveryPaper) {
  const ui::Context& context = window_->context();
  ui::SheetPreview sheet(context);
  flip_and_print(sheet, "status sheet");
  for (const ui::TagKind kind : {ui::TagKind::kegs, ui::TagKind::warnings}) {
    ui::TagPreview tags(context, kind);
    flip_and_print(tags, "tags");
  }
  for (int book = 0; book <= static_cast<int>(report::LogBook::beers); ++book) {
    ui::LogPreview log(context, static_cast<report::LogBook>(book));
    flip_and_print(log, "log " + std::to_string(book));
  }
  window_->run(ui::Command::page_cleaning);
  const auto* page = window_->findChild<ui::CleaningPage*>();
  ASSERT_TRUE(page != nullptr && page->shown_day() != nullptr);
  ui::CleaningListPreview list(context, *page->shown_day());
  flip_and_print(list, "cleaning list");
}

}  // namespace
}  // namespace ullage
