// SPDX-License-Identifier: GPL-3.0-or-later
//
// From an answer to the act it leads to.
#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "core/cellar/suggest.h"
#include "core/report/slate/prefill.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using cellar::KegStatus;

double answered(const Answer& a) { return magnitude_of(present(a.values.front().value)); }

// What a dial can be set to: a tenth of a psi.
units::GaugePressure to_set(double pascals_above) {
  return units::gauge_psi(std::round(units::in_psi(units::pascals(pascals_above)) * 10) / 10);
}

// By what was read, the surest of it; what was joined is no reading.
std::optional<cellar::SuggestedTask> level_task(const Inputs& in, cellar::KegId keg) {
  cellar::LevelReading reading;
  if (in.has("gross")) {
    reading.method = cellar::LevelMethod::weight;
    reading.gross_mass = in.get<units::Mass>("gross");
  } else if (in.has("glasses")) {
    reading.method = cellar::LevelMethod::glasses;
    reading.glasses = in.number("glasses");
    reading.glass_volume = in.get<units::Volume>("glass");
  } else if (in.has("dew")) {
    reading.method = cellar::LevelMethod::condensation_line;
    reading.fraction_left = in.get<units::Fraction>("dew");
  } else if (in.has("heft")) {
    reading.method = cellar::LevelMethod::heft;
    reading.fraction_left = in.get<units::Fraction>("heft");
  } else {
    return std::nullopt;
  }
  return cellar::keg_task<cellar::LevelReading>(keg, reading);
}

std::optional<cellar::SuggestedTask> purge_act_task(std::string_view key, const Inputs& in,
                                                    cellar::KegId keg) {
  cellar::Purged purge;
  if (key == "purge_cycles") {
    purge.cycles = std::lround(in.number("cycles"));
    purge.pressure = in.get<units::GaugePressure>("pressure");
  } else if (key == "purge_push") {
    purge.method = cellar::PurgeMethod::pushed_liquid;
    purge.pressure = in.get<units::GaugePressure>("pressure");
  } else if (key == "purge_sweep") {
    purge.method = cellar::PurgeMethod::swept;
    purge.vessel_volumes = in.number("volumes");
  } else {
    return std::nullopt;
  }
  return cellar::keg_task<cellar::Purged>(keg, purge);
}

// As set, or as the answer has it: those that change what gas stands on the keg.
std::optional<cellar::SuggestedTask> gas_act_task(std::string_view key, const Inputs& in,
                                                  const Answer& a, const KegStatus& keg) {
  using cellar::GasPurpose;
  if (key == "burst" || key == "set_and_wait") {
    return cellar::gas_task(keg, in.get<units::GaugePressure>("pressure"),
                            key == "burst" ? GasPurpose::burst : GasPurpose::set_and_wait);
  }
  if (key == "rescue") {
    cellar::Vented prefill;
    prefill.to_pressure = in.get<units::GaugePressure>("vent_to");
    return cellar::keg_task<cellar::Vented>(keg.record.keg, prefill);
  }
  if (key == "rocking" && in.has("rocked")) {
    cellar::Rocked prefill;
    prefill.duration = in.get<units::Duration>("rocked");
    return cellar::keg_task<cellar::Rocked>(keg.record.keg, prefill);
  }
  constexpr std::array sets{"pressure_to_set", "line_pressure", "one_regulator"};
  if (std::find(sets.begin(), sets.end(), key) == sets.end() || answered(a) <= 0)
    return std::nullopt;
  return cellar::gas_task(keg, to_set(answered(a)), GasPurpose::serving);
}

// About the line that the keg is on.
std::optional<cellar::SuggestedTask> line_act_task(std::string_view key, const Inputs& in,
                                                   const Answer& a, const KegStatus& keg) {
  if (!keg.line) return std::nullopt;
  if (key == "timed_pour") {
    cellar::TimedPour pour;
    pour.volume = in.get<units::Volume>("glass");
    pour.duration = units::seconds(in.number("seconds"));
    pour.pressure = in.get<units::GaugePressure>("pressure");
    pour.temperature = in.get<units::Temperature>("temperature");
    return cellar::line_task(keg.line->line, pour);
  }
  // A line told by pieces has its lengths there, in its form.
  if (key == "line_length" && keg.line->length) {
    cellar::LineRecord changed = *keg.line;
    changed.length = units::metres(answered(a));
    return cellar::SuggestedTask{
        std::string(cellar::LineRecord::kind),
        cellar::subject(changed.line),
        cellar::Payload(boost::variant2::in_place_type<cellar::LineRecord>, changed),
        {}};
  }
  return std::nullopt;
}

}  // namespace

std::optional<cellar::SuggestedTask> leads_to(const Computation& c, const Inputs& in,
                                              const Answer& a, const KegStatus& keg) {
  const cellar::KegId id = keg.record.keg;
  if (c.key.starts_with("left_by_")) return level_task(in, id);
  if (auto purge = purge_act_task(c.key, in, id)) return purge;
  if (auto gas = gas_act_task(c.key, in, a, keg)) return gas;
  return line_act_task(c.key, in, a, keg);
}

}  // namespace ullage::report::slate
