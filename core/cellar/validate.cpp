// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/validate.h"

#include <cmath>
#include <type_traits>

#include "core/cellar/act_check.h"
#include "core/cellar/field_walk.h"
#include "core/cellar/limits.h"
#include "core/units/magnitude.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

template <class T>
inline constexpr bool is_registered_id = requires(const T& id) {
  { subject(id) } -> std::same_as<SubjectRef>;
};

template <class T>
constexpr Measure measure_of() {
  if constexpr (std::is_same_v<T, Length>) return Measure::length;
  if constexpr (std::is_same_v<T, Volume>) return Measure::volume;
  if constexpr (std::is_same_v<T, Mass>) return Measure::mass;
  if constexpr (std::is_same_v<T, units::Duration>) return Measure::duration;
  if constexpr (std::is_same_v<T, GaugePressure>) return Measure::gauge_pressure;
  if constexpr (std::is_same_v<T, PressureDifference>) return Measure::pressure_difference;
  if constexpr (std::is_same_v<T, Temperature>) return Measure::temperature;
  if constexpr (std::is_same_v<T, TemperatureDifference>) return Measure::temperature_difference;
  if constexpr (std::is_same_v<T, Co2Concentration>) return Measure::co2_concentration;
  if constexpr (std::is_same_v<T, SpecificGravity>) return Measure::specific_gravity;
  if constexpr (std::is_same_v<T, units::Abv>) return Measure::abv;
  if constexpr (std::is_same_v<T, MoleFraction>) return Measure::mole_fraction;
  if constexpr (std::is_same_v<T, units::Fraction>) return Measure::fraction;
  if constexpr (std::is_same_v<T, double>) return Measure::plain_number;
  return Measure::count;
}

// A bound as a message tells it.
template <class T>
MessageArg bound(double magnitude) {
  if constexpr (std::is_same_v<T, Co2Concentration>) {
    return units::to_volumes(Co2Concentration(magnitude));
  } else if constexpr (std::is_same_v<T, MoleFraction>) {
    return units::fraction(magnitude);
  } else if constexpr (std::is_arithmetic_v<T>) {
    return static_cast<std::int64_t>(magnitude);
  } else {
    return units::from_magnitude<T>(magnitude);
  }
}

std::string_view word_of(SubjectKind kind) {
  constexpr auto words = std::to_array<std::string_view>({"keg", "beer", "batch", "place", "line",
                                                          "gas bottle", "regulator", "instrument",
                                                          "piece of hose", "rule", "cellar"});
  return words[static_cast<std::size_t>(kind)];
}

// Days that a calendar on the wall of a cellar can show.
constexpr Date first_day{std::chrono::local_days(std::chrono::year(1900) / 1 / 1)};
constexpr Date last_day{std::chrono::local_days(std::chrono::year(2200) / 1 / 1)};
constexpr Instant first_instant{std::chrono::sys_days(std::chrono::year(1900) / 1 / 1)};

constexpr std::uint32_t lowest_of_length[] = {0, 0, 0x80, 0x800, 0x10000};

// The number of characters, or nullopt when it is not UTF-8 or holds control
// characters. Line breaks and tabs are allowed in notes.
std::optional<std::size_t> count_characters(std::string_view text, bool lines_allowed) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size(); ++count) {
    const auto first = static_cast<unsigned char>(text[i]);
    const std::size_t length = first < 0x80              ? 1
                               : (first & 0xe0U) == 0xc0 ? 2
                               : (first & 0xf0U) == 0xe0 ? 3
                               : (first & 0xf8U) == 0xf0 ? 4
                                                         : 0;
    if (length == 0 || i + length > text.size()) return std::nullopt;
    std::uint32_t point = length == 1 ? first : first & (0x7fU >> length);
    for (std::size_t k = 1; k < length; ++k) {
      const auto next = static_cast<unsigned char>(text[i + k]);
      if ((next & 0xc0U) != 0x80) return std::nullopt;
      point = (point << 6U) | (next & 0x3fU);
    }
    const bool surrogate = point >= 0xd800 && point <= 0xdfff;
    if (point < lowest_of_length[length] || point > 0x10ffff || surrogate) return std::nullopt;
    const bool line_or_tab = point == '\n' || point == '\r' || point == '\t';
    const bool control = point < 0x20 || (point >= 0x7f && point < 0xa0);
    if (control && !(lines_allowed && line_or_tab)) return std::nullopt;
    i += length;
  }
  return count;
}

bool is_blank(std::string_view text) {
  return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

}  // namespace

ActCheck::ActCheck(const Act& act, const Journal& journal, const Register& reg, Instant now)
    : act_(act), journal_(journal), register_(reg), now_(now) {
  if (act.drafts.empty()) refuse("", MessageKey::fault_nothing_to_log);
  check_text("", "by", act.by);
  for (draft_ = 0; draft_ < act.drafts.size(); ++draft_) {
    check_header();
    check_payload();
  }
}

std::vector<Fault> ActCheck::faults() && { return std::move(faults_); }

void ActCheck::check_header() {
  const Draft& d = draft();
  if (d.happened_at > now_ + future_allowed) {
    refuse("happened_at", MessageKey::fault_future, now_);
  } else if (d.happened_at < first_instant) {
    refuse("happened_at", MessageKey::fault_too_early, first_instant);
  }
  check_text("", "note", d.note);
  if (d.replaces) check_replaced();
}

void ActCheck::check_replaced() {
  const Entry* replaced = journal_.find(present(draft().replaces));
  const auto about_journal = [](const Payload& p) {
    return holds_alternative<Struck>(p) || holds_alternative<Restored>(p);
  };
  if (replaced == nullptr) {
    refuse("", MessageKey::fault_unknown_subject, std::string("entry"));
  } else if (about_journal(replaced->payload) || about_journal(draft().payload)) {
    refuse("", MessageKey::fault_not_correctable);
  } else if (journal_.standing(replaced->header.id) == Standing::struck) {
    refuse("", MessageKey::fault_already_struck);
  } else if (journal_.standing(replaced->header.id) == Standing::replaced) {
    refuse("", MessageKey::fault_already_replaced);
  }
}

void ActCheck::check_payload() {
  const std::string_view kind = kind_of(draft().payload);
  for_each_field(draft().payload, [&](std::string_view column, const auto& field) {
    check_field(kind, column, field);
  });
  check_rules(*this, draft().payload);
}

template <class T>
void ActCheck::check_field(std::string_view kind, std::string_view column, const T& field) {
  if constexpr (IsOptional<T>::value) {
    if (field) check_field(kind, column, *field);
  } else if constexpr (is_registered_id<T>) {
    check_known(column, subject(field));
  } else if constexpr (std::is_same_v<T, std::string>) {
    check_text(kind, column, field);
  } else if constexpr (std::is_same_v<T, Date>) {
    check_day(column, field);
  } else if constexpr (std::is_same_v<T, Instant>) {
    if (field > now_ + future_allowed) refuse(column, MessageKey::fault_future, now_);
    if (field < first_instant) refuse(column, MessageKey::fault_too_early, first_instant);
  } else if constexpr (!std::is_same_v<T, bool> && !std::is_enum_v<T> &&
                       !std::is_same_v<T, EntryId>) {
    check_number(kind, column, field);
  }
}

template <class T>
void ActCheck::check_number(std::string_view kind, std::string_view column, T value) {
  const NumberLimits limits = number_limits(kind, column, measure_of<T>());
  double magnitude = 0;
  if constexpr (units::Quantity<T>) {
    magnitude = units::to_magnitude(value);
  } else {
    magnitude = static_cast<double>(value);
  }
  if (!std::isfinite(magnitude)) {
    refuse(column, MessageKey::fault_not_finite);
  } else if (magnitude < limits.low) {
    refuse(column, MessageKey::fault_below, bound<T>(limits.low));
  } else if (magnitude > limits.high) {
    refuse(column, MessageKey::fault_above, bound<T>(limits.high));
  }
}

void ActCheck::check_text(std::string_view kind, std::string_view column, std::string_view text) {
  const auto count = count_characters(text, column == "note");
  const std::size_t limit = text_limit(kind, column);
  if (!count) {
    refuse(column, MessageKey::fault_not_text);
  } else if (*count > limit) {
    refuse(column, MessageKey::fault_too_long, static_cast<std::int64_t>(limit));
  } else if (is_blank(text) && text_required(kind, column)) {
    refuse(column, MessageKey::fault_required);
  }
}

void ActCheck::check_known(std::string_view field, SubjectRef s) {
  if (s.uuid == Uuid{}) {
    refuse(field, MessageKey::fault_required);
    return;
  }
  if (register_.find(s) != nullptr) return;
  for (const Draft& d : act_.drafts) {
    if (registers(d.payload) == s) return;
  }
  refuse(field, MessageKey::fault_unknown_subject, std::string(word_of(s.kind)));
}

void ActCheck::check_day(std::string_view field, Date day) {
  if (day < first_day) refuse(field, MessageKey::fault_below, first_day);
  if (day > last_day) refuse(field, MessageKey::fault_above, last_day);
}

bool ActCheck::struck(EntryId id) const {
  bool struck = journal_.struck_by(id) != nullptr;
  for (std::size_t i = 0; i < draft_; ++i) {
    const Payload& earlier = act_.drafts[i].payload;
    if (const auto* s = get_if<Struck>(&earlier); s && s->target == id) struck = true;
    if (const auto* r = get_if<Restored>(&earlier); r && r->target == id) struck = false;
  }
  return struck;
}

std::vector<Fault> validate(const Act& act, const Journal& journal, const Register& reg,
                            Instant now) {
  return ActCheck(act, journal, reg, now).faults();
}

}  // namespace ullage::cellar
