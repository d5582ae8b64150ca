// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/logger_words.h"

#include <QCoreApplication>

namespace ullage::ui {
namespace {

QString tr_logger(const char* text) { return QCoreApplication::translate("LoggerImport", text); }

}  // namespace

LoggerProblem words_of(cellar::LoggerFault fault) {
  using cellar::LoggerFault;
  switch (fault) {
    case LoggerFault::empty:
      return {tr_logger("The file is empty"), {}};
    case LoggerFault::too_large:
      return {tr_logger("The file is too large"),
              tr_logger("Up to 32 MB can be read. Let the logger write a shorter time.")};
    case LoggerFault::not_text:
      return {tr_logger("This is not a text file"),
              tr_logger("Let the logger’s program export CSV or text.")};
    case LoggerFault::too_many_lines:
      return {tr_logger("The file has too many lines"),
              tr_logger("Up to a million can be read. Let the logger write a shorter time.")};
    case LoggerFault::no_columns:
      return {tr_logger("No lines with a date and a temperature were found"),
              tr_logger("A line looks like this: 2026-11-02 10:00;4,5")};
    case LoggerFault::no_time_column:
      return {tr_logger("No column with dates was found"),
              tr_logger("A date looks like 2026-11-02, 02.11.2026 or 11/02/2026.")};
    case LoggerFault::no_temperature_column:
      return {tr_logger("No column with temperatures was found"),
              tr_logger("Choose the decimal mark or the column below.")};
    case LoggerFault::no_such_column:
      return {tr_logger("That column is not in the file"), {}};
  }
  return {};
}

QString words_of(cellar::BadLineReason reason) {
  using cellar::BadLineReason;
  switch (reason) {
    case BadLineReason::too_few_columns:
      return tr_logger("too few columns");
    case BadLineReason::no_time:
      return tr_logger("no date and hour");
    case BadLineReason::no_temperature:
      return tr_logger("no temperature");
    case BadLineReason::impossible_temperature:
      return tr_logger("a temperature that can’t be");
    case BadLineReason::too_long:
      return tr_logger("too long");
  }
  return {};
}

QString line_words(const cellar::BadLine& bad) {
  return tr_logger("Line %1: %2: %3")
      .arg(bad.line)
      .arg(words_of(bad.reason), QString::fromStdString(bad.text));
}

}  // namespace ullage::ui
