// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Cleaning page: what is due, the next cleaning day with two days to choose
// from, and its list to tick. With the first tick the list stands still until it
// is closed, though what is ticked is no longer due. A list that was begun outlives
// the program for two days: kept are when it was begun and after which entry, its
// day and cleaners, the ticks that leave no trace, and the timers; the steps are
// worked out again from the journal of then, and what was logged is found in it.
#pragma once

#include <QWidget>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <vector>

#include "core/cellar/cleaning_plan.h"
#include "ui/context.h"

class QButtonGroup;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace ullage::ui {

class DueList;
class InkLabel;
class KeptFresh;
class StepCard;

class CleaningPage : public QWidget {
  Q_OBJECT
 public:
  explicit CleaningPage(const Context& context, QWidget* parent = nullptr);
  ~CleaningPage() override;

  void refresh();
  // The days proposed, and the one whose list is shown; null when nothing is due.
  [[nodiscard]] const std::vector<cellar::PlannedDay>& proposed() const { return proposed_; }
  [[nodiscard]] const cellar::PlannedDay* shown_day() const;
  [[nodiscard]] bool begun() const { return begun_at_.has_value(); }
  // Shows the shown day's list as it is printed; false when nothing is due.
  bool print_list();
  void choose_day(std::size_t which);
  void close_list();
  // The thing of a step ticked or unticked, as by hand.
  void tick(std::size_t step, std::size_t thing, bool on);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  using Ticked = std::pair<std::size_t, cellar::SubjectRef>;
  struct Timer {
    cellar::Instant ends{};
    std::optional<cellar::Instant> stopped{};
    bool told = false;  // that the time is up
  };
  void build();
  [[nodiscard]] QWidget* build_body();
  void replan();
  void show_days();
  void show_steps();
  [[nodiscard]] StepCard* card_for(std::size_t step);
  [[nodiscard]] bool is_done(std::size_t step, cellar::SubjectRef thing) const;
  [[nodiscard]] bool may_open(std::size_t step, cellar::SubjectRef thing);
  [[nodiscard]] bool may_tick(std::size_t step, cellar::SubjectRef thing);
  [[nodiscard]] cellar::PlanWishes wishes(const cellar::CellarStatus&, const QString& kit) const;
  [[nodiscard]] QString list_key(const char* what) const;
  void begin();
  void keep_list() const;
  void recall_list();
  void log_tick(std::size_t step, cellar::SubjectRef thing);
  void take_back(std::size_t step, cellar::SubjectRef thing);
  void answer(std::size_t step, std::size_t thing);
  void start_timer(std::size_t step, bool start);
  void tell_time();
  // How long the step's cleaner was in: to when its timer was stopped, or to now once
  // the time is up. Nothing while it runs down, or where none ran.
  [[nodiscard]] std::optional<units::Duration> stood(std::size_t step) const;
  void put_off(std::optional<cellar::Date> to);
  void log_due();
  void open_rules();
  void open_kit();
  void open_print();

  Context context_;
  std::unique_ptr<KeptFresh> fresh_;
  std::vector<cellar::DueWork> due_;
  std::vector<cellar::PlannedDay> proposed_;
  std::size_t chosen_day_ = 0;
  std::optional<cellar::PlannedDay> running_;  // the day begun
  std::optional<cellar::Instant> begun_at_;
  cellar::EntryId begun_after_;  // the last entry there was
  std::set<Ticked> by_hand_;     // ticks that leave no trace in the journal
  std::map<std::size_t, Timer> timers_;
  std::vector<StepCard*> cards_;

  InkLabel* summary_ = nullptr;
  DueList* due_list_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  QWidget* days_ = nullptr;
  QVBoxLayout* days_column_ = nullptr;
  InkLabel* list_title_ = nullptr;
  QPushButton* close_ = nullptr;
  QPushButton* print_ = nullptr;
  QScrollArea* steps_ = nullptr;
};

}  // namespace ullage::ui
