// SPDX-License-Identifier: GPL-3.0-or-later
//
// The grounds of what is shown about a gas supply. Each answers empty grounds
// where the account has no such number.
#pragma once

#include "core/cellar/gas_account.h"
#include "core/cellar/kegs_to_fill.h"
#include "core/report/grounds.h"
#include "core/report/say.h"

namespace ullage::report {

[[nodiscard]] Grounds gas_now_grounds(const cellar::GasAccount&, const Speaker&);
[[nodiscard]] Grounds gas_lasts_grounds(const cellar::GasAccount&, const Speaker&);
[[nodiscard]] Grounds gas_use_grounds(const cellar::GasAccount&, const Speaker&);
[[nodiscard]] Grounds gas_loss_grounds(const cellar::GasAccount&, const Speaker&);
[[nodiscard]] Grounds gas_cost_grounds(const cellar::GasAccount&, const Speaker&);
[[nodiscard]] Grounds gas_planned_grounds(const cellar::GasAccount&, const Speaker&);
// Empty where gas_for() has nothing to say.
[[nodiscard]] Grounds gas_for_kegs_grounds(const cellar::KegsToFill&, const cellar::GasAccount&,
                                           const Speaker&);
[[nodiscard]] Grounds gas_gauge_grounds(const cellar::GasAccount&, std::size_t bottle,
                                        const Speaker&);
[[nodiscard]] Grounds liquid_full_grounds(const cellar::GasAccount&, std::size_t bottle,
                                          const Speaker&);
// How long each branch stays shut to find the leak.
[[nodiscard]] Grounds isolation_wait_grounds(const cellar::GasAccount&, const Speaker&);

// Money is in the cellar's own currency, which the program does not know.
[[nodiscard]] std::string say_money(double minor, const Speaker&);  // 1234: "12.34"

}  // namespace ullage::report
