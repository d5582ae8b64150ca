// SPDX-License-Identifier: GPL-3.0-or-later
//
// The selected line in full: its lock, what can be done now, advice, the pressure
// profile with the what-if controls under it, and figures that open their reasons.
#pragma once

#include <QScrollArea>
#include <memory>
#include <optional>

#include "ui/context.h"
#include "ui/models/line_words.h"

namespace ullage::ui {

class Banner;
class FactList;
class Figure;
class InkLabel;
class AdviceList;
class LineWhatIf;
class ProfileChart;

class LinePanel final : public QScrollArea {
  Q_OBJECT
 public:
  explicit LinePanel(Context& context, QWidget* parent = nullptr);

  void show_line(std::shared_ptr<const cellar::CellarStatus>, std::optional<cellar::LineId>);
  // The what-if as it stands, and what it leads to: recomputed as it moves.
  [[nodiscard]] cellar::WhatIf tried() const;
  void retry();
  // Opens the reasons of a number that the table shows.
  enum class Shown { pressure, glass, cleaning };
  void explain(Shown);

 private:
  QWidget* build();
  void build_pour(QWidget* parent);
  [[nodiscard]] const cellar::LineStatus* line() const;
  void show_head(const cellar::LineStatus&);
  void show_actions(const cellar::LineStatus&);
  void show_pour(const cellar::LineStatus&, bool another);
  void show_facts(const cellar::LineStatus&, std::shared_ptr<const report::LineSubject>);
  [[nodiscard]] LineFact cleaning_fact(const cellar::LineStatus&) const;
  void print_tag();
  void order_tabs();
  [[nodiscard]] std::vector<cellar::Advice> standing_advice(const cellar::LineStatus&) const;
  // What a change to be applied leaves out, and what it does beyond this line.
  [[nodiscard]] QStringList left_out(const std::vector<cellar::Payload>& entries) const;
  [[nodiscard]] QString fed_too() const;
  void apply();
  void open(const QString& kind);
  void open_task(const cellar::SuggestedTask&);

  Context& context_;
  std::shared_ptr<const cellar::CellarStatus> status_;
  std::optional<cellar::LineId> id_;
  QWidget* content_ = nullptr;
  InkLabel* nothing_ = nullptr;
  InkLabel* title_ = nullptr;
  InkLabel* subtitle_ = nullptr;
  Banner* lock_ = nullptr;
  QWidget* actions_ = nullptr;
  QString shown_actions_;
  QWidget* pour_ = nullptr;
  InkLabel* no_pour_ = nullptr;
  ProfileChart* chart_ = nullptr;
  LineWhatIf* what_if_ = nullptr;
  FactList* facts_ = nullptr;
  Figure* profile_title_ = nullptr;
  std::shared_ptr<const report::LineSubject> shown_;
  AdviceList* advice_ = nullptr;
};

}  // namespace ullage::ui
