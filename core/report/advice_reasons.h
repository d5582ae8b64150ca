// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a piece of advice stands on, as plain lines: its inputs with their age, and
// where it was reckoned, the equation with its source and how sure that is. Advice
// that only repeats what was logged (held back, past its date) has no equation.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/laws.h"
#include "core/report/say.h"

namespace ullage::report {

[[nodiscard]] const Law* law_of(const cellar::Advice&);  // null where nothing was reckoned
[[nodiscard]] std::vector<std::string> advice_reasons(const cellar::Advice&, const Speaker&);

}  // namespace ullage::report
