// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about beer: into a keg, in it, and out of it.
#include <QtGlobal>

#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

FormSpec received_spec() {
  return {"received",
          QT_TRANSLATE_NOOP("Forms", "Full keg received"),
          QT_TRANSLATE_NOOP("Forms", "delivery drayman supplier"),
          {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
           {"batch", QT_TRANSLATE_NOOP("Forms", "&Batch")},
           {"supplier", QT_TRANSLATE_NOOP("Forms", "&Supplier"), Use::remembered},
           {"best_by_day", QT_TRANSLATE_NOOP("Forms", "&Best by")},
           {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "As it came in. Leave open if not taken.")},
           {"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered},
           {"beer_volume_m3", QT_TRANSLATE_NOOP("Forms", "&Volume"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Nominal when left open.")},
           {"co2_g_per_l", QT_TRANSLATE_NOOP("Forms", "C&O₂ as supplied"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "If the supplier states it.")},
           {"co2_half_width_g_per_l", QT_TRANSLATE_NOOP("Forms", "Give or take")},
           {"seal_intact", QT_TRANSLATE_NOOP("Forms", "Seal intact")}},
          CautionWeight::caution,
          QT_TRANSLATE_NOOP("Forms",
                            "A full keg can weigh as much as a person: roll it or use a lifter.")};
}

FormSpec filled_spec() {
  return {
      "filled",
      QT_TRANSLATE_NOOP("Forms", "Filled"),
      QT_TRANSLATE_NOOP("Forms", "fill rack beer"),
      {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
       {"batch", QT_TRANSLATE_NOOP("Forms", "&Batch"), Use::remembered},
       {"beer_volume_m3", QT_TRANSLATE_NOOP("Forms", "&Volume"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Or give the weight below.")},
       {"gross_mass_kg", QT_TRANSLATE_NOOP("Forms", "&Weight, keg and beer")},
       {"scale", QT_TRANSLATE_NOOP("Forms", "Weighed on"), Use::remembered},
       {"transfer", QT_TRANSLATE_NOOP("Forms", "&Transfer"), Use::remembered},
       {"temperature_k", QT_TRANSLATE_NOOP("Forms", "Beer &temperature")},
       {"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered},
       {"gravity_sg", QT_TRANSLATE_NOOP("Forms", "&Gravity"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Above the final gravity there is gas still to come.")},
       {"co2_at_fill", QT_TRANSLATE_NOOP("Forms", "CO₂ in it"), Use::remembered},
       {"co2_g_per_l", QT_TRANSLATE_NOOP("Forms", "Measured CO₂"), Use::typed, "", true,
        when(&Filled::co2_at_fill, Co2AtFill::measured)},
       {"spund_pressure_pa", QT_TRANSLATE_NOOP("Forms", "Spunding pressure"), Use::typed, "", true,
        when(&Filled::co2_at_fill, Co2AtFill::spunded)},
       {"spund_dial", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered, "", false,
        when(&Filled::co2_at_fill, Co2AtFill::spunded)}},
      CautionWeight::danger,
      QT_TRANSLATE_NOOP(
          "Forms", "Never push beer with gas out of glass: it can burst at very little pressure.")};
}

FormSpec level_spec() {
  return {"level_reading",
          QT_TRANSLATE_NOOP("Forms", "Level: how much is left"),
          QT_TRANSLATE_NOOP("Forms", "weigh heft glasses level"),
          {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
           {"method", QT_TRANSLATE_NOOP("Forms", "&How"), Use::remembered},
           {"gross_mass_kg", QT_TRANSLATE_NOOP("Forms", "&Weight, keg and beer"), Use::reading, "",
            true, when(&LevelReading::method, LevelMethod::weight)},
           {"scale", QT_TRANSLATE_NOOP("Forms", "&Scale"), Use::remembered, "", false,
            when(&LevelReading::method, LevelMethod::weight)},
           {"fraction_left", QT_TRANSLATE_NOOP("Forms", "&Of a full keg"), Use::reading,
            QT_TRANSLATE_NOOP("Forms", "In tenths is close enough."), true,
            [](const Payload& p, const CellarStatus&) {
              const auto* r = get_if<LevelReading>(&p);
              return r && (r->method == LevelMethod::heft ||
                           r->method == LevelMethod::condensation_line);
            }},
           {"glasses", QT_TRANSLATE_NOOP("Forms", "&Glasses poured"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Since the last reading, or since it was filled."), true,
            when(&LevelReading::method, LevelMethod::glasses)},
           scaled({"glass_volume_m3", QT_TRANSLATE_NOOP("Forms", "Glass &holds"), Use::remembered,
                   "", true, when(&LevelReading::method, LevelMethod::glasses)},
                  FieldScale::small),
           {"metered_m3", QT_TRANSLATE_NOOP("Forms", "&Metered out"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Since the last reading, or since it was filled."), true,
            when(&LevelReading::method, LevelMethod::metered)},
           {"meter", QT_TRANSLATE_NOOP("Forms", "Meter"), Use::remembered, "", false,
            when(&LevelReading::method, LevelMethod::metered)}}};
}

FormSpec carbonation_spec() {
  return {"carbonation_reading",
          QT_TRANSLATE_NOOP("Forms", "Carbonation reading"),
          QT_TRANSLATE_NOOP("Forms", "co2 volumes carbonation"),
          {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
           {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure at rest"), Use::reading,
            QT_TRANSLATE_NOOP("Forms", "Gas off, and the keg left alone.")},
           {"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered},
           {"temperature_k", QT_TRANSLATE_NOOP("Forms", "Beer &temperature"), Use::reading},
           {"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered},
           {"co2_g_per_l", QT_TRANSLATE_NOOP("Forms", "Measured &CO₂"), Use::reading,
            QT_TRANSLATE_NOOP("Forms", "With a meter, instead of the pressure.")},
           {"co2_half_width_g_per_l", QT_TRANSLATE_NOOP("Forms", "Give or take")},
           {"meter", QT_TRANSLATE_NOOP("Forms", "Meter"), Use::remembered}}};
}

void add_batch_specs(std::vector<FormSpec>& specs) {
  specs.push_back(
      {"gravity_read",
       QT_TRANSLATE_NOOP("Forms", "Gravity read"),
       QT_TRANSLATE_NOOP("Forms", "hydrometer sg plato"),
       {{"batch", QT_TRANSLATE_NOOP("Forms", "&Batch"), Use::remembered},
        {"keg", QT_TRANSLATE_NOOP("Forms", "&Keg"), Use::typed,
         QT_TRANSLATE_NOOP("Forms", "If the sample came from one.")},
        {"gravity_sg", QT_TRANSLATE_NOOP("Forms", "&Gravity"), Use::typed,
         QT_TRANSLATE_NOOP("Forms", "Corrected to the temperature the hydrometer is made for.")},
        {"stage", QT_TRANSLATE_NOOP("Forms", "&Stage")},
        {"hydrometer", QT_TRANSLATE_NOOP("Forms", "Hydrometer"), Use::remembered},
        {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature")}}});
  specs.push_back({"best_by_changed",
                   QT_TRANSLATE_NOOP("Forms", "Best-by changed"),
                   QT_TRANSLATE_NOOP("Forms", "date expiry"),
                   {{"batch", QT_TRANSLATE_NOOP("Forms", "&Batch")},
                    {"best_by_day", QT_TRANSLATE_NOOP("Forms", "&Best by")},
                    {"reason", QT_TRANSLATE_NOOP("Forms", "&Why")}}});
  specs.push_back({"batch_recalled",
                   QT_TRANSLATE_NOOP("Forms", "Batch recalled"),
                   QT_TRANSLATE_NOOP("Forms", "recall withdraw"),
                   {{"batch", QT_TRANSLATE_NOOP("Forms", "&Batch")},
                    {"reason", QT_TRANSLATE_NOOP("Forms", "&Reason"), Use::typed, "", true}}});
}

std::vector<FormSpec> make_beer() {
  std::vector<FormSpec> specs;
  specs.push_back(received_spec());
  specs.push_back(filled_spec());
  specs.push_back(
      {"primed",
       QT_TRANSLATE_NOOP("Forms", "Primed with sugar"),
       QT_TRANSLATE_NOOP("Forms", "sugar prime natural"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
        {"sugar", QT_TRANSLATE_NOOP("Forms", "&Sugar"), Use::remembered},
        scaled({"mass_kg", QT_TRANSLATE_NOOP("Forms", "&Amount")}, FieldScale::small)},
       CautionWeight::caution,
       QT_TRANSLATE_NOOP(
           "Forms",
           "A primed keg left warm can climb past its rated pressure: keep an eye on it.")});
  specs.push_back(
      {"hops_in",
       QT_TRANSLATE_NOOP("Forms", "Hops in"),
       QT_TRANSLATE_NOOP("Forms", "dry hop"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
        {"hops", QT_TRANSLATE_NOOP("Forms", "&Hops")},
        scaled({"mass_kg", QT_TRANSLATE_NOOP("Forms", "&Amount")}, FieldScale::small)},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP("Forms", "Vent the keg before opening it; hops make lively beer gush.")});
  specs.push_back({"hops_out",
                   QT_TRANSLATE_NOOP("Forms", "Hops out"),
                   QT_TRANSLATE_NOOP("Forms", "dry hop"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")}}});
  specs.push_back(level_spec());
  specs.push_back(carbonation_spec());
  specs.push_back({"tapped",
                   QT_TRANSLATE_NOOP("Forms", "On tap"),
                   QT_TRANSLATE_NOOP("Forms", "tap broach connect couple"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"line", QT_TRANSLATE_NOOP("Forms", "&Line")}}});
  specs.push_back({"untapped",
                   QT_TRANSLATE_NOOP("Forms", "Off tap"),
                   QT_TRANSLATE_NOOP("Forms", "disconnect"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")}}});
  specs.push_back(
      {"emptied",
       QT_TRANSLATE_NOOP("Forms", "Empty"),
       QT_TRANSLATE_NOOP("Forms", "ran out gone"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")}},
       CautionWeight::caution,
       QT_TRANSLATE_NOOP("Forms", "An empty keg is still under pressure until it is vented.")});
  specs.push_back({"wasted",
                   QT_TRANSLATE_NOOP("Forms", "Wasted"),
                   QT_TRANSLATE_NOOP("Forms", "ullage loss spoiled foam"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"batch", QT_TRANSLATE_NOOP("Forms", "&Batch"), Use::hidden},
                    {"reason", QT_TRANSLATE_NOOP("Forms", "&Reason"), Use::remembered},
                    {"volume_m3", QT_TRANSLATE_NOOP("Forms", "&Volume")}}});
  add_batch_specs(specs);
  return specs;
}

}  // namespace

std::span<const FormSpec> beer_form_specs() {
  static const std::vector<FormSpec> specs = make_beer();
  return specs;
}

}  // namespace ullage::ui
