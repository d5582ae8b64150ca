// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/round_words.h"

#include "ui/dialogs/round.h"
#include "ui/preferences.h"

namespace ullage::ui {
namespace {

bool of_tap(const cellar::RoundStation& at) { return at.about.kind == cellar::SubjectKind::line; }

bool in_us_words(const Context& context) {
  return context.preferences.words() == report::RegionalWords::us;
}

QStringList keg_words(const cellar::RoundStation& at, const cellar::KegStatus& keg,
                      const Context& context) {
  QStringList words;
  if (keg.contents) words << q(keg.contents->beer.name);
  words << q(report::say(keg.state, context.speaker()));
  if (at.do_not_serve) words << RoundDialog::tr("pour nothing from it");
  return words;
}

QString on_tap_words(const cellar::LineStatus& line, const cellar::CellarStatus& cellar) {
  const cellar::KegStatus* keg = line.keg ? cellar.find(*line.keg) : nullptr;
  if (keg == nullptr) return RoundDialog::tr("nothing on it");
  const QString tag = q(keg->record.tag);
  return keg->contents ? q(keg->contents->beer.name) + QStringLiteral(", ") + tag : tag;
}

QStringList tap_words(const cellar::RoundStation& at, const cellar::LineStatus& line,
                      const cellar::CellarStatus& cellar, const report::Speaker& speaker) {
  QStringList words;
  if (line.lock) {
    const std::string agent =
        line.lock->agent.empty() ? report::say(line.state, speaker) : line.lock->agent;
    words << RoundDialog::tr("DO NOT SERVE: %1").arg(q(agent));
  } else if (line.keg_lock) {
    words << RoundDialog::tr("DO NOT SERVE: %1").arg(q(report::say(line.keg_lock->why, speaker)));
  }
  words << on_tap_words(line, cellar);
  words << (line.last_cleaned
                ? RoundDialog::tr("cleaned %1").arg(q(report::say_age(*line.last_cleaned, speaker)))
                : RoundDialog::tr("not cleaned yet"));
  if (line.clean_due) {
    const QString due = q(report::say_date(*line.clean_due, speaker));
    words << (line.overdue ? RoundDialog::tr("cleaning was due %1").arg(due)
                           : RoundDialog::tr("next cleaning %1").arg(due));
  }
  words
      << (at.last_pour
              ? RoundDialog::tr("a glass timed %1").arg(q(report::say_age(*at.last_pour, speaker)))
              : RoundDialog::tr("no glass timed yet"));
  return words;
}

}  // namespace

QString round_name(const cellar::RoundStation& at, const Context& context) {
  if (of_tap(at)) {
    const auto status = context.cellar.status();
    const cellar::LineStatus* line = status->find(cellar::LineId{at.about.uuid});
    if (line != nullptr && !line->record.tap.empty()) {
      return (in_us_words(context) ? RoundDialog::tr("Faucet %1") : RoundDialog::tr("Tap %1"))
          .arg(q(line->record.tap));
    }
  }
  return q(at.name);
}

QString round_place_words(const cellar::RoundStation& at, const Context& context) {
  if (of_tap(at))
    return in_us_words(context) ? RoundDialog::tr("Faucets") : RoundDialog::tr("Taps");
  if (at.place.empty()) return RoundDialog::tr("Place not known");
  return at.place_out_of_use ? RoundDialog::tr("Place out of use: %1").arg(q(at.place))
                             : q(at.place);
}

QString round_about_words(const cellar::RoundStation& at, const Context& context) {
  const auto status = context.cellar.status();
  QStringList words;
  if (at.about.kind == cellar::SubjectKind::keg) {
    const cellar::KegStatus* keg = status->find(cellar::KegId{at.about.uuid});
    if (keg != nullptr) words = keg_words(at, *keg, context);
  } else if (of_tap(at)) {
    const cellar::LineStatus* line = status->find(cellar::LineId{at.about.uuid});
    if (line != nullptr) words = tap_words(at, *line, *status, context.speaker());
  }
  return words.join(QStringLiteral(" · "));
}

}  // namespace ullage::ui
