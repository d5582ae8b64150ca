// SPDX-License-Identifier: GPL-3.0-or-later
//
// The round: one large view for each place, keg, gas bottle and tap, in walking
// order. Number pad and steppers for fingers, Enter, Page Up, Page Down, F2, F3 and
// Ctrl+Z for a keyboard. What is skipped is asked again at the end; closing it at any
// time keeps the place, and the next time it goes on there. Each station is logged as
// one act when it is left; come back to one, and what is typed corrects it.
//
// Everything is read at one moment, "now" unless another is typed: so paper from the
// morning is typed in the evening in the same order and has the morning's time.
#pragma once

#include <QDialog>
#include <vector>

#include "ui/dialogs/round_walk.h"

class QLayout;
class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class InkLabel;
class NumberPad;
class RoundValueEdit;
class TextEdit;
class WhenEdit;

class RoundDialog final : public QDialog {
  Q_OBJECT
 public:
  explicit RoundDialog(const Context& context, QWidget* parent = nullptr);

  // Logs what is typed, if anything, and goes on; false when it was refused.
  bool log_and_go_on();
  void skip();
  void back();
  void take_back();  // the last station that was logged
  // A keg's tag was scanned: to its station, unless something is typed here.
  void show_scanned(const QString& tag);
  [[nodiscard]] QString station_name() const;
  [[nodiscard]] bool at_end() const { return walk_.at_end(); }

 protected:
  bool eventFilter(QObject*, QEvent*) override;
  void keyPressEvent(QKeyEvent*) override;

 private:
  void build();
  QLayout* build_head(int side);
  QWidget* build_values();
  QWidget* build_foot(int side);
  void connect_pad();
  void show_station();
  void show_values(const cellar::RoundStation&);
  void clear_values();
  void make_remark();
  void show_end();
  [[nodiscard]] std::optional<RoundRead> read();  // nullopt: something is still to be put right
  [[nodiscard]] bool anything_typed() const;
  void tell(cellar::Severity, const QString& headline, const QString& detail = {});
  void tell_refusal(const QString& headline, const cellar::Refusal&);
  [[nodiscard]] RoundValueEdit* active() const;
  void take_active(RoundValueEdit&);

  Context context_;
  RoundWalk walk_;
  std::vector<RoundValueEdit*> values_;
  RoundValueEdit* active_ = nullptr;
  InkLabel* progress_ = nullptr;
  InkLabel* name_ = nullptr;
  InkLabel* about_ = nullptr;
  WhenEdit* when_ = nullptr;
  QVBoxLayout* value_column_ = nullptr;
  TextEdit* remark_ = nullptr;
  NumberPad* pad_ = nullptr;
  Banner* notice_ = nullptr;
  QPushButton* back_ = nullptr;
  QPushButton* skip_ = nullptr;
  QPushButton* take_back_ = nullptr;
  QPushButton* next_ = nullptr;
};

}  // namespace ullage::ui
