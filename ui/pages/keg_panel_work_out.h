// SPDX-License-Identifier: GPL-3.0-or-later
//
// "Work it out": the computations that fit the chosen keg, opened on the slate
// with its figures.
#pragma once

#include <QStringList>
#include <QWidget>

#include "ui/pages/panel_subject.h"

namespace ullage::ui {

class FlowLayout;
struct Context;

class KegPanelWorkOut final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelWorkOut(Context&, QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);

 private:
  Context& context_;
  FlowLayout* buttons_;
  QStringList shown_;
  std::optional<cellar::KegId> keg_;
};

}  // namespace ullage::ui
