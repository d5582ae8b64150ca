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
  QWidget* content_;
  bool shows_nothing_ = false;
  InkLabel* nothing_;
  KegPanelHead* head_;
  KegPanelReadiness* readiness_;
  QWidget* carbonation_;
  InkLabel* carbonation_title_;
  CarbonationChart* chart_;
  Figure* carbonation_words_;
  KegPanelCard* drift_;
  AdviceList* advice_;
  KegPanelCards* cards_;
  KegPanelHold* hold_;
  QWidget* work_out_part_;
  KegPanelWorkOut* work_out_;
  KegFacts* facts_;
  QWidget* preparation_part_;
  KegPreparation* preparation_;
  KegPanelEntries* entries_;
};

}  // namespace ullage::ui
