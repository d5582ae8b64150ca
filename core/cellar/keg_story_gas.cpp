// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas on a keg, and whether the keg may stand it.
#include "core/cellar/keg_story.h"
#include "core/cellar/suggest.h"

namespace ullage::cellar {

namespace {

constexpr double rating_warned_at = 0.8;  // of the rated pressure

}  // namespace

void KegStory::pressure_seen(GaugePressure p, bool stays) {
  if (stays) out_.gas.now.unvented = units::in_pascals(p) > 0 ? std::optional(p) : std::nullopt;
  const auto rated = out_.record.rated_pressure;
  if (!rated || units::in_pascals(*rated) <= 0) return;
  if (p > *rated) {
    too_much_pressure_ = stays;
    pressure_lowered_ = false;
    put_right(Fault::near_rated);
    if (stays) {
      raise(Fault::over_rated, Severity::danger, message(MessageKey::bad_over_rated, p, *rated),
            message(MessageKey::bad_over_rated_detail), keg_task<Vented>(out_.record.keg));
    }
    raise(Fault::inspect_after_pressure, Severity::warning,
          message(MessageKey::bad_inspect_after_pressure, p, *rated),
          message(MessageKey::bad_inspect_after_pressure_detail),
          keg_task<Inspected>(out_.record.keg));
    return;
  }
  if (!stays) return;
  if (too_much_pressure_) pressure_lowered_ = true;
  if (units::in_pascals(p) > rating_warned_at * units::in_pascals(*rated)) {
    raise(Fault::near_rated, Severity::warning, message(MessageKey::bad_near_rated, p, *rated),
          message(MessageKey::bad_near_rated_detail));
  } else {
    put_right(Fault::near_rated);
  }
}

void KegStory::gas_comes(const GasComing& by) {
  out_.gas.now.regulator = by.regulator;
  out_.gas.now.co2 = by.co2;
  out_.gas.now.dial = by.dial;
  out_.gas.dial.clear();
  if (by.dial) {
    if (const auto i = lookup_.find(*by.dial)) out_.gas.dial = i->name;
  }
}

void KegStory::gas_set(GaugePressure pressure, GasPurpose purpose, std::optional<LineId> line) {
  std::optional<GaugePressure> still_in = out_.gas.now.unvented;
  end_hold_test();
  gas_off_at_.reset();
  out_.gas.now.on = units::in_pascals(pressure) > 0;
  out_.gas.now.set = pressure;
  out_.gas.now.since = at();
  gas_comes(gas_coming(stated_gas(*entry_), regulator_of(line, at(), lookup_), at(), lookup_));
  out_.gas.entry = id();
  out_.gas.purpose = purpose;
  pressure_seen(pressure, true);
  // Turning the regulator down leaves the keg at what it held.
  if (still_in && *still_in > pressure) out_.gas.now.unvented = still_in;
}

void KegStory::on(const GasSet& g) {
  gas_set(g.pressure, g.purpose, out_.on_line ? std::optional(out_.on_line->line) : std::nullopt);
  if (holds_beer()) since_filling_.push_back(entry_);
}

void KegStory::on(const GasOff&) {
  if (out_.gas.now.on || !gas_off_at_) gas_off_at_ = at();
  out_.gas.now.on = false;
  out_.gas.now.since = at();
  pressure_lowered_ = pressure_lowered_ || too_much_pressure_;
  if (holds_beer()) since_filling_.push_back(entry_);
}

void KegStory::on(const Vented& v) {
  end_hold_test();
  out_.gas.now.unvented.reset();
  if (v.to_pressure && units::in_pascals(*v.to_pressure) > 0) out_.gas.now.unvented = v.to_pressure;
  put_right(Fault::opened_unvented);
  put_right(Fault::filled_under_pressure);
  const auto rated = out_.record.rated_pressure;
  const bool low_now = !rated || !v.to_pressure || *v.to_pressure <= *rated;
  if (too_much_pressure_ && pressure_lowered_ && low_now) {
    too_much_pressure_ = false;
    put_right(Fault::over_rated);
  }
  if (!out_.gas.now.on) put_right(Fault::near_rated);
  // With the gas still on at the regulator's pressure the keg fills up again.
  if (out_.gas.now.on) out_.gas.now.unvented = out_.gas.now.set;
  if (holds_beer()) since_filling_.push_back(entry_);
}

void KegStory::on(const Rocked&) {
  if (holds_beer()) since_filling_.push_back(entry_);
}

}  // namespace ullage::cellar
