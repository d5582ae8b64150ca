// SPDX-License-Identifier: GPL-3.0-or-later
//
// The top of the keg panel: which keg, what is in it, what forbids serving it,
// and buttons for what is usually done next.
#pragma once

#include <QStringList>
#include <QWidget>

#include "ui/pages/panel_subject.h"

class QPushButton;
class QToolButton;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class FlowLayout;
class InkLabel;
struct Context;

class KegPanelHead final : public QWidget {
  Q_OBJECT
 public:
  explicit KegPanelHead(Context&, QWidget* parent = nullptr);
  void show_keg(const PanelSubject&);
  void set_closable(bool);

 signals:
  void close_wanted();

 protected:
  void changeEvent(QEvent*) override;

 private:
  void show_banners(const PanelSubject&);
  void show_tasks(const PanelSubject&);

  Context& context_;
  InkLabel* where_;
  InkLabel* contents_;
  InkLabel* batch_;
  QToolButton* close_ = nullptr;
  QVBoxLayout* banners_;
  FlowLayout* tasks_;
  QStringList task_labels_;
  std::vector<cellar::SuggestedTask> task_kinds_;
};

}  // namespace ullage::ui
