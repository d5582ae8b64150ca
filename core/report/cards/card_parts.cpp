// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cards/card_parts.h"

#include <fmt/format.h>

#include "core/cellar/suggest.h"
#include "core/physics/atmosphere.h"

namespace ullage::report::cards {

using physics::Subject;

KegCard cant_tell(std::string why, std::vector<CardAct> wanted) {
  KegCard card;
  card.verdict = "Can’t tell: " + std::move(why);
  card.can_tell = false;
  card.acts = std::move(wanted);
  return card;
}

std::string why_refused(const physics::RangeError& e, const units::Printer& print) {
  switch (e.subject) {
    case Subject::temperature:
      return fmt::format("the beer’s {} is outside {}, where the equation holds",
                         print.print(units::kelvin(e.value)),
                         print.print_range(units::kelvin(e.low), units::kelvin(e.high)));
    case Subject::beer_volume:
    case Subject::headspace:
      return fmt::format("{} of beer leave no headspace to reckon with; say how much is in it",
                         print.print(units::cubic_metres(e.value)));
    case Subject::co2:
    case Subject::co2_above_water:
      return fmt::format("{} is beyond what the equation covers",
                         print.print(units::volumes_of_co2(e.value)));
    case Subject::absolute_pressure:
      return "the pressure would be beyond what the equation covers";
    case Subject::gauge_pressure:
      return fmt::format("{} is not low enough", print.print(units::gauge_pascals(e.value)));
    case Subject::cycles:
      return fmt::format("it takes more than {:.0f}", e.high);
    default:
      return "a value is beyond what the equation covers";
  }
}

std::optional<units::AbsolutePressure> air_of(const KegSubject& s) {
  const auto air =
      physics::ambient_pressure(s.cellar.cellar ? s.cellar.cellar->altitude : units::metres(0));
  return air ? std::optional(*air) : std::nullopt;
}

CardAct weigh_it(const KegSubject& s) {
  return {"Say how much is left…", cellar::keg_task<cellar::LevelReading>(s.keg.record.keg)};
}

CardAct read_pressure(const KegSubject& s) {
  return {"Log a pressure at rest…",
          cellar::keg_task<cellar::CarbonationReading>(s.keg.record.keg)};
}

std::string say_count(int likely, int fewest, std::optional<int> most) {
  if (!most) return fmt::format("{} (at least {})", likely, fewest);
  if (fewest == likely && *most == likely) return std::to_string(likely);
  return fmt::format("{} ({} to {})", likely, fewest, *most);
}

std::string plural(int n, const std::string& one) { return n == 1 ? one : one + "s"; }

}  // namespace ullage::report::cards
