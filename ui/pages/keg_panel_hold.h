// SPDX-License-Identifier: GPL-3.0-or-later
//
// The chosen keg's hold test: the verdict, the readings against a tight keg, how
// much it may lose, and the next reading to take.
#pragma once

#include <QWidget>

#include "core/report/hold_report.h"
#include "ui/pages/panel_subject.h"

class QGridLayout;
class QPushButton;

namespace ullage::ui {

class Figure;
class HoldChart;
class InkLabel;
struct Context;

class KegPanelHold final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelHold(Context&, QWidget* parent = nullptr);
  // Hides itself where there is no test.
  void show_keg(const PanelSubject&);
  [[nodiscard]] HoldChart* chart() const { return chart_; }

 private:
  void show_figures(const std::vector<report::HoldFigure>&);
  Context& context_;
  InkLabel* verdict_;
  HoldChart* chart_;
  InkLabel* legend_;
  QGridLayout* grid_;
  std::vector<std::pair<InkLabel*, Figure*>> rows_;
  InkLabel* notes_;
  QPushButton* read_;
  std::optional<cellar::SuggestedTask> task_;
};

}  // namespace ullage::ui
