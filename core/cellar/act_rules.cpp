// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must agree between the fields of an entry, and with the rest of the cellar.
#include <algorithm>

#include "core/cellar/act_check.h"
#include "core/cellar/keg_weight.h"
#include "core/cellar/line_timeline.h"
#include "core/cellar/typed_names.h"

namespace ullage::cellar {

namespace {

template <class Record>
bool counts_as_in_use(const Record& record) {
  if constexpr (requires { record.in_use; }) {
    return record.in_use;
  } else {
    return true;
  }
}

// No two things in use of one kind share what people call them by.
template <class Record, class Id>
void check_unique(ActCheck& check, const Record& record, Id Record::* id,
                  std::string Record::* name, std::string_view column, MessageKey taken) {
  if (!counts_as_in_use(record) || is_blank_text(record.*name)) return;
  const std::string wanted = folded_name(record.*name);
  bool other = false;
  check.for_each_record<Record>([&](const Record& r) {
    other = other || (r.*id != record.*id && counts_as_in_use(r) && folded_name(r.*name) == wanted);
  });
  if (other) check.refuse(column, taken, record.*name);
}

template <class Record, class Id>
void check_unique_name(ActCheck& check, const Record& record, Id Record::* id) {
  check_unique(check, record, id, &Record::name, "name", MessageKey::fault_name_taken);
}

void check_fits(ActCheck& check, KegId keg, const std::optional<Volume>& volume,
                std::string_view column) {
  const auto* record = check.record<KegRecord>(subject(keg));
  if (!volume || record == nullptr) return;
  if (*volume > record->brimful + record->brimful_half_width) {
    check.refuse(column, MessageKey::fault_more_than_keg, *volume, record->brimful);
  }
}

// A keg and its beer on the scale.
void check_weighs(ActCheck& check, KegId keg, const std::optional<Mass>& gross) {
  const auto* record = check.record<KegRecord>(subject(keg));
  const auto can = gross && record != nullptr ? keg_weights(*record) : std::nullopt;
  if (!can) return;
  if (*gross > can->most) check.refuse("gross_mass_kg", MessageKey::fault_above, can->most);
  if (*gross < can->least) check.refuse("gross_mass_kg", MessageKey::fault_below, can->least);
}

void require(ActCheck& check, bool there, std::string_view column) {
  if (!there) check.refuse(column, MessageKey::fault_required);
}

// One function for each kind that has rules; the others pass.
void rules(ActCheck&, const auto&) {}

void rules(ActCheck& check, const KegRecord& r) {
  if (r.nominal > r.brimful) check.refuse("nominal_m3", MessageKey::fault_above, r.brimful);
  check_unique(check, r, &KegRecord::keg, &KegRecord::tag, "tag", MessageKey::fault_tag_taken);
}
void rules(ActCheck& check, const BeerRecord& r) {
  if (r.co2_low && r.co2_high && *r.co2_low > *r.co2_high) {
    check.refuse("co2_high_g_per_l", MessageKey::fault_range_order);
  }
  check_unique_name(check, r, &BeerRecord::beer);
}
void rules(ActCheck& check, const BatchRecord& r) {
  if (r.original_gravity && r.final_gravity && *r.original_gravity < *r.final_gravity) {
    check.refuse("final_gravity_sg", MessageKey::fault_gravity_order, *r.original_gravity,
                 *r.final_gravity);
  }
}
void rules(ActCheck& check, const PlaceRecord& r) {
  check_unique_name(check, r, &PlaceRecord::place);
}
void rules(ActCheck& check, const LineRecord& r) { check_unique_name(check, r, &LineRecord::line); }
void rules(ActCheck& check, const BottleRecord& r) {
  check_unique_name(check, r, &BottleRecord::bottle);
}
void rules(ActCheck& check, const RegulatorRecord& r) {
  check_unique_name(check, r, &RegulatorRecord::regulator);
}
void rules(ActCheck& check, const InstrumentRecord& r) {
  check_unique_name(check, r, &InstrumentRecord::instrument);
}

void rules(ActCheck& check, const Found& f) {
  check_fits(check, f.keg, f.volume, "beer_volume_m3");
  if (f.since && *f.since > check.draft().happened_at) {
    check.refuse("since_utc_s", MessageKey::fault_since_after, check.draft().happened_at);
  }
}
void rules(ActCheck& check, const Received& r) {
  check_fits(check, r.keg, r.volume, "beer_volume_m3");
}
void rules(ActCheck& check, const Filled& f) {
  check_fits(check, f.keg, f.volume, "beer_volume_m3");
  check_weighs(check, f.keg, f.gross_mass);
  if (f.co2_at_fill == Co2AtFill::measured) require(check, f.co2.has_value(), "co2_g_per_l");
}
void rules(ActCheck& check, const Wasted& w) {
  require(check, w.keg || w.batch, "keg");
  if (w.keg) check_fits(check, *w.keg, w.volume, "volume_m3");
}
void rules(ActCheck& check, const LevelReading& r) {
  switch (r.method) {
    case LevelMethod::weight:
      require(check, r.gross_mass.has_value(), "gross_mass_kg");
      check_weighs(check, r.keg, r.gross_mass);
      break;
    case LevelMethod::heft:
    case LevelMethod::condensation_line:
      require(check, r.fraction_left.has_value(), "fraction_left");
      break;
    case LevelMethod::glasses:
      require(check, r.glasses.has_value(), "glasses");
      require(check, r.glass_volume.has_value(), "glass_volume_m3");
      break;
    case LevelMethod::metered:
      require(check, r.metered.has_value(), "metered_m3");
      check_fits(check, r.keg, r.metered, "metered_m3");
      break;
  }
}
void rules(ActCheck& check, const CarbonationReading& r) {
  require(check, r.pressure || r.co2, "pressure_pa");
}

void rules(ActCheck& check, const Quarantined& q) {
  if (is_blank_text(q.reason)) check.refuse("reason", MessageKey::fault_reason_needed);
}
void rules(ActCheck& check, const BatchRecalled& r) {
  if (is_blank_text(r.reason)) check.refuse("reason", MessageKey::fault_reason_needed);
}

// A lock ends only with a passed check by somebody with a name; where two must
// sign, by two.
void rules(ActCheck& check, const LineReleased& r) {
  if (r.check == FlushCheck::none) {
    check.refuse("flush_check", MessageKey::fault_release_needs_check);
  }
  if (!r.passed) check.refuse("passed", MessageKey::fault_release_not_passed);
  if (is_blank_text(r.checked_by)) {
    check.refuse("checked_by", MessageKey::fault_release_needs_name);
  }
  const auto* line = check.record<LineRecord>(subject(r.line));
  const bool second = line != nullptr && line->second_initials_to_release;
  if (second && !signed_by_two(r)) {
    check.refuse("countersigned_by", MessageKey::fault_release_needs_second);
  }
}

// A rule for one thing names one, and of its own scope.
void rules(ActCheck& check, const RuleRecord& r) {
  const RuleScope s = r.scope;
  const bool keg_ok = s == RuleScope::keg || s == RuleScope::coupler;
  const bool line_ok = s == RuleScope::line || s == RuleScope::coupler;
  const bool place_ok = s == RuleScope::place || s == RuleScope::alarm;
  if (r.keg && !keg_ok) check.refuse("keg", MessageKey::fault_not_of_scope);
  if (r.line && (!line_ok || r.keg)) check.refuse("line", MessageKey::fault_not_of_scope);
  if (r.bottle && s != RuleScope::bottle) check.refuse("bottle", MessageKey::fault_not_of_scope);
  if (r.place && !place_ok) check.refuse("place", MessageKey::fault_not_of_scope);
}
void rules(ActCheck& check, const WorkDone& w) {
  require(check, subject_named(w).has_value(), "line");
}
void rules(ActCheck& check, const WorkMoved& w) {
  require(check, subject_named(w).has_value(), "line");
}

void rules(ActCheck& check, const LeakTested& t) {
  require(check, t.keg || t.bottle || t.regulator || t.line, "keg");
}
void rules(ActCheck& check, const Noted&) {
  if (is_blank_text(check.draft().note)) check.refuse("note", MessageKey::fault_required);
}

void rules(ActCheck& check, const Struck& s) {
  if (check.journal().find(s.target) == nullptr) {
    check.refuse("target_entry", MessageKey::fault_unknown_subject, std::string("entry"));
  } else if (check.struck(s.target)) {
    check.refuse("target_entry", MessageKey::fault_already_struck);
  }
  if (is_blank_text(s.reason)) check.refuse("reason", MessageKey::fault_reason_needed);
}
void rules(ActCheck& check, const Restored& r) {
  if (check.journal().find(r.target) == nullptr) {
    check.refuse("target_entry", MessageKey::fault_unknown_subject, std::string("entry"));
  } else if (!check.struck(r.target)) {
    check.refuse("target_entry", MessageKey::fault_not_struck);
  }
}

}  // namespace

void check_rules(ActCheck& check, const Payload& payload) {
  visit([&](const auto& p) { rules(check, p); }, payload);
}

}  // namespace ullage::cellar
