// SPDX-License-Identifier: GPL-3.0-or-later
//
// A carbonation history made ready for many runs: every number plain SI, every
// named source of error looked up once. A run then takes one offset a source (in
// its own 95 % half-widths) and never compares a name. Internal to core/physics.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/physics/carbonation.h"

namespace ullage::physics {

// Which source is moved off its value, and by how many half-widths.
struct Shift {
  units::ErrorSource source;
  double half_widths = 0;
};

// One offset for each source, in half-widths.
using Offsets = std::vector<double>;

struct Lean {
  std::size_t source = 0;
  double half_width = 0;
};

// A value and the stretch of the history's leans that move it.
struct Uncertain {
  double value = 0;
  std::uint32_t first = 0;
  std::uint32_t last = 0;
};

struct PlainStep {
  enum class Kind { gas_on, gas_off, vented, place, beer_read, rocked, drawn, co2_read };
  double at_s = 0;
  Kind kind = Kind::gas_off;
  Uncertain uncertain;  // gas_on Pa gauge; place, beer_read K; co2_read volumes
  double exact = 0;     // gas_on CO2 share; vented Pa gauge; rocked s; drawn m3
};

struct PlainRate {
  double median_s = 1;
  double log_factor = 0;
  std::size_t source = 0;
  [[nodiscard]] double high_s() const { return median_s * std::exp(log_factor); }
};

// Where a source enters: in how many settings of gas and place, and whether
// anywhere else. What enters once only, in one setting, is one reading's own
// error; few such are run each on its own, many are followed together
// (reading_spread.h) and have no offset.
struct SourceUse {
  int settings = 0;
  bool elsewhere = false;
  bool bends = false;    // enters as a temperature, a set pressure or a rate
  bool thermal = false;  // moves the beer's temperature
  double from_s = std::numeric_limits<double>::infinity();  // until then it moves nothing
  [[nodiscard]] bool single_reading() const { return settings == 1 && !elsewhere; }
};

// History and rates must outlive it.
class PlainHistory {
 public:
  PlainHistory(const CarbonationHistory&, const CarbonationRates&);

  double brimful_m3 = 0;
  double beer_m3 = 0;
  double headspace_pa = 0;  // gauge
  double headspace_co2 = 1;
  Uncertain initial, ambient, start;
  std::vector<PlainStep> steps;
  PlainRate resting, rocking, cooling;
  std::size_t equation = 0;

  [[nodiscard]] std::size_t source_count() const { return sources_.size(); }
  [[nodiscard]] const units::ErrorSource& source(std::size_t i) const { return *sources_[i]; }
  // The index of a source that is run up and down; none for those followed
  // together and for those the history does not know.
  [[nodiscard]] std::optional<std::size_t> index_of(const units::ErrorSource&) const;
  [[nodiscard]] bool pooled(std::size_t source) const {
    return pools_ && uses_[source].single_reading();
  }
  [[nodiscard]] bool pools() const { return pools_; }
  // The beer's CO2 is a straight line in it, near enough: CO2 at the start, air
  // pressure, the equation's offset. One run then tells both sides.
  [[nodiscard]] bool straight(std::size_t source) const { return !uses_[source].bends; }
  // Unused: a rate of rocking where nobody rocked.
  [[nodiscard]] bool used(std::size_t source) const {
    return uses_[source].settings > 0 || uses_[source].elsewhere;
  }
  // Up to this time the beer is the same wherever the source stands.
  [[nodiscard]] double moves_from(std::size_t source) const { return uses_[source].from_s; }
  // Those that move the beer's temperature.
  [[nodiscard]] const std::vector<std::size_t>& thermal_sources() const { return thermal_; }
  // Squared half-widths of what is followed together, by step of the history.
  [[nodiscard]] double pooled_square(const Uncertain&) const;

  [[nodiscard]] double at(const Uncertain& e, std::span<const double> offsets) const {
    double v = e.value;
    for (std::uint32_t i = e.first; i < e.last; ++i)
      v += leans_[i].half_width * offsets[leans_[i].source];
    return v;
  }
  [[nodiscard]] static double at(const PlainRate&, std::span<const double> offsets);
  [[nodiscard]] Offsets offsets(std::span<const Shift>) const;

 private:
  enum class Enters { straight, bent, as_temperature };
  template <class Q>
  Uncertain take(const units::Estimate<Q>&, double at_s, bool setting, Enters);
  // Of no use before `from_s`; at infinity, of none at all.
  PlainRate take(const LogEstimate<units::Duration>&, double from_s);
  std::size_t source_index(const units::ErrorSource&);

  // They stand in the history and the rates, which outlive this.
  std::vector<const units::ErrorSource*> sources_;
  std::vector<SourceUse> uses_;
  std::unordered_map<std::string_view, std::size_t> index_;
  std::vector<Lean> leans_;
  std::vector<std::size_t> thermal_;
  bool pools_ = false;
};

}  // namespace ullage::physics
