// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about gas: on kegs, in bottles, and where it should not be.
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

void add_gas_on_kegs(std::vector<FormSpec>& specs) {
  specs.push_back(
      {"gas_set",
       "Gas set",
       "pressure psi bar regulator gas on",
       {{"keg", "&Keg"},
        {"pressure_pa", "&Pressure", Use::reading},
        {"purpose", "&Why", Use::remembered},
        {"regulator", "&Regulator", Use::remembered},
        {"instrument", "Read on", Use::remembered},
        {"co2_mole_fraction", "CO₂ share", Use::remembered,
         "Of a blend; pure CO₂ when left open."}},
       CautionWeight::caution,
       "Not above the pressure stamped on the keg. Turning a regulator down does not let "
       "pressure out of the keg: vent it too."});
  specs.push_back({"gas_off", "Gas off", "disconnect shut", {{"keg", "&Keg"}}});
  specs.push_back({"vented",
                   "Vented",
                   "vent relief let down pressure",
                   {{"keg", "&Keg"},
                    {"to_pressure_pa", "&Down to", Use::typed, "To the open air when left open."}},
                   CautionWeight::danger,
                   "Face away from the valve. Let air into the room: CO₂ collects low."});
  specs.push_back({"rocked",
                   "Rocked or shaken",
                   "shake roll",
                   {{"keg", "&Keg"}, {"duration_s", "&For", Use::remembered}},
                   CautionWeight::caution,
                   "Shaking takes gas up many times faster and is easily overdone."});
}

void add_gas_bottles(std::vector<FormSpec>& specs) {
  specs.push_back({"bottle_weighed",
                   "Gas bottle weighed",
                   "weigh co2 cylinder",
                   {{"bottle", "&Bottle", Use::remembered},
                    {"gross_mass_kg", "&Weight", Use::reading},
                    {"scale", "&Scale", Use::remembered},
                    {"with_regulator", "&Regulator left on", Use::remembered,
                     "It weighs about a kilogram: say so if it was on the scale."}}});
  specs.push_back(
      {"bottle_changed",
       "Gas bottle changed",
       "swap cylinder",
       {{"regulator", "&Regulator"},
        {"bottle", "&New bottle"},
        {"co2_on_tag_mole_fraction", "CO₂ on the &tag", Use::typed,
         "Read the tag, not the paint. In per cent of CO₂."},
        {"washer_renewed", "Washer renewed"},
        {"secured", "Standing upright and secured"}},
       CautionWeight::danger,
       "Open the valve slowly, face away. Never swap CO₂ and mixed-gas regulators. Test "
       "the joint for leaks. Licensed practice and local codes come first."});
  specs.push_back({"gauge_read",
                   "Bottle gauge read",
                   "high pressure gauge",
                   {{"bottle", "&Bottle", Use::remembered},
                    {"pressure_pa", "&Pressure", Use::reading,
                     "Tells nothing about CO₂ while liquid remains; a blend's does fall."},
                    {"instrument", "Read on", Use::remembered},
                    {"temperature_k", "&Temperature", Use::reading},
                    {"thermometer", "Thermometer", Use::remembered}}});
  specs.push_back({"leak_tested",
                   "Looked for leaks",
                   "soap bubbles leak lid joint",
                   {{"keg", "&Keg"},
                    {"line", "&Line"},
                    {"regulator", "&Regulator"},
                    {"bottle", "&Bottle"},
                    {"method", "&How", Use::remembered},
                    {"leak_found", "Leak found"},
                    {"where", "&Where"}}});
}

std::vector<FormSpec> make_gas() {
  std::vector<FormSpec> specs;
  add_gas_on_kegs(specs);
  add_gas_bottles(specs);
  return specs;
}

}  // namespace

std::span<const FormSpec> gas_form_specs() {
  static const std::vector<FormSpec> specs = make_gas();
  return specs;
}

}  // namespace ullage::ui
