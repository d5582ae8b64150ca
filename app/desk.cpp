// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk.h"

#include <QApplication>
#include <QCloseEvent>
#include <QEventLoopLocker>
#include <QSettings>
#include <QTimer>
#include <algorithm>

#include "app/demo_cellar.h"
#include "app/file_rescue.h"
#include "app/window_commands.h"
#include "app/zone_calendar.h"
#include "core/report/preset_units.h"
#include "core/store/backups.h"
#include "core/units/present.h"
#include "ui/context.h"
#include "ui/dialogs/first_start.h"
#include "ui/dialogs/new_cellar.h"

namespace ullage::app {
namespace {

const QString last_cellar_key = QStringLiteral("last_cellar");

}  // namespace

Desk::Desk(Tools tools, QObject* parent)
    : QObject(parent),
      tools_(tools),
      preferences_(tools.settings),
      theme_(preferences_),
      recent_(tools.settings) {
  // A pub's window may stay open for weeks.
  connect(&days_, &QTimer::timeout, this, [this] {
    for (const auto& open : open_) back_up_today(*open);
  });
  days_.start(tools.between_backups);
}

Desk::~Desk() = default;

store::Moment Desk::moment() const {
  const cellar::Instant now = tools_.clock.now();
  return {now, ZoneCalendar(system_zone()).date_of(now)};
}

bool Desk::open(const std::filesystem::path& file, QWidget* parent,
                const store::OpenOptions& options) {
  store::OpenOptions with_moment = options;
  with_moment.migrate_at = moment();
  auto opened = CellarSession::open(file, {tools_.clock, tools_.ids}, with_moment);
  if (!opened) return lead_on(opened.error(), parent);
  remember(file);
  return show(std::move(*opened), nullptr);
}

bool Desk::create(const std::filesystem::path& file, const cellar::CellarDescribed& cellar,
                  QWidget* parent) {
  auto made = CellarSession::create(file, cellar, {tools_.clock, tools_.ids});
  if (!made) return lead_on(made.error(), parent);
  preferences_.set_units(report::units_of(cellar.units));
  remember(file);
  return show(std::move(*made), nullptr);
}

void Desk::remember(const std::filesystem::path& file) {
  tools_.settings.setValue(last_cellar_key, ui::q(file.string()));
  recent_.used(ui::q(file.string()));
}

bool Desk::open_demo(QWidget* parent) {
  auto folder = std::make_unique<QTemporaryDir>();
  const std::filesystem::path file = ui::s(folder->filePath(QStringLiteral("demo.cellar")));
  store::OpenOptions options;
  options.throwaway = true;
  options.quick_check_up_to = 0;  // nobody else had a hand in it
  auto made = make_demo(file, {tools_.clock, tools_.ids}, options);
  if (!made) return lead_on(made.error(), parent);
  if (!preferences_.units_chosen()) preferences_.set_units(units::DisplayUnits::british());
  return show(std::move(*made), std::move(folder));
}

bool Desk::show(std::unique_ptr<CellarSession> session,
                std::unique_ptr<QTemporaryDir> demo_folder) {
  auto made = std::make_unique<OpenCellar>();
  made->demo_folder = std::move(demo_folder);
  made->session = std::move(session);
  made->session->watch();
  made->window =
      std::make_unique<ui::MainWindow>(*made->session, preferences_, tools_.prompts, commands());
  made->window->offer_recent(
      {[this] { return recent_.list(); },
       [this](const QString& file, QWidget* parent) { open(ui::s(file), parent); }});
  made->window->installEventFilter(this);
  made->window->restoreGeometry(tools_.settings.value(QStringLiteral("window")).toByteArray());
  made->window->show();
  const CellarSession& opened = *made->session;
  ui::MainWindow& window = *made->window;
  const bool is_demo = made->demo_folder != nullptr;
  open_.push_back(std::move(made));
  if (opened.read_only()) {
    window.announce(ui::q(store::describe(opened.file().access())), false);
  }
  back_up_today(*open_.back());
  if (!is_demo) {
    QTimer::singleShot(tools_.check_after, &window,
                       [this, &window] { check_in_background(&window, false); });
  }
  return true;
}

void Desk::back_up_today(const OpenCellar& open) {
  if (open.demo_folder || open.session->read_only()) return;
  const cellar::Date today = open.session->calendar().date_of(open.session->now());
  if (const auto backup = store::daily_backup(open.session->file(), today); !backup) {
    open.window->announce(ui::q(store::describe(backup.error())), false);
  }
}

Desk::OpenCellar* Desk::open_cellar_of(const QWidget* window) const {
  const auto at = std::find_if(open_.begin(), open_.end(),
                               [&](const auto& open) { return open->window.get() == window; });
  return at == open_.end() ? nullptr : at->get();
}

void Desk::check_in_background(const QWidget* window, bool asked_for) {
  OpenCellar* cellar = open_cellar_of(window);
  if (!cellar) return;
  if (asked_for) cellar->window->announce(tr("Looking the file over. You can go on."), false);
  cellar->check.start(cellar->session->file().path(),
                      [this, window, asked_for](const store::Expected<void>& found) {
                        tell_of_check(window, found, asked_for);
                      });
}

// Waits for forms to be done with: a way out may close the window under them.
void Desk::tell_of_check(const QWidget* window, const store::Expected<void>& found,
                         bool asked_for) {
  OpenCellar* cellar = open_cellar_of(window);
  if (!cellar) return;
  if (QApplication::activeModalWidget() || QApplication::activePopupWidget()) {
    QTimer::singleShot(std::chrono::seconds(1), &cellar->check, [this, window, found, asked_for] {
      tell_of_check(window, found, asked_for);
    });
    return;
  }
  const std::filesystem::path file = cellar->session->file().path();
  if (found) {
    if (asked_for) cellar->window->announce(tr("The file is sound."), false);
    return;
  }
  const QStringList ways = {tr("Restore a backup…"), tr("Save what can be read…")};
  const bool damaged = found.error().fault == store::StoreFault::damaged;
  const int way =
      tools_.prompts.choose(cellar->window.get(), ui::q(store::describe(found.error())),
                            ui::q(found.error().detail), damaged ? ways : QStringList());
  if (way == 0) restore_backup_of(window);
  if (way == 1 && FileRescue(*this).recover(file, cellar->window.get())) close(window);
}

void Desk::restore_backup_of(const QWidget* window) {
  const OpenCellar* cellar = open_cellar_of(window);
  if (!cellar) return;
  const std::filesystem::path file = cellar->session->file().path();
  if (store::list_backups(file).empty()) {
    tools_.prompts.tell(cellar->window.get(), tr("There is no backup of this cellar yet."),
                        tr("One is made each day the cellar is opened."));
    return;
  }
  // For a moment no window is open; that must not end the program.
  const QEventLoopLocker stay;
  close(window);
  FileRescue(*this).restore(file, nullptr);
  open(file);
}

bool Desk::lead_on(const store::StoreError& error, QWidget* parent) {
  return FileRescue(*this).lead_on(error, parent);
}

ui::AppCommands Desk::commands() { return window_commands(*this); }

std::vector<ui::MainWindow*> Desk::windows() const {
  std::vector<ui::MainWindow*> all;
  all.reserve(open_.size());
  for (const auto& open : open_) all.push_back(open->window.get());
  return all;
}

CellarSession* Desk::session_of(const QWidget* window) const {
  const OpenCellar* cellar = open_cellar_of(window);
  return cellar ? cellar->session.get() : nullptr;
}

void Desk::close(const QWidget* window) {
  const auto at = std::find_if(open_.begin(), open_.end(),
                               [&](const auto& open) { return open->window.get() == window; });
  if (at == open_.end()) return;
  std::unique_ptr<OpenCellar> going = std::move(*at);
  open_.erase(at);
  going->window->hide();
  going->window.reset();
}

// A window that is closed takes its session along, once its own event is done.
bool Desk::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Close) {
    auto* window = qobject_cast<QWidget*>(watched);
    tools_.settings.setValue(QStringLiteral("window"), window->saveGeometry());
    QTimer::singleShot(0, this, [this, window] { close(window); });
  }
  return QObject::eventFilter(watched, event);
}

bool Desk::start() {
  const QString last = tools_.settings.value(last_cellar_key).toString();
  if (!last.isEmpty() && std::filesystem::exists(ui::s(last))) return open(ui::s(last));
  while (true) {
    ui::FirstStart first;
    if (first.exec() != QDialog::Accepted) return false;
    switch (first.choice()) {
      case ui::FirstStart::Choice::create:
        if (ask_new(nullptr)) return true;
        break;
      case ui::FirstStart::Choice::open:
        if (ask_open(nullptr)) return true;
        break;
      case ui::FirstStart::Choice::demo:
        return open_demo();
      case ui::FirstStart::Choice::none:
        return false;
    }
  }
}

bool Desk::open_or_create(const std::filesystem::path& file) {
  if (std::filesystem::exists(file)) return open(file);
  ui::NewCellar ask;
  if (ask.exec() != QDialog::Accepted || !ask.described()) return false;
  return create(file, present(ask.described()));
}

bool Desk::ask_new(QWidget* parent) {
  ui::NewCellar ask(parent);
  if (ask.exec() != QDialog::Accepted || !ask.described()) return false;
  const QString proposed = ui::q(present(ask.described()).name) + QStringLiteral(".cellar");
  const std::optional<QString> file = tools_.prompts.save_file(
      parent, tr("Where to keep the new cellar"), proposed, tr("Cellar (*.cellar)"));
  return file && create(ui::s(*file), present(ask.described()), parent);
}

bool Desk::ask_open(QWidget* parent) {
  const std::optional<QString> file = tools_.prompts.open_cellar_file(parent);
  return file && open(ui::s(*file), parent);
}

}  // namespace ullage::app
