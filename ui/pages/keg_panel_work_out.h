// SPDX-License-Identifier: GPL-3.0-or-later
//
// "Work it out": the computations that fit the chosen keg. It says which one is
// wanted, about which keg; the window opens it on the slate with its figures.
#pragma once

#include <QStringList>
#include <QWidget>
#include <string>

#include "ui/pages/panel_subject.h"

namespace ullage::ui {

class FlowLayout;
class KegPanelWorkOut final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelWorkOut(QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 signals:
  void wanted(const std::string& computation, cellar::KegId keg);

 private:
  FlowLayout* buttons_;
  QStringList shown_;
  std::optional<cellar::KegId> keg_;
};

}  // namespace ullage::ui
