// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Kegs page: every keg in a table, the chosen one beside it. Where the
// window is narrow the panel lies over the table and is opened with Enter, a
// click or Ctrl+I.
#pragma once

#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>
#include <string>

#include "core/cellar/facade.h"
#include "ui/models/keg_table_model.h"

class QSplitter;
class QStackedWidget;

namespace ullage::ui {

class EmptyState;
class InkLabel;
class KegPanel;
class KegsBar;
class KegTableView;
class LifeLegend;
struct Context;

class KegsPage final : public QWidget {
  Q_OBJECT
 public:
  explicit KegsPage(Context&, QWidget* parent = nullptr);
  ~KegsPage() override;

  // Chooses the keg, taking filters away that would hide it, and shows its panel.
  void show_keg(cellar::KegId);

 signals:
  // That computation (core/report/slate) with the keg's figures.
  void work_out_wanted(const std::string& computation, cellar::KegId keg);

 protected:
  void showEvent(QShowEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  bool eventFilter(QObject*, QEvent*) override;

 private:
  void build();
  QWidget* build_table_side();
  void connect_bar();
  void connect_table();
  void set_order(KegOrder);
  void restore_view();
  void refresh();
  void fill();
  void refresh_words();
  void after_listing();
  void show_chosen();
  void set_panel_shown(bool);
  void lay_out_panel();
  void start_search(const QString& text);
  [[nodiscard]] bool narrow() const;

  Context& context_;
  std::unique_ptr<cellar::Subscription> subscription_;
  std::shared_ptr<const cellar::CellarStatus> status_;
  KegTableModel* model_ = nullptr;
  KegsBar* bar_ = nullptr;
  QSplitter* splitter_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  KegTableView* table_ = nullptr;
  EmptyState* no_kegs_ = nullptr;
  EmptyState* no_match_ = nullptr;
  LifeLegend* legend_ = nullptr;
  InkLabel* shown_count_ = nullptr;
  QWidget* foot_ = nullptr;
  KegPanel* panel_ = nullptr;
  QTimer minute_;
  std::optional<cellar::KegId> wanted_;  // stays chosen through filters that hide it
  bool listing_ = false;                 // rows are being replaced
  bool panel_shown_wide_ = true;
  bool panel_shown_narrow_ = false;
  bool was_narrow_ = false;
  bool stale_ = true;
};

}  // namespace ullage::ui
