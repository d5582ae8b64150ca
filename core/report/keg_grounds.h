// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of what is shown about a keg, from its status. Each answers empty
// grounds (`empty()`) where the keg has no such number and no reason for that.
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
[[nodiscard]] Grounds run_out_grounds(const KegSubject&);  // on tap
[[nodiscard]] Grounds temperature_grounds(const KegSubject&);
[[nodiscard]] Grounds serving_pressure_grounds(const KegSubject&);

}  // namespace ullage::report
