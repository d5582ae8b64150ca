// SPDX-License-Identifier: GPL-3.0-or-later
//
// From a keg to the computations that fit it, with its own figures in the
// fields; and from an answer to the act it leads to, as a form filled in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/report/keg_grounds.h"
#include "core/report/slate/computation.h"

namespace ullage::report::slate {

struct Offer {
  std::string_view computation;  // its key
  std::string label;             // "When to lower the gas"
  Inputs inputs;                 // with how and when each came to be known
  // What the keg should tell and does not. A field in full view is left empty, one
  // of the further ones keeps what is assumed. A value beyond a field's limits leaves
  // it empty too and is told with it: "Beer in it (230 L is beyond this)".
  std::vector<std::string> to_fill_in, assumed;
};

// Most useful first; none for a keg that nothing is known of.
[[nodiscard]] std::vector<Offer> offers_for(const KegSubject&);

// The act that the answer leads to, filled in with it; nothing where it only
// tells something.
[[nodiscard]] std::optional<cellar::SuggestedTask> leads_to(const Computation&, const Inputs&,
                                                            const Answer&,
                                                            const cellar::KegStatus&);

}  // namespace ullage::report::slate
