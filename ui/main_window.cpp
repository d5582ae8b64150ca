// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/main_window.h"

#include <QAbstractItemView>
#include <QAction>
#include <QDialog>
#include <QDir>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "core/cellar/gas_account.h"
#include "ui/commands/scan_catcher.h"
#include "ui/commands/task_palette.h"
#include "ui/dialogs/forms/task_forms.h"
#include "ui/dialogs/lock_guard.h"
#include "ui/dialogs/papers.h"
#include "ui/dialogs/round.h"
#include "ui/dialogs/scan_note.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/sheet_preview.h"
#include "ui/notice_strip.h"
#include "ui/pages/beers_page.h"
#include "ui/pages/cleaning_page.h"
#include "ui/pages/gas_page.h"
#include "ui/pages/kegs_page.h"
#include "ui/pages/lines_page.h"
#include "ui/pages/log_page.h"
#include "ui/pages/safety_page.h"
#include "ui/pages/slate_page.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/rail.h"
#include "ui/widgets/banner.h"
#include "ui/widgets/empty_state.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {
namespace {

constexpr int rail_folds_below = 1120;  // the table needs the room more
constexpr int minute_ms = 60 * 1000;
constexpr QSize at_first(1440, 860);

bool below_the_head(const QWidget& page, const QWidget* part) {
  for (; part && part != &page; part = part->parentWidget()) {
    if (qobject_cast<const QAbstractScrollArea*>(part)) return true;
    if (qobject_cast<const EmptyState*>(part)) return true;
  }
  return false;
}

// What people come to a page for: its list, else its first control below the head. No
// field to type in: letters are commands until somebody goes there.
QWidget* first_stop(QWidget& page) {
  QWidget* first = nullptr;
  for (QWidget* at = page.nextInFocusChain(); at != &page; at = at->nextInFocusChain()) {
    const bool tab = (at->focusPolicy() & Qt::TabFocus) == Qt::TabFocus && !at->focusProxy();
    if (!tab || !at->isVisible() || !at->isEnabled() || !page.isAncestorOf(at)) continue;
    if (qobject_cast<QAbstractItemView*>(at)) return at;
    if (!first && below_the_head(page, at) && !qobject_cast<QLineEdit*>(at)) first = at;
  }
  return first;
}

}  // namespace

MainWindow::MainWindow(cellar::Facade& cellar, Preferences& preferences, Prompts& prompts,
                       AppCommands app_commands, QWidget* parent)
    : QMainWindow(parent),
      context_{cellar, preferences, prompts, *this},
      app_commands_(std::move(app_commands)) {
  setObjectName(QStringLiteral("main_window"));
  setMinimumSize(800, 560);
  resize(at_first);
  // The offscreen platform has no real screen to keep within.
  if (QGuiApplication::platformName() != QLatin1String("offscreen")) {
    resize_within_screen(*this, at_first);
  }
  build();
  build_menus();
  listening_ = cellar.on_change([this](const cellar::Change& change) {
    refresh();
    if (change.from_elsewhere) announce(tr("Another window logged something."), false);
  });
  connect(&preferences, &Preferences::changed, this, &MainWindow::refresh);
  auto* clock = new QTimer(this);
  connect(clock, &QTimer::timeout, this, &MainWindow::refresh);
  clock->start(minute_ms);
  scanner_ = new ScanCatcher(*this);
  connect(scanner_, &ScanCatcher::scanned, this, &MainWindow::show_scanned);
  show_page(PageId::kegs);
  refresh();
}

MainWindow::~MainWindow() = default;

void MainWindow::build() {
  rail_ = new Rail(context_);
  rail_->add_page(PageId::kegs, tr("Kegs"), Icon::keg);
  rail_->add_page(PageId::lines, tr("Lines"), Icon::line);
  rail_->add_page(PageId::gas, tr("Gas"), Icon::gas);
  rail_->add_page(PageId::safety, tr("Safety"), Icon::safety);
  rail_->add_page(PageId::cleaning, tr("Cleaning"), Icon::cleaning);
  rail_->add_page(PageId::beers, tr("Beers"), Icon::beers);
  rail_->add_page(PageId::slate, tr("Slate"), Icon::slate);
  rail_->add_page(PageId::log, tr("Log"), Icon::log);
  connect(rail_, &Rail::chosen, this, &MainWindow::show_page);
  stack_ = new QStackedWidget;
  notice_ = new NoticeStrip;
  connect(notice_, &NoticeStrip::undo_asked, this, [this] { undo(false); });
  connect(notice_, &NoticeStrip::followed, this, [this] { show_page(called_to_); });
  read_only_ = new Banner(cellar::Severity::warning, tr("Read-only"),
                          tr("This cellar can be looked at but not written to."));
  read_only_->setVisible(context_.cellar.read_only());

  auto* right = new QVBoxLayout;
  right->setContentsMargins(0, 0, 0, 0);
  right->setSpacing(0);
  right->addWidget(read_only_);
  right->addWidget(stack_, 1);
  right->addWidget(notice_);
  auto* middle = new QWidget;
  auto* all = new QHBoxLayout(middle);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(rail_);
  all->addLayout(right, 1);
  setCentralWidget(middle);
}

void MainWindow::build_menus() {
  std::map<Menu, QMenu*> menus;
  for (const CommandSpec& spec : commands()) {
    const bool ours = *spec.task || spec.menu == Menu::view || is_paper(spec.command) ||
                      spec.command == Command::undo || spec.command == Command::redo ||
                      spec.command == Command::any_task || spec.command == Command::round ||
                      spec.menu == Menu::paper || spec.command == Command::quit;
    if (!ours && !app_commands_.contains(spec.command)) continue;
    QMenu*& menu = menus[spec.menu];
    if (!menu) menu = menuBar()->addMenu(title_of(spec.menu));
    if (spec.starts_group) menu->addSeparator();
    QAction* action = menu->addAction(text_of(spec));
    action->setShortcut(
        QKeySequence(QString::fromLatin1(spec.shortcut), QKeySequence::PortableText));
    action->setEnabled(!spec.writes || !context_.cellar.read_only());
    connect(action, &QAction::triggered, this, [this, command = spec.command] { run(command); });
    actions_[spec.command] = action;
  }
}

void MainWindow::offer_recent(RecentFiles files) {
  const auto open = actions_.find(Command::open_cellar);
  if (open == actions_.end() || recent_) return;
  auto* menu = qobject_cast<QMenu*>(open->second->parent());
  const QList<QAction*> all = menu->actions();
  recent_ = new QMenu(tr("Open re&cent"), menu);
  menu->insertMenu(all.value(all.indexOf(open->second) + 1), recent_);
  connect(menu, &QMenu::aboutToShow, this,
          [this, files = std::move(files)] { fill_recent(files); });
}

void MainWindow::fill_recent(const RecentFiles& files) {
  recent_->clear();
  int digit = 0;
  for (const QString& file : files.list()) {
    QString shown = QDir::toNativeSeparators(file);
    shown.replace(QLatin1Char('&'), QLatin1String("&&"));
    QAction* action = recent_->addAction(QStringLiteral("&%1  %2").arg(++digit).arg(shown));
    connect(action, &QAction::triggered, this,
            [this, open = files.open, file] { open(file, this); });
  }
  recent_->setEnabled(digit > 0);
}

void MainWindow::run(Command command) {
  const CommandSpec& spec = spec_of(command);
  if (*spec.task) return open_task({spec.task, {}, {}, {}});
  if (is_paper(command)) return open_paper(command, context_, this);
  switch (command) {
    case Command::undo:
      return undo(false);
    case Command::redo:
      return undo(true);
    case Command::status_sheet:
      return open_status_sheet();
    case Command::paper_cleaning_list:
      show_page(PageId::cleaning);
      if (!cleaning_->print_list()) announce(tr("Nothing is due to be cleaned."), false);
      return;
    case Command::round:
      RoundDialog(context_, this).exec();
      return;
    case Command::page_kegs:
      return show_page(PageId::kegs);
    case Command::page_lines:
      return show_page(PageId::lines);
    case Command::page_gas:
      return show_page(PageId::gas);
    case Command::page_safety:
      return show_page(PageId::safety);
    case Command::page_cleaning:
      return show_page(PageId::cleaning);
    case Command::page_beers:
      return show_page(PageId::beers);
    case Command::page_slate:
      return show_page(PageId::slate);
    case Command::page_log:
      return show_page(PageId::log);
    case Command::any_task:
      if (const auto task = TaskPalette::ask(context_, this)) open_task(*task);
      return;
    case Command::quit:
      close();
      return;
    default:
      break;
  }
  if (const auto at = app_commands_.find(command); at != app_commands_.end()) at->second(this);
}

void MainWindow::undo(bool again) {
  if (!(again ? may_redo(context_, this) : may_undo(context_, this))) return;
  const std::string by = s(context_.preferences.initials());
  const cellar::Outcome<cellar::ActId> outcome =
      again ? context_.cellar.redo(by) : context_.cellar.undo(by);
  refresh();
  if (outcome) {
    announce(again ? tr("Brought back.") : tr("Undone. The log keeps it, struck."), false);
  } else {
    announce(q(report::say(outcome.error().faults.front().why, context_.speaker())), false);
  }
}

void MainWindow::refresh() {
  const auto status = context_.cellar.status();
  const QString name = status->cellar ? q(status->cellar->name) : q(context_.cellar.file_name());
  setWindowTitle(tr("%1 – Ullage").arg(name));
  const auto in_use = std::count_if(status->kegs.begin(), status->kegs.end(),
                                    [](const cellar::KegStatus& k) { return k.record.in_use; });
  const auto locked = std::count_if(status->lines.begin(), status->lines.end(),
                                    [](const cellar::LineStatus& l) { return l.do_not_serve(); });
  rail_->set_badge(PageId::kegs, QString::number(in_use), false);
  rail_->set_badge(PageId::lines, locked > 0 ? tr("%1 locked").arg(locked) : QString(), locked > 0);
  const bool losing =
      std::any_of(status->bottles.begin(), status->bottles.end(),
                  [](const cellar::BottleStatus& b) { return b.account && b.account->alarm; });
  rail_->set_badge(PageId::gas, losing ? tr("loss") : QString(), losing);
  rail_->refresh();
  if (actions_.contains(Command::undo)) {
    actions_[Command::undo]->setEnabled(context_.cellar.undo_target().has_value());
    actions_[Command::redo]->setEnabled(context_.cellar.redo_target().has_value());
  }
}

// Pages are made when first shown: the window is usable sooner.
QWidget* MainWindow::page_widget(PageId page) {
  switch (page) {
    case PageId::kegs:
      if (!kegs_) {
        stack_->addWidget(kegs_ = new KegsPage(context_));
        connect(kegs_, &KegsPage::work_out_wanted, this, &MainWindow::work_out);
      }
      return kegs_;
    case PageId::lines:
      if (!lines_) stack_->addWidget(lines_ = new LinesPage(context_));
      return lines_;
    case PageId::gas:
      if (!gas_) stack_->addWidget(gas_ = new GasPage(context_));
      return gas_;
    case PageId::safety:
      if (!safety_) stack_->addWidget(safety_ = new SafetyPage(context_));
      return safety_;
    case PageId::cleaning:
      if (!cleaning_) stack_->addWidget(cleaning_ = new CleaningPage(context_));
      return cleaning_;
    case PageId::beers:
      if (!beers_) stack_->addWidget(beers_ = new BeersPage(context_));
      return beers_;
    case PageId::slate:
      if (!slate_) stack_->addWidget(slate_ = new SlatePage(context_));
      return slate_;
    case PageId::log:
      if (!log_) stack_->addWidget(log_ = new LogPage(context_));
      return log_;
  }
  return nullptr;
}

void MainWindow::show_page(PageId page) {
  page_ = page;
  QWidget* shown = page_widget(page);
  const QWidget* before = focusWidget();
  const bool from_page = !before || stack_->isAncestorOf(before);
  const bool seen = shown->focusWidget();  // goes on where it was left
  stack_->setCurrentWidget(shown);
  rail_->set_current(page);
  // By itself the keyboard would come to the first button of the page's head.
  const auto* search = qobject_cast<QLineEdit*>(focusWidget());
  if (!from_page || seen || (search && !below_the_head(*shown, search))) return;
  if (QWidget* stop = first_stop(*shown)) stop->setFocus();
}

void MainWindow::show_keg(cellar::KegId keg) {
  show_page(PageId::kegs);
  kegs_->show_keg(keg);
}

void MainWindow::work_out(const std::string& computation, std::optional<cellar::KegId> keg) {
  show_page(PageId::slate);
  slate_->work_out(computation, keg);
}

void MainWindow::show_entries_of(cellar::SubjectRef subject) {
  show_page(PageId::log);
  log_->show_entries_of(subject);
}

// In a form nothing is opened: what was begun there comes first.
void MainWindow::show_scanned(const QString& tag, QWidget* in) {
  if (auto* round = qobject_cast<RoundDialog*>(in)) return round->show_scanned(tag);
  if (in != this && in != offer_) return tell_scanned(tag, *in);
  const auto status = context_.cellar.status();
  const cellar::KegStatus* keg = status->keg_by_tag(s(tag));
  if (!keg) {
    announce(tr("No keg %1 is registered in this cellar.").arg(tag), false);
    return;
  }
  show_keg(keg->record.keg);
  if (!offer_) offer_ = new ScanOffer(context_, this);
  offer_->show_keg(keg->record.keg);
  offer_->open();
}

void MainWindow::open_status_sheet() {
  SheetPreview preview(context_, this);
  preview.exec();
}

void MainWindow::announce(const QString& sentence, bool with_undo) {
  notice_->say(sentence, with_undo);
}

void MainWindow::call_to(PageId page, const QString& sentence) {
  called_to_ = page;
  notice_->call(sentence);
}

QString MainWindow::notice() const { return notice_->sentence(); }

void MainWindow::open_task(const cellar::SuggestedTask& task) {
  if (task.kind.empty()) {
    std::optional<cellar::SuggestedTask> chosen = TaskPalette::ask(context_, this);
    if (!chosen) return;
    if (!chosen->about) chosen->about = task.about;
    open_task(*chosen);
    return;
  }
  // A form may itself ask for another (a new batch from a transfer): the one in
  // front is its parent.
  QWidget* parent = this;
  for (QObject* child : children()) {
    auto* dialog = qobject_cast<QDialog*>(child);
    if (dialog && dialog->isVisible()) parent = dialog;
  }
  const std::unique_ptr<QDialog> dialog(make_task_dialog(context_, task, parent));
  if (dialog) dialog->exec();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  rail_->set_folded(event->size().width() < rail_folds_below);
}

}  // namespace ullage::ui
