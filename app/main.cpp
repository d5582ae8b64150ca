// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reads the command line and starts what it asks for: a command that needs no
// display, or the desk with its windows.
#include <QApplication>
#include <QGuiApplication>
#include <QSettings>
#include <iostream>

#include "app/command_line.h"
#include "app/desk.h"
#include "app/display.h"
#include "app/exit_codes.h"
#include "app/headless.h"
#include "app/language.h"
#include "app/surroundings.h"
#include "ui/dialogs/box_prompts.h"

namespace ullage::app {
namespace {

template <class... Cases>
struct Overloaded : Cases... {
  using Cases::operator()...;
};

void name_the_program() {
  QCoreApplication::setApplicationName(QStringLiteral("ullage"));
  QCoreApplication::setOrganizationName(QStringLiteral("ullage"));
  QCoreApplication::setApplicationVersion(QStringLiteral(ULLAGE_VERSION));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Ullage"));
}

int show_window(const ShowWindow& what, int& argc, char** argv, Desk::Tools& tools) {
  if (const std::optional<std::string> why = why_no_display()) {
    std::cerr << *why << "\nThese commands need no display:\n" << headless_commands() << "\n";
    return exit_no_display;
  }
  QApplication application(argc, argv);
  name_the_program();
  speak(application, ui::Preferences(tools.settings).language());
  Desk desk(tools);
  const bool shown = what.demo     ? desk.open_demo()
                     : what.cellar ? desk.open_or_create(*what.cellar)
                                   : desk.start();
  return shown ? QApplication::exec() : exit_file_problem;
}

// Fonts need an application, but no display.
template <class Print>
int print_without_display(int& argc, char** argv, Print print) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  name_the_program();
  return print();
}

int carry_out(const Command& command, int& argc, char** argv) {
  const SystemClock clock;
  RandomIds ids;
  const Terminal terminal{std::cout, std::cerr};
  return visit(
      Overloaded{
          [&](const ShowWindow& what) {
            QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("ullage"),
                               QStringLiteral("ullage"));
            ui::BoxPrompts prompts;
            Desk::Tools tools{clock, ids, settings, prompts};
            return show_window(what, argc, argv, tools);
          },
          [&](const PrintSheet& what) {
            return print_without_display(argc, argv,
                                         [&] { return print_sheet(what, {clock, ids}, terminal); });
          },
          [&](const PrintTags& what) {
            return print_without_display(argc, argv,
                                         [&] { return print_tags(what, {clock, ids}, terminal); });
          },
          [&](const WriteLog& what) {
            return print_without_display(argc, argv,
                                         [&] { return write_log(what, {clock, ids}, terminal); });
          },
          [&](const PlanDay& what) {
            return print_without_display(argc, argv,
                                         [&] { return plan_day(what, {clock, ids}, terminal); });
          },
          [&](const TellDue& what) { return tell_due(what, {clock, ids}, terminal); },
          [&](const WriteCalendar& what) { return write_calendar(what, {clock, ids}, terminal); },
          [&](const ExportCellar& what) { return export_cellar(what, terminal); },
          [&](const ImportCellar& what) { return import_cellar(what, {clock, ids}, terminal); },
          [&](const CheckCellar& what) { return check_cellar(what, {clock, ids}, terminal); }},
      command);
}

}  // namespace
}  // namespace ullage::app

int main(int argc, char** argv) {
  using namespace ullage::app;
  const auto command = read_command_line(std::vector<std::string>(argv + 1, argv + argc));
  if (!command) {
    (command.error().exit_code == exit_ok ? std::cout : std::cerr) << command.error().text;
    return command.error().exit_code;
  }
  return carry_out(*command, argc, argv);
}
