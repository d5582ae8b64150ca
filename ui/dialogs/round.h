// SPDX-License-Identifier: GPL-3.0-or-later
//
// The round: one large view for each place, keg and gas bottle, in walking
// order. Number pad and steppers for fingers, Enter, Page Up, Page Down, F2 and F3
// for a keyboard. What is skipped is asked again at the end; closing it at any time
// keeps the place, and the next time it goes on there. Each station is logged as
// one act when it is left.
#pragma once

#include <QDialog>
#include <set>
#include <vector>

#include "core/cellar/round.h"
#include "ui/context.h"

class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class InkLabel;
class NumberPad;
class RoundValueEdit;

class RoundDialog final : public QDialog {
  Q_OBJECT
 public:
  explicit RoundDialog(const Context& context, QWidget* parent = nullptr);

  // Logs what is typed, if anything, and goes on; false when it was refused.
  bool log_and_go_on();
  void skip();
  void back();
  [[nodiscard]] QString station_name() const;
  [[nodiscard]] bool at_end() const { return at_ >= order_.size(); }

 protected:
  bool eventFilter(QObject*, QEvent*) override;
  void keyPressEvent(QKeyEvent*) override;

 private:
  void build();
  QWidget* build_foot(int side);
  void recall_place();  // where it was left
  void remember_place() const;
  void start_over();
  void recall_instruments();  // taken at a station before, whether or not a reading came of it
  void remember_instrument(std::size_t question, const RoundValueEdit&);
  [[nodiscard]] QString instrument_key(const cellar::RoundStation&,
                                       const cellar::RoundQuestion&) const;
  void show_station();
  void show_end();
  void go_on();
  [[nodiscard]] const cellar::RoundStation* station() const;
  [[nodiscard]] RoundValueEdit* active() const;
  void take_active(RoundValueEdit&);
  [[nodiscard]] QString about_words(const cellar::RoundStation&) const;
  [[nodiscard]] QString key(const char* what) const;

  Context context_;
  std::vector<cellar::RoundStation> stations_;
  std::vector<std::size_t> order_;  // of the stations still to walk, with those walked
  std::size_t at_ = 0;
  std::set<cellar::SubjectRef> logged_, skipped_;
  std::vector<RoundValueEdit*> values_;
  RoundValueEdit* active_ = nullptr;
  InkLabel* progress_ = nullptr;
  InkLabel* name_ = nullptr;
  InkLabel* about_ = nullptr;
  QVBoxLayout* value_column_ = nullptr;
  NumberPad* pad_ = nullptr;
  Banner* refusal_ = nullptr;
  QPushButton* back_ = nullptr;
  QPushButton* skip_ = nullptr;
  QPushButton* next_ = nullptr;
};

}  // namespace ullage::ui
