// SPDX-License-Identifier: GPL-3.0-or-later
//
// One step of a cleaning day: what to do, what it takes, its caution, a tick for
// each thing and, where cleaner has to stand, a timer.
#pragma once

#include <optional>

#include "core/cellar/cleaning_log.h"
#include "ui/context.h"
#include "ui/widgets/card.h"

class QCheckBox;
class QPushButton;

namespace ullage::ui {

class InkLabel;

class StepCard : public Card {
  Q_OBJECT
 public:
  struct Thing {
    cellar::SubjectRef about;
    QString name;
    bool done = false;
    bool before = false;  // it was done before the day: no tick of the list's undoes it
  };
  StepCard(const Context& context, std::size_t number, const cellar::PlanStep& step,
           const std::vector<Thing>& things, QWidget* parent = nullptr);

  // When the cleaner has stood long enough; shown as a countdown.
  void set_timer(std::optional<cellar::Instant> ends);
  // How long it stood until the timer was stopped.
  void set_stood(units::Duration);
  void tell_time(cellar::Instant now);

 signals:
  void ticked(std::size_t thing, bool on);
  void form_asked(std::size_t thing);
  void timer_asked(bool start);

 private:
  void add_words(std::size_t number, const cellar::PlanStep& step);
  void add_things(std::size_t number, const cellar::PlanStep& step,
                  const std::vector<Thing>& things);
  void add_timer(std::size_t number, const cellar::PlanStep& step);

  Context context_;
  std::optional<cellar::Instant> ends_;
  InkLabel* left_ = nullptr;
  QPushButton* start_ = nullptr;
};

}  // namespace ullage::ui
