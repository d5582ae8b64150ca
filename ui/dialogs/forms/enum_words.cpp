// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/enum_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "core/cellar/records.h"
#include "core/report/regional.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

using namespace std::string_view_literals;

constexpr auto special_words = std::to_array<std::pair<std::string_view, const char*>>({
    {"unknown"sv, QT_TRANSLATE_NOOP("Choice", "Not known")},
    {"empty_dirty"sv, QT_TRANSLATE_NOOP("Choice", "Empty, dirty")},
    {"empty_clean"sv, QT_TRANSLATE_NOOP("Choice", "Empty, clean")},
    {"empty_sanitised"sv, QT_TRANSLATE_NOOP("Choice", "Empty, sanitised")},
    {"empty_purged"sv, QT_TRANSLATE_NOOP("Choice", "Empty, purged")},
    {"rinse"sv, QT_TRANSLATE_NOOP("Choice", "Rinse only")},
    {"percarbonate"sv, QT_TRANSLATE_NOOP("Choice", "Oxygen cleaner")},
    {"quaternary"sv, QT_TRANSLATE_NOOP("Choice", "Quaternary ammonium")},
    {"cycles"sv, QT_TRANSLATE_NOOP("Choice", "Filled and vented")},
    {"pushed_liquid"sv, QT_TRANSLATE_NOOP("Choice", "Liquid pushed out")},
    {"swept"sv, QT_TRANSLATE_NOOP("Choice", "Swept through")},
    {"open"sv, QT_TRANSLATE_NOOP("Choice", "Open")},
    {"closed"sv, QT_TRANSLATE_NOOP("Choice", "Closed")},
    {"still"sv, QT_TRANSLATE_NOOP("Choice", "Still, after fermentation")},
    {"spunded"sv, QT_TRANSLATE_NOOP("Choice", "Spunded")},
    {"measured"sv, QT_TRANSLATE_NOOP("Choice", "Measured")},
    {"sucrose"sv, QT_TRANSLATE_NOOP("Choice", "Table sugar")},
    {"glucose"sv, QT_TRANSLATE_NOOP("Choice", "Glucose")},
    {"glucose_monohydrate"sv, QT_TRANSLATE_NOOP("Choice", "Glucose monohydrate")},
    {"dry_malt_extract"sv, QT_TRANSLATE_NOOP("Choice", "Dry malt extract")},
    {"weight"sv, QT_TRANSLATE_NOOP("Choice", "Weighed")},
    {"heft"sv, QT_TRANSLATE_NOOP("Choice", "Heft, by hand")},
    {"glasses"sv, QT_TRANSLATE_NOOP("Choice", "Glasses poured")},
    {"metered"sv, QT_TRANSLATE_NOOP("Choice", "Flow meter")},
    {"burst"sv, QT_TRANSLATE_NOOP("Choice", "Short burst")},
    {"seat_lid"sv, QT_TRANSLATE_NOOP("Choice", "Seat the lid")},
    {"ph"sv, QT_TRANSLATE_NOOP("Choice", "pH")},
    {"none"sv, QT_TRANSLATE_NOOP("Choice", "Not checked")},
    {"coloured_cleaner_clear"sv, QT_TRANSLATE_NOOP("Choice", "Coloured cleaner runs clear")},
    {"chlorinated"sv, QT_TRANSLATE_NOOP("Choice", "Chlorine cleaner")},
    {"static_soak"sv, QT_TRANSLATE_NOOP("Choice", "Static soak")},
    {"in_progress"sv, QT_TRANSLATE_NOOP("Choice", "On the way")},
    {"ours"sv, QT_TRANSLATE_NOOP("Choice", "Ours")},
    {"supplier"sv, QT_TRANSLATE_NOOP("Choice", "Supplier's")},
    {"co2_meter"sv, QT_TRANSLATE_NOOP("Choice", "CO₂ meter")},
    {"strip_down"sv, QT_TRANSLATE_NOOP("Choice", "Tap apart")},
    {"keg_clean"sv, QT_TRANSLATE_NOOP("Choice", "Keg cleaned")},
    {"coupler_clean"sv, QT_TRANSLATE_NOOP("Choice", "Coupler cleaned")},
    {"place_clean"sv, QT_TRANSLATE_NOOP("Choice", "Place cleaned")},
});

// Words that read well as they are stored: listed so that they can be translated.
[[maybe_unused]] constexpr auto plain_words = std::to_array<const char*>({
    QT_TRANSLATE_NOOP("Choice", "Rented"),
    QT_TRANSLATE_NOOP("Choice", "Brewed here"),
    QT_TRANSLATE_NOOP("Choice", "Delivered"),
    QT_TRANSLATE_NOOP("Choice", "Cold box"),
    QT_TRANSLATE_NOOP("Choice", "Cellar room"),
    QT_TRANSLATE_NOOP("Choice", "Room"),
    QT_TRANSLATE_NOOP("Choice", "Bar"),
    QT_TRANSLATE_NOOP("Choice", "Vinyl"),
    QT_TRANSLATE_NOOP("Choice", "Barrier"),
    QT_TRANSLATE_NOOP("Choice", "Polyethylene"),
    QT_TRANSLATE_NOOP("Choice", "Stainless"),
    QT_TRANSLATE_NOOP("Choice", "Other"),
    QT_TRANSLATE_NOOP("Choice", "Regulator dial"),
    QT_TRANSLATE_NOOP("Choice", "Spunding dial"),
    QT_TRANSLATE_NOOP("Choice", "Pressure gauge"),
    QT_TRANSLATE_NOOP("Choice", "Fridge display"),
    QT_TRANSLATE_NOOP("Choice", "Thermometer"),
    QT_TRANSLATE_NOOP("Choice", "Bathroom scale"),
    QT_TRANSLATE_NOOP("Choice", "Parcel scale"),
    QT_TRANSLATE_NOOP("Choice", "Hydrometer"),
    QT_TRANSLATE_NOOP("Choice", "Flow meter"),
    QT_TRANSLATE_NOOP("Choice", "Condensation line"),
    QT_TRANSLATE_NOOP("Choice", "Line"),
    QT_TRANSLATE_NOOP("Choice", "Keg"),
    QT_TRANSLATE_NOOP("Choice", "Coupler"),
    QT_TRANSLATE_NOOP("Choice", "Bottle"),
    QT_TRANSLATE_NOOP("Choice", "Place"),
    QT_TRANSLATE_NOOP("Choice", "Alarm"),
    QT_TRANSLATE_NOOP("Choice", "Caustic"),
    QT_TRANSLATE_NOOP("Choice", "Acid"),
    QT_TRANSLATE_NOOP("Choice", "Seals"),
    QT_TRANSLATE_NOOP("Choice", "Alarm check"),
    QT_TRANSLATE_NOOP("Choice", "Bottle retest"),
    QT_TRANSLATE_NOOP("Choice", "Leak test"),
    QT_TRANSLATE_NOOP("Choice", "Water"),
    QT_TRANSLATE_NOOP("Choice", "Recirculated"),
    QT_TRANSLATE_NOOP("Choice", "Flushed"),
    QT_TRANSLATE_NOOP("Choice", "Litmus"),
    QT_TRANSLATE_NOOP("Choice", "Set and wait"),
    QT_TRANSLATE_NOOP("Choice", "Serving"),
    QT_TRANSLATE_NOOP("Choice", "Air"),
    QT_TRANSLATE_NOOP("Choice", "Liquid"),
    QT_TRANSLATE_NOOP("Choice", "Glass"),
    QT_TRANSLATE_NOOP("Choice", "Original"),
    QT_TRANSLATE_NOOP("Choice", "Final"),
    QT_TRANSLATE_NOOP("Choice", "Soapy water"),
    QT_TRANSLATE_NOOP("Choice", "Under water"),
    QT_TRANSLATE_NOOP("Choice", "Listening"),
    QT_TRANSLATE_NOOP("Choice", "Pressure drop"),
    QT_TRANSLATE_NOOP("Choice", "Beer"),
    QT_TRANSLATE_NOOP("Choice", "Foam"),
    QT_TRANSLATE_NOOP("Choice", "Line cleaning"),
    QT_TRANSLATE_NOOP("Choice", "Spoiled"),
    QT_TRANSLATE_NOOP("Choice", "Short fill"),
    QT_TRANSLATE_NOOP("Choice", "Spill"),
    QT_TRANSLATE_NOOP("Choice", "Given away"),
    QT_TRANSLATE_NOOP("Choice", "Acid sanitiser"),
    QT_TRANSLATE_NOOP("Choice", "Iodine"),
    QT_TRANSLATE_NOOP("Choice", "Chlorine"),
    QT_TRANSLATE_NOOP("Choice", "Hot water"),
});

}  // namespace

QString regional(const QString& said, report::RegionalWords words) {
  return words == report::RegionalWords::us ? q(report::regional(s(said), words)) : said;
}

QString words_of_choice(std::string_view stored, const report::Speaker& speaker) {
  if (const auto kind = cellar::from_word<cellar::KegKind>(stored)) {
    return q(report::say(*kind, speaker));
  }
  const auto at = std::find_if(special_words.begin(), special_words.end(),
                               [&](const auto& known) { return known.first == stored; });
  if (at != special_words.end())
    return regional(QCoreApplication::translate("Choice", at->second), speaker.words);
  QString words = QString::fromUtf8(stored.data(), static_cast<qsizetype>(stored.size()));
  words.replace(QLatin1Char('_'), QLatin1Char(' '));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return regional(QCoreApplication::translate("Choice", words.toUtf8().constData()), speaker.words);
}

}  // namespace ullage::ui
