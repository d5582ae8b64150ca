// SPDX-License-Identifier: GPL-3.0-or-later
//
// One gas supply on the Gas page. Shown anew once a minute without losing the
// keyboard: what it is made of stays, only the words change.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "core/cellar/gas_account.h"
#include "ui/context.h"

class QGridLayout;
class QHBoxLayout;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class Card;
class FactList;
class Figure;
class GasChart;
class GasDrawing;
class InkLabel;
class KegsToFillPart;
class TaskList;
struct ListedFact;

class GasSupplyCard : public QWidget {
  Q_OBJECT
 public:
  explicit GasSupplyCard(const Context& context, QWidget* parent = nullptr);

  void show_account(std::shared_ptr<const cellar::GasAccount>);

 private:
  QWidget* build_chart();
  void show_loss(const report::Speaker&);
  void show_notices(const report::Speaker&);
  void show_facts(const report::Speaker&);
  void show_bottle_facts(const report::Speaker&, std::vector<ListedFact>&) const;
  void show_hunt(const report::Speaker&);

  Context context_;
  std::shared_ptr<const cellar::GasAccount> account_;
  InkLabel* name_;
  InkLabel* gas_;
  Banner* loss_;
  QVBoxLayout* notices_ = nullptr;
  GasDrawing* drawing_;
  QWidget* chart_part_ = nullptr;
  GasChart* chart_ = nullptr;
  InkLabel* chart_title_ = nullptr;
  InkLabel* chart_words_ = nullptr;
  FactList* facts_;
  KegsToFillPart* to_fill_ = nullptr;
  QWidget* hunt_;
  TaskList* suspects_;
  Figure* isolation_title_;
  TaskList* isolation_;
  QVBoxLayout* tasks_ = nullptr;  // one row for each bottle
};

}  // namespace ullage::ui
