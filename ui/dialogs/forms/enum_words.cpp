// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/enum_words.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "core/cellar/records.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

using namespace std::string_view_literals;

constexpr auto special_words = std::to_array<std::pair<std::string_view, const char*>>({
    {"unknown"sv, "Not known"},
    {"empty_dirty"sv, "Empty, dirty"},
    {"empty_clean"sv, "Empty, clean"},
    {"empty_sanitised"sv, "Empty, sanitised"},
    {"empty_purged"sv, "Empty, purged"},
    {"rinse"sv, "Rinse only"},
    {"percarbonate"sv, "Oxygen cleaner"},
    {"quaternary"sv, "Quaternary ammonium"},
    {"cycles"sv, "Filled and vented"},
    {"pushed_liquid"sv, "Liquid pushed out"},
    {"swept"sv, "Swept through"},
    {"open"sv, "Open"},
    {"closed"sv, "Closed"},
    {"still"sv, "Still, after fermentation"},
    {"spunded"sv, "Spunded"},
    {"measured"sv, "Measured"},
    {"sucrose"sv, "Table sugar"},
    {"glucose"sv, "Glucose"},
    {"glucose_monohydrate"sv, "Glucose monohydrate"},
    {"dry_malt_extract"sv, "Dry malt extract"},
    {"weight"sv, "Weighed"},
    {"heft"sv, "Heft, by hand"},
    {"glasses"sv, "Glasses poured"},
    {"metered"sv, "Flow meter"},
    {"burst"sv, "Short burst"},
    {"seat_lid"sv, "Seat the lid"},
    {"ph"sv, "pH"},
    {"none"sv, "Not checked"},
    {"coloured_cleaner_clear"sv, "Coloured cleaner runs clear"},
    {"chlorinated"sv, "Chlorine cleaner"},
    {"static_soak"sv, "Static soak"},
    {"in_progress"sv, "On the way"},
    {"ours"sv, "Ours"},
    {"supplier"sv, "Supplier's"},
    {"co2_meter"sv, "CO₂ meter"},
    {"strip_down"sv, "Tap apart"},
    {"keg_clean"sv, "Keg cleaned"},
    {"coupler_clean"sv, "Coupler cleaned"},
    {"place_clean"sv, "Place cleaned"},
});

// Parts of texts, British and US. Tap water is tap water everywhere.
constexpr auto regional_parts = std::to_array<std::pair<const char*, const char*>>({
    {"anitis", "anitiz"},
    {"&Tap", "&Faucet"},
    {"Tap taken", "Faucet taken"},
    {"Tap takes", "Faucet takes"},
    {"Tap apart", "Faucet apart"},
    {"the tap ", "the faucet "},
});

}  // namespace

QString regional(const char* text, report::RegionalWords words) {
  QString said = QString::fromUtf8(text);
  if (words != report::RegionalWords::us) return said;
  for (const auto& [british, us] : regional_parts) {
    said.replace(QLatin1String(british), QLatin1String(us));
  }
  return said;
}

QString words_of_choice(std::string_view stored, const report::Speaker& speaker) {
  if (const auto kind = cellar::from_word<cellar::KegKind>(stored)) {
    return q(report::say(*kind, speaker));
  }
  const auto at = std::find_if(special_words.begin(), special_words.end(),
                               [&](const auto& known) { return known.first == stored; });
  if (at != special_words.end()) return regional(at->second, speaker.words);
  QString words = regional(std::string(stored).c_str(), speaker.words);
  words.replace(QLatin1Char('_'), QLatin1Char(' '));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

}  // namespace ullage::ui
