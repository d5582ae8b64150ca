// SPDX-License-Identifier: GPL-3.0-or-later
//
// The told book's log books over one month.
#pragma once

#include <algorithm>
#include <string>

#include "core/report/period_logs.h"
#include "tests/report/told_book.h"

namespace ullage::testing {

struct Logs : ToldBook {
  report::Period november{date(0), date(28)};  // 2 to 30 November

  [[nodiscard]] report::TableSheet cleaning() const {
    return report::line_cleaning_log(journal, now, november, speaker, "MK");
  }
  [[nodiscard]] static double number(const report::TableSheet& sheet, std::size_t row,
                                     const std::string& key) {
    const auto at = std::find(sheet.keys.begin(), sheet.keys.end(), key);
    return boost::variant2::get<double>(
        sheet.rows.at(row).data.at(static_cast<std::size_t>(at - sheet.keys.begin())));
  }
  [[nodiscard]] static std::string words(const report::TableSheet& sheet, std::size_t row,
                                         const std::string& key) {
    const auto at = std::find(sheet.keys.begin(), sheet.keys.end(), key);
    const auto* text = boost::variant2::get_if<std::string>(
        &sheet.rows.at(row).data.at(static_cast<std::size_t>(at - sheet.keys.begin())));
    return text ? *text : std::string();
  }
};

}  // namespace ullage::testing
