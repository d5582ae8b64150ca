// SPDX-License-Identifier: GPL-3.0-or-later
//
// What to advise about one keg at a moment. Calm by intent: a keg that is being
// kept well gets none. What happens by itself and in time (a burst to be dropped
// the day after tomorrow) is in readiness and next step; it becomes advice when
// it is due.
#pragma once

#include "core/cellar/keg_moment.h"

namespace ullage::cellar {

using AdviceList = std::vector<Advice>;

[[nodiscard]] Advice keg_advice(const Moment&, Severity, Message headline,
                                std::optional<Message> detail,
                                std::optional<SuggestedTask> action = {});

void advise_co2(const Moment&, AdviceList&);      // advice_co2.cpp
void advise_custody(const Moment&, AdviceList&);  // advice_custody.cpp: held, lent, lines, dates
void advise_empty(const Moment&, AdviceList&);    // advice.cpp

}  // namespace ullage::cellar
