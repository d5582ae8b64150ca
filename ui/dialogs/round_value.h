// SPDX-License-Identifier: GPL-3.0-or-later
//
// One value of a round: what it is, what it read last and within what, a large
// field with a stepper at each side, the instrument it is read on (a tap takes the
// next of those that fit), and a word at once when it can't be or looks odd.
#pragma once

#include <QElapsedTimer>
#include <QWidget>
#include <functional>
#include <optional>

#include "core/cellar/round.h"
#include "ui/context.h"

class QPushButton;

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
  [[nodiscard]] bool may_be_below_zero() const;
  void change_sign();
  // A pour has a stopwatch: pressed it starts, pressed again it fills in the seconds.
  [[nodiscard]] bool has_watch() const { return watch_ != nullptr; }
  [[nodiscard]] bool is_timing() const { return timed_.isValid(); }
  void press_watch();
  void step(int steps);
  // The next instrument that fits, and after the last none that is named.
  void take_next_instrument();
  [[nodiscard]] std::optional<cellar::InstrumentId> instrument() const {
    return question_.instrument;
  }

 signals:
  void got_keyboard();
  void instrument_taken();

 protected:
  bool eventFilter(QObject*, QEvent*) override;

 private:
  void build(int side);
  void make_edit();
  void judge();
  [[nodiscard]] QPushButton* instrument_button(int side);
  [[nodiscard]] QPushButton* watch_button(int side);
  void show_watch();
  void show_instrument();
  [[nodiscard]] QString title() const;
  [[nodiscard]] QString last_words() const;

  Context context_;
  cellar::RoundQuestion question_;
  QuantityEdit* edit_ = nullptr;
  QPushButton* instrument_ = nullptr;
  QPushButton* watch_ = nullptr;
  QElapsedTimer timed_;  // valid while it runs
  InkLabel* doubt_ = nullptr;
  std::function<std::optional<cellar::RoundValue>()> read_;
  std::function<void(const cellar::RoundValue&)> write_;
};

[[nodiscard]] QString say_ask(cellar::RoundAsk);

}  // namespace ullage::ui
