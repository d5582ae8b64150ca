// SPDX-License-Identifier: GPL-3.0-or-later
//
// The desk: opens cellars and keeps their windows. It puts session, preferences,
// prompts and window together, and leads on when a file can't be opened.
#pragma once

#include <QObject>
#include <QTemporaryDir>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

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

 private:
  struct OpenCellar {
    std::unique_ptr<QTemporaryDir> demo_folder;
    std::unique_ptr<CellarSession> session;
    std::unique_ptr<ui::MainWindow> window;
  };
  bool show(std::unique_ptr<CellarSession> session, std::unique_ptr<QTemporaryDir> demo_folder);
  bool lead_on(const store::StoreError& error, QWidget* parent);
  [[nodiscard]] ui::AppCommands commands();
  bool eventFilter(QObject* watched, QEvent* event) override;

  Tools tools_;
  ui::Preferences preferences_;
  ui::ThemeSwitch theme_;
  std::vector<std::unique_ptr<OpenCellar>> open_;
};

}  // namespace ullage::app
