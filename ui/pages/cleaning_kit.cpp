// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cleaning_kit.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/context.h"
#include "ui/preferences.h"

namespace ullage::ui {

using cellar::WorkMinutes;

const std::array<MinutesOfWork, 15> minutes_of_work = {{
    {"lock", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Lock a line"), &WorkMinutes::lock},
    {"vent", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Let the pressure off"),
     &WorkMinutes::vent},
    {"flush", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Flush the beer out"),
     &WorkMinutes::flush},
    {"line", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Fill a line with cleaner"),
     &WorkMinutes::line},
    {"rinse", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Rinse a line or keg"),
     &WorkMinutes::rinse},
    {"release", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Check and release a line"),
     &WorkMinutes::release},
    {"strip_down", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Take a tap apart"),
     &WorkMinutes::strip_down},
    {"coupler", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Brush a coupler"),
     &WorkMinutes::coupler},
    {"seals", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Renew a keg’s seals"),
     &WorkMinutes::seals},
    {"keg", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Wash a keg"), &WorkMinutes::keg},
    {"purge", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Close and purge a keg"),
     &WorkMinutes::purge},
    {"place", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Clean floor and cooler"),
     &WorkMinutes::place},
    {"alarm", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Try a gas alarm"), &WorkMinutes::alarm},
    {"leak_test", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Test for leaks"),
     &WorkMinutes::leak_test},
    {"bottle", QT_TRANSLATE_NOOP("ullage::ui::KitDialog", "Set a bottle aside"),
     &WorkMinutes::bottle},
}};

namespace {

double kept_number(const Preferences& p, const QString& key, double otherwise) {
  bool is_number = false;
  const double kept = p.remembered(key, otherwise).toDouble(&is_number);
  return is_number ? kept : otherwise;
}

void recall_cleaner(const Preferences& p, const QString& key, cellar::Cleaner& c) {
  c.name = s(p.remembered(key + QStringLiteral("/name"), q(c.name)).toString());
  c.strength =
      units::fraction(kept_number(p, key + QStringLiteral("/strength"), c.strength.count()));
  c.label.active =
      units::fraction(kept_number(p, key + QStringLiteral("/label"), c.label.active.count()));
  const double density =
      kept_number(p, key + QStringLiteral("/density"),
                  c.label.density ? units::in_kilograms_per_cubic_metre(*c.label.density) : 0);
  c.label.density =
      density > 0 ? std::optional(units::kilograms_per_cubic_metre(density)) : std::nullopt;
  c.contact = units::minutes(
      kept_number(p, key + QStringLiteral("/contact"), units::in_minutes(c.contact)));
}

QString minutes_key(const QString& under, const MinutesOfWork& work) {
  return under + QStringLiteral("/minutes/") + QLatin1String(work.key);
}

void recall_amounts(const Preferences& p, const QString& under, cellar::CleaningKit& kit) {
  const auto kept = [&](const char* key, double otherwise) {
    return std::max(0.0, kept_number(p, under + QLatin1String(key), otherwise));
  };
  kit.pot = units::litres(kept("/pot", units::in_litres(kit.pot)));
  kit.keg_fill = units::litres(kept("/keg-fill", units::in_litres(kit.keg_fill)));
  kit.rinses = std::llround(kept("/rinses", static_cast<double>(kit.rinses)));
  kit.purge_cycles = std::llround(kept("/purge-cycles", static_cast<double>(kit.purge_cycles)));
  kit.purge_to = units::gauge_bar(kept("/purge-to", units::in_bar(kit.purge_to)));
  for (const MinutesOfWork& work : minutes_of_work) {
    units::Duration& each = kit.minutes.*work.each;
    each = units::minutes(
        std::max(0.0, kept_number(p, minutes_key(under, work), units::in_minutes(each))));
  }
}

void keep_amounts(Preferences& p, const QString& under, const cellar::CleaningKit& kit) {
  p.remember(under + QStringLiteral("/pot"), units::in_litres(kit.pot));
  p.remember(under + QStringLiteral("/keg-fill"), units::in_litres(kit.keg_fill));
  p.remember(under + QStringLiteral("/rinses"), static_cast<double>(kit.rinses));
  p.remember(under + QStringLiteral("/purge-cycles"), static_cast<double>(kit.purge_cycles));
  p.remember(under + QStringLiteral("/purge-to"), units::in_bar(kit.purge_to));
  for (const MinutesOfWork& work : minutes_of_work) {
    p.remember(minutes_key(under, work), units::in_minutes(kit.minutes.*work.each));
  }
}

void keep_cleaner(Preferences& p, const QString& key, const cellar::Cleaner& c) {
  p.remember(key + QStringLiteral("/name"), q(c.name));
  p.remember(key + QStringLiteral("/strength"), c.strength.count());
  p.remember(key + QStringLiteral("/label"), c.label.active.count());
  p.remember(key + QStringLiteral("/density"),
             c.label.density ? units::in_kilograms_per_cubic_metre(*c.label.density) : 0.0);
  p.remember(key + QStringLiteral("/contact"), units::in_minutes(c.contact));
}

}  // namespace

CleaningHabits cleaning_habits(const Preferences& p, const QString& under) {
  CleaningHabits habits{cellar::usual_kit()};
  recall_cleaner(p, under + QStringLiteral("/caustic"), habits.kit.caustic);
  recall_cleaner(p, under + QStringLiteral("/acid"), habits.kit.acid);
  recall_amounts(p, under, habits.kit);
  if (p.remembered(under + QStringLiteral("/chlorine"), false).toBool()) {
    habits.kit.caustic.kind = cellar::LineAgent::chlorinated;
  }
  habits.time_at_hand = units::minutes(kept_number(p, under + QStringLiteral("/minutes"), 180));
  return habits;
}

void remember(Preferences& p, const CleaningHabits& habits, const QString& under) {
  keep_cleaner(p, under + QStringLiteral("/caustic"), habits.kit.caustic);
  keep_cleaner(p, under + QStringLiteral("/acid"), habits.kit.acid);
  keep_amounts(p, under, habits.kit);
  p.remember(under + QStringLiteral("/chlorine"),
             habits.kit.caustic.kind == cellar::LineAgent::chlorinated);
  p.remember(under + QStringLiteral("/minutes"), units::in_minutes(habits.time_at_hand));
}

}  // namespace ullage::ui
