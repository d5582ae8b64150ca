// SPDX-License-Identifier: GPL-3.0-or-later
//
// The window of one cellar: the rail, the pages, the menus, the notice strip. It
// owns these and nothing else; what a command does to files is the application's
// (AppCommands), what a page shows is the page's.
#pragma once

#include <QMainWindow>
#include <functional>
#include <map>
#include <memory>

#include "ui/commands/commands.h"
#include "ui/context.h"

class QMenu;
class QStackedWidget;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class BeersPage;
class CleaningPage;
class GasPage;
class KegsPage;
class LinesPage;
class LogPage;
class NoticeStrip;
class Rail;
class SafetyPage;
class ScanCatcher;
class ScanOffer;
class SlatePage;

// Commands that reach beyond the open cellar: files, other windows, the list of
// shortcuts. Given by the application; a command without one is not offered.
using AppCommands = std::map<Command, std::function<void(QWidget* window)>>;

// The cellars used lately, asked for each time the menu opens.
struct RecentFiles {
  std::function<QStringList()> list;  // paths, newest first
  std::function<void(const QString& file, QWidget* window)> open;
};

class MainWindow : public QMainWindow, public Navigator {
  Q_OBJECT
 public:
  MainWindow(cellar::Facade& cellar, Preferences& preferences, Prompts& prompts,
             AppCommands app_commands, QWidget* parent = nullptr);
  ~MainWindow() override;

  [[nodiscard]] Context& context() { return context_; }
  // Adds "Open recent" below "Open…".
  void offer_recent(RecentFiles);
  void run(Command command);
  [[nodiscard]] QString notice() const;
  [[nodiscard]] PageId page() const { return page_; }

  // Navigator
  void open_task(const cellar::SuggestedTask& task) override;
  void show_page(PageId page) override;
  void show_keg(cellar::KegId keg) override;
  void show_entries_of(cellar::SubjectRef subject) override;
  void open_status_sheet() override;
  void announce(const QString& sentence, bool with_undo) override;
  void call_to(PageId page, const QString& sentence) override;

  // The computation of that key (core/report/slate) on the Slate page, with the
  // keg's figures in its fields where one is named.
  void work_out(const std::string& computation, std::optional<cellar::KegId> keg);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build();
  void build_menus();
  void fill_recent(const RecentFiles&);
  void refresh();
  void undo(bool again);
  void show_scanned(const QString& tag, QWidget* in);
  [[nodiscard]] QWidget* page_widget(PageId page);

  Context context_;
  AppCommands app_commands_;
  std::unique_ptr<cellar::Subscription> listening_;
  std::map<Command, QAction*> actions_;
  QMenu* recent_ = nullptr;
  PageId page_ = PageId::kegs;
  Rail* rail_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  NoticeStrip* notice_ = nullptr;
  PageId called_to_ = PageId::kegs;
  Banner* read_only_ = nullptr;
  KegsPage* kegs_ = nullptr;
  LinesPage* lines_ = nullptr;
  BeersPage* beers_ = nullptr;
  SlatePage* slate_ = nullptr;
  GasPage* gas_ = nullptr;
  SafetyPage* safety_ = nullptr;
  CleaningPage* cleaning_ = nullptr;
  LogPage* log_ = nullptr;
  ScanCatcher* scanner_ = nullptr;
  ScanOffer* offer_ = nullptr;
};

}  // namespace ullage::ui
