// SPDX-License-Identifier: GPL-3.0-or-later
//
// The chosen keg in full, beside the table: what it is, whether it can be used
// and why, its carbonation, what the cellar advises, what is known, what was
// logged. Shown anew without losing scroll or keyboard focus.
#pragma once

#include <QScrollArea>
#include <optional>
#include <string>

#include "core/cellar/facade.h"
#include "ui/pages/panel_subject.h"

namespace ullage::ui {

class CarbonationChart;
class Figure;
class InkLabel;
class KegFacts;
class AdviceList;
class KegPanelCard;
class KegPanelCards;
class KegPanelEntries;
class KegPanelHead;
class KegPanelHold;
class KegPanelReadiness;
class KegPanelWorkOut;
class KegPreparation;
struct Context;

class KegPanel final : public QScrollArea {
  Q_OBJECT
 public:
  explicit KegPanel(Context&, QWidget* parent = nullptr);

  void show_keg(const cellar::CellarStatus&, std::optional<cellar::KegId>);
  // With a way back to the list, when the panel lies over it.
  void set_closable(bool);

 signals:
  void close_wanted();
  // That computation (core/report/slate) with the keg's figures.
  void work_out_wanted(const std::string& computation, cellar::KegId keg);

 protected:
  void paintEvent(QPaintEvent*) override;
  void keyPressEvent(QKeyEvent*) override;

 private:
  QWidget* build();
  void show_carbonation(const PanelSubject&);

  Context& context_;
  std::optional<cellar::KegId> keg_;
  QWidget* content_ = nullptr;
  bool shows_nothing_ = false;
  InkLabel* nothing_ = nullptr;
  KegPanelHead* head_ = nullptr;
  KegPanelReadiness* readiness_ = nullptr;
  QWidget* carbonation_ = nullptr;
  InkLabel* carbonation_title_ = nullptr;
  CarbonationChart* chart_ = nullptr;
  Figure* carbonation_words_ = nullptr;
  KegPanelCard* drift_ = nullptr;
  AdviceList* advice_ = nullptr;
  KegPanelCards* cards_ = nullptr;
  KegPanelHold* hold_ = nullptr;
  QWidget* work_out_part_ = nullptr;
  KegPanelWorkOut* work_out_ = nullptr;
  KegFacts* facts_ = nullptr;
  QWidget* preparation_part_ = nullptr;
  KegPreparation* preparation_ = nullptr;
  KegPanelEntries* entries_ = nullptr;
};

}  // namespace ullage::ui
