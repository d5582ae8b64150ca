// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the person chose for themselves: units, words, theme, initials. Kept in
// the user's settings file, never in the cellar. One object, owned by app and
// handed around; `changed` makes every view say its numbers anew.
#pragma once

#include <QObject>
#include <QString>
#include <QVariant>

#include "core/report/say.h"
#include "core/units/display_units.h"

class QSettings;

namespace ullage::ui {

enum class ThemeChoice { system, light, dark };

class Preferences : public QObject {
  Q_OBJECT
 public:
  // Reads from and writes to `settings`, which must outlive it.
  explicit Preferences(QSettings& settings, QObject* parent = nullptr);

  [[nodiscard]] units::DisplayUnits units() const { return units_; }
  [[nodiscard]] units::NumberStyle number_style() const { return style_; }
  [[nodiscard]] report::RegionalWords words() const { return words_; }
  [[nodiscard]] ThemeChoice theme() const { return theme_; }
  [[nodiscard]] QString initials() const { return initials_; }
  // "en" or "de"; read by the program when it starts.
  [[nodiscard]] QString language() const;
  [[nodiscard]] bool compact_rows() const { return compact_rows_; }

  void set_units(units::DisplayUnits);
  void set_words(report::RegionalWords);
  void set_theme(ThemeChoice);
  void set_initials(const QString&);
  void set_language(const QString&);
  void set_compact_rows(bool);
  // How a page was left (its order, its column widths), by a key like
  // "kegs/order". No view but the page itself depends on it: no signal.
  [[nodiscard]] QVariant remembered(const QString& key, const QVariant& otherwise = {}) const;
  void remember(const QString& key, const QVariant& value);

  // False until the person (or a new cellar's preset) has chosen units once.
  [[nodiscard]] bool units_chosen() const { return units_chosen_; }

 signals:
  void changed();        // units, words, initials, density
  void theme_changed();  // palette to be applied again

 private:
  QSettings& settings_;
  units::DisplayUnits units_;
  units::NumberStyle style_;
  report::RegionalWords words_ = report::RegionalWords::british;
  ThemeChoice theme_ = ThemeChoice::system;
  QString initials_;
  bool compact_rows_ = false;
  bool units_chosen_ = false;
};

}  // namespace ullage::ui
