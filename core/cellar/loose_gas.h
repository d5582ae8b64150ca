// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas that counts for no account, so that nothing goes missing without a word:
// regulators that stand on no bottle, neither themselves nor by the regulator that
// feeds them, and kegs with the gas on of which nobody can say from which bottle.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/status.h"

namespace ullage::cellar {

struct LooseGas {
  std::vector<RegulatorRecord> regulators;  // in use, by name
  std::vector<std::string> on_those;        // tags of the kegs on them
  // Tags of kegs whose gas setting names no regulator, where there is more than one
  // supply and so nobody can tell which. With a single supply they are on its account.
  std::vector<std::string> unnamed;
};
// `status` with its accounts.
[[nodiscard]] LooseGas loose_gas(const CellarStatus&);

}  // namespace ullage::cellar
