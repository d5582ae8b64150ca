// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about lines, places and remarks.
#include <QtGlobal>

#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

FormSpec line_cleaned_spec() {
  return {
      "line_cleaned",
      QT_TRANSLATE_NOOP("Forms", "Line cleaned"),
      QT_TRANSLATE_NOOP("Forms", "clean line caustic acid"),
      {{"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
       {"agent_kind", QT_TRANSLATE_NOOP("Forms", "&Agent"), Use::remembered},
       {"agent", QT_TRANSLATE_NOOP("Forms", "&Name of it"), Use::remembered},
       {"strength_percent", QT_TRANSLATE_NOOP("Forms", "&Strength, %"), Use::remembered},
       {"method", QT_TRANSLATE_NOOP("Forms", "&Method"), Use::remembered},
       {"contact_s", QT_TRANSLATE_NOOP("Forms", "&Contact time"), Use::remembered},
       {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::remembered},
       {"flush_check", QT_TRANSLATE_NOOP("Forms", "&Flush checked with"), Use::remembered},
       {"flush_passed", QT_TRANSLATE_NOOP("Forms", "Flush passed")},
       {"faucet", QT_TRANSLATE_NOOP("Forms", "Tap taken apart and cleaned")},
       {"coupler", QT_TRANSLATE_NOOP("Forms", "Coupler cleaned")},
       {"foam_detector", QT_TRANSLATE_NOOP("Forms", "Foam detector cleaned")},
       {"beer_lost_m3", QT_TRANSLATE_NOOP("Forms", "&Beer lost"), Use::remembered}},
      CautionWeight::danger,
      QT_TRANSLATE_NOOP(
          "Forms",
          "Caustic and acid burn: gloves and goggles. Never let acid meet a chlorine cleaner. This "
          "does "
          "not release the line: that takes a check of its own.")};
}

// Of a line that two people have to release; what was signed once stays on show.
bool wants_second_initials(const Payload& payload, const CellarStatus& cellar) {
  const auto* release = get_if<LineReleased>(&payload);
  if (!release) return false;
  const LineStatus* line = cellar.find(release->line);
  return !release->countersigned_by.empty() || (line && line->record.second_initials_to_release);
}

std::vector<FormSpec> make_lines() {
  std::vector<FormSpec> specs;
  specs.push_back(
      {"line_locked",
       QT_TRANSLATE_NOOP("Forms", "Do not serve: lock a line"),
       QT_TRANSLATE_NOOP("Forms", "lock cleaning line do not serve"),
       {{"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
        {"agent_kind", QT_TRANSLATE_NOOP("Forms", "&Agent"), Use::remembered},
        {"agent", QT_TRANSLATE_NOOP("Forms", "&Name of it"), Use::remembered},
        {"reason", QT_TRANSLATE_NOOP("Forms", "&Why"), Use::remembered}},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP(
           "Forms", "Hang a sign on the tap as well. Never leave a line in soak unattended.")});
  specs.push_back(line_cleaned_spec());
  specs.push_back(
      {"line_released",
       QT_TRANSLATE_NOOP("Forms", "Release a line to serve again"),
       QT_TRANSLATE_NOOP("Forms", "unlock release check litmus"),
       {{"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
        {"flush_check", QT_TRANSLATE_NOOP("Forms", "&Checked with"), Use::remembered},
        {"passed", QT_TRANSLATE_NOOP("Forms", "The check passed: no cleaner is left")},
        {"checked_by", QT_TRANSLATE_NOOP("Forms", "Checked &by"), Use::typed, "", true},
        {"countersigned_by", QT_TRANSLATE_NOOP("Forms", "Counter&signed by"), Use::typed, "", false,
         wants_second_initials}},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP("Forms", "By litmus or pH against tap water, never by finger or taste.")});
  specs.push_back(
      {"timed_pour",
       QT_TRANSLATE_NOOP("Forms", "Timed pour"),
       QT_TRANSLATE_NOOP("Forms", "pour seconds flow"),
       {{"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
        scaled({"volume_m3", QT_TRANSLATE_NOOP("Forms", "&Glass"), Use::remembered},
               FieldScale::small),
        scaled({"duration_s", QT_TRANSLATE_NOOP("Forms", "&Took"), Use::reading},
               FieldScale::small),
        {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure"), Use::reading},
        {"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered},
        {"temperature_k", QT_TRANSLATE_NOOP("Forms", "Beer &temperature"), Use::reading},
        {"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered}}});
  return specs;
}

std::vector<FormSpec> make_places() {
  std::vector<FormSpec> specs;
  specs.push_back({"temperature_read",
                   QT_TRANSLATE_NOOP("Forms", "Temperature read"),
                   QT_TRANSLATE_NOOP("Forms", "thermometer cold box fridge"),
                   {{"place", QT_TRANSLATE_NOOP("Forms", "&Place"), Use::remembered},
                    {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::reading},
                    {"thermometer", QT_TRANSLATE_NOOP("Forms", "T&hermometer"), Use::remembered},
                    {"of_what", QT_TRANSLATE_NOOP("Forms", "&Of"), Use::remembered}}});
  specs.push_back(
      {"alarm_checked",
       QT_TRANSLATE_NOOP("Forms", "Gas alarm checked"),
       QT_TRANSLATE_NOOP("Forms", "co2 alarm sensor"),
       {{"place", QT_TRANSLATE_NOOP("Forms", "&Place"), Use::remembered},
        {"passed", QT_TRANSLATE_NOOP("Forms", "The alarm went off as it should")}},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP(
           "Forms", "If a real alarm sounds, stay out and air the place. Never go in to rescue.")});
  specs.push_back({"noted",
                   QT_TRANSLATE_NOOP("Forms", "Remark"),
                   QT_TRANSLATE_NOOP("Forms", "note comment"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
                    {"batch", QT_TRANSLATE_NOOP("Forms", "&Batch")},
                    {"place", QT_TRANSLATE_NOOP("Forms", "&Place")},
                    {"bottle", QT_TRANSLATE_NOOP("Forms", "&Bottle"), Use::hidden}}});
  return specs;
}

}  // namespace

std::span<const FormSpec> line_form_specs() {
  static const std::vector<FormSpec> specs = make_lines();
  return specs;
}

std::span<const FormSpec> place_form_specs() {
  static const std::vector<FormSpec> specs = make_places();
  return specs;
}

}  // namespace ullage::ui
