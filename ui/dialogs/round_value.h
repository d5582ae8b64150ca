// SPDX-License-Identifier: GPL-3.0-or-later
//
// One value of a round: what it is, what it read last, a large field with a
// stepper at each side, and a word at once when it can't be or looks odd.
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "core/cellar/round.h"
#include "ui/context.h"

namespace ullage::ui {

class InkLabel;
class QuantityEdit;

class RoundValueEdit final : public QWidget {
  Q_OBJECT
 public:
  RoundValueEdit(const Context&, const cellar::RoundQuestion&, int side, QWidget* parent = nullptr);

  [[nodiscard]] std::optional<cellar::RoundValue> value() const;
  [[nodiscard]] bool is_wrong() const;  // can't be read, or can't be
  [[nodiscard]] bool is_empty() const;
  [[nodiscard]] bool has_keyboard() const;
  void take_keyboard();
  void type(const QString& character);
  void take_back();
  void step(int steps);
  void refuse(const QString& sentence);

 signals:
  void got_keyboard();

 protected:
  bool eventFilter(QObject*, QEvent*) override;

 private:
  void build(int side);
  void make_edit();
  void judge();
  [[nodiscard]] QString last_words() const;

  Context context_;
  cellar::RoundQuestion question_;
  QuantityEdit* edit_ = nullptr;
  InkLabel* doubt_ = nullptr;
  std::function<std::optional<cellar::RoundValue>()> read_;
  std::function<void(const cellar::RoundValue&)> write_;
};

[[nodiscard]] QString say_ask(cellar::RoundAsk);

}  // namespace ullage::ui
