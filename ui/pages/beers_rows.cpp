// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/beers_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/report/fresh_grounds.h"
#include "core/units/present.h"
#include "ui/pages/keg_tasks.h"
#include "ui/preferences.h"

namespace ullage::ui {
namespace {

struct BeersRowsText {
  Q_DECLARE_TR_FUNCTIONS(BeersRowsText)
};

QString sentence_of(const QStringList& parts) { return parts.join(QStringLiteral(" · ")); }

QString days_words(std::int64_t days) {
  return days == 1 ? BeersRowsText::tr("1 day") : BeersRowsText::tr("%1 days").arg(days);
}

QString storage_words(cellar::Storage storage) {
  switch (storage) {
    case cellar::Storage::cold:
      return BeersRowsText::tr("cold");
    case cellar::Storage::cool:
      return BeersRowsText::tr("cool");
    case cellar::Storage::cellar:
      return BeersRowsText::tr("at cellar temperature");
    case cellar::Storage::unknown:
      break;
  }
  return BeersRowsText::tr("temperature not known");
}

QString money(std::int64_t minor, const units::Printer& printer) {
  return q(printer.number(static_cast<double>(minor) / 100, 2));
}

std::int64_t days_between(cellar::Instant from, cellar::Instant to) {
  return std::chrono::floor<std::chrono::days>(to - from).count();
}

QString time_words(std::chrono::seconds time) {
  constexpr std::chrono::hours half_a_day{12};
  if (time < half_a_day) {
    return BeersRowsText::tr("%1 h").arg(std::chrono::round<std::chrono::hours>(time).count());
  }
  return days_words(std::chrono::round<std::chrono::days>(time).count());
}

// "keeps about 6 days more (4 to 9)"; the range is left out where it is one day.
QString keeps_words(const cellar::Window& until, cellar::Instant now) {
  const std::int64_t left = days_between(now, until.likely);
  if (left < 0) return BeersRowsText::tr("about %1 over what it keeps").arg(days_words(-left));
  const std::int64_t least = std::max<std::int64_t>(0, days_between(now, until.earliest));
  const std::int64_t most = until.latest ? days_between(now, *until.latest) : left;
  if (least == most) return BeersRowsText::tr("keeps about %1 more").arg(days_words(left));
  return BeersRowsText::tr("keeps about %1 more (%2 to %3)")
      .arg(days_words(left))
      .arg(least)
      .arg(most);
}

}  // namespace

QString say_waste(cellar::WasteReason reason, report::RegionalWords words) {
  using cellar::WasteReason;
  switch (reason) {
    case WasteReason::foam:
      return words == report::RegionalWords::us ? BeersRowsText::tr("Foam")
                                                : BeersRowsText::tr("Fob");
    case WasteReason::line_cleaning:
      return BeersRowsText::tr("Line cleaning");
    case WasteReason::spoiled:
      return BeersRowsText::tr("Spoiled");
    case WasteReason::short_fill:
      return BeersRowsText::tr("Short fill");
    case WasteReason::spill:
      return BeersRowsText::tr("Spilt");
    case WasteReason::given_away:
      return BeersRowsText::tr("Given away");
    case WasteReason::other:
      break;
  }
  return BeersRowsText::tr("Other");
}

BeersRows::BeersRows(const Context& context, const cellar::CellarStatus& cellar,
                     const cellar::BeersStatus& beers, BeersActions actions)
    : context_(context),
      cellar_(cellar),
      beers_(beers),
      actions_(std::move(actions)),
      speaker_(context.speaker()) {}

QString BeersRows::name_of(cellar::KegId id) const {
  const cellar::KegStatus* keg = cellar_.find(id);
  if (keg == nullptr) return {};
  QString name = q(keg->record.tag);
  if (keg->contents) name += QStringLiteral("  ") + q(keg->contents->beer.name);
  return keg->lock ? name + QStringLiteral(", ") + BeersRowsText::tr("do not serve") : name;
}

RowAction BeersRows::task(cellar::KegId keg, const char* kind) const {
  return {task_label(kind, speaker_.words), QString::fromLatin1(kind),
          [context = context_, keg, kind] {
            context.navigator.open_task({kind, cellar::subject(keg), {}, {}});
          }};
}

RowAction BeersRows::show(cellar::KegId keg) const {
  return {BeersRowsText::tr("Show"), QStringLiteral("show_keg"),
          [context = context_, keg] { context.navigator.show_keg(keg); }};
}

// What a pop-up tells is as it was when the row was shown.
Figure::Reasons BeersRows::reasons_of(const cellar::KegStatus& keg,
                                      report::Grounds (*tell)(const report::KegSubject&)) const {
  cellar::CellarStatus places;
  places.places = cellar_.places;
  return [places = std::move(places), keg, tell, speaker = speaker_] {
    return tell({places, keg, speaker});
  };
}

std::vector<RowSpec> BeersRows::tap_next() const {
  std::vector<RowSpec> rows;
  for (const cellar::TapNext& next : beers_.tap_next) {
    const cellar::KegStatus* keg = cellar_.find(next.keg);
    if (keg == nullptr || !keg->contents) continue;
    RowSpec row;
    row.title = BeersRowsText::tr("%1.  %2").arg(next.rank).arg(name_of(next.keg));
    QStringList words{q(report::say(keg->state, speaker_))};
    words << (keg->contents->best_by
                  ? BeersRowsText::tr("best by %1")
                        .arg(q(report::say_date(*keg->contents->best_by, speaker_)))
                  : BeersRowsText::tr("no best-by date"));
    if (keg->cold_since) {
      words << BeersRowsText::tr("in the cold since %1")
                   .arg(q(report::say_time(*keg->cold_since, speaker_)));
    }
    row.words = sentence_of(words);
    if (keg->level.left) {
      row.number = q(speaker_.printer.print(*keg->level.left));
      row.number_of = BeersRowsText::tr("Left");
      row.reasons = reasons_of(*keg, &report::level_grounds);
    }
    row.actions.push_back(show(next.keg));
    rows.push_back(std::move(row));
  }
  return rows;
}

QString BeersRows::where(const cellar::BatchInKeg& in) const {
  QStringList words{q(in.tag)};
  if (in.tap) {
    words << (speaker_.words == report::RegionalWords::us ? BeersRowsText::tr("on faucet %1")
                                                          : BeersRowsText::tr("on tap %1"))
                 .arg(q(*in.tap));
  } else if (!in.place.empty()) {
    words << q(in.place);
  }
  if (in.held_back) words << BeersRowsText::tr("held back");
  const cellar::KegStatus* keg = cellar_.find(in.keg);
  if (keg && keg->lock) words << BeersRowsText::tr("do not serve");
  return words.join(QStringLiteral(", "));
}

RowSpec BeersRows::batch_row(const cellar::BatchStatus& batch) const {
  RowSpec row;
  row.title = batch.beer.name.empty()
                  ? q(batch.record.name)
                  : BeersRowsText::tr("%1, batch %2").arg(q(batch.beer.name), q(batch.record.name));
  QStringList words;
  if (batch.recall) {
    row.title_ink = Ink::danger;
    words << BeersRowsText::tr("RECALLED %1: %2")
                 .arg(q(report::say_time(batch.recall->at, speaker_)), q(batch.recall->reason));
  }
  for (const cellar::BatchInKeg& in : batch.kegs) words << where(in);
  if (batch.gone()) {
    words << (batch.kegs_before == 0 ? BeersRowsText::tr("in no keg yet")
              : batch.kegs_before == 1
                  ? BeersRowsText::tr("was in 1 keg")
                  : BeersRowsText::tr("was in %1 kegs").arg(batch.kegs_before));
  }
  if (batch.best_by) {
    words << BeersRowsText::tr("best by %1").arg(q(report::say_date(*batch.best_by, speaker_)));
  }
  row.words = sentence_of(words);
  if (batch.left) {
    const QString left = q(speaker_.printer.print(*batch.left));
    row.number = batch.some_cant_tell ? BeersRowsText::tr("%1 and more").arg(left) : left;
    row.number_of = BeersRowsText::tr("Left of it");
    row.reasons = [left_of = *batch.left, kegs = batch.kegs, speaker = speaker_] {
      report::Grounds g = report::grounds_by(report::laws::level, "Left of the batch",
                                             speaker.printer.print(left_of));
      for (const cellar::BatchInKeg& in : kegs) {
        g.inputs.push_back(
            {in.tag + ": " +
                 (in.left ? speaker.printer.print(*in.left) : std::string("can’t tell")),
             report::InputOrigin::worked_out,
             {}});
      }
      g.narrow = report::narrowing(left_of);
      return g;
    };
  } else if (!batch.kegs.empty()) {
    row.number = BeersRowsText::tr("can’t tell");
  }
  const cellar::BatchId id = batch.record.batch;
  row.actions.push_back({BeersRowsText::tr("Trace…"), QStringLiteral("trace"),
                         [act = actions_.trace, id] { act(id); }});
  if (!batch.recall && !context_.cellar.read_only() && (!batch.gone() || batch.kegs_before > 0)) {
    row.actions.push_back({BeersRowsText::tr("Recall…"), QStringLiteral("recall"),
                           [act = actions_.recall, id] { act(id); }});
  }
  return row;
}

std::vector<RowSpec> BeersRows::batches(bool gone) const {
  std::vector<RowSpec> rows;
  for (const cellar::BatchStatus& batch : beers_.batches) {
    if (batch.gone() == gone) rows.push_back(batch_row(batch));
  }
  return rows;
}

std::vector<RowSpec> BeersRows::cooling() const {
  std::vector<RowSpec> rows;
  for (const cellar::CoolingKeg& cooling : beers_.cooling) {
    RowSpec row;
    row.title = name_of(cooling.keg);
    row.words = BeersRowsText::tr("cold through about %1, between %2 and %3")
                    .arg(q(report::say_time(cooling.there.likely, speaker_)),
                         q(report::say_time(cooling.there.earliest, speaker_)),
                         cooling.there.latest ? q(report::say_time(*cooling.there.latest, speaker_))
                                              : BeersRowsText::tr("not known"));
    row.number = q(speaker_.printer.print(cooling.now));
    row.number_of = BeersRowsText::tr("Beer at");
    if (const cellar::KegStatus* keg = cellar_.find(cooling.keg)) {
      row.reasons = reasons_of(*keg, &report::temperature_grounds);
    }
    row.actions.push_back(show(cooling.keg));
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<RowSpec> BeersRows::fresh() const {
  std::vector<RowSpec> rows;
  for (const bool tapped : {true, false}) {
    for (const cellar::BatchStatus& batch : beers_.batches) {
      for (const cellar::BatchInKeg& in : batch.kegs) {
        if (in.fresh.tapped != tapped || (!tapped && !in.fresh.best_by)) continue;
        rows.push_back(tapped ? tapped_row(in) : untapped_row(in));
      }
    }
  }
  return rows;
}

RowSpec BeersRows::tapped_row(const cellar::BatchInKeg& in) const {
  RowSpec row;
  row.title = name_of(in.keg);
  QStringList words{BeersRowsText::tr("tapped %1 ago")
                        .arg(days_words(days_between(in.fresh.since, speaker_.now)))};
  QStringList stood;
  for (const auto& [storage, time] : in.fresh.stood) {
    if (time >= std::chrono::hours(1)) {
      stood << BeersRowsText::tr("%1 %2").arg(time_words(time), storage_words(storage));
    }
  }
  if (in.fresh.stood.empty()) stood << storage_words(cellar::Storage::unknown);
  words << stood.join(QStringLiteral(", "));
  row.words = sentence_of(words);
  if (const auto& until = in.fresh.keeps_until) {
    row.number = keeps_words(*until, speaker_.now);
    row.number_of = BeersRowsText::tr("Keeps");
    row.reasons = [clock = in.fresh, speaker = speaker_] {
      return report::freshness_grounds(clock, speaker);
    };
    if (until->likely < speaker_.now) row.title_ink = Ink::warning;
  }
  row.below = run_out(in.keg);
  row.actions.push_back(show(in.keg));
  return row;
}

RowSpec BeersRows::untapped_row(const cellar::BatchInKeg& in) const {
  RowSpec row;
  row.title = name_of(in.keg);
  row.words = sentence_of({BeersRowsText::tr("not tapped"), storage_words(in.fresh.storage)});
  const std::int64_t left =
      (present(in.fresh.best_by) - speaker_.calendar->date_of(speaker_.now)).count();
  row.number = left < 0 ? BeersRowsText::tr("%1 past its best by").arg(days_words(-left))
                        : BeersRowsText::tr("%1 to its best by").arg(days_words(left));
  row.number_of = BeersRowsText::tr("Keeps");
  if (left < 0) row.title_ink = Ink::warning;
  row.reasons = [clock = in.fresh, speaker = speaker_] {
    return report::freshness_grounds(clock, speaker);
  };
  row.actions.push_back(show(in.keg));
  return row;
}

RowNumber BeersRows::run_out(cellar::KegId id) const {
  const cellar::KegStatus* keg = cellar_.find(id);
  if (keg == nullptr || !keg->level.runs_out) return {};
  const auto when = cellar::message(cellar::MessageKey::level_runs_out, *keg->level.runs_out);
  return {BeersRowsText::tr("runs out %1").arg(q(report::say(when, speaker_))),
          BeersRowsText::tr("Runs out"), reasons_of(*keg, &report::run_out_grounds)};
}

std::vector<RowSpec> BeersRows::hops() const {
  std::vector<RowSpec> rows;
  for (const cellar::HopsWait& h : beers_.hops) {
    RowSpec row;
    row.title = name_of(h.keg);
    row.title_ink = h.overdue ? Ink::warning : Ink::text;
    const QString since = q(report::say_time(h.since, speaker_));
    row.words = h.overdue ? BeersRowsText::tr("%1 in since %2: take them out").arg(q(h.hops), since)
                          : BeersRowsText::tr("%1 in since %2 · next look %3")
                                .arg(q(h.hops), since, q(report::say_day(h.look_at, speaker_)));
    row.actions.push_back({BeersRowsText::tr("Hops out…"), QStringLiteral("hops_out"),
                           [context = context_, keg = h.keg] {
                             context.navigator.open_task(
                                 {"hops_out", cellar::subject(keg), {}, {}});
                           }});
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<RowSpec> BeersRows::wasted() const {
  std::vector<RowSpec> rows;
  for (const cellar::WasteLine& waste : beers_.wasted) {
    RowSpec row;
    row.title = say_waste(waste.reason, speaker_.words);
    QStringList words{waste.times == 1 ? BeersRowsText::tr("once")
                                       : BeersRowsText::tr("%1 times").arg(waste.times)};
    if (waste.cost_minor) {
      const QString cost = money(*waste.cost_minor, speaker_.printer);
      words << (waste.some_without_price
                    ? BeersRowsText::tr("cost %1 and more: some has no price").arg(cost)
                    : BeersRowsText::tr("cost %1").arg(cost));
    } else {
      words << BeersRowsText::tr("no price known");
    }
    row.words = sentence_of(words);
    row.number = q(speaker_.printer.print(waste.volume));
    row.number_of = BeersRowsText::tr("Lost");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<RowSpec> BeersRows::away() const {
  std::vector<RowSpec> rows;
  for (const cellar::KegAway& away : beers_.away) {
    RowSpec row;
    row.title = name_of(away.keg);
    row.title_ink = away.overdue ? Ink::warning : Ink::text;
    QStringList words;
    if (away.lent_to) {
      words << BeersRowsText::tr("with %1").arg(q(*away.lent_to));
    } else {
      words << (away.owner == cellar::Owner::rented ? BeersRowsText::tr("rented")
                                                    : BeersRowsText::tr("the supplier’s"));
    }
    words << BeersRowsText::tr("since %1, %2")
                 .arg(q(report::say_time(away.since, speaker_)), days_words(away.days));
    if (away.due_back) {
      const QString due = q(report::say_date(*away.due_back, speaker_));
      words << (away.overdue ? BeersRowsText::tr("was due back %1").arg(due)
                             : BeersRowsText::tr("due back %1").arg(due));
    }
    if (away.deposit_minor) {
      words << BeersRowsText::tr("deposit %1").arg(money(*away.deposit_minor, speaker_.printer));
    }
    row.words = sentence_of(words);
    if (away.lent_to) row.actions.push_back(task(away.keg, "returned"));
    row.actions.push_back(show(away.keg));
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace ullage::ui
