// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a computation answers: the main figure large, the others beneath, what
// it means, what to mind, and its chart. Every figure opens its reasons.
#pragma once

#include <QWidget>
#include <vector>

#include "core/report/slate/computation.h"

class QLabel;
class QVBoxLayout;

namespace ullage::ui {

class AnswerChart;
class Figure;
class InkLabel;

class SlateAnswer final : public QWidget {
  Q_OBJECT
 public:
  explicit SlateAnswer(QWidget* parent = nullptr);

  void show_answer(const report::slate::Computation&, const report::slate::Inputs&,
                   const report::slate::Answer&, const report::Speaker&);
  // No answer: why.
  void show_nothing(const QString& why);
  [[nodiscard]] QString main_text() const;

 private:
  void show_values(const report::slate::Computation&, const report::slate::Inputs&,
                   const report::slate::Answer&, const report::Speaker&);

  bool has_answer_ = false;
  InkLabel* nothing_;
  QWidget* content_;
  InkLabel* main_name_;
  Figure* main_;
  QVBoxLayout* others_;
  QVBoxLayout* sentences_;
  QVBoxLayout* cautions_;
  InkLabel* chart_title_;
  AnswerChart* chart_;
};

}  // namespace ullage::ui
