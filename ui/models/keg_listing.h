// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which kegs are shown, and in which order: the chips, the typed text and the
// sort menu of the Kegs page, worked out over a plain list of rows.
#pragma once

#include <QString>
#include <array>
#include <cstddef>
#include <vector>

#include "ui/models/keg_row.h"

namespace ullage::ui {

enum class KegFilter { all, ready, on_tap, carbonating, attention, empty };
inline constexpr std::array all_keg_filters = {KegFilter::all,       KegFilter::ready,
                                               KegFilter::on_tap,    KegFilter::carbonating,
                                               KegFilter::attention, KegFilter::empty};

enum class KegOrder { tag, use_next, state, level, ready_time };
inline constexpr std::array all_keg_orders = {KegOrder::tag, KegOrder::use_next, KegOrder::state,
                                              KegOrder::level, KegOrder::ready_time};

[[nodiscard]] bool passes(const KegRow&, KegFilter);
[[nodiscard]] std::size_t count_of(const std::vector<KegRow>&, KegFilter);

// "ready to use", "on tap" ...: follows the count on a chip.
[[nodiscard]] QString filter_name(KegFilter);
[[nodiscard]] QString order_name(KegOrder);

// Indexes into `rows`, which must be in the natural order of tags. Every word
// of `text` must be found somewhere in a row. Kegs for which the order has
// nothing to go by come last, by tag.
[[nodiscard]] std::vector<std::size_t> shown_kegs(const std::vector<KegRow>& rows, KegFilter,
                                                  const QString& text, KegOrder);

}  // namespace ullage::ui
