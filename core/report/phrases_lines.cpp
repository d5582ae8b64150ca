// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words about lines: how they pour, and kegs that lock them.
#include <array>

#include "core/report/phrases.h"

namespace ullage::report {

namespace {

using LineKey = cellar::MessageKey;

constexpr auto line_table = std::to_array<Phrase>({
    {LineKey::line_keg_locked, "Do not serve: {0} is held back"},
    {LineKey::adv_line_keg_locked, "Do not serve from {0}: {1} is held back"},
    {LineKey::keg_lock_leaking, "It failed its hold test: it leaks"},
    {LineKey::keg_lock_leak_found, "A leak was found on it: {0}"},
    {LineKey::keg_lock_leak_seen, "A leak was found on it"},
    {LineKey::keg_lock_recalled, "Its batch is recalled"},
    {LineKey::pour_no_hose, "Register the length and bore of its hose to see how it pours."},
    {LineKey::pour_hose_unlikely, "No hose is like that: check length, bore and rise."},
    {LineKey::pour_no_keg, "No keg is on it."},
    {LineKey::pour_no_gas, "No gas is on {0}: log the pressure it is set to."},
    {LineKey::pour_no_temperature, "No temperature is known for {0}: read the place it stands in."},
    {LineKey::pour_too_weak, "{0} hardly pours: lifting the beer alone takes {1}"},
    {LineKey::pour_out_of_range, "The figures are outside what can be computed."},
    {LineKey::input_beer_at, "beer at {0}"},
    {LineKey::input_timed_pours, "timed pours that count: {0}"},
    {LineKey::input_hose_untimed, "bore as registered; a timed pour would narrow it"},
    {LineKey::adv_pour_breaks_out, "Gas breaks out in the line: {0} on it, {1} needed to hold {2}"},
    {LineKey::adv_pour_raise_detail, "Set it to {0}. Turning it down further makes more foam."},
    {LineKey::adv_pour_over_gasses, "{0} brings it to {1}, above its {2}"},
    {LineKey::adv_pour_over_gasses_by,
     "Over-gassed by {1:over 2} in {3}: {0} brings it to {1}, above its {2}"},
    {LineKey::adv_pour_lower_detail,
     "Set it to {0} and vent. A longer or narrower hose slows a pour, not less gas."},
    {LineKey::adv_pour_goes_flat, "{0} lets it fall to {1}, below its {2}"},
    {LineKey::adv_pour_cant_tell, "{0} and {1} can’t be told apart: mostly by “{2}”"},
    {LineKey::adv_pour_cant_tell_detail,
     "By the dial it should read {0}. A checked gauge would tell more."},
    {LineKey::adv_pour_cant_tell_warmth_detail,
     "It should be {0}. Reading the beer’s own temperature would tell more."},
    {LineKey::adv_pour_cant_tell_else_detail,
     "It should be {0}. Neither a better dial nor a thermometer would tell much more."},
    {LineKey::adv_pour_contradicts, "{0} can’t have poured as timed through this hose"},
    {LineKey::adv_pour_contradicts_detail,
     "Check its length and bore, the glass, and the pressure at that pour."},
    {LineKey::adv_pour_no_run_detail, "More pressure needs less CO₂ in the gas, or less rise."},
    {LineKey::adv_pour_fast, "Pours too fast: {0} in {1} ({2} to {3})"},
    {LineKey::adv_pour_slow, "Pours slowly: {0} in {1} ({2} to {3})"},
    {LineKey::adv_pour_length_detail,
     "{0} of this hose would be right ({3} to {4}); {1} would fill the glass in {2}. Leave the "
     "pressure."},
    {LineKey::adv_pour_shorten_detail,
     "{0} of this hose would be right ({3} to {4}); {1} would fill the glass in {2}."},
    {LineKey::adv_pour_blend_detail,
     "It needs {0}. At that pressure gas with {1} CO₂ keeps the beer as it is."},
    {LineKey::adv_pour_bore_detail,
     "No length of this hose is right. A bore of {0:bore} would be."},
    {LineKey::adv_pour_warm, "First pour foams: {0} stands at {1} in {2}"},
    {LineKey::adv_pour_warm_detail, "Cool that part, or pour the first glass slowly away."},
    {LineKey::adv_pour_untold, "How warm {0} is was never told: {1} of beer stand there"},
    {LineKey::adv_pour_untold_detail,
     "Read its temperature. Where it is warm the first pour foams, and nothing here tells."},
    {LineKey::adv_pour_blend, "Gas with {0} CO₂ at {1} holds {2}"},
    {LineKey::adv_pour_right_blend_detail, "At {0} this beer wants gas with {1} CO₂ ({2} to {3})."},
    {LineKey::adv_pour_altitude,
     "At {0} a gauge must read {1} more than a chart for sea level says"},
    {LineKey::adv_pour_not_cold_long, "{0} is in the cold only since {1}"},
    {LineKey::adv_pour_not_cold_detail,
     "Warm beer foams at any pressure. Give it a day or more; leave the regulator alone."},
    {LineKey::adv_pour_still_warm, "{0} is still at {1}, where it stands it is {2}"},
    {LineKey::adv_pour_idle, "Nothing is logged as poured since {0:day}"},
    {LineKey::adv_pour_idle_detail, "Draw off the {0} in the line and taste it before serving."},
    {LineKey::adv_pour_shared, "{0} and {1} want different pressures, and {2} feeds both"},
    {LineKey::adv_pour_shared_detail,
     "{0} comes to {1} at {2}. {3} would be the best for all and bring it to {4}."},
    {LineKey::input_keg_becomes, "{0}: {1} to {2} wanted, comes to {3}"},
});

}  // namespace

std::span<const Phrase> phrases_of_lines() { return line_table; }

}  // namespace ullage::report
