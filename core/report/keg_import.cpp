// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/keg_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "core/cellar/limits.h"
#include "core/cellar/presets.h"
#include "core/report/text_columns.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

std::string folded(std::string_view text) {
  std::string low;
  for (const char c : text) {
    low += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c == '_' || c == '-' ? ' ' : c;
  }
  const auto first = low.find_first_not_of(' ');
  if (first == std::string::npos) return {};
  return low.substr(first, low.find_last_not_of(' ') - first + 1);
}

// "Tare (kg)" and "tare_kg" as "tare" and "kg".
struct Heading {
  std::string name, unit;
};
Heading heading_of(std::string_view text) {
  const std::string low = folded(text);
  const auto open = low.find_first_of("([");
  if (open != std::string::npos) {
    const auto close = low.find_first_of(")]", open);
    return {folded(low.substr(0, open)),
            close == std::string::npos ? std::string() : low.substr(open + 1, close - open - 1)};
  }
  const auto space = low.rfind(' ');
  if (space != std::string::npos) {
    const std::string last = low.substr(space + 1);
    for (const char* unit : {"kg", "lb", "g", "l", "gal", "psi", "bar", "kpa", "pa"}) {
      if (last == unit) return {low.substr(0, space), last};
    }
  }
  return {low, {}};
}

const std::map<std::string, KegField, std::less<>>& heading_words() {
  static const std::map<std::string, KegField, std::less<>> words = {
      {"tag", KegField::tag},
      {"keg", KegField::tag},
      {"keg no", KegField::tag},
      {"keg no.", KegField::tag},
      {"number", KegField::tag},
      {"no", KegField::tag},
      {"no.", KegField::tag},
      {"id", KegField::tag},
      {"name", KegField::tag},
      {"kind", KegField::kind},
      {"type", KegField::kind},
      {"keg kind", KegField::kind},
      {"size", KegField::nominal},
      {"nominal", KegField::nominal},
      {"volume", KegField::nominal},
      {"capacity", KegField::nominal},
      {"brimful", KegField::brimful},
      {"full volume", KegField::brimful},
      {"tare", KegField::tare},
      {"empty weight", KegField::tare},
      {"weight", KegField::tare},
      {"rated", KegField::rated},
      {"rated pressure", KegField::rated},
      {"max pressure", KegField::rated},
      {"max. pressure", KegField::rated},
      {"coupler", KegField::coupler},
      {"post", KegField::coupler},
      {"posts", KegField::coupler},
      {"owner", KegField::owner},
      {"deposit", KegField::deposit},
      {"place", KegField::place},
      {"location", KegField::place},
      {"where", KegField::place}};
  return words;
}

std::size_t index_of(KegField field) { return static_cast<std::size_t>(field); }

// The kind of a keg by its name; by its size when one kind alone has it.
std::optional<KegKind> kind_named(const std::string& text) {
  const std::string low = folded(text);
  for (const KegPreset& preset : keg_presets()) {
    if (low == folded(to_word(preset.kind))) return preset.kind;
  }
  return low == "custom" || low == "other" ? std::optional(KegKind::custom) : std::nullopt;
}
std::optional<KegKind> kind_sized(Volume nominal, const std::string& coupler) {
  std::optional<KegKind> only;
  for (const KegPreset& preset : keg_presets()) {
    const double off = std::abs(units::in_litres(preset.nominal) - units::in_litres(nominal));
    if (off > 0.02 * units::in_litres(preset.nominal)) continue;
    if (!coupler.empty() && folded(coupler) != folded(preset.coupler)) continue;
    if (only) return std::nullopt;
    only = preset.kind;
  }
  return only;
}

class LineReader {
 public:
  LineReader(const CsvFile& file, const KegColumns& columns, const CellarStatus& status,
             const units::Parser& parser)
      : file_(file), columns_(columns), status_(status), parser_(parser) {}

  std::optional<KegRecord> read(const CsvLine& line) {
    line_ = &line;
    sound_ = true;
    KegRecord keg;
    if (!choose_kind(keg)) return std::nullopt;
    keg.tag = tag();
    quantity(KegField::brimful, keg.brimful, &units::Parser::volume);
    if (has(KegField::brimful)) keg.brimful_half_width = units::litres(0);
    optional_quantity(KegField::tare, keg.tare, &units::Parser::mass);
    if (has(KegField::tare)) keg.tare_half_width.reset();
    optional_quantity(KegField::rated, keg.rated_pressure, &units::Parser::gauge_pressure);
    if (has(KegField::coupler)) keg.coupler = text(KegField::coupler);
    read_owner(keg);
    read_deposit(keg);
    read_place(keg);
    check_size(keg);
    return sound_ ? std::optional(keg) : std::nullopt;
  }
  std::vector<KegImportFault> faults;

 private:
  [[nodiscard]] std::string text(KegField field) const {
    const auto& column = columns_[index_of(field)];
    return column && *column < line_->fields.size() ? line_->fields[*column] : std::string();
  }
  [[nodiscard]] bool has(KegField field) const { return !text(field).empty(); }
  void refuse(std::string words) {
    sound_ = false;
    faults.push_back({line_->number, fmt::format("Line {}: {}", line_->number, words)});
  }
  // With the unit of its heading when the field itself has none.
  [[nodiscard]] std::string with_unit(KegField field) const {
    std::string typed = text(field);
    const bool bare = typed.find_first_not_of("0123456789.,+- ") == std::string::npos;
    const std::string unit =
        heading_of(file_.header.fields[present(columns_[index_of(field)])]).unit;
    if (bare && !unit.empty()) typed += " " + unit;
    return typed;
  }
  template <class Q>
  void quantity(KegField field, Q& into,
                units::Parsed<Q> (units::Parser::*parse)(std::string_view) const) {
    if (!has(field)) return;
    const auto parsed = (parser_.*parse)(with_unit(field));
    if (parsed) {
      into = *parsed;
    } else {
      refuse(units::describe(parsed.error(), say(field)));
    }
  }
  template <class Q>
  void optional_quantity(KegField field, std::optional<Q>& into,
                         units::Parsed<Q> (units::Parser::*parse)(std::string_view) const) {
    if (!has(field)) return;
    Q value = into.value_or(Q{});
    quantity(field, value, parse);
    into = value;
  }

  bool choose_kind(KegRecord& keg) {
    Volume nominal = units::litres(0);
    quantity(KegField::nominal, nominal, &units::Parser::volume);
    if (!sound_) return false;
    std::optional<KegKind> kind;
    if (has(KegField::kind)) {
      kind = kind_named(text(KegField::kind));
      if (!kind) refuse(fmt::format("“{}” is no kind of keg that I know.", text(KegField::kind)));
    } else if (has(KegField::nominal)) {
      kind = kind_sized(nominal, text(KegField::coupler));
      if (!kind && has(KegField::brimful)) kind = KegKind::custom;
      if (!kind) refuse("more than one kind, or none, has that size: name the kind.");
    } else {
      refuse("it says neither the kind nor the size.");
    }
    if (!kind) return false;
    keg = keg_from_preset(*kind);
    if (has(KegField::nominal)) keg.nominal = nominal;
    return true;
  }
  std::string tag() {
    std::string tag = text(KegField::tag);
    // What our own export puts before a text that looks like a formula.
    if (tag.size() > 1 && tag[0] == '\'' &&
        std::string_view("=+-@").find(tag[1]) != std::string_view::npos) {
      tag.erase(0, 1);
    }
    if (tag.empty()) {
      refuse("the keg has no number.");
      return tag;
    }
    const std::size_t most = text_limit(KegRecord::kind, "tag");
    if (characters_in(tag) > most) {
      refuse(fmt::format("a number has at most {} characters.", most));
    } else if (tag.find('\n') != std::string::npos) {
      refuse("a number has no line break in it.");
    } else if (const auto [at, fresh] = seen_.try_emplace(folded_tag(tag), line_->number); !fresh) {
      refuse(fmt::format("{} is in the list twice, first in line {}.", tag, at->second));
    } else if (const KegStatus* known = status_.keg_by_tag(tag); known && known->record.in_use) {
      refuse(fmt::format("{} is registered already.", tag));
    }
    return tag;
  }
  static std::string folded_tag(const std::string& tag) {
    std::string low = tag;
    std::transform(low.begin(), low.end(), low.begin(), [](char c) {
      return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return low;
  }
  void read_owner(KegRecord& keg) {
    if (!has(KegField::owner)) return;
    const std::string low = folded(text(KegField::owner));
    if (const auto owner = from_word<Owner>(low)) {
      keg.owner = *owner;
    } else {
      refuse(fmt::format("“{}” is no owner: ours, rented or supplier.", text(KegField::owner)));
    }
  }
  void read_deposit(KegRecord& keg) {
    if (!has(KegField::deposit)) return;
    const auto amount = parser_.number(text(KegField::deposit));
    if (!amount || *amount < 0 || *amount > 1e7) {
      refuse(fmt::format("“{}” is no deposit.", text(KegField::deposit)));
    } else {
      keg.deposit_minor = std::llround(*amount * 100);
    }
  }
  void read_place(KegRecord& keg) {
    if (!has(KegField::place)) return;
    for (const PlaceStatus& place : status_.places) {
      if (place.record.in_use && folded(place.record.name) == folded(text(KegField::place))) {
        keg.place = place.record.place;
        return;
      }
    }
    refuse(fmt::format("“{}” is no registered place.", text(KegField::place)));
  }
  void check_size(const KegRecord& keg) {
    if (!sound_) return;
    if (keg.nominal <= units::litres(0) || keg.brimful <= units::litres(0)) {
      refuse("a keg of this kind needs both its size and its full volume.");
    } else if (keg.brimful < keg.nominal) {
      refuse("it would hold less to the brim than it is sold as holding.");
    }
  }

  const CsvFile& file_;
  const KegColumns& columns_;
  const CellarStatus& status_;
  const units::Parser& parser_;
  const CsvLine* line_ = nullptr;
  bool sound_ = true;
  std::map<std::string, std::size_t> seen_;
};

}  // namespace

std::string say(KegField field) {
  switch (field) {
    case KegField::tag:
      return "Number";
    case KegField::kind:
      return "Kind";
    case KegField::nominal:
      return "Size";
    case KegField::brimful:
      return "Full volume";
    case KegField::tare:
      return "Empty weight";
    case KegField::rated:
      return "Rated pressure";
    case KegField::coupler:
      return "Coupler or posts";
    case KegField::owner:
      return "Owner";
    case KegField::deposit:
      return "Deposit";
    case KegField::place:
      return "Place";
  }
  return {};
}

KegColumns matched_columns(const CsvLine& header) {
  KegColumns columns;
  for (std::size_t i = 0; i < header.fields.size(); ++i) {
    const auto at = heading_words().find(heading_of(header.fields[i]).name);
    if (at == heading_words().end()) continue;
    auto& column = columns[index_of(at->second)];
    if (!column) column = i;
  }
  return columns;
}

std::expected<std::vector<PlannedKeg>, std::vector<KegImportFault>> plan_kegs(
    const CsvFile& file, const KegColumns& columns, const CellarStatus& status,
    const units::Parser& parser) {
  if (!columns[index_of(KegField::tag)]) {
    return std::unexpected(
        std::vector<KegImportFault>{{0, "No column holds the kegs’ numbers: choose one."}});
  }
  LineReader reader(file, columns, status, parser);
  std::vector<PlannedKeg> kegs;
  for (const CsvLine& line : file.lines) {
    if (auto keg = reader.read(line)) kegs.push_back({line.number, std::move(*keg)});
    if (reader.faults.size() >= most_import_faults) break;
  }
  if (!reader.faults.empty()) return std::unexpected(std::move(reader.faults));
  return kegs;
}

}  // namespace ullage::report
