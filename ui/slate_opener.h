// SPDX-License-Identifier: GPL-3.0-or-later
//
// The way from anywhere to the slate: a
// navigator that has one opens it, any other does nothing.
#pragma once

#include <optional>
#include <string>

#include "ui/context.h"

namespace ullage::ui {

// The computation of that key (core/report/slate), with the keg's figures in
// its fields.
class SlateOpener {
 public:
  virtual ~SlateOpener() = default;
  virtual void work_out(const std::string& computation, std::optional<cellar::KegId>) = 0;
};

inline void work_out(Navigator& navigator, const std::string& computation,
                     std::optional<cellar::KegId> keg) {
  if (auto* opener = dynamic_cast<SlateOpener*>(&navigator)) opener->work_out(computation, keg);
}

}  // namespace ullage::ui
