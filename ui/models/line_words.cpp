// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/line_words.h"

#include <QCoreApplication>

#include "ui/context.h"

namespace ullage::ui {

namespace {

QString line_tr(const char* text) { return QCoreApplication::translate("LineWords", text); }

QString gradient_words(units::PressureGradient g, const units::Printer& print) {
  const bool feet = print.units.length == units::LengthUnit::foot;
  const units::Length one = feet ? units::feet(1) : units::metres(1);
  const units::PressureDifference loss = g * one;
  const QString per = feet ? QStringLiteral("ft") : QStringLiteral("m");
  if (print.units.pressure == units::PressureUnit::psi)
    return QStringLiteral("%1 psi/%2").arg(q(print.number(units::in_psi(loss), 2)), per);
  return QStringLiteral("%1 bar/%2").arg(q(print.number(units::in_bar(loss), 2)), per);
}

}  // namespace

LineWords line_words(const cellar::LineStatus& line, const cellar::CellarStatus& status,
                     const report::Speaker& speaker) {
  const units::Printer& print = speaker.printer;
  LineWords w;
  w.tap = speaker.words == report::RegionalWords::us ? line_tr("Faucet %1").arg(q(line.record.tap))
                                                     : line_tr("Tap %1").arg(q(line.record.tap));
  w.name = q(line.record.name);
  const cellar::KegStatus* keg = line.keg ? status.find(*line.keg) : nullptr;
  w.beer = line_tr("Nothing on it");
  if (keg) {
    w.keg = q(keg->record.tag);
    w.beer = keg->contents ? q(keg->contents->beer.name) : w.keg;
    w.set = keg->gas.on && keg->gas.set ? q(print.print(*keg->gas.set)) : line_tr("No gas");
    if (keg->gas.should_be)
      w.should = line_tr("should be %1").arg(q(print.print(*keg->gas.should_be)));
  }
  if (line.pour && line.pour->outlook.glass_time) {
    const physics::PourTime& t = *line.pour->outlook.glass_time;
    w.glass = q(print.print(t.likely));
    w.range = q(print.print_range(t.low, t.high));
  } else {
    w.glass = QStringLiteral("–");
  }
  w.cleaned = line.last_cleaned
                  ? line_tr("Cleaned %1").arg(q(report::say_age(*line.last_cleaned, speaker)))
                  : line_tr("No cleaning logged");
  w.due = !line.clean_due ? line_tr("no rule set")
          : line.overdue  ? line_tr("was due %1").arg(q(report::say_date(*line.clean_due, speaker)))
                          : line_tr("due %1").arg(q(report::say_date(*line.clean_due, speaker)));
  w.state = q(report::say(line.state, speaker));
  if (!line.do_not_serve() && !line.overdue) {
    for (const cellar::Advice& a : line.advice) {
      if (a.severity < cellar::Severity::advice) continue;
      w.state = q(report::say(a.headline, speaker));
      break;
    }
  }
  return w;
}

QString glass_words(const cellar::PourOutlook& o, const report::Speaker& speaker) {
  if (!o.glass_time) return o.cant_tell ? q(report::say(*o.cant_tell, speaker)) : QString();
  return line_tr("%1 (%2)").arg(
      q(speaker.printer.print(o.glass_time->likely)),
      q(speaker.printer.print_range(o.glass_time->low, o.glass_time->high)));
}

QList<LineFact> pour_facts(const cellar::PourSetting& s, const cellar::PourOutlook& o,
                           const report::Speaker& speaker) {
  const units::Printer& print = speaker.printer;
  QList<LineFact> facts;
  facts << LineFact{line_tr("A glass of %1").arg(q(print.print(s.glass))), glass_words(o, speaker)};
  if (o.should_be) facts << LineFact{line_tr("Pressure should be"), q(print.print(*o.should_be))};
  if (o.settles) facts << LineFact{line_tr("The beer settles at"), q(print.print(*o.settles))};
  if (o.right_length && o.right_length->value() < 30) {
    QString value = q(print.print(*o.right_length));
    if (o.at_hand && o.at_hand_time) {
      value = line_tr("%1; %2 fills it in %3")
                  .arg(value, q(print.print(*o.at_hand)), q(print.print(*o.at_hand_time)));
    }
    facts << LineFact{line_tr("Hose for a balanced pour"), value};
  }
  facts << LineFact{line_tr("The line holds"), q(print.print(o.contents))};
  facts << LineFact{line_tr("Lifting the beer takes"), q(print.print(o.lift))};
  if (o.handbook) {
    facts << LineFact{line_tr("Handbook for this hose"),
                      line_tr("%1; friction explains %2")
                          .arg(gradient_words(o.handbook->handbook, print),
                               gradient_words(o.handbook->friction, print))};
  }
  facts << LineFact{line_tr("How it is known"),
                    s.timed_pours > 0
                        ? line_tr("timed pours that count: %1").arg(s.timed_pours)
                        : line_tr("hose as registered, between handbook and friction")};
  if (o.journey && o.journey->places.size() > 0) {
    facts << LineFact{line_tr("Above equilibrium, pouring"),
                      line_tr("%1 s in the line, %2 times at the end")
                          .arg(q(print.number(units::in_seconds(o.journey->supersaturated), 1)),
                               q(print.number(o.journey->places.back().at_end.count(), 1)))};
  }
  return facts;
}

}  // namespace ullage::ui
