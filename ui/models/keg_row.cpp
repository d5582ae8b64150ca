// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/keg_row.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "core/units/present.h"
#include "ui/context.h"
#include "ui/models/word_search.h"

namespace ullage::ui {

namespace {

using cellar::Co2Verdict;
using cellar::KegStatus;
using cellar::Phase;
using cellar::ReadinessKind;
using cellar::Severity;
using report::Speaker;

struct KegRowText {
  Q_DECLARE_TR_FUNCTIONS(KegRowText)
};

bool is_empty_phase(Phase p) {
  return p == Phase::dirty || p == Phase::clean || p == Phase::sanitised || p == Phase::purged;
}

QString contents_of(const KegStatus& k, const Speaker& speaker) {
  if (k.contents) return q(k.contents->beer.name);
  if (k.hold_failed) return KegRowText::tr("failed its hold test");
  switch (k.phase) {
    case Phase::dirty:
      return KegRowText::tr("empty, not clean");
    case Phase::clean:
      return KegRowText::tr("empty, clean");
    case Phase::sanitised:
      return KegRowText::tr("empty, %1").arg(q(report::say(k.phase, speaker)));
    case Phase::purged:
      return KegRowText::tr("clean, purged");
    case Phase::unknown:
      return KegRowText::tr("not known");
    default:
      return q(report::say(k.phase, speaker));
  }
}

QString whereabouts_of(const KegStatus& k, const Speaker& speaker) {
  QStringList parts;
  parts << q(speaker.printer.print(k.record.nominal));
  if (k.lent_to) {
    parts << KegRowText::tr("lent to %1").arg(q(*k.lent_to));
  } else if (k.place) {
    parts << q(k.place->name);
  }
  return parts.join(QStringLiteral(" · "));
}

LevelView level_of(const KegStatus& k, const Speaker& speaker) {
  LevelView v;
  if (k.level.left) {
    v.amount = split_number(q(speaker.printer.print(*k.level.left)));
    v.glasses = q(speaker.printer.print_glasses(k.level.left->value()));
  } else if (!k.contents && is_empty_phase(k.phase)) {
    v.none = KegRowText::tr("empty");
  } else {
    v.none = KegRowText::tr("can’t tell");
  }
  if (k.level.of_brimful) {
    v.fraction = std::clamp(k.level.of_brimful->count(), 0.0, 1.0);
    const double brimful = units::in_cubic_metres(k.record.brimful);
    if (k.level.left && brimful > 0) v.fraction_half_width = k.level.left->half_width() / brimful;
  }
  return v;
}

Co2View co2_of(const KegStatus& k, const Speaker& speaker) {
  Co2View v;
  v.verdict = k.co2.verdict;
  if (k.co2.target_low && k.co2.target_high) {
    v.band = Co2View::Band{k.co2.target_low->count(), k.co2.target_high->count()};
  }
  if (k.co2.now) {
    v.now = Co2View::Now{k.co2.now->low().count(), k.co2.now->value().count(),
                         k.co2.now->high().count()};
    v.amount = split_number(q(speaker.printer.print(*k.co2.now)));
  } else if (k.contents) {
    v.none = KegRowText::tr("can’t tell yet");
    if (k.co2.cant_tell) v.why = q(report::say(*k.co2.cant_tell, speaker));
  }
  return v;
}

// What must not be served shows so before anything else that may be wrong.
Mark row_mark(const KegStatus& k) {
  if (k.quarantined && !k.lock) return Mark::bar;
  const bool quiet = k.advice.empty() || k.advice.front().severity <= Severity::advice;
  if (!k.lock && quiet && k.readiness.kind == ReadinessKind::cant_tell) return Mark::question;
  return mark_of(k);
}

QString verdict_words(const Co2View& v) {
  switch (v.verdict) {
    case Co2Verdict::below:
      return KegRowText::tr("below its range");
    case Co2Verdict::within:
      return KegRowText::tr("in its range");
    case Co2Verdict::above:
      return KegRowText::tr("above its range");
    case Co2Verdict::unknown:
      break;
  }
  return {};
}

void speak(KegRow& row, const KegStatus& k, const Speaker& speaker) {
  row.level_words =
      row.level.none.isEmpty()
          ? KegRowText::tr("%1 left, %2").arg(row.level.amount.whole(), row.level.glasses)
          : row.level.none;
  if (row.co2.now) {
    QStringList parts{row.co2.amount.whole()};
    if (const QString verdict = verdict_words(row.co2); !verdict.isEmpty()) {
      parts << (row.co2.band ? verdict + QLatin1Char(' ') +
                                   q(speaker.printer.print_range(present(k.co2.target_low),
                                                                 present(k.co2.target_high)))
                             : verdict);
    }
    row.co2_words = parts.join(QStringLiteral(", "));
  } else if (!row.co2.why.isEmpty()) {
    row.co2_words = KegRowText::tr("Can’t tell yet: %1").arg(row.co2.why);
  } else {
    row.co2_words = row.holds_beer ? row.co2.none : KegRowText::tr("no beer in it");
  }
  QStringList life;
  for (const cellar::LifeSpan& span : k.life) {
    life << (span.forecast ? KegRowText::tr("likely %1 from %2") : KegRowText::tr("%1 from %2"))
                .arg(q(report::say(span.phase, speaker)), q(report::say_day(span.from, speaker)));
  }
  row.life_words = life.isEmpty() ? KegRowText::tr("nothing known of its past")
                                  : life.join(QStringLiteral("; "));
}

}  // namespace

QString NumberText::whole() const {
  return error.isEmpty() ? value : value + QLatin1Char(' ') + error;
}

NumberText split_number(const QString& printed) {
  qsizetype at = printed.indexOf(QStringLiteral(" ±"));
  if (at < 0) at = printed.indexOf(QLatin1Char(' '));
  if (at < 0) return {printed, {}};
  return {printed.left(at), printed.mid(at + 1)};
}

QString StopSign::whole() const {
  return rest.isEmpty() ? head : head + QStringLiteral(" – ") + rest;
}

QString held_back_because(const KegStatus& k) { return q(report::held_back_because(k)); }

StopSign caution_of(const KegStatus& k, const Speaker& speaker) {
  if (k.lock) {
    const QString agent = k.lock->agent.empty() ? KegRowText::tr("cleaner") : q(k.lock->agent);
    QString rest =
        KegRowText::tr("%1 since %2").arg(agent, q(report::say_time(k.lock->since, speaker)));
    if (!k.lock->by.empty()) rest += QStringLiteral(", ") + q(k.lock->by);
    return {KegRowText::tr("Do not serve"), rest};
  }
  if (k.quarantined) return {KegRowText::tr("Held back"), held_back_because(k)};
  return {};
}

KegRow keg_row(const KegStatus& k, const Speaker& speaker) {
  KegRow row;
  row.keg = k.record.keg;
  row.tag = q(k.record.tag);
  row.contents = contents_of(k, speaker);
  row.whereabouts = whereabouts_of(k, speaker);
  row.holds_beer = k.contents.has_value();
  row.level = level_of(k, speaker);
  row.co2 = co2_of(k, speaker);
  row.life.spans = k.life;
  if (k.readiness.kind == ReadinessKind::ready_at) row.life.ready = k.readiness.when;
  row.state = q(report::say(k.state, speaker));
  if (k.next_step) row.next_step = q(report::say(*k.next_step, speaker));
  row.stopped = k.lock.has_value() || k.quarantined.has_value();
  row.caution = caution_of(k, speaker);
  const bool warned = std::any_of(k.advice.begin(), k.advice.end(), [](const cellar::Advice& a) {
    return a.severity >= Severity::warning;
  });
  row.phase = k.phase;
  row.needs_attention = warned || row.stopped || k.hold_failed || !k.doesnt_fit.empty();
  row.mark = row_mark(k);
  row.ready_to_use =
      k.phase == Phase::ready && k.readiness.kind == ReadinessKind::ready_now && !row.stopped;
  row.use_next = k.use_next_rank;
  if (k.readiness.when) row.ready_time = k.readiness.when->likely;
  speak(row, k, speaker);
  row.kind = q(report::say(k.record.keg_kind, speaker));
  row.search_text = folded(QStringList{row.tag, row.contents, row.state, row.whereabouts, row.kind,
                                       row.caution.whole(), q(report::say(k.phase, speaker))}
                               .join(QLatin1Char('\n')));
  return row;
}

}  // namespace ullage::ui
