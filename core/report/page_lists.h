// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tables of the Lines and Beers pages and of the rules, as lists for paper and
// CSV; and the words they share with those.
#pragma once

#include <string>

#include "core/report/table_sheet.h"

namespace ullage::report {

// The lines in use: what each serves, its pressure against what it should be, how it
// pours, when it was cleaned, its state.
[[nodiscard]] TableSheet line_list(const cellar::CellarStatus&, const Speaker&,
                                   const std::string& by);

// The rules that the cellar works by, in force or not, each with where it comes from.
[[nodiscard]] TableSheet rule_list(const cellar::CellarStatus&, const Speaker&,
                                   const std::string& by);

// Every batch: which kegs hold it, what is left of it, best by, recalled or not.
[[nodiscard]] TableSheet batch_list(const cellar::Journal&, const cellar::CellarStatus&,
                                    const Speaker&, const std::string& by);

// What a line's state is; where it may be served from and its cleaning is not overdue,
// the first advice about it instead.
[[nodiscard]] std::string say_line_state(const cellar::LineStatus&, const Speaker&);

// Whom or what a rule is for: "Line 3", "every line".
[[nodiscard]] std::string say_rule_for(const cellar::RuleRecord&, const cellar::CellarStatus& names,
                                       const Speaker&);

}  // namespace ullage::report
