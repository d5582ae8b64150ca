// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Lines page: a row for each line with what it serves, its pressure against
// what it should be, how it pours, when it was cleaned and its state in words;
// the chosen line in full beside the table, or beneath it where the window is
// narrow.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "ui/context.h"

class QSplitter;
class QStackedWidget;
class QTableWidget;

namespace ullage::ui {

class InkLabel;
class KeptFresh;
class LinePanel;

class LinesPage : public QWidget {
  Q_OBJECT
 public:
  explicit LinesPage(Context& context, QWidget* parent = nullptr);
  ~LinesPage() override;

  void refresh();
  void show_line(cellar::LineId);
  [[nodiscard]] LinePanel* panel() const { return panel_; }

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void build();
  QTableWidget* build_table();
  void fill(int row, const cellar::LineStatus&, const cellar::CellarStatus&);
  void choose(int row);
  void add_line();
  void fit_rows();

  Context& context_;
  std::unique_ptr<KeptFresh> fresh_;
  std::vector<cellar::LineId> shown_;
  std::optional<cellar::LineId> chosen_;
  bool refreshing_ = false;
  InkLabel* summary_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  QSplitter* splitter_ = nullptr;
  QTableWidget* table_ = nullptr;
  LinePanel* panel_ = nullptr;
};

}  // namespace ullage::ui
