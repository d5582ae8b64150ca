// SPDX-License-Identifier: GPL-3.0-or-later
//
// Tags to hang on kegs, taps and bottles. They are tied on, never stuck on, and
// carry nothing about a person; what goes stale is left blank to be written in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/report/say.h"

namespace ullage::report {

struct TagFact {
  std::string label;
  std::string value;  // empty: a line to write on
};

struct KegTag {
  std::string tag;   // the keg's number, printed huge
  std::string code;  // keg_code.h, printed as a square code
  std::string beer;  // a line to write on when the keg is empty
  std::string kind;  // "Bitter, 4.1 %"
  std::string allergens;
  std::string use_by;               // "24 FEB 2027"
  std::vector<TagFact> facts;       // batch, filled, tare, full, max pressure ...
  std::vector<std::string> states;  // boxes to tick
  std::vector<TagFact> back;        // seals, pressure test, last beer, owner
  std::string caution;
};

[[nodiscard]] KegTag keg_tag(const cellar::KegStatus&, const cellar::Journal&,
                             const cellar::CellarStatus&, const Speaker&);
// All kegs in use that the cellar has at hand: not those lent out.
[[nodiscard]] std::vector<KegTag> keg_tags(const cellar::Journal&, const cellar::CellarStatus&,
                                           const Speaker&);

enum class Warning { do_not_serve, vent_first, out_of_service, recalled, gas };

struct WarningTag {
  Warning warning = Warning::out_of_service;
  cellar::SubjectRef about;
  std::string title;     // "DO NOT SERVE"
  std::string subtitle;  // "Line being cleaned"
  std::string subject;   // "Line 2, tap 2", "K07"
  std::vector<TagFact> facts;
  std::string caution;
};

// For a line with cleaner in it, and for one whose keg is held back.
[[nodiscard]] WarningTag do_not_serve_tag(const cellar::LineStatus&, const Speaker&);
[[nodiscard]] WarningTag vent_first_tag(const cellar::KegStatus&, const Speaker&);
[[nodiscard]] WarningTag out_of_service_tag(const cellar::KegStatus&, const Speaker&);
[[nodiscard]] WarningTag recalled_tag(const cellar::KegStatus&, const std::string& reason,
                                      const Speaker&);
[[nodiscard]] WarningTag gas_tag(const cellar::BottleStatus&, const Speaker&);

// The warning of a kind for one thing, whether or not there is reason for it; what is not
// known is left to be written in. Nothing where such a thing has no such warning: a line is
// not vented.
[[nodiscard]] std::optional<WarningTag> warning_tag(Warning, cellar::SubjectRef,
                                                    const cellar::Journal&,
                                                    const cellar::CellarStatus&, const Speaker&);

// Every warning that the cellar gives reason for now: lines not to be served from, kegs held
// back or failing their hold test, kegs of a recalled batch, each bottle in use. Under pressure
// are the kegs that somebody will open next, empty or out of service, whose pressure nobody has
// let out; that a full keg holds pressure is nothing out of the way.
[[nodiscard]] std::vector<WarningTag> warning_tags(const cellar::Journal&,
                                                   const cellar::CellarStatus&, const Speaker&);

// As plain text, for terminals.
[[nodiscard]] std::string text_of(const KegTag&);
[[nodiscard]] std::string text_of(const WarningTag&);

// For programs: an array, one object a tag; a fact that is to be written in by hand
// has an empty value.
[[nodiscard]] std::string json_of(const std::vector<KegTag>&);
[[nodiscard]] std::string json_of(const std::vector<WarningTag>&);

// Day and month in words and capitals, so that 03/12 is never read two ways.
[[nodiscard]] std::string use_by_words(cellar::Date);

}  // namespace ullage::report
