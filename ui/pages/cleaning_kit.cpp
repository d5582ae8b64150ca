// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cleaning_kit.h"

#include "ui/context.h"
#include "ui/preferences.h"

namespace ullage::ui {
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
  if (p.remembered(under + QStringLiteral("/chlorine"), false).toBool()) {
    habits.kit.caustic.kind = cellar::LineAgent::chlorinated;
  }
  habits.time_at_hand = units::minutes(kept_number(p, under + QStringLiteral("/minutes"), 180));
  return habits;
}

void remember(Preferences& p, const CleaningHabits& habits, const QString& under) {
  keep_cleaner(p, under + QStringLiteral("/caustic"), habits.kit.caustic);
  keep_cleaner(p, under + QStringLiteral("/acid"), habits.kit.acid);
  p.remember(under + QStringLiteral("/chlorine"),
             habits.kit.caustic.kind == cellar::LineAgent::chlorinated);
  p.remember(under + QStringLiteral("/minutes"), units::in_minutes(habits.time_at_hand));
}

}  // namespace ullage::ui
