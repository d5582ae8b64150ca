// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/say.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/cellar/presets.h"
#include "core/report/phrases.h"

namespace ullage::report {

namespace {

using cellar::Instant;
using cellar::Window;

// A forecast is good to the hour at most, and beyond two days to the day.
units::Duration rounded(Instant from, Instant to) {
  const units::Duration d = cellar::between(from, to);
  const double hours = std::max(1.0, std::round(units::in_hours(d)));
  return hours < 48 ? units::hours(hours) : units::days(std::round(hours / 24));
}

// "5 h to 3 days", "1 to 3 days"
std::string say_span(Instant now, Instant earliest, Instant latest, const Speaker& s) {
  const units::Duration from = rounded(now, earliest), to = rounded(now, latest);
  const double f = units::in_hours(from), t = units::in_hours(to);
  const bool whole_day = f == 24 && t >= 48;
  if (whole_day || (f < 48) == (t < 48)) return s.printer.print_range(from, to);
  return s.printer.print(from) + " to " + s.printer.print(to);
}

// "Fri 27 Nov (1 to 3 days)"
std::string say_window(const Window& w, const Speaker& s) {
  std::string day = say_day(w.likely, s);
  if (w.likely <= s.now) return day;
  const Instant earliest = std::max(w.earliest, s.now);
  if (!w.latest) return day + " (" + s.printer.print(rounded(s.now, earliest)) + " or more)";
  return day + " (" + say_span(s.now, earliest, *w.latest, s) + ")";
}

struct ArgumentSayer {
  const Speaker& s;
  std::string_view how;

  std::string operator()(const std::string& text) const { return text; }
  std::string operator()(std::int64_t n) const {
    if (how == "days") return say_days(n);
    return s.printer.number(static_cast<double>(n), 0);
  }
  std::string operator()(Instant t) const {
    if (how == "age") return say_age(t, s);
    return how == "day" ? say_day(t, s) : say_time(t, s);
  }
  std::string operator()(cellar::Date d) const { return say_date(d, s); }
  std::string operator()(const Window& w) const {
    return how == "likely" ? say_day(w.likely, s) : say_window(w, s);
  }
  std::string operator()(units::Length l) const {
    return how == "bore" ? s.printer.print_bore(l) : s.printer.print(l);
  }
  template <class Quantity>
  std::string operator()(const Quantity& q) const {
    return s.printer.print(q);
  }
};

std::optional<double> volumes_in(const cellar::MessageArg& arg) {
  if (const auto* estimate = get_if<units::Estimate<units::Co2Volumes>>(&arg))
    return estimate->value().count();
  if (const auto* value = get_if<units::Co2Volumes>(&arg)) return value->count();
  return std::nullopt;
}

// "{1:over 2}": by how much CO2 one argument exceeds another.
std::optional<std::string> say_excess(std::size_t index, std::string_view how,
                                      const cellar::Message& m, const Speaker& s) {
  if (!how.starts_with("over ")) return std::nullopt;
  const auto than = static_cast<std::size_t>(how.back() - '0');
  if (than >= m.args.size()) return std::nullopt;
  const auto a = volumes_in(m.args[index]), b = volumes_in(m.args[than]);
  if (!a || !b) return std::nullopt;
  return s.printer.print(units::volumes_of_co2(*a - *b));
}

std::string say_argument(std::string_view placeholder, const cellar::Message& m, const Speaker& s) {
  const auto colon = placeholder.find(':');
  const std::string_view how =
      colon == std::string_view::npos ? std::string_view{} : placeholder.substr(colon + 1);
  const std::string_view digits = placeholder.substr(0, colon);
  std::size_t index = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), index);
  if (index >= m.args.size()) return "–";
  if (const auto excess = say_excess(index, how, m, s)) return *excess;
  return visit(ArgumentSayer{s, how}, m.args[index]);
}

}  // namespace

std::string say(const cellar::Message& m, const Speaker& s) {
  const std::string_view text = phrase(m.key, s.words);
  std::string out;
  std::size_t at = 0;
  while (at < text.size()) {
    const auto open = text.find('{', at);
    out += text.substr(at, open - at);
    if (open == std::string_view::npos) break;
    const auto close = text.find('}', open);
    out += say_argument(text.substr(open + 1, close - open - 1), m, s);
    at = close + 1;
  }
  return out;
}

std::string say_days(std::int64_t n) { return std::to_string(n) + (n == 1 ? " day" : " days"); }

std::string say(cellar::Phase phase, const Speaker& s) {
  using cellar::Phase;
  const bool us = s.words == RegionalWords::us;
  switch (phase) {
    case Phase::unknown:
      return "not known";
    case Phase::dirty:
      return "dirty";
    case Phase::clean:
      return "clean";
    case Phase::sanitised:
      return us ? "sanitized" : "sanitised";
    case Phase::purged:
      return "purged";
    case Phase::carbonating:
      return "carbonating";
    case Phase::conditioning:
      return "conditioning";
    case Phase::ready:
      return "ready";
    case Phase::on_tap:
      return "on tap";
  }
  return {};
}

std::string held_back_because(const cellar::KegStatus& keg) {
  if (!keg.quarantined || keg.quarantined->args.empty()) return {};
  const auto* reason = boost::variant2::get_if<std::string>(&keg.quarantined->args.front());
  return reason ? *reason : std::string();
}

std::string say(cellar::KegKind kind, const Speaker& s) {
  using cellar::KegKind;
  const auto sized = [&](const char* name) {
    const cellar::KegPreset* preset = cellar::keg_preset(kind);
    return std::string(name) + ", " + s.printer.print(preset->nominal);
  };
  switch (kind) {
    case KegKind::ball_lock_9:
    case KegKind::ball_lock_11:
    case KegKind::ball_lock_19:
      return sized("Soda keg, ball lock");
    case KegKind::pin_lock_9:
    case KegKind::pin_lock_11:
    case KegKind::pin_lock_19:
      return sized("Soda keg, pin lock");
    case KegKind::us_half_barrel:
      return sized("Half barrel");
    case KegKind::us_quarter_barrel:
      return sized("Quarter barrel");
    case KegKind::us_slim_quarter:
      return sized("Slim quarter barrel");
    case KegKind::us_sixth_barrel:
      return sized("Sixth barrel");
    case KegKind::keg_20:
    case KegKind::keg_30:
    case KegKind::keg_50:
      return sized("Keg");
    case KegKind::custom:
      return "Other keg";
  }
  return {};
}

}  // namespace ullage::report
