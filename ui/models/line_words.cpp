// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/line_words.h"

#include <QCoreApplication>

#include "core/report/page_lists.h"
#include "core/units/present.h"
#include "ui/context.h"

namespace ullage::ui {

namespace {

struct LineText {
  Q_DECLARE_TR_FUNCTIONS(LineText)
};

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
  w.tap = speaker.words == report::RegionalWords::us
              ? LineText::tr("Faucet %1").arg(q(line.record.tap))
              : LineText::tr("Tap %1").arg(q(line.record.tap));
  w.name = q(line.record.name);
  const cellar::KegStatus* keg = line.keg ? status.find(*line.keg) : nullptr;
  w.beer = LineText::tr("Nothing on it");
  if (keg) {
    w.keg = q(keg->record.tag);
    w.beer = keg->contents ? q(keg->contents->beer.name) : w.keg;
    w.set = keg->gas.on && keg->gas.set ? q(print.print(*keg->gas.set)) : LineText::tr("No gas");
    if (keg->gas.should_be)
      w.should = LineText::tr("should be %1").arg(q(print.print(*keg->gas.should_be)));
  }
  if (line.pour && line.pour->outlook.glass_time) {
    const physics::PourTime& t = present(line.pour->outlook.glass_time);
    w.glass = q(print.print(t.likely));
    w.range = q(print.print_range(t.low, t.high));
  } else {
    w.glass = QStringLiteral("–");
  }
  w.cleaned = line.last_cleaned
                  ? LineText::tr("Cleaned %1").arg(q(report::say_age(*line.last_cleaned, speaker)))
                  : LineText::tr("No cleaning logged");
  w.due = !line.clean_due ? LineText::tr("no rule set")
          : line.overdue
              ? LineText::tr("was due %1").arg(q(report::say_date(*line.clean_due, speaker)))
              : LineText::tr("due %1").arg(q(report::say_date(*line.clean_due, speaker)));
  w.state = q(report::say_line_state(line, speaker));
  return w;
}

QString glass_words(const cellar::PourOutlook& o, const report::Speaker& speaker) {
  if (!o.glass_time) return o.cant_tell ? q(report::say(*o.cant_tell, speaker)) : QString();
  return LineText::tr("%1 (%2)").arg(
      q(speaker.printer.print(o.glass_time->likely)),
      q(speaker.printer.print_range(o.glass_time->low, o.glass_time->high)));
}

QString pressure_fact_name() { return LineText::tr("Pressure set"); }
QString glass_fact_name(const report::LineSubject& s) {
  return LineText::tr("A glass of %1").arg(q(s.speaker.printer.print(s.setting.glass)));
}
QString cleaning_fact_name() { return LineText::tr("Cleaning"); }

namespace {

QString right_length_words(const cellar::PourOutlook& o, const units::Printer& print) {
  QString value = q(print.print(present(o.right_length)));
  if (o.shortest_right && o.longest_right)
    value = LineText::tr("%1 (%2 to %3)")
                .arg(value, q(print.print(*o.shortest_right)), q(print.print(*o.longest_right)));
  if (!o.at_hand || !o.at_hand_time) return value;
  return LineText::tr("%1; %2 fills it in %3")
      .arg(value, q(print.print(*o.at_hand)), q(print.print(*o.at_hand_time)));
}

QString handbook_words(const physics::RestrictionCompared& h, const units::Printer& print) {
  return LineText::tr("%1; friction explains %2")
      .arg(gradient_words(h.handbook, print), gradient_words(h.friction, print));
}

}  // namespace

QList<LineFact> pour_facts(std::shared_ptr<const report::LineSubject> subject) {
  const cellar::PourSetting& s = subject->setting;
  const cellar::PourOutlook& o = subject->outlook;
  const report::Speaker& speaker = subject->speaker;
  const units::Printer& print = speaker.printer;
  QList<LineFact> facts;
  const auto fact = [&](const QString& what, const QString& value,
                        report::Grounds (*why)(const report::LineSubject&)) {
    facts << LineFact{what, value, [subject, why] { return why(*subject); }};
  };
  fact(pressure_fact_name(), q(report::say_set_pressure(s, speaker)),
       &report::set_pressure_grounds);
  if (o.should_be)
    fact(LineText::tr("Pressure should be"),
         q(o.should_be_known ? print.print(*o.should_be_known) : print.print(*o.should_be)),
         &report::should_be_grounds);
  fact(glass_fact_name(*subject), glass_words(o, speaker), &report::glass_grounds);
  if (o.settles)
    fact(LineText::tr("The beer settles at"), q(print.print(*o.settles)),
         &report::line_settles_grounds);
  if (o.right_length && o.right_length->value() < 30)
    fact(LineText::tr("Hose for a balanced pour"), right_length_words(o, print),
         &report::right_length_grounds);
  if (o.right_bore)
    fact(LineText::tr("Bore for a balanced pour"), q(print.print_bore(*o.right_bore)),
         &report::right_bore_grounds);
  if (o.right_pressure)
    fact(LineText::tr("Pressure for a balanced pour"), q(print.print(*o.right_pressure)),
         &report::right_pressure_grounds);
  fact(LineText::tr("The line holds"), q(print.print(o.contents)), &report::contents_grounds);
  fact(LineText::tr("Lifting the beer takes"), q(print.print(o.lift)), &report::lift_grounds);
  if (o.handbook)
    fact(LineText::tr("Handbook for this hose"), handbook_words(*o.handbook, print),
         &report::handbook_grounds);
  facts << LineFact{LineText::tr("How it is known"),
                    s.timed_pours > 0
                        ? LineText::tr("timed pours that count: %1").arg(s.timed_pours)
                        : LineText::tr("hose as registered, between handbook and friction")};
  if (o.journey && !o.journey->places.empty())
    fact(LineText::tr("Above equilibrium, pouring"),
         LineText::tr("%1 s in the line, %2 times at the end")
             .arg(q(print.number(units::in_seconds(o.journey->supersaturated), 1)),
                  q(print.number(o.journey->places.back().at_end.count(), 1))),
         &report::supersaturated_grounds);
  return facts;
}

}  // namespace ullage::ui
