// SPDX-License-Identifier: GPL-3.0-or-later
//
// What to do about the chosen keg, worked out: too much CO2, sugar, purging; a
// card each, shown where the keg raises the question.
#pragma once

#include <QWidget>

#include "core/report/cards/keg_card.h"
#include "ui/pages/panel_subject.h"

class QComboBox;

namespace ullage::ui {

class KegPanelCard;
struct Context;

class KegPanelCards final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelCards(Context&, QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 private:
  void show_purge(const PanelSubject&);

  Context& context_;
  std::optional<cellar::KegId> keg_;
  KegPanelCard* rescue_;
  KegPanelCard* sugar_;
  KegPanelCard* purge_;
  QComboBox* purge_target_;
};

}  // namespace ullage::ui
