// SPDX-License-Identifier: GPL-3.0-or-later
//
// One keg as the Kegs page shows it: every word already said in the person's
// units, every number already a place on a gauge. Built once when something
// changed; painting, sorting and filtering only read it.
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/say.h"
#include "ui/widgets/status_mark.h"

namespace ullage::ui {

// "2.4 ± 0.2 vol" cut where numbers of a column line up.
struct NumberText {
  QString value;  // "2.4"
  QString error;  // "± 0.2 vol"
  [[nodiscard]] QString whole() const;
};
[[nodiscard]] NumberText split_number(const QString& printed);

struct LevelView {
  std::optional<double> fraction;  // of the brimful keg, 0 to 1
  std::optional<double> fraction_half_width;
  NumberText amount;
  QString glasses;  // "23 pints"
  QString none;     // instead of a number: "empty", "can't tell"
};

// In volumes of CO2, whatever unit the text is in.
struct Co2View {
  struct Now {
    double low, value, high;
  };
  struct Band {
    double low, high;
  };
  std::optional<Now> now;
  std::optional<Band> band;
  cellar::Co2Verdict verdict = cellar::Co2Verdict::unknown;
  NumberText amount;
  QString none;  // instead of a number, short
  QString why;   // there is none, in a sentence
};

struct LifeView {
  std::vector<cellar::LifeSpan> spans;
  std::optional<cellar::Window> ready;  // only while it is still to come
};

// Why a keg must not be served; both empty when it may be.
struct StopSign {
  QString head;                         // "Do not serve"
  QString rest;                         // "caustic since 14:10, JB"
  [[nodiscard]] QString whole() const;  // both, with a dash between
};

struct KegRow {
  cellar::KegId keg;
  QString tag;
  QString contents;     // the beer, or what stands for it: "clean, purged"
  QString whereabouts;  // "19 L · Back room"
  QString kind;         // "Soda keg, ball lock, 19 L"
  bool holds_beer = false;
  LevelView level;
  Co2View co2;
  LifeView life;
  Mark mark = Mark::question;
  QString state;
  QString next_step;
  bool stopped = false;  // not to be served: line locked or keg held back
  StopSign caution;      // when stopped

  // Spoken instead of the drawn cells.
  QString level_words, co2_words, life_words;

  // For filters and orders.
  cellar::Phase phase = cellar::Phase::unknown;
  bool ready_to_use = false;
  bool needs_attention = false;
  std::optional<std::int64_t> use_next;
  std::optional<cellar::Instant> ready_time;
  QString search_text;  // tag, beer, state, place: folded for a word search
};

[[nodiscard]] KegRow keg_row(const cellar::KegStatus&, const report::Speaker&);

// The reason alone, for where "held back" stands already; empty when nobody gave one.
[[nodiscard]] QString held_back_because(const cellar::KegStatus&);
[[nodiscard]] StopSign caution_of(const cellar::KegStatus&, const report::Speaker&);

}  // namespace ullage::ui
