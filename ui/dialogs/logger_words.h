// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is said about a logger's file: why it can't be read, what is wrong with a
// line.
#pragma once

#include <QString>

#include "core/cellar/logger_file.h"

namespace ullage::ui {

struct LoggerProblem {
  QString headline, detail;
};
[[nodiscard]] LoggerProblem words_of(cellar::LoggerFault);
[[nodiscard]] QString words_of(cellar::BadLineReason);
[[nodiscard]] QString line_words(const cellar::BadLine&);

}  // namespace ullage::ui
