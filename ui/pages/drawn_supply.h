// SPDX-License-Identifier: GPL-3.0-or-later
//
// A gas account as its drawing shows it: each secondary regulator after the one
// that feeds it.
#pragma once

#include "core/cellar/gas_account.h"
#include "core/units/printing.h"
#include "ui/widgets/gas_drawing.h"

namespace ullage::ui {

[[nodiscard]] DrawnSupply drawn_supply(const cellar::GasAccount&, const units::Printer&);

}  // namespace ullage::ui
