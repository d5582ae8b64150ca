// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of what is shown about a keg, from its status. Each answers empty
// grounds (`empty()`) where the keg has no such number and no reason for that. Of the
// cellar they look at its altitude, places, regulators and instruments.
#pragma once

#include "core/cellar/status.h"
#include "core/report/grounds.h"
#include "core/report/say.h"

namespace ullage::report {

struct KegSubject {
  const cellar::CellarStatus& cellar;
  const cellar::KegStatus& keg;
  const Speaker& speaker;
};

[[nodiscard]] Grounds co2_grounds(const KegSubject&);
[[nodiscard]] Grounds settles_grounds(const KegSubject&);
[[nodiscard]] Grounds level_grounds(const KegSubject&);
[[nodiscard]] Grounds temperature_grounds(const KegSubject&);
[[nodiscard]] Grounds serving_pressure_grounds(const KegSubject&);
[[nodiscard]] Grounds gas_set_grounds(const KegSubject&);      // as it was logged
[[nodiscard]] Grounds uptake_grounds(const KegSubject&);       // usual and learned
[[nodiscard]] Grounds run_out_grounds(const KegSubject&);      // on tap
[[nodiscard]] Grounds hold_result_grounds(const KegSubject&);  // of its last hold test
// What a step of its preparation left: the oxygen after a purge, the verdict of a hold
// test. Empty of steps whose result is no number.
[[nodiscard]] Grounds step_grounds(const KegSubject&, const cellar::PreparationStep&);

}  // namespace ullage::report
