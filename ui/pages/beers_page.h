// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Beers page: what to tap next, where each batch is and how much of it,
// what is cooling, how fresh what is on tap is, hops to take out, what was lost
// and what it cost, who has which keg; and the way to trace or recall a batch.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "core/cellar/beers_status.h"
#include "core/cellar/facade.h"
#include "ui/context.h"

class QScrollArea;
class QStackedWidget;

namespace ullage::ui {

class InkLabel;
class KeptFresh;
class ListedSection;

class BeersPage final : public QWidget {
  Q_OBJECT
 public:
  explicit BeersPage(const Context& context, QWidget* parent = nullptr);
  ~BeersPage() override;

  void refresh();

 private:
  void build();
  QWidget* build_sections();
  void trace(cellar::BatchId);
  void recall(cellar::BatchId);

  Context context_;
  std::unique_ptr<KeptFresh> fresh_;
  std::optional<cellar::BeersPast> past_;  // of the journal's last revision seen
  InkLabel* summary_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  ListedSection* tap_next_ = nullptr;
  ListedSection* now_ = nullptr;
  ListedSection* cooling_ = nullptr;
  ListedSection* clock_ = nullptr;
  ListedSection* hops_ = nullptr;
  ListedSection* wasted_ = nullptr;
  ListedSection* away_ = nullptr;
  ListedSection* gone_ = nullptr;
};

}  // namespace ullage::ui
