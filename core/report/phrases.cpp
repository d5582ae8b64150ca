// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/phrases.h"

#include <array>

namespace ullage::report {

namespace {

using K = cellar::MessageKey;

constexpr auto table = std::to_array<Phrase>({
    {K::fault_required, "Fill this in."},
    {K::fault_too_long, "At most {0} characters."},
    {K::fault_below, "{0} is the least it can be."},
    {K::fault_above, "{0} is the most it can be."},
    {K::fault_not_finite, "This is not a number."},
    {K::fault_future, "This lies ahead. It is {0} now."},
    {K::fault_tag_taken, "Another keg in use has the tag {0}."},
    {K::fault_name_taken, "{0} is the name of another one."},
    {K::fault_unknown_subject, "There is no such {0} in this cellar."},
    {K::fault_gravity_order, "The original gravity, {0}, must be above the final one, {1}."},
    {K::fault_more_than_keg, "{0} is more than the keg holds to the brim, {1}."},
    {K::fault_reason_needed, "Say why."},
    {K::fault_release_not_passed, "The check has not passed, so the line stays locked."},
    {K::fault_release_needs_name, "Name who checked that the cleaner is out."},
    {K::fault_already_struck, "This entry is struck already."},
    {K::fault_not_struck, "This entry is not struck."},
    {K::fault_nothing_to_undo, "There is nothing to undo."},
    {K::fault_store, "{0}"},
    {K::fault_too_early, "This is too long ago. {0} is the earliest."},
    {K::fault_not_text, "This text has characters that can’t be kept."},
    {K::fault_not_of_scope, "A rule of this kind cannot be for that."},
    {K::fault_range_order, "The top of the range is below its bottom."},
    {K::fault_since_after, "This is later than the entry itself, {0}."},
    {K::fault_release_needs_check, "Say how it was checked that the cleaner is out."},
    {K::fault_release_needs_second, "This line needs a second person to sign the release."},
    {K::fault_nothing_to_log, "There is nothing to log."},
    {K::fault_already_replaced, "This entry was corrected since. Correct the correction."},
    {K::fault_not_correctable, "A strike can’t be corrected. Strike it instead."},
    {K::fault_nothing_to_redo, "There is nothing to redo."},
    {K::fault_unknown_zone, "{0} is not a time zone."},
    {K::fault_read_only, "{0}"},

    {K::misfit_cleaned_while_full, "Cleaned while it held beer: when was it emptied?"},
    {K::misfit_sanitised_while_full, "Sanitised while it held beer: when was it emptied?",
     "Sanitized while it held beer: when was it emptied?"},
    {K::misfit_opened_while_full, "Seals renewed while it held beer: when was it emptied?"},
    {K::misfit_filled_while_full, "Filled while it still held beer: when was it emptied?"},
    {K::misfit_received_while_full, "Delivered full while it still held beer."},
    {K::misfit_tapped_empty, "Put on while it was empty.", "Tapped while it was empty."},
    {K::misfit_tapped_lent, "Put on while it was out on loan.", "Tapped while it was out on loan."},
    {K::misfit_untapped_not_on_tap, "Taken off while it was not on tap."},
    {K::misfit_emptied_already, "Emptied while it was empty already."},
    {K::misfit_level_of_empty, "A level read while it was empty."},
    {K::misfit_co2_of_empty, "Carbonation read while it was empty."},
    {K::misfit_wasted_from_empty, "Beer wasted from it while it was empty."},
    {K::misfit_hops_out_none, "Hops taken out that were never logged as put in."},
    {K::misfit_cleared_not_held, "Cleared while it was not held back."},
    {K::misfit_lent_on_tap, "Lent while it was on tap."},
    {K::misfit_returned_not_lent, "Returned while it was not out on loan."},
    {K::misfit_unknown_place, "Moved to a place that is not registered."},
    {K::misfit_unknown_batch, "Filled from a batch that is not registered."},
    {K::misfit_unknown_line, "Put on a line that is not registered.",
     "Tapped on a line that is not registered."},

    {K::bad_over_rated, "{0} is above its rated {1}: let it down now"},
    {K::bad_over_rated_detail,
     "Keep clear of lid and valves, turn the gas down, then vent. If in doubt, leave it to a "
     "licensed person."},
    {K::bad_near_rated, "{0} is close to its rated {1}"},
    {K::bad_near_rated_detail, "Warm beer and a worn dial add to it. Leave some room."},
    {K::bad_inspect_after_pressure, "Stood at {0}, above its rated {1}: look it over"},
    {K::bad_inspect_after_pressure_detail,
     "Check lid, relief valve and weld before its next use, and log it as inspected."},
    {K::bad_acid_and_chlorine, "Acid and chlorine one after the other: rinse it"},
    {K::bad_acid_and_chlorine_detail,
     "Together they give off a poisonous gas. Air the room, rinse the keg with water, and log the "
     "rinse."},
    {K::bad_opened_unvented, "Opened with {0} in it and no vent logged"},
    {K::bad_opened_unvented_detail,
     "Always vent first: a lid under pressure flies. If it was vented, log it with its time."},
    {K::bad_filled_uncleaned, "Filled, and no cleaning is logged before it"},
    {K::bad_filled_unsanitised, "Filled, and no sanitising is logged before it",
     "Filled, and no sanitizing is logged before it"},
    {K::bad_filled_unprepared_detail,
     "If it was done, log it with its time. If not, use this keg first and taste it."},
    {K::bad_filled_not_empty, "Filled on top of what was in it"},
    {K::bad_filled_not_empty_detail,
     "If it was emptied before, log that with its time. Until then nobody knows what is in it."},
    {K::bad_filled_under_pressure, "Filled open with {0} in it and no vent logged"},
    {K::bad_filled_unfit, "Filled although it was found not fit to use"},
    {K::bad_filled_leaky, "Filled although it failed its hold test"},
    {K::bad_filled_leaky_detail, "Check lid and posts with soapy water and log what you find."},
    {K::bad_on_tap_held_back, "On tap although it is held back: take it off"},
    {K::bad_on_tap_held_back_detail, "Serve none of it until somebody has cleared it."},
    {K::bad_leak_found, "It leaks: {0}"},
    {K::bad_leak_found_detail, "Renew or grease the seal, then test again."},

    {K::step_as_found, "as found"},
    {K::step_cleaned, "{0}"},
    {K::step_only_rinsed, "rinsed only, so not clean"},
    {K::step_sanitised, "{0}"},
    {K::step_sanitised_unclean, "sanitised before it was clean, so it does not count",
     "sanitized before it was clean, so it does not count"},
    {K::step_undone_by_cleaning, "cleaned or rinsed since, so it has to be done again"},
    {K::step_undone_by_opening, "opened since, so it has to be done again"},
    {K::step_seals_renewed, "seals renewed"},
    {K::step_seals_lubricated, "seals greased"},
    {K::step_looked_over, "looked over"},
    {K::step_purged_cycles, "{0} cycles at {1}: about {2} ppm oxygen left, {3} at most"},
    {K::step_purged_swept, "swept: about {0} ppm oxygen left, {1} at most"},
    {K::step_purged_pushed, "liquid pushed out: about {0} ppm oxygen left, {1} at most"},
    {K::step_purged_in_order, "{0} purges in a row: about {1} ppm oxygen left, {2} at most"},
    {K::step_no_leak, "no leak found"},
    {K::step_leak_found, "leak found: {0}"},

    {K::hold_holds, "held {0} for {1}"},
    {K::hold_falls, "fell {0} in {1}: loses {2} a day"},
    {K::hold_read_again, "can’t tell yet: read again, {0} or later"},
    {K::hold_one_reading, "{0} at {1}: read it again in a day"},
    {K::hold_out_of_range, "these readings can’t be right"},
    {K::hold_gas_on, "{0} with the gas on: no test. Turn the gas off, then read"},
    {K::hold_rose, "can’t tell: {0} more than a tight keg shows. Was gas on, or a reading wrong?"},
    {K::hold_contradictory, "can’t tell: no one leak fits these readings"},
    {K::hold_no_pressure, "can’t tell: too little pressure to lose any"},
    {K::hold_absorption, "can’t tell: the beer may have taken or given more than a leak would"},
    {K::hold_too_coarse, "can’t tell with these instruments, not in 60 days either"},

    {K::level_not_stated, "Nobody said how much is in it. Weigh or heft it."},
    {K::level_no_tare, "Its empty weight is not known, so a weighing tells nothing."},
    {K::level_reading_impossible,
     "The last reading can’t be right for this keg: check scale and empty weight."},
    {K::level_reads_more, "The last reading says {0}, the ones before {1}."},
    {K::level_reads_less,
     "The last reading says {0}, the ones before {1}: beer went that nobody logged, or one of "
     "them is wrong."},
    {K::level_runs_out, "{0}, four times in five"},
    {K::level_unread_since_tapped, "{0} when it was put on {1:age}. Weigh or heft it.",
     "{0} when it was tapped {1:age}. Weigh or heft it."},
    {K::level_should_be_empty, "It should be empty by now."},
    {K::level_more_drawn_than_held, "More was drawn than it held. Weigh or heft it."},

    {K::co2_not_stated, "Its CO₂ was never stated or read."},
    {K::co2_since_when, "Nobody said since when it has stood on gas."},
    {K::co2_no_temperature, "No temperature is known for where it stands."},
    {K::co2_fill_incomplete, "Its CO₂ at filling lacks a pressure or temperature."},
    {K::co2_primed, "Sugar works at its own pace: read the carbonation after two weeks."},
    {K::co2_no_size, "The size of the keg is not known."},
    {K::co2_out_of_range, "A pressure or temperature is outside what can be computed."},
    {K::co2_too_long_ago, "The last word on its gas is too long ago."},

    {K::mark_gas_set, "{0}"},
    {K::mark_gas_off, "gas off"},
    {K::mark_vented, "vented"},
    {K::mark_rocked, "rocked"},
    {K::mark_drop, "drop to {0}"},

    {K::input_gas, "gas set to {0}"},
    {K::input_gas_on_dial, "gas set to {1} on {0}"},
    {K::input_place_read, "{0} read at {1}"},
    {K::input_place_set, "{0} set to {1}, never read"},
    {K::input_warmest, "warmest since fermentation: {0}"},
    {K::input_fill_temperature, "filled at {0}; how warm it was before is not stated"},
    {K::input_assumed_warmest, "warmest since fermentation not stated, taken as {0}"},
    {K::input_narrow, "widest error: {0}"},
});

}  // namespace

std::span<const Phrase> phrases_of_entries() { return table; }

std::string_view phrase(cellar::MessageKey key, RegionalWords words) {
  // Looked up often (every sentence of every keg), so by index.
  static const auto by_key = [] {
    std::array<const Phrase*, cellar::all_messages.size()> index{};
    for (const auto part :
         {phrases_of_entries(), phrases_of_kegs(), phrases_of_lines(), phrases_of_gas()}) {
      for (const Phrase& p : part) index[static_cast<std::size_t>(p.key)] = &p;
    }
    return index;
  }();
  const Phrase* p = by_key[static_cast<std::size_t>(key)];
  if (!p) return {};
  return words == RegionalWords::us && !p->us.empty() ? p->us : p->text;
}

}  // namespace ullage::report
