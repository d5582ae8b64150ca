// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about lines, places and remarks.
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

FormSpec line_cleaned_spec() {
  return {"line_cleaned",
          "Line cleaned",
          "clean line caustic acid",
          {{"line", "&Line"},
           {"agent_kind", "&Agent", Use::remembered},
           {"agent", "&Name of it", Use::remembered},
           {"strength_percent", "&Strength, %", Use::remembered},
           {"method", "&Method", Use::remembered},
           {"contact_s", "&Contact time", Use::remembered},
           {"temperature_k", "&Temperature", Use::remembered},
           {"flush_check", "&Flush checked with", Use::remembered},
           {"flush_passed", "Flush passed"},
           {"faucet", "Tap taken apart and cleaned"},
           {"coupler", "Coupler cleaned"},
           {"foam_detector", "Foam detector cleaned"},
           {"beer_lost_m3", "&Beer lost", Use::remembered}},
          CautionWeight::danger,
          "Caustic and acid burn: gloves and goggles. Never let acid meet a chlorine cleaner. This "
          "does "
          "not release the line: that takes a check of its own."};
}

std::vector<FormSpec> make_lines() {
  std::vector<FormSpec> specs;
  specs.push_back({"line_locked",
                   "Do not serve: lock a line",
                   "lock cleaning line do not serve",
                   {{"line", "&Line"},
                    {"agent_kind", "&Agent", Use::remembered},
                    {"agent", "&Name of it", Use::remembered},
                    {"reason", "&Why", Use::remembered}},
                   CautionWeight::danger,
                   "Hang a sign on the tap as well. Never leave a line in soak unattended."});
  specs.push_back(line_cleaned_spec());
  specs.push_back({"line_released",
                   "Release a line to serve again",
                   "unlock release check litmus",
                   {{"line", "&Line"},
                    {"flush_check", "&Checked with", Use::remembered},
                    {"passed", "The check passed: no cleaner is left"},
                    {"checked_by", "Checked &by", Use::typed, "", true},
                    {"countersigned_by", "Counter&signed by"}},
                   CautionWeight::danger,
                   "By litmus or pH against tap water, never by finger or taste."});
  specs.push_back({"timed_pour",
                   "Timed pour",
                   "pour seconds flow",
                   {{"line", "&Line"},
                    {"volume_m3", "&Glass", Use::remembered, "Type its unit, too."},
                    {"duration_s", "&Took", Use::reading, "Type its unit, too: 8 s."},
                    {"pressure_pa", "&Pressure", Use::reading},
                    {"instrument", "Read on", Use::remembered},
                    {"temperature_k", "Beer &temperature", Use::reading},
                    {"thermometer", "Thermometer", Use::remembered}}});
  return specs;
}

std::vector<FormSpec> make_places() {
  std::vector<FormSpec> specs;
  specs.push_back({"temperature_read",
                   "Temperature read",
                   "thermometer cold box fridge",
                   {{"place", "&Place", Use::remembered},
                    {"temperature_k", "&Temperature", Use::reading},
                    {"thermometer", "T&hermometer", Use::remembered},
                    {"of_what", "&Of", Use::remembered}}});
  specs.push_back(
      {"alarm_checked",
       "Gas alarm checked",
       "co2 alarm sensor",
       {{"place", "&Place", Use::remembered}, {"passed", "The alarm went off as it should"}},
       CautionWeight::danger,
       "If a real alarm sounds, stay out and air the place. Never go in to rescue."});
  specs.push_back({"noted",
                   "Remark",
                   "note comment",
                   {{"keg", "&Keg"},
                    {"line", "&Line"},
                    {"batch", "&Batch"},
                    {"place", "&Place"},
                    {"bottle", "&Bottle", Use::hidden}}});
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
