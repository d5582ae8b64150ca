// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about beer: into a keg, in it, and out of it.
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

FormSpec received_spec() {
  return {"received",
          "Full keg received",
          "delivery drayman supplier",
          {{"keg", "&Keg"},
           {"batch", "&Batch"},
           {"supplier", "&Supplier", Use::remembered},
           {"best_by_day", "&Best by"},
           {"temperature_k", "&Temperature on arrival", Use::typed, "Leave open if not taken."},
           {"thermometer", "Thermometer", Use::remembered},
           {"beer_volume_m3", "&Volume", Use::typed, "Nominal when left open."},
           {"co2_g_per_l", "C&O2 as supplied", Use::typed, "If the supplier states it."},
           {"co2_half_width_g_per_l", "Give or take"},
           {"seal_intact", "Seal intact"}},
          CautionWeight::caution,
          "A full keg can weigh as much as a person: roll it or use a lifter."};
}

FormSpec filled_spec() {
  return {"filled",
          "Filled",
          "fill rack beer",
          {{"keg", "&Keg"},
           {"batch", "&Batch", Use::remembered},
           {"beer_volume_m3", "&Volume", Use::typed, "Or give the weight below."},
           {"gross_mass_kg", "&Weight, keg and beer"},
           {"scale", "Weighed on", Use::remembered},
           {"transfer", "&Transfer", Use::remembered},
           {"temperature_k", "Beer &temperature"},
           {"thermometer", "Thermometer", Use::remembered},
           {"gravity_sg", "&Gravity", Use::typed,
            "Above the final gravity there is gas still to come."},
           {"co2_at_fill", "CO₂ in it", Use::remembered},
           {"co2_g_per_l", "Measured CO₂", Use::typed, "", true,
            when(&Filled::co2_at_fill, Co2AtFill::measured)},
           {"spund_pressure_pa", "Spunding pressure", Use::typed, "", true,
            when(&Filled::co2_at_fill, Co2AtFill::spunded)},
           {"spund_dial", "Read on", Use::remembered, "", false,
            when(&Filled::co2_at_fill, Co2AtFill::spunded)}},
          CautionWeight::danger,
          "Never push beer with gas out of glass: it can burst at very little pressure."};
}

FormSpec level_spec() {
  return {
      "level_reading",
      "Level: how much is left",
      "weigh heft glasses level",
      {{"keg", "&Keg"},
       {"method", "&How", Use::remembered},
       {"gross_mass_kg", "&Weight, keg and beer", Use::reading, "", true,
        when(&LevelReading::method, LevelMethod::weight)},
       {"scale", "&Scale", Use::remembered, "", false,
        when(&LevelReading::method, LevelMethod::weight)},
       {"fraction_left", "&Of a full keg", Use::reading, "In tenths is close enough.", true,
        [](const Payload& p) {
          const auto* r = get_if<LevelReading>(&p);
          return r &&
                 (r->method == LevelMethod::heft || r->method == LevelMethod::condensation_line);
        }},
       {"glasses", "&Glasses poured", Use::typed, "Since the last reading, or since it was filled.",
        true, when(&LevelReading::method, LevelMethod::glasses)},
       {"glass_volume_m3", "Glass &holds", Use::remembered, "", true,
        when(&LevelReading::method, LevelMethod::glasses)},
       {"metered_m3", "&Metered out", Use::typed, "Since the last reading, or since it was filled.",
        true, when(&LevelReading::method, LevelMethod::metered)},
       {"meter", "Meter", Use::remembered, "", false,
        when(&LevelReading::method, LevelMethod::metered)}}};
}

FormSpec carbonation_spec() {
  return {"carbonation_reading",
          "Carbonation reading",
          "co2 volumes carbonation",
          {{"keg", "&Keg"},
           {"pressure_pa", "&Pressure at rest", Use::reading, "Gas off, and the keg left alone."},
           {"instrument", "Read on", Use::remembered},
           {"temperature_k", "Beer &temperature", Use::reading},
           {"thermometer", "Thermometer", Use::remembered},
           {"co2_g_per_l", "Measured &CO₂", Use::reading, "With a meter, instead of the pressure."},
           {"co2_half_width_g_per_l", "Give or take"},
           {"meter", "Meter", Use::remembered}}};
}

std::vector<FormSpec> make_beer() {
  std::vector<FormSpec> specs;
  specs.push_back(received_spec());
  specs.push_back(filled_spec());
  specs.push_back({"primed",
                   "Primed with sugar",
                   "sugar prime natural",
                   {{"keg", "&Keg"}, {"sugar", "&Sugar", Use::remembered}, {"mass_kg", "&Amount"}},
                   CautionWeight::caution,
                   "A primed keg left warm can climb past its rated pressure: keep an eye on it."});
  specs.push_back({"hops_in",
                   "Hops in",
                   "dry hop",
                   {{"keg", "&Keg"}, {"hops", "&Hops"}, {"mass_kg", "&Amount"}},
                   CautionWeight::danger,
                   "Vent the keg before opening it; hops make lively beer gush."});
  specs.push_back({"hops_out", "Hops out", "dry hop", {{"keg", "&Keg"}}});
  specs.push_back(level_spec());
  specs.push_back(carbonation_spec());
  specs.push_back(
      {"tapped", "On tap", "tap broach connect couple", {{"keg", "&Keg"}, {"line", "&Line"}}});
  specs.push_back({"untapped", "Off tap", "disconnect", {{"keg", "&Keg"}}});
  specs.push_back({"emptied",
                   "Empty",
                   "ran out gone",
                   {{"keg", "&Keg"}},
                   CautionWeight::caution,
                   "An empty keg is still under pressure until it is vented."});
  specs.push_back({"wasted",
                   "Wasted",
                   "ullage loss spoiled foam",
                   {{"keg", "&Keg"},
                    {"batch", "&Batch", Use::hidden},
                    {"reason", "&Reason", Use::remembered},
                    {"volume_m3", "&Volume"}}});
  specs.push_back({"gravity_read",
                   "Gravity read",
                   "hydrometer sg plato",
                   {{"batch", "&Batch", Use::remembered},
                    {"keg", "&Keg", Use::typed, "If the sample came from one."},
                    {"gravity_sg", "&Gravity", Use::typed,
                     "Corrected to the temperature the hydrometer is made for."},
                    {"stage", "&Stage"},
                    {"hydrometer", "Hydrometer", Use::remembered},
                    {"temperature_k", "&Temperature"}}});
  specs.push_back({"best_by_changed",
                   "Best-by changed",
                   "date expiry",
                   {{"batch", "&Batch"}, {"best_by_day", "&Best by"}, {"reason", "&Why"}}});
  specs.push_back({"batch_recalled",
                   "Batch recalled",
                   "recall withdraw",
                   {{"batch", "&Batch"}, {"reason", "&Reason", Use::typed, "", true}}});
  return specs;
}

}  // namespace

std::span<const FormSpec> beer_form_specs() {
  static const std::vector<FormSpec> specs = make_beer();
  return specs;
}

}  // namespace ullage::ui
