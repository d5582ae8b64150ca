// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line for every kind of entry about a line's pieces, rules and work done.
#include "core/report/entry_words.h"

namespace ullage::report {

namespace {

using namespace cellar;

template <class Work>
std::string thing_worked_on(const Work& w, const EntryTeller& t) {
  const auto thing = subject_named(w);
  return thing ? name_of(*thing, t.names) : std::string();
}

}  // namespace

std::string words_of(const SegmentRecord& s, const EntryTeller& t) {
  return t.line("Piece " + t.speaker.printer.number(static_cast<double>(s.position), 0) + " of " +
                    t.name(s.line),
                {t.print(s.length), t.speaker.printer.print_bore(s.bore) + " bore",
                 spaced(to_word(s.material)), t.named("rises", s.rise),
                 s.in_use ? std::string() : std::string("out of use")});
}

std::string words_of(const RuleRecord& r, const EntryTeller& t) {
  const std::string thing = thing_worked_on(r, t);
  return t.line("Rule: " + spaced(to_word(r.work)),
                {thing.empty() ? "every " + spaced(to_word(r.scope)) : thing,
                 r.interval_days ? "every " + t.count(*r.interval_days, "day")
                                 : std::string("each time it is called for"),
                 r.source, r.in_force ? std::string() : std::string("no longer in force")});
}

std::string words_of(const WorkDone& w, const EntryTeller& t) {
  return t.line(std::string(w.complete ? "Done: " : "Partly done: ") + spaced(to_word(w.work)),
                {thing_worked_on(w, t), w.agent, t.percent(w.strength_percent),
                 t.print(w.concentrate), t.print(w.concentrate_mass), t.print(w.contact),
                 w.done_by.empty() ? std::string() : "by " + w.done_by,
                 w.countersigned_by.empty() ? std::string() : "signed by " + w.countersigned_by,
                 w.next_due ? "next due " + say_date(*w.next_due, t.speaker) : std::string()});
}

std::string words_of(const WorkMoved& w, const EntryTeller& t) {
  return t.line("Put off: " + spaced(to_word(w.work)),
                {thing_worked_on(w, t), "to " + say_date(w.to_day, t.speaker), w.reason});
}

}  // namespace ullage::report
