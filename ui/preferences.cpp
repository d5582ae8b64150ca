// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences.h"

#include <QLocale>
#include <QSettings>
#include <array>
#include <string_view>

namespace ullage::ui {

namespace {

// Words, not numbers, in the settings file: a person can read it, and a later
// version may reorder the enums.
template <class E, std::size_t N>
struct SettingWords {
  const char* key;
  std::array<std::string_view, N> words;  // in the order of the enum
  void load(const QSettings& settings, E& into) const {
    const std::string word = settings.value(QLatin1String(key)).toString().toStdString();
    for (std::size_t i = 0; i < N; ++i) {
      if (words.at(i) == word) into = static_cast<E>(i);
    }
  }
  void save(QSettings& settings, E e) const {
    const std::string_view word = words.at(static_cast<std::size_t>(e));
    settings.setValue(QLatin1String(key),
                      QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size())));
  }
};

using namespace units;
constexpr SettingWords<PressureUnit, 3> pressure_words{"units/pressure",
                                                       {"psi", "bar", "kilopascal"}};
constexpr SettingWords<TemperatureUnit, 2> temperature_words{"units/temperature",
                                                             {"celsius", "fahrenheit"}};
constexpr SettingWords<VolumeUnit, 3> volume_words{"units/volume",
                                                   {"litre", "us_gallon", "imperial_gallon"}};
constexpr SettingWords<GlassUnit, 4> glass_unit_words{
    "units/glass", {"us_pint", "imperial_pint", "half_litre", "third_litre"}};
constexpr SettingWords<MassUnit, 2> mass_words{"units/mass", {"kilogram", "pound"}};
constexpr SettingWords<LengthUnit, 2> length_words{"units/length", {"metre", "foot"}};
constexpr SettingWords<BoreUnit, 2> bore_words{"units/bore", {"millimetre", "inch"}};
constexpr SettingWords<Co2Unit, 2> co2_words{"units/co2", {"volumes", "grams_per_litre"}};
constexpr SettingWords<GravityUnit, 2> gravity_words{"units/gravity",
                                                     {"specific_gravity", "plato"}};
constexpr SettingWords<report::RegionalWords, 2> regional_words{"words", {"us", "british"}};
constexpr SettingWords<ThemeChoice, 3> theme_words{"theme", {"system", "light", "dark"}};
constexpr auto initials_key = "initials";
constexpr auto language_key = "language";
constexpr auto compact_key = "compact_rows";
constexpr auto chosen_key = "units/chosen";

// What the machine's region suggests until the person says otherwise.
DisplayUnits regional_units(const QLocale& locale) {
  switch (locale.measurementSystem()) {
    case QLocale::ImperialUSSystem:
      return DisplayUnits::us();
    case QLocale::ImperialUKSystem:
      return DisplayUnits::british();
    case QLocale::MetricSystem:
      break;
  }
  return DisplayUnits::metric();
}

char decimal_mark_of(const QLocale& locale) {
  return locale.decimalPoint() == QLatin1String(",") ? ',' : '.';
}

}  // namespace

Preferences::Preferences(QSettings& settings, QObject* parent)
    : QObject(parent), settings_(settings) {
  const QLocale locale;
  units_ = regional_units(locale);
  style_.decimal_mark = decimal_mark_of(locale);
  words_ = locale.measurementSystem() == QLocale::ImperialUSSystem ? report::RegionalWords::us
                                                                   : report::RegionalWords::british;
  pressure_words.load(settings_, units_.pressure);
  temperature_words.load(settings_, units_.temperature);
  volume_words.load(settings_, units_.volume);
  glass_unit_words.load(settings_, units_.glass);
  mass_words.load(settings_, units_.mass);
  length_words.load(settings_, units_.length);
  bore_words.load(settings_, units_.bore);
  co2_words.load(settings_, units_.co2);
  gravity_words.load(settings_, units_.gravity);
  regional_words.load(settings_, words_);
  theme_words.load(settings_, theme_);
  initials_ = settings_.value(QLatin1String(initials_key)).toString();
  compact_rows_ = settings_.value(QLatin1String(compact_key), false).toBool();
  units_chosen_ = settings_.value(QLatin1String(chosen_key), false).toBool();
}

void Preferences::set_units(DisplayUnits units) {
  const bool news = !(units == units_);
  units_ = units;
  units_chosen_ = true;
  pressure_words.save(settings_, units.pressure);
  temperature_words.save(settings_, units.temperature);
  volume_words.save(settings_, units.volume);
  glass_unit_words.save(settings_, units.glass);
  mass_words.save(settings_, units.mass);
  length_words.save(settings_, units.length);
  bore_words.save(settings_, units.bore);
  co2_words.save(settings_, units.co2);
  gravity_words.save(settings_, units.gravity);
  settings_.setValue(QLatin1String(chosen_key), true);
  if (news) emit changed();
}

void Preferences::set_words(report::RegionalWords words) {
  if (words == words_) return;
  words_ = words;
  regional_words.save(settings_, words);
  emit changed();
}

void Preferences::set_theme(ThemeChoice theme) {
  if (theme == theme_) return;
  theme_ = theme;
  theme_words.save(settings_, theme);
  emit theme_changed();
}

void Preferences::set_initials(const QString& initials) {
  if (initials == initials_) return;
  initials_ = initials;
  settings_.setValue(QLatin1String(initials_key), initials);
  emit changed();
}

QString Preferences::language() const {
  return settings_.value(QLatin1String(language_key), QStringLiteral("en")).toString();
}

void Preferences::set_language(const QString& language) {
  settings_.setValue(QLatin1String(language_key), language);
}

void Preferences::set_compact_rows(bool compact) {
  if (compact == compact_rows_) return;
  compact_rows_ = compact;
  settings_.setValue(QLatin1String(compact_key), compact);
  emit changed();
}

QVariant Preferences::remembered(const QString& key, const QVariant& otherwise) const {
  return settings_.value(QStringLiteral("view/") + key, otherwise);
}

void Preferences::remember(const QString& key, const QVariant& value) {
  settings_.setValue(QStringLiteral("view/") + key, value);
}

}  // namespace ullage::ui
