// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms of the register: what the cellar consists of.
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

bool reads_pressure(InstrumentKind k) {
  return k == InstrumentKind::regulator_dial || k == InstrumentKind::spunding_dial ||
         k == InstrumentKind::pressure_gauge;
}
bool reads_temperature(InstrumentKind k) {
  return k == InstrumentKind::fridge_display || k == InstrumentKind::thermometer;
}
bool weighs(InstrumentKind k) {
  return k == InstrumentKind::bathroom_scale || k == InstrumentKind::parcel_scale;
}

template <class Test>
std::function<bool(const Payload&)> for_kind(Test test) {
  return [test](const Payload& p) {
    const auto* i = get_if<InstrumentRecord>(&p);
    return i && test(i->instrument_kind);
  };
}

FormSpec instrument_spec() {
  const auto pressure = for_kind(reads_pressure);
  const auto temperature = for_kind(reads_temperature);
  const auto mass = for_kind(weighs);
  const auto other = for_kind(
      [](InstrumentKind k) { return !reads_pressure(k) && !reads_temperature(k) && !weighs(k); });
  const char* bias = "How far it may be off, always the same way (95 %).";
  const char* repeat = "How far two readings of one thing may differ (95 %).";
  return {
      "instrument_record",
      "Instrument",
      "gauge dial thermometer scale hydrometer",
      {{"instrument", "", Use::hidden},
       {"name", "&Name"},
       {"instrument_kind", "&Kind"},
       {"pressure_bias_pa", "&Bias", Use::typed, bias, false, pressure},
       {"pressure_repeatability_pa", "&Repeatability", Use::typed, repeat, false, pressure},
       {"temperature_bias_k", "&Bias", Use::typed, bias, false, temperature},
       {"temperature_repeatability_k", "&Repeatability", Use::typed, repeat, false, temperature},
       {"mass_bias_kg", "&Bias", Use::typed, bias, false, mass},
       {"mass_repeatability_kg", "&Repeatability", Use::typed, repeat, false, mass},
       {"relative_bias_percent", "&Bias, %", Use::typed, bias, false, other},
       {"relative_repeatability_percent", "&Repeatability, %", Use::typed, repeat, false, other},
       {"checked_on_day", "&Checked on"},
       {"check_note", "Check", Use::typed, "Such as: reads 0.3 too high in ice slush."},
       {"in_use", "In use"}}};
}

FormSpec line_spec() {
  return {"line_record",
          "Line",
          "tap hose bore length register",
          {{"line", "", Use::hidden},
           {"name", "&Name"},
           {"tap", "&Tap"},
           {"place", "&Place"},
           {"regulator", "&Regulator that drives it"},
           {"length_m", "&Length"},
           {"bore_m", "&Bore"},
           {"rise_m", "Ri&se", Use::typed, "Of the tap above the middle of the keg."},
           {"material", "&Material"},
           {"restrictor_length_m", "Restrictor length", Use::typed,
            "A narrow piece that is there to slow the beer."},
           {"restrictor_bore_m", "Restrictor bore"},
           {"coupler_loss_pa", "Coupler takes", Use::typed, "Of the pressure, as you pour."},
           {"shank_loss_pa", "Shank takes"},
           {"faucet_loss_pa", "Tap takes"},
           {"clean_every_days", "&Clean every, days", Use::typed,
            "Your own or your local rule: it differs by country."},
           {"clean_reason", "Why"},
           {"clean_source", "Where the figure comes from"},
           {"second_initials_to_release", "Release needs second initials"},
           {"in_use", "In use"}}};
}

FormSpec keg_spec() {
  return {"keg_record",
          "Keg",
          "register keg",
          {{"keg", "", Use::hidden},
           {"tag", "&Tag"},
           {"keg_kind", "&Kind"},
           {"nominal_m3", "&Nominal volume"},
           {"brimful_m3", "&Brimful volume", Use::typed, "Filled to the brim with water."},
           {"brimful_half_width_m3", "Give or take"},
           {"tare_kg", "Ta&re", Use::typed, "Empty weight. Weigh it: that narrows every level."},
           {"tare_half_width_kg", "Give or take"},
           {"rated_pressure_pa", "Rated &pressure", Use::typed, "As stamped on the keg."},
           {"coupler", "&Coupler or posts"},
           {"owner", "&Owner"},
           {"deposit_minor", "", Use::hidden},
           {"place", "P&lace"},
           {"in_use", "In use"}}};
}

FormSpec batch_spec() {
  return {"batch_record",
          "Batch",
          "register batch brew lot gyle",
          {{"batch", "", Use::hidden},
           {"beer", "&Beer"},
           {"name", "Batch &number"},
           {"origin", "&Origin"},
           {"original_gravity_sg", "&Original gravity"},
           {"final_gravity_sg", "&Final gravity"},
           {"abv_percent", "&Alcohol", Use::typed, "Computed from the gravities when left open."},
           {"packaged_on_day", "&Packaged on"},
           {"best_by_day", "&Best by"},
           {"supplier", "&Supplier"},
           {"warmest_after_fermentation_k", "&Warmest since fermentation", Use::typed,
            "Sets how much CO₂ the still beer kept."}}};
}

FormSpec place_spec() {
  return {"place_record",
          "Place",
          "register cold box room cellar",
          {{"place", "", Use::hidden},
           {"name", "&Name"},
           {"place_kind", "&Kind"},
           {"set_temperature_k", "&Set to"},
           {"net_air_volume_m3", "&Air volume", Use::typed,
            "Without kegs and stock: length × width × height."},
           {"air_changes_per_hour", "Air c&hanges an hour"},
           {"below_ground", "Below the ground"},
           {"sensor_height_m", "Alarm sensor at", Use::typed, "Above the floor."},
           {"walk_order", "Place in a &round"},
           {"in_use", "In use"}}};
}

FormSpec bottle_spec() {
  return {"bottle_record",
          "Gas bottle",
          "register cylinder co2",
          {{"bottle", "", Use::hidden},
           {"name", "&Name"},
           {"co2_mole_fraction", "&CO₂ share", Use::typed, "The rest is nitrogen."},
           {"tare_kg", "&Tare", Use::typed, "As stamped."},
           {"content_kg", "Gas when &full"},
           {"water_capacity_m3", "&Water capacity"},
           {"fill_ratio", "Filled to", Use::typed,
            "Gas by weight of the water that fits, as on its label."},
           {"price_minor", "A full one costs", Use::typed,
            "In your money, such as 25.50: then what leaks has a price."},
           {"retest_due_day", "&Retest due"},
           {"place", "&Place"},
           {"in_use", "In use"}},
          CautionWeight::caution,
          "Upright, secured, in moving air."};
}

std::vector<FormSpec> make_register() {
  std::vector<FormSpec> specs;
  specs.push_back(keg_spec());
  specs.push_back(
      {"beer_record",
       "Beer",
       "register beer style",
       {{"beer", "", Use::hidden},
        {"name", "&Name"},
        {"style", "&Style"},
        {"co2_low_g_per_l", "CO₂ &from", Use::typed, "The range it should be served in."},
        {"co2_high_g_per_l", "CO₂ &to"},
        {"allergens", "&Allergens"},
        {"price_minor_per_litre", "", Use::hidden}}});
  specs.push_back(batch_spec());
  specs.push_back(place_spec());
  specs.push_back(line_spec());
  specs.push_back(bottle_spec());
  specs.push_back(
      {"regulator_record",
       "Regulator",
       "register regulator outlet",
       {{"regulator", "", Use::hidden},
        {"name", "&Name"},
        {"bottle", "&Draws from"},
        {"fed_by", "Or is &fed by"},
        {"secured", "Secured against falling"},
        {"place", "&Place"},
        {"dial", "Its &dial"},
        {"mass_kg", "&Weight", Use::typed, "What it adds when it is weighed with a bottle."},
        {"in_use", "In use"}}});
  specs.push_back(instrument_spec());
  specs.push_back({"cellar_described",
                   "This cellar",
                   "altitude zone name",
                   {{"name", "&Name"},
                    {"altitude_m", "&Altitude"},
                    {"time_zone", "&Time zone"},
                    {"country", "&Country", Use::typed, "Two letters, such as DE or US."},
                    {"leak_limit_kg_per_day", "A keg may &lose a day", Use::typed,
                     "CO₂ on hold that still passes as tight."},
                    {"units_preset", "", Use::hidden}}});
  return specs;
}

}  // namespace

std::span<const FormSpec> register_form_specs() {
  static const std::vector<FormSpec> specs = make_register();
  return specs;
}

}  // namespace ullage::ui
