// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/keg_listing.h"

#include <QCoreApplication>
#include <algorithm>
#include <limits>

#include "ui/models/word_search.h"

namespace ullage::ui {

namespace {

using cellar::Phase;

struct KegListingText {
  Q_DECLARE_TR_FUNCTIONS(KegListingText)
};

// What wants a hand first comes first: stopped, to be looked at, on tap, ready,
// on the way, fit to fill, to be cleaned, not known.
int state_rank(const KegRow& row) {
  if (row.stopped) return 0;
  if (row.needs_attention) return 1;
  switch (row.phase) {
    case Phase::on_tap:
      return 2;
    case Phase::ready:
      return 3;
    case Phase::conditioning:
      return 4;
    case Phase::carbonating:
      return 5;
    case Phase::purged:
      return 6;
    case Phase::sanitised:
      return 7;
    case Phase::clean:
      return 8;
    case Phase::dirty:
      return 9;
    case Phase::unknown:
      break;
  }
  return 10;
}

// Lower comes first; infinity where there is nothing to go by.
double sort_key(const KegRow& row, KegOrder order) {
  constexpr double last = std::numeric_limits<double>::infinity();
  switch (order) {
    case KegOrder::tag:
      return 0;
    case KegOrder::use_next:
      return row.use_next ? static_cast<double>(*row.use_next) : last;
    case KegOrder::state:
      return state_rank(row);
    case KegOrder::level:
      return row.holds_beer && row.level.fraction ? *row.level.fraction : last;
    case KegOrder::ready_time:
      return row.ready_time ? static_cast<double>(row.ready_time->time_since_epoch().count())
                            : last;
  }
  return last;
}

}  // namespace

bool passes(const KegRow& row, KegFilter filter) {
  switch (filter) {
    case KegFilter::ready:
      return row.ready_to_use;
    case KegFilter::on_tap:
      return row.phase == Phase::on_tap;
    case KegFilter::carbonating:
      return row.phase == Phase::carbonating || row.phase == Phase::conditioning;
    case KegFilter::attention:
      return row.needs_attention;
    case KegFilter::empty:
      return row.phase == Phase::dirty || row.phase == Phase::clean ||
             row.phase == Phase::sanitised || row.phase == Phase::purged;
    case KegFilter::all:
      return true;
  }
  return true;
}

std::size_t count_of(const std::vector<KegRow>& rows, KegFilter filter) {
  return static_cast<std::size_t>(std::count_if(
      rows.begin(), rows.end(), [filter](const KegRow& row) { return passes(row, filter); }));
}

QString filter_name(KegFilter filter) {
  switch (filter) {
    case KegFilter::ready:
      return KegListingText::tr("ready to use");
    case KegFilter::on_tap:
      return KegListingText::tr("on tap");
    case KegFilter::carbonating:
      return KegListingText::tr("carbonating");
    case KegFilter::attention:
      return KegListingText::tr("need attention");
    case KegFilter::empty:
      return KegListingText::tr("empty");
    case KegFilter::all:
      break;
  }
  return KegListingText::tr("in all");
}

QString order_name(KegOrder order) {
  switch (order) {
    case KegOrder::tag:
      return KegListingText::tr("Tag");
    case KegOrder::use_next:
      return KegListingText::tr("Use next");
    case KegOrder::state:
      return KegListingText::tr("State");
    case KegOrder::level:
      return KegListingText::tr("Least left");
    case KegOrder::ready_time:
      break;
  }
  return KegListingText::tr("Ready first");
}

std::vector<std::size_t> shown_kegs(const std::vector<KegRow>& rows, KegFilter filter,
                                    const QString& text, KegOrder order) {
  const WordSearch wanted(text);
  std::vector<std::size_t> shown;
  shown.reserve(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (wanted.finds_folded(rows[i].search_text) && passes(rows[i], filter)) shown.push_back(i);
  }
  std::stable_sort(shown.begin(), shown.end(), [&](std::size_t a, std::size_t b) {
    return sort_key(rows[a], order) < sort_key(rows[b], order);
  });
  return shown;
}

}  // namespace ullage::ui
