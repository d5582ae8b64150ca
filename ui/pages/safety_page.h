// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Safety page: per place, what would be in the air if its bottles emptied
// into it, beside published limits; the order of venting and of cleaning agents.
// Cautions only: nothing here ever says that a room is safe.
#pragma once

#include <QWidget>
#include <memory>

#include "ui/context.h"

class QVBoxLayout;

namespace ullage::ui {

class KeptFresh;

class SafetyPage : public QWidget {
  Q_OBJECT
 public:
  explicit SafetyPage(const Context& context, QWidget* parent = nullptr);
  ~SafetyPage() override;

  void refresh();

 private:
  void build();
  QWidget* build_nothing();
  QWidget* build_orders();

  Context context_;
  std::unique_ptr<KeptFresh> fresh_;
  QVBoxLayout* cards_ = nullptr;
  QWidget* nothing_ = nullptr;
};

}  // namespace ullage::ui
