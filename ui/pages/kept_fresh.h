// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeps a page right: after an act, a change of the settings and every minute (ages and due
// dates move with the clock). While nobody looks the page only grows stale, and is put
// right when it is shown.
#pragma once

#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>

#include "core/cellar/facade.h"

class QWidget;

namespace ullage::ui {

struct Context;

class KeptFresh final : public QObject {
  Q_OBJECT
 public:
  KeptFresh(QWidget& page, const Context& context, std::function<void()> refresh);
  ~KeptFresh() override;

  // Puts the page right although it may not be seen, for who asks it something.
  void now();

 protected:
  bool eventFilter(QObject* page, QEvent* event) override;

 private:
  void grow_stale();

  QWidget& page_;
  std::function<void()> refresh_;
  QTimer minute_;
  bool stale_ = false;
  std::unique_ptr<cellar::Subscription> listening_;
};

}  // namespace ullage::ui
