// SPDX-License-Identifier: GPL-3.0-or-later
//
// Forms about what comes round again: rules and work, and a line's pieces.
#include <algorithm>

#include "ui/dialogs/forms/form_spec.h"

namespace ullage::ui {

using namespace cellar;

namespace {

std::function<bool(const Payload&)> rule_is_for(std::initializer_list<RuleScope> scopes) {
  return [wanted = std::vector<RuleScope>(scopes)](const Payload& p) {
    const auto* rule = get_if<RuleRecord>(&p);
    return rule && std::find(wanted.begin(), wanted.end(), rule->scope) != wanted.end();
  };
}

FormSpec rule_spec() {
  return {"rule_record",
          "Rule",
          "interval cleaning due every days",
          {{"rule", "", Use::hidden},
           {"scope", "&For"},
           {"work", "&Work"},
           {"line", "Only this &line", Use::typed, "", false,
            rule_is_for({RuleScope::line, RuleScope::coupler})},
           {"keg", "Only this &keg", Use::typed, "", false, rule_is_for({RuleScope::keg})},
           {"bottle", "Only this &bottle", Use::typed, "", false, rule_is_for({RuleScope::bottle})},
           {"place", "Only this &place", Use::typed, "", false,
            rule_is_for({RuleScope::place, RuleScope::alarm})},
           {"interval_days", "&Every, days", Use::typed,
            "Leave open for work that is called for by what happens, such as a keg emptied."},
           {"reason", "Wh&y"},
           {"source", "&Source of the figure", Use::typed,
            "Who says so: your house, a handbook, the law where you are.", true},
           {"in_force", "In force"}}};
}

FormSpec work_done_spec() {
  return {"work_done",
          "Work done",
          "cleaning strip seals retest done",
          {{"work", "&Work"},
           {"rule", "", Use::hidden},
           {"line", "&Line"},
           {"keg", "&Keg"},
           {"bottle", "&Bottle"},
           {"place", "&Place"},
           {"agent_kind", "&Agent"},
           {"agent", "&Name of it"},
           {"strength_percent", "&Strength, %"},
           {"concentrate_m3", "Cleaner used, liquid"},
           {"concentrate_kg", "Cleaner used, powder"},
           {"water_m3", "Water"},
           {"contact_s", "&Contact time"},
           {"complete", "All of it is done"},
           {"next_due_day", "Next due", Use::typed, "As stamped or certified."},
           {"done_by", "&Done by"},
           {"countersigned_by", "Countersi&gned by"}},
          CautionWeight::danger,
          "Vent before opening. Caustic and acid burn: gloves and goggles. Never let acid meet a "
          "chlorine cleaner."};
}

FormSpec segment_spec() {
  return {"segment_record",
          "Piece of hose",
          "line segment hose python restrictor",
          {{"segment", "", Use::hidden},
           {"line", "&Line"},
           {"position", "&Counted from the keg"},
           {"length_m", "Len&gth"},
           {"bore_m", "&Bore"},
           {"material", "&Material"},
           {"place", "&Runs through"},
           {"rise_m", "Ri&se", Use::typed, "Of its end above its beginning."},
           {"in_use", "In use"}}};
}

std::vector<FormSpec> make_routine() {
  std::vector<FormSpec> specs;
  specs.push_back(rule_spec());
  specs.push_back(work_done_spec());
  specs.push_back({"work_moved",
                   "Put work off",
                   "move postpone due",
                   {{"work", "&Work"},
                    {"rule", "", Use::hidden},
                    {"line", "&Line"},
                    {"keg", "&Keg"},
                    {"bottle", "&Bottle"},
                    {"place", "&Place"},
                    {"to_day", "&To", Use::typed, "", true},
                    {"reason", "Wh&y"}}});
  specs.push_back(segment_spec());
  return specs;
}

}  // namespace

std::span<const FormSpec> routine_form_specs() {
  static const std::vector<FormSpec> specs = make_routine();
  return specs;
}

}  // namespace ullage::ui
