// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/log_book.h"

#include "core/report/cellar_lists.h"
#include "core/report/page_lists.h"
#include "core/report/period_logs.h"
#include "core/report/recall_list.h"
#include "core/report/register_lists.h"

namespace ullage::report {

bool over_a_period(LogBook book) {
  return book == LogBook::line_cleaning || book == LogBook::temperature || book == LogBook::gas ||
         book == LogBook::wastage || book == LogBook::all;
}

TableSheet book_sheet(const BookAsked& asked, const cellar::Journal& journal,
                      const cellar::CellarStatus& status, const Speaker& speaker,
                      const std::string& by) {
  switch (asked.book) {
    case LogBook::line_cleaning:
      return line_cleaning_log(journal, status, asked.period, speaker, by);
    case LogBook::temperature:
      return temperature_log(journal, status, asked.period, speaker, by);
    case LogBook::gas:
      return gas_log(journal, status, asked.period, speaker, by);
    case LogBook::wastage:
      return wastage_book(journal, status, asked.period, speaker, by);
    case LogBook::all:
      return entry_log(journal, status, asked.period, speaker, by);
    case LogBook::round:
      return round_sheet(journal, status, speaker, by);
    case LogBook::custody:
      return custody_list(journal, status, speaker, by);
    case LogBook::kegs:
      return keg_list(status, speaker, by);
    case LogBook::lines:
      return line_list(status, speaker, by);
    case LogBook::rules:
      return rule_list(status, speaker, by);
    case LogBook::batches:
      return batch_list(journal, status, speaker, by);
    case LogBook::bottles:
      return bottle_list(status, speaker, by);
    case LogBook::regulators:
      return regulator_list(status, speaker, by);
    case LogBook::places:
      return place_list(status, speaker, by);
    case LogBook::instruments:
      return instrument_list(status, speaker, by);
    case LogBook::hose:
      return hose_list(status, speaker, by);
    case LogBook::beers:
      return beer_list(status, speaker, by);
    case LogBook::due:
      return due_list(due_lines(status, journal, speaker, asked.within_days), status, speaker,
                      asked.within_days, by);
    case LogBook::recall:
      break;
  }
  if (asked.batch) return recall_list(journal, status, *asked.batch, speaker, by);
  TableSheet none = sheet_titled("Recall list", status, speaker, by);
  none.when_empty = "No batch is registered.";
  return none;
}

}  // namespace ullage::report
