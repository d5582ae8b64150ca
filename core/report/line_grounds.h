// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of what is shown about a line: pressures, the pour, the pressure
// profile, the day it is to be cleaned. Of a what-if they say what was tried.
#pragma once

#include <optional>
#include <string>

#include "core/cellar/due_work.h"
#include "core/cellar/pour_state.h"
#include "core/report/grounds.h"
#include "core/report/say.h"

namespace ullage::report {

// A copy of what the numbers stand on, so that reasons can be asked for later.
struct LineSubject {
  cellar::PourSetting setting;
  cellar::PourOutlook outlook;
  cellar::WhatIf tried;  // empty: as things stand
  cellar::LineRecord line;
  std::optional<cellar::Instant> gas_since;
  std::string place;  // of the keg
  std::optional<cellar::Instant> place_read;
  Speaker speaker;
};
// As things stand; `line` must pour.
[[nodiscard]] LineSubject line_subject(const cellar::LineStatus& line, const cellar::CellarStatus&,
                                       const Speaker&);

// As typed, with what its dial may be off: "11.5 psi, may be 2 psi off".
[[nodiscard]] std::string say_set_pressure(const cellar::PourSetting&, const Speaker&);

[[nodiscard]] Grounds set_pressure_grounds(const LineSubject&);
[[nodiscard]] Grounds should_be_grounds(const LineSubject&);
[[nodiscard]] Grounds line_settles_grounds(const LineSubject&);
[[nodiscard]] Grounds glass_grounds(const LineSubject&);
[[nodiscard]] Grounds profile_grounds(const LineSubject&);
[[nodiscard]] Grounds right_length_grounds(const LineSubject&);
[[nodiscard]] Grounds right_pressure_grounds(const LineSubject&);
[[nodiscard]] Grounds right_bore_grounds(const LineSubject&);
[[nodiscard]] Grounds contents_grounds(const LineSubject&);
[[nodiscard]] Grounds lift_grounds(const LineSubject&);
[[nodiscard]] Grounds handbook_grounds(const LineSubject&);
[[nodiscard]] Grounds supersaturated_grounds(const LineSubject&);

// Why a line is to be cleaned by its day: its rule with reason and source, what
// was done last, other rules, whether it was put off. `due` is its row of
// due_line_cleaning; without one no rule is set.
[[nodiscard]] Grounds line_cleaning_grounds(const cellar::LineStatus&, const cellar::DueWork* due,
                                            const Speaker&);

}  // namespace ullage::report
