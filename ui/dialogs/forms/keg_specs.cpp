// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about kegs as vessels: found, moved, lent, held back, made ready.
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

const auto found_beer = when(&Found::contents, FoundContents::beer);

FormSpec found_spec() {
  return {
      "found",
      "Found: what is in a keg now",
      "stock-taking count contents",
      {{"keg", "&Keg"},
       {"contents", "&Contents"},
       {"batch", "&Batch", Use::typed, "Leave open if nobody knows.", false, found_beer},
       {"beer_volume_m3", "&Left in it", Use::typed, "Leave open if unknown.", false, found_beer},
       {"beer_volume_half_width_m3", "Give or take", Use::typed, "", false, found_beer},
       {"pressure_pa", "&Pressure", Use::typed, "On its gauge now."},
       {"instrument", "Read on", Use::remembered},
       {"temperature_k", "&Temperature", Use::typed, "Of the beer, or where it stands.", false,
        found_beer},
       {"thermometer", "Thermometer", Use::remembered, "", false, found_beer},
       {"co2_g_per_l", "C&O2", Use::typed, "If somebody measured or knows it.", false, found_beer},
       {"co2_half_width_g_per_l", "Give or take", Use::typed, "", false, found_beer},
       {"gas_on", "Gas is connected"},
       {"regulator", "Regulator", Use::remembered},
       {"line", "On line", Use::typed, "If it is on tap.", false, found_beer},
       {"since_utc_s", "&Since", Use::typed, "Since when it has held this, if known."}},
      CautionWeight::none,
      ""};
}

FormSpec cleaned_spec() {
  return {
      "cleaned",
      "Keg cleaned",
      "wash clean caustic",
      {{"keg", "&Keg"},
       {"method", "&Method", Use::remembered},
       {"agent", "&Agent", Use::remembered, "In your own words."},
       {"strength_percent", "&Strength, %", Use::remembered, "As the label says."},
       {"contact_s", "&Contact time", Use::remembered},
       {"temperature_k", "&Temperature", Use::remembered}},
      CautionWeight::danger,
      "Vent the keg before opening it. Caustic and acid burn: gloves and goggles. Never let acid "
      "meet a chlorine cleaner. Rinse CO₂ out before caustic, or the keg can draw a vacuum. "
      "Follow the label and local rules."};
}

FormSpec hold_spec() {
  return {
      "hold_reading",
      "Hold reading: does it keep its pressure?",
      "hold test pressure leak",
      {{"keg", "&Keg"},
       {"pressure_pa", "&Pressure", Use::reading},
       {"instrument", "Read on", Use::remembered,
        "Use one gauge for all readings of a test: its bias then cancels."},
       {"temperature_k", "&Temperature", Use::reading, "The keg's, to tell cooling from a leak."},
       {"thermometer", "Thermometer", Use::remembered},
       {"starts_test", "First reading of a new test", Use::typed,
        "Wait half an hour after gassing before the first one."}},
      CautionWeight::caution,
      "Not above the pressure stamped on the keg. A keg that holds at a high pressure is not "
      "proven at a low one: lids seat with pressure."};
}

FormSpec purged_spec() {
  return {"purged",
          "Purged of air",
          "purge oxygen co2",
          {{"keg", "&Keg"},
           {"method", "&Method", Use::remembered},
           {"cycles", "&Cycles", Use::remembered, "Filled with gas and vented this many times.",
            true, when(&Purged::method, PurgeMethod::cycles)},
           {"pressure_pa", "&Pressure of each", Use::remembered, "", true,
            when(&Purged::method, PurgeMethod::cycles)},
           {"instrument", "Read on", Use::remembered, "", false,
            when(&Purged::method, PurgeMethod::cycles)},
           {"vessel_volumes", "Keg &volumes swept", Use::remembered, "", true,
            when(&Purged::method, PurgeMethod::swept)}},
          CautionWeight::caution,
          "CO₂ collects low and is not noticed: purge where the air moves."};
}

std::vector<FormSpec> make_keg() {
  std::vector<FormSpec> specs;
  specs.push_back(found_spec());
  specs.push_back({"moved", "Moved", "place carry", {{"keg", "&Keg"}, {"place", "&To"}}});
  specs.push_back({"quarantined",
                   "Held back",
                   "quarantine hold do not use",
                   {{"keg", "&Keg"}, {"reason", "&Reason", Use::typed, "", true}}});
  specs.push_back({"cleared",
                   "Cleared for use again",
                   "clear release",
                   {{"keg", "&Keg"}, {"reason", "&Why", Use::typed, "", true}}});
  specs.push_back({"lent",
                   "Lent or rented out",
                   "loan custody deposit",
                   {{"keg", "&Keg"},
                    {"to", "&To", Use::typed, "A site or a first name is enough.", true},
                    {"deposit_minor", "&Deposit", Use::hidden},
                    {"due_back_day", "Due &back"}}});
  specs.push_back({"returned", "Came back", "return loan", {{"keg", "&Keg"}}});
  specs.push_back({"inspected",
                   "Inspected, seals",
                   "inspect seal o-ring lubricate lid",
                   {{"keg", "&Keg"},
                    {"seals_lubricated", "Seals lubricated"},
                    {"seals_renewed", "Seals renewed"},
                    {"lid_seated", "Lid seated"},
                    {"fit_to_use", "Fit to use"}},
                   CautionWeight::danger,
                   "Vent until nothing comes any more before a lid or spear is touched."});
  specs.push_back(cleaned_spec());
  specs.push_back({"sanitised",
                   "Keg sanitised",
                   "sanitise sanitize",
                   {{"keg", "&Keg"},
                    {"method", "&Method", Use::remembered},
                    {"agent", "&Agent", Use::remembered},
                    {"contact_s", "&Contact time", Use::remembered}},
                   CautionWeight::caution,
                   "Clean first: a sanitiser does not work through soil. Follow the label."});
  specs.push_back(hold_spec());
  specs.push_back(purged_spec());
  return specs;
}

}  // namespace

std::span<const FormSpec> keg_form_specs() {
  static const std::vector<FormSpec> specs = make_keg();
  return specs;
}

}  // namespace ullage::ui
