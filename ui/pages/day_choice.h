// SPDX-License-Identifier: GPL-3.0-or-later
//
// One of the days proposed for cleaning, with why and what it costs.
#pragma once

#include <functional>

#include "core/cellar/cleaning_plan.h"
#include "ui/context.h"
#include "ui/widgets/card.h"

namespace ullage::ui {

class DayChoice : public Card {
  Q_OBJECT
 public:
  DayChoice(const Context& context, const cellar::PlannedDay& day, bool chosen,
            std::function<void()> choose, std::size_t number, QWidget* parent = nullptr);
};

}  // namespace ullage::ui
