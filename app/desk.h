// SPDX-License-Identifier: GPL-3.0-or-later
//
// The desk: opens cellars and keeps their windows. It puts session, preferences,
// prompts and window together, and leads on when a file can't be opened.
#pragma once

#include <QObject>
#include <QTemporaryDir>
#include <QTimer>
#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/background_check.h"
#include "app/recent_cellars.h"
#include "app/session.h"
#include "ui/main_window.h"
#include "ui/preferences.h"
#include "ui/prompts.h"
#include "ui/theme/theme_switch.h"

class QSettings;

namespace ullage::app {

class Desk : public QObject {
  Q_OBJECT
 public:
  struct Tools {
    const cellar::Clock& clock;
    cellar::IdSource& ids;
    QSettings& settings;
    ui::Prompts& prompts;
    // A file is looked over in the background once its window has settled.
    std::chrono::milliseconds check_after{3000};
    // How often it is asked whether the day's backup is still to be made.
    std::chrono::milliseconds between_backups{std::chrono::hours(1)};
  };
  explicit Desk(Tools tools, QObject* parent = nullptr);
  ~Desk() override;

  // Each shows a window when it comes to one; false when the person gave up.
  bool open(const std::filesystem::path& file, QWidget* parent = nullptr,
            const store::OpenOptions& options = {});
  bool create(const std::filesystem::path& file, const cellar::CellarDescribed& cellar,
              QWidget* parent = nullptr);
  bool open_demo(QWidget* parent = nullptr);
  // The cellar used last; else the first-start window and what is chosen there.
  bool start();
  // Opens the file, or offers to make it when there is none.
  bool open_or_create(const std::filesystem::path& file);

  // Asks which; false when nothing was opened.
  bool ask_new(QWidget* parent);
  bool ask_open(QWidget* parent);

  [[nodiscard]] ui::Preferences& preferences() { return preferences_; }
  [[nodiscard]] Tools& tools() { return tools_; }
  [[nodiscard]] std::vector<ui::MainWindow*> windows() const;
  [[nodiscard]] CellarSession* session_of(const QWidget* window) const;
  // Closes the window and its session, so that the file can be replaced.
  void close(const QWidget* window);
  // Today where the machine stands: for naming backups of a file not yet open.
  [[nodiscard]] store::Moment moment() const;
  // Looks over the file of that window without holding it up. What is damaged is
  // told with the ways out; a sound one only when it was asked for.
  void check_in_background(const QWidget* window, bool asked_for);
  // Closes the window, lets a backup be chosen for its file and opens that again.
  void restore_backup_of(const QWidget* window);

 private:
  struct OpenCellar {
    std::unique_ptr<QTemporaryDir> demo_folder;
    std::unique_ptr<CellarSession> session;
    std::unique_ptr<ui::MainWindow> window;
    BackgroundCheck check;
  };
  bool show(std::unique_ptr<CellarSession> session, std::unique_ptr<QTemporaryDir> demo_folder);
  bool lead_on(const store::StoreError& error, QWidget* parent);
  [[nodiscard]] ui::AppCommands commands();
  [[nodiscard]] OpenCellar* open_cellar_of(const QWidget* window) const;
  void tell_of_check(const QWidget* window, const store::Expected<void>& found, bool asked_for);
  void remember(const std::filesystem::path& file);
  // Unless it was made already, or the cellar needs none.
  static void back_up_today(const OpenCellar& open);
  bool eventFilter(QObject* watched, QEvent* event) override;

  Tools tools_;
  ui::Preferences preferences_;
  ui::ThemeSwitch theme_;
  RecentCellars recent_;
  std::vector<std::unique_ptr<OpenCellar>> open_;
  QTimer days_;
};

}  // namespace ullage::app
