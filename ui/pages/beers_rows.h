// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rows of the Beers page in words: what core/cellar/beers_status.h knows,
// said in the person's units, with what can be done from each.
#pragma once

#include <functional>
#include <vector>

#include "core/cellar/beers_status.h"
#include "core/report/keg_grounds.h"
#include "ui/context.h"
#include "ui/pages/listed_row.h"

namespace ullage::ui {

// What the rows' buttons lead to, beside forms and other pages.
struct BeersActions {
  std::function<void(cellar::BatchId)> trace;
  std::function<void(cellar::BatchId)> recall;
};

class BeersRows {
 public:
  BeersRows(const Context&, const cellar::CellarStatus&, const cellar::BeersStatus&, BeersActions);

  [[nodiscard]] std::vector<RowSpec> tap_next() const;
  [[nodiscard]] std::vector<RowSpec> batches(bool gone) const;
  [[nodiscard]] std::vector<RowSpec> cooling() const;
  [[nodiscard]] std::vector<RowSpec> fresh() const;  // the clock: tapped kegs, then the others
  [[nodiscard]] std::vector<RowSpec> hops() const;
  [[nodiscard]] std::vector<RowSpec> wasted() const;
  [[nodiscard]] std::vector<RowSpec> away() const;

 private:
  [[nodiscard]] RowSpec batch_row(const cellar::BatchStatus&) const;
  [[nodiscard]] QString where(const cellar::BatchInKeg&) const;
  [[nodiscard]] QString name_of(cellar::KegId) const;  // "K07 Red Rye"
  [[nodiscard]] RowSpec tapped_row(const cellar::BatchInKeg&) const;
  [[nodiscard]] RowSpec untapped_row(const cellar::BatchInKeg&) const;
  [[nodiscard]] RowNumber run_out(cellar::KegId) const;  // when the keg on tap does
  [[nodiscard]] Figure::Reasons reasons_of(const cellar::KegStatus&,
                                           report::Grounds (*)(const report::KegSubject&)) const;
  [[nodiscard]] RowAction task(cellar::KegId, const char* kind) const;
  [[nodiscard]] RowAction show(cellar::KegId) const;

  Context context_;
  const cellar::CellarStatus& cellar_;
  const cellar::BeersStatus& beers_;
  BeersActions actions_;
  report::Speaker speaker_;
};

[[nodiscard]] QString say_waste(cellar::WasteReason, report::RegionalWords);

}  // namespace ullage::ui
