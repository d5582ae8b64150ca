// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fold behind gas_draws.h: takes a keg's entries in story order, each spell
// of gas cut at the moments asked for.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/cellar/gas_given.h"
#include "core/cellar/keg_timeline.h"
#include "core/cellar/plain_draws.h"
#include "core/physics/gas_use.h"

namespace ullage::cellar {

// One filling of the keg, with its timeline while it lasts.
struct GasFilling {
  Instant from{};
  std::optional<Instant> emptied, tapped;
  const KegTimeline* timeline = nullptr;  // nullptr: of no interest
  bool by_us = false;
};
struct GasSpell {
  Instant from{};
  PressureEstimate pressure;
  std::optional<RegulatorId> regulator;
  MoleFraction co2 = units::mole_fraction(1);
  EntryId set_by;
};
struct GasDrawState {
  std::optional<GasFilling> filling;
  std::optional<GasSpell> spell;
  std::optional<RegulatorId> usual;
  std::optional<LineId> line;                                       // it is on
  std::optional<GaugePressure> standing = units::gauge_pascals(0);  // nullopt: not known
  std::optional<Co2Estimate> co2_before;
};
// Of two states between fillings.
[[nodiscard]] bool same(const GasDrawState&, const GasDrawState&);

class GasDrawStory {
 public:
  // Nothing from before `first`; `moments` in rising order.
  GasDrawStory(const KegRecord&, Lookup&, SourceTable&, Instant first,
               const std::vector<Instant>& moments, GasDrawState);

  void take(const Entry&);
  // Before the entry that begins a filling: how it was, and whether it was emptied.
  void next_filling(const KegTimeline* timeline, std::optional<Instant> emptied) {
    next_timeline_ = timeline;
    next_emptied_ = emptied;
  }
  void end_filling(Instant);
  // Up to now; the gas stays on.
  void flush(Instant);

  [[nodiscard]] const GasDrawState& state() const { return s_; }
  void go_on_from(const GasDrawState& s) { s_ = s; }
  // What was drawn since this was last called.
  [[nodiscard]] PlainDraws take_draws() { return std::exchange(out_, PlainDraws{}); }

 private:
  template <class Other>
  void on(const Other&) {}
  void on(const GasSet&);
  void on(const GasOff&) { close(at()); }
  void on(const Vented&);
  void on(const HoldReading&);
  void on(const Purged&);
  void on(const Filled&);
  void on(const Received&);
  void on(const Found&);
  void on(const Tapped&);
  void on(const Untapped&);
  void on(const Emptied&) { end_filling(at()); }
  void on(const Cleaned&) { opened(); }
  void on(const Sanitised&) { opened(); }
  void on(const Inspected& i) {
    if (i.seals_renewed) opened();
  }

  [[nodiscard]] Instant at() const { return entry_->header.happened_at; }
  [[nodiscard]] const std::string& tag() const { return record_.tag; }
  [[nodiscard]] static units::ErrorSource method() { return {"gas use: method"}; }
  [[nodiscard]] std::optional<VolumeEstimate> beer(Instant) const;
  [[nodiscard]] VolumeEstimate headspace(Instant) const;
  [[nodiscard]] TemperatureEstimate temperature(Instant) const;
  [[nodiscard]] physics::SupplyState supply(const GasSpell&, Instant) const;
  [[nodiscard]] std::optional<Mass> purge_use(const Purged&, Volume space) const;

  [[nodiscard]] GasSpell spell_set_now(GaugePressure);
  [[nodiscard]] GasSpell spell_by(const GasComing&, const Entry& set, GaugePressure);
  void opened();
  void begin_filling(bool by_us);
  void fill_headspace(const GasSpell&, GasWork);
  void close(Instant end);
  void between(const GasSpell&, Instant a, Instant b);
  void carbonate(const GasSpell&, Instant a, Instant b, const VolumeEstimate& held);
  void note_draw(Instant from, Instant to, GasWork, std::optional<RegulatorId>,
                 const MassEstimate&);

  const KegRecord& record_;
  Lookup& lookup_;
  SourceTable& sources_;
  Readings readings_;
  Instant first_{};
  const std::vector<Instant>& moments_;
  units::AbsolutePressure ambient_;
  const Entry* entry_ = nullptr;
  const KegTimeline* next_timeline_ = nullptr;
  std::optional<Instant> next_emptied_;
  GasDrawState s_;
  PlainDraws out_;
};

}  // namespace ullage::cellar
