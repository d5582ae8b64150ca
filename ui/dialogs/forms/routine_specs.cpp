// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about what comes round again: rules and work, and a line's pieces.
#include <QtGlobal>
#include <algorithm>

#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

ShownIf rule_is_for(std::initializer_list<RuleScope> scopes) {
  return [wanted = std::vector<RuleScope>(scopes)](const Payload& p, const CellarStatus&) {
    const auto* rule = get_if<RuleRecord>(&p);
    return rule && std::find(wanted.begin(), wanted.end(), rule->scope) != wanted.end();
  };
}

FormSpec rule_spec() {
  return {
      "rule_record",
      QT_TRANSLATE_NOOP("Forms", "Rule"),
      QT_TRANSLATE_NOOP("Forms", "interval cleaning due every days"),
      {{"rule", "", Use::hidden},
       {"scope", QT_TRANSLATE_NOOP("Forms", "&Applies to")},
       {"work", QT_TRANSLATE_NOOP("Forms", "&Work")},
       {"line", QT_TRANSLATE_NOOP("Forms", "Only this &line"), Use::typed, "", false,
        rule_is_for({RuleScope::line, RuleScope::coupler})},
       {"keg", QT_TRANSLATE_NOOP("Forms", "Only this &keg"), Use::typed, "", false,
        rule_is_for({RuleScope::keg})},
       {"bottle", QT_TRANSLATE_NOOP("Forms", "Only this &bottle"), Use::typed, "", false,
        rule_is_for({RuleScope::bottle})},
       {"place", QT_TRANSLATE_NOOP("Forms", "Only this &place"), Use::typed, "", false,
        rule_is_for({RuleScope::place, RuleScope::alarm})},
       {"interval_days", QT_TRANSLATE_NOOP("Forms", "&Every, days"), Use::typed,
        QT_TRANSLATE_NOOP(
            "Forms",
            "Leave open for work that is called for by what happens, such as a keg emptied.")},
       {"reason", QT_TRANSLATE_NOOP("Forms", "Wh&y")},
       {"source", QT_TRANSLATE_NOOP("Forms", "&Source of the figure"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "Who says so: your house, a handbook, the law where you are."),
        true},
       {"in_force", QT_TRANSLATE_NOOP("Forms", "In force")}}};
}

FormSpec work_done_spec() {
  return {
      "work_done",
      QT_TRANSLATE_NOOP("Forms", "Work done"),
      QT_TRANSLATE_NOOP("Forms", "cleaning strip seals retest done"),
      {{"work", QT_TRANSLATE_NOOP("Forms", "&Work")},
       {"rule", "", Use::hidden},
       {"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
       {"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
       {"bottle", QT_TRANSLATE_NOOP("Forms", "&Bottle")},
       {"place", QT_TRANSLATE_NOOP("Forms", "&Place")},
       {"agent_kind", QT_TRANSLATE_NOOP("Forms", "&Agent")},
       {"agent", QT_TRANSLATE_NOOP("Forms", "&Name of it")},
       {"strength_percent", QT_TRANSLATE_NOOP("Forms", "&Strength, %")},
       scaled({"concentrate_m3", QT_TRANSLATE_NOOP("Forms", "Cleaner used, liquid")},
              FieldScale::small),
       scaled({"concentrate_kg", QT_TRANSLATE_NOOP("Forms", "Cleaner used, powder")},
              FieldScale::small),
       {"water_m3", QT_TRANSLATE_NOOP("Forms", "Water")},
       {"contact_s", QT_TRANSLATE_NOOP("Forms", "&Contact time")},
       {"complete", QT_TRANSLATE_NOOP("Forms", "All of it is done")},
       {"next_due_day", QT_TRANSLATE_NOOP("Forms", "Next due"), Use::typed,
        QT_TRANSLATE_NOOP("Forms", "As stamped or certified.")},
       {"done_by", QT_TRANSLATE_NOOP("Forms", "&Done by")},
       {"countersigned_by", QT_TRANSLATE_NOOP("Forms", "Countersi&gned by")}},
      CautionWeight::danger,
      QT_TRANSLATE_NOOP(
          "Forms",
          "Vent before opening. Caustic and acid burn: gloves and goggles. Never let acid meet a "
          "chlorine cleaner.")};
}

FormSpec segment_spec() {
  return {"segment_record",
          QT_TRANSLATE_NOOP("Forms", "Piece of hose"),
          QT_TRANSLATE_NOOP("Forms", "line segment hose python restrictor"),
          {{"segment", "", Use::hidden},
           {"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
           {"position", QT_TRANSLATE_NOOP("Forms", "&Counted from the keg")},
           {"length_m", QT_TRANSLATE_NOOP("Forms", "Len&gth")},
           {"bore_m", QT_TRANSLATE_NOOP("Forms", "&Bore")},
           {"material", QT_TRANSLATE_NOOP("Forms", "&Material")},
           {"place", QT_TRANSLATE_NOOP("Forms", "&Runs through")},
           {"rise_m", QT_TRANSLATE_NOOP("Forms", "Ri&se"), Use::typed,
            QT_TRANSLATE_NOOP("Forms", "Of its end above its beginning.")},
           {"in_use", QT_TRANSLATE_NOOP("Forms", "In use")}}};
}

std::vector<FormSpec> make_routine() {
  std::vector<FormSpec> specs;
  specs.push_back(rule_spec());
  specs.push_back(work_done_spec());
  specs.push_back({"work_moved",
                   QT_TRANSLATE_NOOP("Forms", "Put work off"),
                   QT_TRANSLATE_NOOP("Forms", "move postpone due"),
                   {{"work", QT_TRANSLATE_NOOP("Forms", "&Work")},
                    {"rule", "", Use::hidden},
                    {"line", QT_TRANSLATE_NOOP("Forms", "&Line")},
                    {"keg", QT_TRANSLATE_NOOP("Forms", "&Keg")},
                    {"bottle", QT_TRANSLATE_NOOP("Forms", "&Bottle")},
                    {"place", QT_TRANSLATE_NOOP("Forms", "&Place")},
                    {"to_day", QT_TRANSLATE_NOOP("Forms", "Put off &to"), Use::typed, "", true},
                    {"reason", QT_TRANSLATE_NOOP("Forms", "Wh&y")}}});
  specs.push_back(segment_spec());
  return specs;
}

}  // namespace

std::span<const FormSpec> routine_form_specs() {
  static const std::vector<FormSpec> specs = make_routine();
  return specs;
}

}  // namespace ullage::ui
