// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Gas page: every supply (a bottle, or the bottles of a manifold) with what
// it feeds, weighings against expected use, what is lost, where to look first,
// how long it lasts. Supplies with a loss stand first.
#pragma once

#include <QWidget>
#include <memory>

#include "ui/context.h"

class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace ullage::cellar {
struct LooseGas;
}

namespace ullage::ui {

class Banner;
class InkLabel;
class KeptFresh;

class GasPage : public QWidget {
  Q_OBJECT
 public:
  explicit GasPage(const Context& context, QWidget* parent = nullptr);
  ~GasPage() override;

  void refresh();

 private:
  void build();
  void show_loose(const cellar::LooseGas&);

  Context context_;
  std::unique_ptr<KeptFresh> fresh_;
  InkLabel* summary_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  Banner* loose_ = nullptr;
  QVBoxLayout* cards_ = nullptr;
};

}  // namespace ullage::ui
