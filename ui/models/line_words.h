// SPDX-License-Identifier: GPL-3.0-or-later
//
// A line as the Lines page says it: every cell in words, in the person's units.
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <memory>

#include "core/cellar/pour_state.h"
#include "core/report/line_grounds.h"
#include "core/report/say.h"

namespace ullage::ui {

struct LineWords {
  QString tap;      // "Tap 3"
  QString name;     // "Line 3"
  QString beer;     // "Red Rye"
  QString keg;      // "K03"
  QString set;      // "0.8 bar"
  QString should;   // "should be 0.85 bar"
  QString glass;    // "9 s"
  QString range;    // "7 to 12 s"
  QString cleaned;  // "Cleaned 3 d ago"
  QString due;      // "due 4 Dec"
  QString state;    // "Do not serve: caustic in it"
};

[[nodiscard]] LineWords line_words(const cellar::LineStatus&, const cellar::CellarStatus&,
                                   const report::Speaker&);

// Figures of the selected line, one "what · value" a line, each with its reasons.
struct LineFact {
  QString what;
  QString value;
  std::function<report::Grounds()> reasons = {};
};
[[nodiscard]] QList<LineFact> pour_facts(std::shared_ptr<const report::LineSubject>);
// What the facts are called that a cell of the table opens.
[[nodiscard]] QString pressure_fact_name();
[[nodiscard]] QString glass_fact_name(const report::LineSubject&);
[[nodiscard]] QString cleaning_fact_name();
// "9 s (7 to 12 s)"
[[nodiscard]] QString glass_words(const cellar::PourOutlook&, const report::Speaker&);

}  // namespace ullage::ui
