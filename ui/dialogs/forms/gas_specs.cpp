// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about gas: on kegs, in bottles, and where it should not be.
#include <QtGlobal>

#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

void add_gas_on_kegs(std::vector<FormSpec>& specs) {
  specs.push_back(
      {"gas_set",
       QT_TRANSLATE_NOOP("Forms", "Gas set"),
       QT_TRANSLATE_NOOP("Forms", "pressure psi bar regulator gas on"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
        {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure"), Use::reading},
        {"purpose", QT_TRANSLATE_NOOP("Forms", "&Why"), Use::remembered},
        {"regulator", QT_TRANSLATE_NOOP("Forms", "&Regulator"), Use::remembered},
        {"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered},
        {"co2_mole_fraction", QT_TRANSLATE_NOOP("Forms", "CO₂ share"), Use::remembered,
         QT_TRANSLATE_NOOP("Forms", "Of a blend; pure CO₂ when left open.")}},
       CautionWeight::caution,
       QT_TRANSLATE_NOOP(
           "Forms",
           "Not above the pressure stamped on the keg. Turning a regulator down does not let "
           "pressure out of the keg: vent it too.")});
  specs.push_back({"gas_off",
                   QT_TRANSLATE_NOOP("Forms", "Gas off"),
                   QT_TRANSLATE_NOOP("Forms", "disconnect shut"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")}}});
  specs.push_back(
      {"vented",
       QT_TRANSLATE_NOOP("Forms", "Vented"),
       QT_TRANSLATE_NOOP("Forms", "vent relief let down pressure"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
        {"to_pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Down to"), Use::typed,
         QT_TRANSLATE_NOOP("Forms", "To the open air when left open.")}},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP("Forms",
                         "Face away from the valve. Let air into the room: CO₂ collects low.")});
  specs.push_back({"rocked",
                   QT_TRANSLATE_NOOP("Forms", "Rocked or shaken"),
                   QT_TRANSLATE_NOOP("Forms", "shake roll"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"duration_s", QT_TRANSLATE_NOOP("Forms", "&For how long"), Use::remembered}},
                   CautionWeight::caution,
                   QT_TRANSLATE_NOOP(
                       "Forms", "Shaking takes gas up many times faster and is easily overdone.")});
}

void add_gas_bottles(std::vector<FormSpec>& specs) {
  specs.push_back(
      {"bottle_weighed",
       QT_TRANSLATE_NOOP("Forms", "Gas bottle weighed"),
       QT_TRANSLATE_NOOP("Forms", "weigh co2 cylinder"),
       {{"bottle", QT_TRANSLATE_NOOP("Forms", "&Bottle"), Use::remembered},
        {"gross_mass_kg", QT_TRANSLATE_NOOP("Forms", "&Weight"), Use::reading},
        {"scale", QT_TRANSLATE_NOOP("Forms", "&Scale"), Use::remembered},
        {"with_regulator", QT_TRANSLATE_NOOP("Forms", "&Regulator left on"), Use::remembered,
         QT_TRANSLATE_NOOP("Forms",
                           "It weighs about a kilogram: say so if it was on the scale.")}}});
  specs.push_back(
      {"bottle_changed",
       QT_TRANSLATE_NOOP("Forms", "Gas bottle changed"),
       QT_TRANSLATE_NOOP("Forms", "swap cylinder"),
       {{"regulator", QT_TRANSLATE_NOOP("Forms", "&Regulator")},
        {"bottle", QT_TRANSLATE_NOOP("Forms", "&New bottle")},
        {"co2_on_tag_mole_fraction", QT_TRANSLATE_NOOP("Forms", "CO₂ on the &tag"), Use::typed,
         QT_TRANSLATE_NOOP("Forms", "Read the tag, not the paint. In per cent of CO₂.")},
        {"washer_renewed", QT_TRANSLATE_NOOP("Forms", "Washer renewed")},
        {"secured", QT_TRANSLATE_NOOP("Forms", "Standing upright and secured")}},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP(
           "Forms",
           "Open the valve slowly, face away. Never swap CO₂ and mixed-gas regulators. Test "
           "the joint for leaks. Licensed practice and local codes come first.")});
  specs.push_back(
      {"gauge_read",
       QT_TRANSLATE_NOOP("Forms", "Bottle gauge read"),
       QT_TRANSLATE_NOOP("Forms", "high pressure gauge"),
       {{"bottle", QT_TRANSLATE_NOOP("Forms", "&Bottle"), Use::remembered},
        {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure"), Use::reading,
         QT_TRANSLATE_NOOP("Forms",
                           "Tells nothing about CO₂ while liquid remains; a blend's does fall.")},
        {"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered},
        {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::reading},
        {"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered}}});
  specs.push_back({"leak_tested",
                   QT_TRANSLATE_NOOP("Forms", "Looked for leaks"),
                   QT_TRANSLATE_NOOP("Forms", "soap bubbles leak lid joint"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
                    {"regulator", QT_TRANSLATE_NOOP("Forms", "&Regulator")},
                    {"bottle", QT_TRANSLATE_NOOP("Forms", "&Bottle")},
                    {"method", QT_TRANSLATE_NOOP("Forms", "&How"), Use::remembered},
                    {"leak_found", QT_TRANSLATE_NOOP("Forms", "Leak found")},
                    {"where", QT_TRANSLATE_NOOP("Forms", "&Where")}}});
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
