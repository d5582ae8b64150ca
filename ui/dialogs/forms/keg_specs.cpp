// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about kegs as vessels: found, moved, lent, held back, made ready.
#include <QtGlobal>

#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

const auto found_beer = when(&Found::contents, FoundContents::beer);

FormSpec found_spec() {
  return {"found",
          QT_TRANSLATE_NOOP("Forms", "Found: what is in a keg now"),
          QT_TRANSLATE_NOOP("Forms", "stock-taking count contents"),
          {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
           {"contents", QT_TRANSLATE_NOOP("Forms", "&Contents")},
           {"batch", QT_TRANSLATE_NOOP("Forms", "&Batch"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Leave open if nobody knows."), false, found_beer},
           {"beer_volume_m3", QT_TRANSLATE_NOOP("Forms", "&Left in it"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Leave open if unknown."), false, found_beer},
           {"beer_volume_half_width_m3", QT_TRANSLATE_NOOP("Forms", "Give or take"), Use::typed, "",
            false, found_beer},
           {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "On its gauge now.")},
           {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Of the beer, or where it stands."), false, found_beer},
           {"gas_on", QT_TRANSLATE_NOOP("Forms", "Gas is connected")},
           {"regulator", QT_TRANSLATE_NOOP("Forms", "Regulator"), Use::remembered, "", false,
            when(&Found::gas_on, true)},
           {"line", QT_TRANSLATE_NOOP("Forms", "On line"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "If it is on tap."), false, found_beer},
           {"since_utc_s", QT_TRANSLATE_NOOP("Forms", "&Since"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Since when it has held this, if known.")},
           further({"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered}),
           further({"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered, "",
                    false, found_beer}),
           further({"co2_g_per_l", QT_TRANSLATE_NOOP("Forms", "C&O₂"), Use::typed,
                    QT_TRANSLATE_NOOP("Forms", "If somebody measured or knows it."), false,
                    found_beer}),
           further({"co2_half_width_g_per_l", QT_TRANSLATE_NOOP("Forms", "Give or take"),
                    Use::typed, "", false, found_beer})},
          CautionWeight::none,
          ""};
}

FormSpec cleaned_spec() {
  return {
      "cleaned",
      QT_TRANSLATE_NOOP("Forms", "Keg cleaned"),
      QT_TRANSLATE_NOOP("Forms", "wash clean caustic"),
      {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
       {"method", QT_TRANSLATE_NOOP("Forms", "&Method"), Use::remembered},
       {"agent", QT_TRANSLATE_NOOP("Forms", "&Agent"), Use::remembered,
        QT_TRANSLATE_NOOP("Forms", "In your own words.")},
       {"strength_percent", QT_TRANSLATE_NOOP("Forms", "&Strength, %"), Use::remembered,
        QT_TRANSLATE_NOOP("Forms", "As the label says.")},
       {"contact_s", QT_TRANSLATE_NOOP("Forms", "&Contact time"), Use::remembered},
       {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::remembered}},
      CautionWeight::danger,
      QT_TRANSLATE_NOOP(
          "Forms",
          "Vent the keg before opening it. Caustic and acid burn: gloves and goggles. Never let "
          "acid "
          "meet a chlorine cleaner. Rinse CO₂ out before caustic, or the keg can draw a vacuum. "
          "Follow the label and local rules.")};
}

FormSpec hold_spec() {
  return {
      "hold_reading",
      QT_TRANSLATE_NOOP("Forms", "Hold reading: does it keep its pressure?"),
      QT_TRANSLATE_NOOP("Forms", "hold test pressure leak"),
      {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
       {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure"), Use::reading},
       {"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered,
        QT_TRANSLATE_NOOP("Forms",
                          "Use one gauge for all readings of a test: its bias then cancels.")},
       {"temperature_k", QT_TRANSLATE_NOOP("Forms", "&Temperature"), Use::reading,
        QT_TRANSLATE_NOOP("Forms", "The keg's, to tell cooling from a leak.")},
       {"thermometer", QT_TRANSLATE_NOOP("Forms", "Thermometer"), Use::remembered},
       {"starts_test", QT_TRANSLATE_NOOP("Forms", "First reading of a new test"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Wait half an hour after gassing before the first one.")}},
      CautionWeight::caution,
      QT_TRANSLATE_NOOP(
          "Forms",
          "Not above the pressure stamped on the keg. A keg that holds at a high pressure is not "
          "proven at a low one: lids seat with pressure.")};
}

FormSpec purged_spec() {
  return {"purged",
          QT_TRANSLATE_NOOP("Forms", "Purged of air"),
          QT_TRANSLATE_NOOP("Forms", "purge oxygen co2"),
          {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
           {"method", QT_TRANSLATE_NOOP("Forms", "&Method"), Use::remembered},
           {"cycles", QT_TRANSLATE_NOOP("Forms", "&Cycles"), Use::remembered,
            QT_TRANSLATE_NOOP("Forms", "Filled with gas and vented this many times."), true,
            when(&Purged::method, PurgeMethod::cycles)},
           {"pressure_pa", QT_TRANSLATE_NOOP("Forms", "&Pressure of each"), Use::remembered, "",
            true, when(&Purged::method, PurgeMethod::cycles)},
           {"instrument", QT_TRANSLATE_NOOP("Forms", "Read on"), Use::remembered, "", false,
            when(&Purged::method, PurgeMethod::cycles)},
           {"vessel_volumes", QT_TRANSLATE_NOOP("Forms", "Keg &volumes swept"), Use::remembered, "",
            true, when(&Purged::method, PurgeMethod::swept)}},
          CautionWeight::caution,
          QT_TRANSLATE_NOOP("Forms",
                            "CO₂ collects low and is not noticed: purge where the air moves.")};
}

std::vector<FormSpec> make_keg() {
  std::vector<FormSpec> specs;
  specs.push_back(found_spec());
  specs.push_back({"moved",
                   QT_TRANSLATE_NOOP("Forms", "Moved"),
                   QT_TRANSLATE_NOOP("Forms", "place carry"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"place", QT_TRANSLATE_NOOP("Forms", "&To")}}});
  specs.push_back({"quarantined",
                   QT_TRANSLATE_NOOP("Forms", "Held back"),
                   QT_TRANSLATE_NOOP("Forms", "quarantine hold do not use"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"reason", QT_TRANSLATE_NOOP("Forms", "&Reason"), Use::typed, "", true}}});
  specs.push_back({"cleared",
                   QT_TRANSLATE_NOOP("Forms", "Cleared for use again"),
                   QT_TRANSLATE_NOOP("Forms", "clear release"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"reason", QT_TRANSLATE_NOOP("Forms", "&Why"), Use::typed, "", true}}});
  specs.push_back({"lent",
                   QT_TRANSLATE_NOOP("Forms", "Lent or rented out"),
                   QT_TRANSLATE_NOOP("Forms", "loan custody deposit"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"to", QT_TRANSLATE_NOOP("Forms", "Lent &to"), Use::typed,
                     QT_TRANSLATE_NOOP("Forms", "A site or a first name is enough."), true},
                    {"deposit_minor", QT_TRANSLATE_NOOP("Forms", "&Deposit"), Use::typed,
                     QT_TRANSLATE_NOOP("Forms", "In your money, such as 30.00.")},
                    {"due_back_day", QT_TRANSLATE_NOOP("Forms", "Due &back")}}});
  specs.push_back({"returned",
                   QT_TRANSLATE_NOOP("Forms", "Came back"),
                   QT_TRANSLATE_NOOP("Forms", "return loan"),
                   {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")}}});
  specs.push_back(
      {"inspected",
       QT_TRANSLATE_NOOP("Forms", "Inspected, seals"),
       QT_TRANSLATE_NOOP("Forms", "inspect seal o-ring lubricate lid"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
        {"seals_lubricated", QT_TRANSLATE_NOOP("Forms", "Seals lubricated")},
        {"seals_renewed", QT_TRANSLATE_NOOP("Forms", "Seals renewed")},
        {"lid_seated", QT_TRANSLATE_NOOP("Forms", "Lid seated")},
        {"fit_to_use", QT_TRANSLATE_NOOP("Forms", "Fit to use")}},
       CautionWeight::danger,
       QT_TRANSLATE_NOOP("Forms",
                         "Vent until nothing comes any more before a lid or spear is touched.")});
  specs.push_back(cleaned_spec());
  specs.push_back(
      {"sanitised",
       QT_TRANSLATE_NOOP("Forms", "Keg sanitised"),
       QT_TRANSLATE_NOOP("Forms", "sanitise sanitize"),
       {{"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
        {"method", QT_TRANSLATE_NOOP("Forms", "&Method"), Use::remembered},
        {"agent", QT_TRANSLATE_NOOP("Forms", "&Agent"), Use::remembered},
        {"contact_s", QT_TRANSLATE_NOOP("Forms", "&Contact time"), Use::remembered}},
       CautionWeight::caution,
       QT_TRANSLATE_NOOP(
           "Forms", "Clean first: a sanitiser does not work through soil. Follow the label.")});
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
