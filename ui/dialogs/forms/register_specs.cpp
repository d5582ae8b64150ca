// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms of the register: what the cellar consists of.
#include <QtGlobal>
#include <algorithm>
#include <initializer_list>

#include "core/cellar/presets.h"
#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

ShownIf for_what_reads(std::initializer_list<Reads> what) {
  return [what = std::vector<Reads>(what)](const Payload& p, const CellarStatus&) {
    const auto* i = get_if<InstrumentRecord>(&p);
    return i && std::find(what.begin(), what.end(), reads_of(i->instrument_kind)) != what.end();
  };
}

FormSpec instrument_spec() {
  const auto pressure = for_what_reads({Reads::pressure});
  const auto temperature = for_what_reads({Reads::temperature});
  const auto mass = for_what_reads({Reads::mass});
  const auto other = for_what_reads({Reads::gravity, Reads::co2, Reads::volume});
  const char* bias =
      QT_TRANSLATE_NOOP("Forms", "How far it may be off, always the same way (95 %).");
  const char* repeat =
      QT_TRANSLATE_NOOP("Forms", "How far two readings of one thing may differ (95 %).");
  return {
      "instrument_record",
      QT_TRANSLATE_NOOP("Forms", "Instrument"),
      QT_TRANSLATE_NOOP("Forms", "gauge dial thermometer scale hydrometer"),
      {{"instrument", "", Use::hidden},
       {"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
       {"instrument_kind", QT_TRANSLATE_NOOP("Forms", "&Kind")},
       {"pressure_bias_pa", QT_TRANSLATE_NOOP("Forms", "&Bias"), Use::typed, bias, false, pressure},
       {"pressure_repeatability_pa", QT_TRANSLATE_NOOP("Forms", "&Repeatability"), Use::typed,
        repeat, false, pressure},
       {"temperature_bias_k", QT_TRANSLATE_NOOP("Forms", "&Bias"), Use::typed, bias, false,
        temperature},
       {"temperature_repeatability_k", QT_TRANSLATE_NOOP("Forms", "&Repeatability"), Use::typed,
        repeat, false, temperature},
       {"mass_bias_kg", QT_TRANSLATE_NOOP("Forms", "&Bias"), Use::typed, bias, false, mass},
       {"mass_repeatability_kg", QT_TRANSLATE_NOOP("Forms", "&Repeatability"), Use::typed, repeat,
        false, mass},
       {"relative_bias_percent", QT_TRANSLATE_NOOP("Forms", "&Bias, %"), Use::typed, bias, false,
        other},
       {"relative_repeatability_percent", QT_TRANSLATE_NOOP("Forms", "&Repeatability, %"),
        Use::typed, repeat, false, other},
       {"checked_on_day", QT_TRANSLATE_NOOP("Forms", "&Checked on")},
       {"check_note", QT_TRANSLATE_NOOP("Forms", "Check"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Such as: reads 0.3 too high in ice slush.")},
       {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")}}};
}

FormSpec line_spec() {
  return {
      "line_record",
      QT_TRANSLATE_NOOP("Forms", "Line"),
      QT_TRANSLATE_NOOP("Forms", "tap hose bore length register"),
      {{"line", "", Use::hidden},
       {"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
       {"tap", QT_TRANSLATE_NOOP("Forms", "&Tap")},
       {"place", QT_TRANSLATE_NOOP("Forms", "&Place")},
       {"regulator", QT_TRANSLATE_NOOP("Forms", "&Regulator that drives it")},
       {"length_m", QT_TRANSLATE_NOOP("Forms", "&Length")},
       {"bore_m", QT_TRANSLATE_NOOP("Forms", "&Bore")},
       {"rise_m", QT_TRANSLATE_NOOP("Forms", "Ri&se"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Of the tap above the middle of the keg.")},
       {"material", QT_TRANSLATE_NOOP("Forms", "&Material")},
       {"clean_every_days", QT_TRANSLATE_NOOP("Forms", "&Clean every, days"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Your own or your local rule: it differs by country.")},
       {"clean_reason", QT_TRANSLATE_NOOP("Forms", "Why")},
       {"clean_source", QT_TRANSLATE_NOOP("Forms", "Where the figure comes from")},
       {"second_initials_to_release", QT_TRANSLATE_NOOP("Forms", "Release needs second initials")},
       {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")},
       further({"restrictor_length_m", QT_TRANSLATE_NOOP("Forms", "Restrictor length"), Use::typed,
                QT_TRANSLATE_NOOP("Forms", "A narrow piece that is there to slow the beer.")}),
       further({"restrictor_bore_m", QT_TRANSLATE_NOOP("Forms", "Restrictor bore")}),
       further({"coupler_loss_pa", QT_TRANSLATE_NOOP("Forms", "Coupler takes"), Use::typed,
                QT_TRANSLATE_NOOP("Forms", "Of the pressure, as you pour.")}),
       further({"shank_loss_pa", QT_TRANSLATE_NOOP("Forms", "Shank takes")}),
       further({"faucet_loss_pa", QT_TRANSLATE_NOOP("Forms", "Tap takes")})}};
}

FormSpec keg_spec() {
  return {
      "keg_record",
      QT_TRANSLATE_NOOP("Forms", "Keg"),
      QT_TRANSLATE_NOOP("Forms", "register keg"),
      {{"keg", "", Use::hidden},
       {"tag", QT_TRANSLATE_NOOP("Forms", "&Tag")},
       {"keg_kind", QT_TRANSLATE_NOOP("Forms", "&Kind")},
       {"owner", QT_TRANSLATE_NOOP("Forms", "&Owner")},
       {"place", QT_TRANSLATE_NOOP("Forms", "P&lace")},
       {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")},
       further({"nominal_m3", QT_TRANSLATE_NOOP("Forms", "&Nominal volume")}),
       further({"brimful_m3", QT_TRANSLATE_NOOP("Forms", "&Brimful volume"), Use::typed,
                QT_TRANSLATE_NOOP("Forms", "Filled to the brim with water.")}),
       further({"brimful_half_width_m3", QT_TRANSLATE_NOOP("Forms", "Give or take")}),
       further({"tare_kg", QT_TRANSLATE_NOOP("Forms", "Tar&e"), Use::typed,
                QT_TRANSLATE_NOOP("Forms", "Empty weight. Weigh it: that narrows every level.")}),
       further({"tare_half_width_kg", QT_TRANSLATE_NOOP("Forms", "Give or take")}),
       further({"rated_pressure_pa", QT_TRANSLATE_NOOP("Forms", "Rated &pressure"), Use::typed,
                QT_TRANSLATE_NOOP("Forms", "As stamped on the keg.")}),
       further({"coupler", QT_TRANSLATE_NOOP("Forms", "&Coupler or posts")}),
       further({"deposit_minor", QT_TRANSLATE_NOOP("Forms", "&Deposit"), Use::typed,
                QT_TRANSLATE_NOOP("Forms", "In your money, such as 30.00.")})}};
}

FormSpec batch_spec() {
  return {
      "batch_record",
      QT_TRANSLATE_NOOP("Forms", "Batch"),
      QT_TRANSLATE_NOOP("Forms", "register batch brew lot gyle"),
      {{"batch", "", Use::hidden},
       {"beer", QT_TRANSLATE_NOOP("Forms", "&Beer")},
       {"name", QT_TRANSLATE_NOOP("Forms", "Batch &number")},
       {"origin", QT_TRANSLATE_NOOP("Forms", "&Origin")},
       {"original_gravity_sg", QT_TRANSLATE_NOOP("Forms", "&Original gravity")},
       {"final_gravity_sg", QT_TRANSLATE_NOOP("Forms", "&Final gravity")},
       {"abv_percent", QT_TRANSLATE_NOOP("Forms", "&Alcohol"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Computed from the gravities when left open.")},
       {"packaged_on_day", QT_TRANSLATE_NOOP("Forms", "&Packaged on")},
       {"best_by_day", QT_TRANSLATE_NOOP("Forms", "&Best by")},
       {"supplier", QT_TRANSLATE_NOOP("Forms", "&Supplier")},
       {"warmest_after_fermentation_k", QT_TRANSLATE_NOOP("Forms", "&Warmest since fermentation"),
        Use::typed, QT_TRANSLATE_NOOP("Forms", "Sets how much CO₂ the still beer kept.")}}};
}

FormSpec place_spec() {
  return {"place_record",
          QT_TRANSLATE_NOOP("Forms", "Place"),
          QT_TRANSLATE_NOOP("Forms", "register cold box room cellar"),
          {{"place", "", Use::hidden},
           {"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
           {"place_kind", QT_TRANSLATE_NOOP("Forms", "&Kind")},
           {"set_temperature_k", QT_TRANSLATE_NOOP("Forms", "&Set to")},
           scaled({"net_air_volume_m3", QT_TRANSLATE_NOOP("Forms", "&Air volume"), Use::typed,
                   QT_TRANSLATE_NOOP("Forms", "Without kegs and stock: length × width × height.")},
                  FieldScale::room),
           {"air_changes_per_hour", QT_TRANSLATE_NOOP("Forms", "Air c&hanges an hour")},
           {"below_ground", QT_TRANSLATE_NOOP("Forms", "Below the ground")},
           {"sensor_height_m", QT_TRANSLATE_NOOP("Forms", "Alarm sensor at"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Above the floor.")},
           {"walk_order", QT_TRANSLATE_NOOP("Forms", "Place in a &round")},
           {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")}}};
}

FormSpec bottle_spec() {
  return {
      "bottle_record",
      QT_TRANSLATE_NOOP("Forms", "Gas bottle"),
      QT_TRANSLATE_NOOP("Forms", "register cylinder co2"),
      {{"bottle", "", Use::hidden},
       {"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
       {"co2_mole_fraction", QT_TRANSLATE_NOOP("Forms", "&CO₂ share"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "The rest is nitrogen.")},
       {"tare_kg", QT_TRANSLATE_NOOP("Forms", "&Tare"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "As stamped.")},
       {"content_kg", QT_TRANSLATE_NOOP("Forms", "Gas when &full")},
       {"water_capacity_m3", QT_TRANSLATE_NOOP("Forms", "&Water capacity")},
       {"fill_ratio", QT_TRANSLATE_NOOP("Forms", "Filled to"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Gas by weight of the water that fits, as on its label.")},
       {"price_minor", QT_TRANSLATE_NOOP("Forms", "A full one costs"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "In your money, such as 25.50: then what leaks has a price.")},
       {"retest_due_day", QT_TRANSLATE_NOOP("Forms", "&Retest due")},
       {"place", QT_TRANSLATE_NOOP("Forms", "&Place")},
       {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")}},
      CautionWeight::caution,
      QT_TRANSLATE_NOOP("Forms", "Upright, secured, in moving air.")};
}

std::vector<FormSpec> make_register() {
  std::vector<FormSpec> specs;
  specs.push_back(keg_spec());
  specs.push_back(
      {"beer_record",
       QT_TRANSLATE_NOOP("Forms", "Beer"),
       QT_TRANSLATE_NOOP("Forms", "register beer style"),
       {{"beer", "", Use::hidden},
        {"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
        {"style", QT_TRANSLATE_NOOP("Forms", "&Style"), Use::typed,
         QT_TRANSLATE_NOOP("Forms",
                           "Type a part of it: of a style in the list the CO₂ range is "
                           "known.")},
        {"co2_low_g_per_l", QT_TRANSLATE_NOOP("Forms", "CO₂ &from"), Use::typed,
         QT_TRANSLATE_NOOP("Forms",
                           "The range it should be served in; that of its style when "
                           "left open.")},
        {"co2_high_g_per_l", QT_TRANSLATE_NOOP("Forms", "CO₂ &to")},
        {"allergens", QT_TRANSLATE_NOOP("Forms", "&Allergens")},
        {"price_minor_per_litre", QT_TRANSLATE_NOOP("Forms", "&Price a litre"), Use::typed,
         QT_TRANSLATE_NOOP("Forms",
                           "In your money, such as 2.40: then what is lost has a "
                           "price.")}}});
  specs.push_back(batch_spec());
  specs.push_back(place_spec());
  specs.push_back(line_spec());
  specs.push_back(bottle_spec());
  specs.push_back({"regulator_record",
                   QT_TRANSLATE_NOOP("Forms", "Regulator"),
                   QT_TRANSLATE_NOOP("Forms", "register regulator outlet"),
                   {{"regulator", "", Use::hidden},
                    {"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
                    {"bottle", QT_TRANSLATE_NOOP("Forms", "&Draws from")},
                    {"fed_by", QT_TRANSLATE_NOOP("Forms", "Or is &fed by")},
                    {"secured", QT_TRANSLATE_NOOP("Forms", "Secured against falling")},
                    {"place", QT_TRANSLATE_NOOP("Forms", "&Place")},
                    {"dial", QT_TRANSLATE_NOOP("Forms", "Its &dial")},
                    {"mass_kg", QT_TRANSLATE_NOOP("Forms", "&Weight"), Use::typed,
                     QT_TRANSLATE_NOOP("Forms", "What it adds when it is weighed with a bottle.")},
                    {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")}}});
  specs.push_back(instrument_spec());
  specs.push_back(
      {"cellar_described",
       QT_TRANSLATE_NOOP("Forms", "This cellar"),
       QT_TRANSLATE_NOOP("Forms", "altitude zone name"),
       {{"name", QT_TRANSLATE_NOOP("Forms", "&Name")},
        {"altitude_m", QT_TRANSLATE_NOOP("Forms", "&Altitude")},
        {"time_zone", QT_TRANSLATE_NOOP("Forms", "&Time zone")},
        {"country", QT_TRANSLATE_NOOP("Forms", "&Country"), Use::typed,
         QT_TRANSLATE_NOOP("Forms", "Two letters, such as DE or US.")},
        scaled({"leak_limit_kg_per_day", QT_TRANSLATE_NOOP("Forms", "A keg may &lose a day"),
                Use::typed, QT_TRANSLATE_NOOP("Forms", "CO₂ on hold that still passes as tight.")},
               FieldScale::small),
        {"units_preset", "", Use::hidden}}});
  return specs;
}

}  // namespace

std::span<const FormSpec> register_form_specs() {
  static const std::vector<FormSpec> specs = make_register();
  return specs;
}

}  // namespace ullage::ui
