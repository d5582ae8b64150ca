// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/logger_words.h"

#include <QCoreApplication>

namespace ullage::ui {
namespace {

struct LoggerText {
  Q_DECLARE_TR_FUNCTIONS(LoggerText)
};

}  // namespace

LoggerProblem words_of(cellar::LoggerFault fault) {
  using cellar::LoggerFault;
  switch (fault) {
    case LoggerFault::empty:
      return {LoggerText::tr("The file is empty"), {}};
    case LoggerFault::too_large:
      return {LoggerText::tr("The file is too large"),
              LoggerText::tr("Up to 32 MB can be read. Let the logger write a shorter time.")};
    case LoggerFault::not_text:
      return {LoggerText::tr("This is not a text file"),
              LoggerText::tr("Let the logger’s program export CSV or text.")};
    case LoggerFault::too_many_lines:
      return {LoggerText::tr("The file has too many lines"),
              LoggerText::tr("Up to a million can be read. Let the logger write a shorter time.")};
    case LoggerFault::no_columns:
      return {LoggerText::tr("No lines with a date and a temperature were found"),
              LoggerText::tr("A line looks like this: 2026-11-02 10:00;4,5")};
    case LoggerFault::no_time_column:
      return {LoggerText::tr("No column with dates was found"),
              LoggerText::tr("A date looks like 2026-11-02, 02.11.2026 or 11/02/2026.")};
    case LoggerFault::no_temperature_column:
      return {LoggerText::tr("No column with temperatures was found"),
              LoggerText::tr("Choose the decimal mark or the column by hand.")};
    case LoggerFault::no_such_column:
      return {LoggerText::tr("That column is not in the file"), {}};
  }
  return {};
}

QString words_of(cellar::BadLineReason reason) {
  using cellar::BadLineReason;
  switch (reason) {
    case BadLineReason::too_few_columns:
      return LoggerText::tr("too few columns");
    case BadLineReason::no_time:
      return LoggerText::tr("no date and hour");
    case BadLineReason::no_temperature:
      return LoggerText::tr("no temperature");
    case BadLineReason::impossible_temperature:
      return LoggerText::tr("a temperature that can’t be");
    case BadLineReason::too_long:
      return LoggerText::tr("too long");
  }
  return {};
}

QString line_words(const cellar::BadLine& bad) {
  return LoggerText::tr("Line %1: %2: %3")
      .arg(bad.line)
      .arg(words_of(bad.reason), QString::fromStdString(bad.text));
}

}  // namespace ullage::ui
