// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Lines page: every line with its state, and the do-not-serve lock: set
// before cleaner goes in, ended only by a check.
#pragma once

#include <QWidget>
#include <memory>

#include "ui/context.h"

class QStackedWidget;
class QVBoxLayout;
class QScrollArea;

namespace ullage::ui {

class EmptyState;
class InkLabel;

class LinesPage : public QWidget {
  Q_OBJECT
 public:
  explicit LinesPage(const Context& context, QWidget* parent = nullptr);
  ~LinesPage() override;

  void refresh();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void build();
  void open(const QString& kind, const cellar::LineStatus& line);

  Context context_;
  std::unique_ptr<cellar::Subscription> listening_;
  InkLabel* summary_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  QScrollArea* scroll_ = nullptr;
};

}  // namespace ullage::ui
