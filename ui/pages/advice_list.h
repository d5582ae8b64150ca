// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the cellar advises about a keg or a line, the most severe first: a banner each,
// what it stands on behind "Because", and the form that puts it right.
#pragma once

#include <QWidget>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/say.h"

class QVBoxLayout;

namespace ullage::ui {

class AdviceList final : public QWidget {
  Q_OBJECT
 public:
  explicit AdviceList(QWidget* parent = nullptr);
  void show_advice(const std::vector<cellar::Advice>&, const report::Speaker&);

 signals:
  void task_asked(const cellar::SuggestedTask&);

 private:
  QVBoxLayout* cards_;
};

}  // namespace ullage::ui
