// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/keg_tasks.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <span>

namespace ullage::ui {

namespace {

using cellar::Phase;
using report::RegionalWords;

struct KegTasksText {
  Q_DECLARE_TR_FUNCTIONS(KegTasks)
};

struct TaskWords {
  std::string_view kind;
  const char* words;
};
constexpr std::array task_words = {
    TaskWords{"found", QT_TRANSLATE_NOOP("KegTasks", "Say what is in it…")},
    TaskWords{"received", QT_TRANSLATE_NOOP("KegTasks", "Receive…")},
    TaskWords{"keg_record", QT_TRANSLATE_NOOP("KegTasks", "Change the keg…")},
    TaskWords{"line_record", QT_TRANSLATE_NOOP("KegTasks", "Change the line…")},
    TaskWords{"inspected", QT_TRANSLATE_NOOP("KegTasks", "Inspect seals…")},
    TaskWords{"cleaned", QT_TRANSLATE_NOOP("KegTasks", "Clean…")},
    TaskWords{"hold_reading", QT_TRANSLATE_NOOP("KegTasks", "Hold reading…")},
    TaskWords{"purged", QT_TRANSLATE_NOOP("KegTasks", "Purge…")},
    TaskWords{"transfer", QT_TRANSLATE_NOOP("KegTasks", "Log a transfer…")},
    TaskWords{"filled", QT_TRANSLATE_NOOP("KegTasks", "Fill…")},
    TaskWords{"gas_set", QT_TRANSLATE_NOOP("KegTasks", "Set gas…")},
    TaskWords{"gas_off", QT_TRANSLATE_NOOP("KegTasks", "Gas off…")},
    TaskWords{"vented", QT_TRANSLATE_NOOP("KegTasks", "Vent…")},
    TaskWords{"carbonation_reading", QT_TRANSLATE_NOOP("KegTasks", "Read CO₂…")},
    TaskWords{"temperature_read", QT_TRANSLATE_NOOP("KegTasks", "Read temperature…")},
    TaskWords{"level_reading", QT_TRANSLATE_NOOP("KegTasks", "Read level…")},
    TaskWords{"keg_change", QT_TRANSLATE_NOOP("KegTasks", "Change keg…")},
    TaskWords{"emptied", QT_TRANSLATE_NOOP("KegTasks", "Empty…")},
    TaskWords{"untapped", QT_TRANSLATE_NOOP("KegTasks", "Take off…")},
    TaskWords{"moved", QT_TRANSLATE_NOOP("KegTasks", "Move…")},
    TaskWords{"quarantined", QT_TRANSLATE_NOOP("KegTasks", "Hold back…")},
    TaskWords{"cleared", QT_TRANSLATE_NOOP("KegTasks", "Clear it…")},
    TaskWords{"returned", QT_TRANSLATE_NOOP("KegTasks", "Returned…")},
    TaskWords{"bottle_weighed", QT_TRANSLATE_NOOP("KegTasks", "Weigh the bottle…")},
    TaskWords{"bottle_changed", QT_TRANSLATE_NOOP("KegTasks", "Change the bottle…")},
    TaskWords{"leak_tested", QT_TRANSLATE_NOOP("KegTasks", "Check for leaks…")},
    TaskWords{"best_by_changed", QT_TRANSLATE_NOOP("KegTasks", "Change best by…")},
    TaskWords{"wasted", QT_TRANSLATE_NOOP("KegTasks", "Log waste…")},
    TaskWords{"line_released", QT_TRANSLATE_NOOP("KegTasks", "Check and release line…")},
    TaskWords{"line_cleaned", QT_TRANSLATE_NOOP("KegTasks", "Log line cleaning…")},
    TaskWords{"line_locked", QT_TRANSLATE_NOOP("KegTasks", "Lock line…")},
    TaskWords{"hops_out", QT_TRANSLATE_NOOP("KegTasks", "Take the hops out…")},
    TaskWords{"beer_record", QT_TRANSLATE_NOOP("KegTasks", "Give it a CO₂ range…")},
    TaskWords{"timed_pour", QT_TRANSLATE_NOOP("KegTasks", "Log the pour…")},
    TaskWords{"rocked", QT_TRANSLATE_NOOP("KegTasks", "Log the rocking…")},
};

std::span<const std::string_view> usual_after(Phase phase) {
  static constexpr std::array<std::string_view, 2> unknown = {"found", "received"};
  static constexpr std::array<std::string_view, 2> dirty = {"cleaned", "inspected"};
  static constexpr std::array<std::string_view, 3> clean = {"sanitised", "hold_reading",
                                                            "inspected"};
  static constexpr std::array<std::string_view, 2> sanitised = {"purged", "transfer"};
  static constexpr std::array<std::string_view, 2> purged = {"transfer", "hold_reading"};
  static constexpr std::array<std::string_view, 3> carbonating = {"gas_set", "vented",
                                                                  "carbonation_reading"};
  static constexpr std::array<std::string_view, 3> ready = {"tapped", "gas_set", "level_reading"};
  static constexpr std::array<std::string_view, 3> on_tap = {"level_reading", "keg_change",
                                                             "emptied"};
  switch (phase) {
    case Phase::unknown:
      return unknown;
    case Phase::dirty:
      return dirty;
    case Phase::clean:
      return clean;
    case Phase::sanitised:
      return sanitised;
    case Phase::purged:
      return purged;
    case Phase::carbonating:
    case Phase::conditioning:
      return carbonating;
    case Phase::ready:
      return ready;
    case Phase::on_tap:
      break;
  }
  return on_tap;
}

// The form that does what the keg is said to need, where the sentence calls for one.
std::optional<cellar::SuggestedTask> task_needed(const cellar::KegStatus& keg) {
  using enum cellar::MessageKey;
  const auto& need = keg.readiness.to_do ? keg.readiness.to_do : keg.next_step;
  if (!need) return std::nullopt;
  const auto of_keg = [&](const char* kind) {
    return cellar::SuggestedTask{kind, cellar::subject(keg.record.keg), std::nullopt};
  };
  switch (need->key) {
    case next_say_place:
    case next_put_in_cold:
      return of_keg("moved");
    case next_say_co2:
    case next_read_co2:
      return of_keg("carbonation_reading");
    case next_set_gas:
    case next_set_gas_to:
      return of_keg("gas_set");
    case next_read_level:
      return of_keg("level_reading");
    case next_hops_out:
      return of_keg("hops_out");
    case next_inspect:
      return of_keg("inspected");
    case next_read_temperature:
      if (!keg.place) return std::nullopt;
      return cellar::SuggestedTask{"temperature_read", cellar::subject(keg.place->place),
                                   std::nullopt};
    case next_give_range:
      if (!keg.contents) return std::nullopt;
      return cellar::SuggestedTask{"beer_record", cellar::subject(keg.contents->beer.beer),
                                   std::nullopt};
    default:
      return std::nullopt;
  }
}

}  // namespace

QString task_label(std::string_view kind, RegionalWords words) {
  if (kind == "tapped") {
    return words == RegionalWords::us ? KegTasksText::tr("Tap it…")
                                      : KegTasksText::tr("Put on tap…");
  }
  if (kind == "sanitised") {
    return words == RegionalWords::us ? KegTasksText::tr("Sanitize…")
                                      : KegTasksText::tr("Sanitise…");
  }
  const auto* at = std::find_if(task_words.begin(), task_words.end(),
                                [kind](const TaskWords& t) { return t.kind == kind; });
  return at == task_words.end() ? KegTasksText::tr("Open the form…") : KegTasksText::tr(at->words);
}

std::vector<LikelyTask> likely_tasks(const cellar::KegStatus& keg, RegionalWords words) {
  std::vector<LikelyTask> tasks;
  const auto add = [&](cellar::SuggestedTask task) {
    const bool there = std::any_of(tasks.begin(), tasks.end(),
                                   [&](const LikelyTask& t) { return t.task.kind == task.kind; });
    if (there) return;
    const QString label = task_label(task.kind, words);
    tasks.push_back({label, std::move(task)});
  };
  if (auto needed = task_needed(keg)) add(*std::move(needed));
  for (const std::string_view kind : usual_after(keg.phase)) {
    // A keg that must not be served is not offered to the bar.
    if (kind == "tapped" && keg.quarantined) continue;
    add({std::string(kind), cellar::subject(keg.record.keg), std::nullopt});
  }
  return tasks;
}

}  // namespace ullage::ui
