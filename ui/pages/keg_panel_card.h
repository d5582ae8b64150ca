// SPDX-License-Identifier: GPL-3.0-or-later
//
// One card of the keg panel (core/report/cards): its verdict, its numbers, each
// with its reasons and perhaps an act, what to mind, a chart, and buttons. Shown
// anew it keeps its widgets, so that the keyboard stays where it is.
#pragma once

#include <QWidget>

#include "core/report/cards/keg_card.h"

class QVBoxLayout;

namespace ullage::ui {

class AnswerChart;
class FlowLayout;
class InkLabel;
struct Context;

class KegPanelCard final : public QWidget {
  Q_OBJECT
 public:
  // `name` is the object name; its parts are called after it: "rescue_verdict".
  KegPanelCard(Context&, const QString& name, const QString& title, QWidget* parent = nullptr);

  // Hides itself where there is none.
  void show_card(const std::optional<report::KegCard>&, const units::Printer&);
  // Between the title and the verdict.
  void add_choice(QWidget*);

 private:
  void show_figures(const report::KegCard&);
  void show_texts(const report::KegCard&);
  void show_acts(const report::KegCard&);

  Context& context_;
  QString name_;
  QVBoxLayout* column_;
  InkLabel* verdict_;
  QWidget* chart_part_;
  InkLabel* chart_title_;
  AnswerChart* chart_;
  QVBoxLayout* figures_;
  QVBoxLayout* notes_;
  QVBoxLayout* cautions_;
  QWidget* acts_part_;
  FlowLayout* acts_;
  QStringList act_labels_;
  std::vector<cellar::SuggestedTask> tasks_;
};

}  // namespace ullage::ui
