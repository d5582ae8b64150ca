// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "core/report/phrases.h"

namespace ullage::report {

namespace {

using K = cellar::MessageKey;

constexpr auto gas_table = std::to_array<Phrase>({
    {K::gas_never_weighed, "Not weighed yet. Weigh it now, and once a week from then on."},
    {K::gas_weighed_once,
     "Weighed once, {0:day}. A second weighing tells what is used and what is lost."},
    {K::gas_weigh_together, "Weigh all bottles of the manifold on the same day."},
    {K::adv_gas_loss, "{0} loses {1} a day that no keg explains"},
    {K::adv_gas_loss_detail,
     "Look for the leak with soapy water, the likeliest place first. CO₂ gathers in low rooms: air "
     "the place before you work there."},
    {K::input_bottle_weighed, "{0} weighed: {1} of gas"},
    {K::suspect_leak_found, "{0}: a leak was found ({1}) and is not logged as put right"},
    {K::suspect_leak_seen, "{0}: a leak was found and is not logged as put right"},
    {K::suspect_hold_failed, "{0} failed its hold test"},
    {K::suspect_touched, "{0} came on the gas {1:day}, shortly before the loss showed"},
    {K::suspect_touched_held,
     "{0} came on the gas {1:day}, shortly before the loss showed. It held its test, but posts and "
     "couplings were not tested with it"},
    {K::suspect_coupled,
     "{0} was put on or taken off its line {1:day}, shortly before the loss showed"},
    {K::suspect_opened, "{0} was opened {1:day}, shortly before the loss showed"},
    {K::suspect_seals, "{0} got new seals {1:day}, shortly before the loss showed"},
    {K::suspect_moved, "{0} was moved {1:day}, shortly before the loss showed"},
    {K::suspect_untested, "{0} has no passed hold test"},
    {K::suspect_bottle_changed, "{0}: no leak test since the bottle was changed {1:day}"},
    {K::suspect_joint, "{0}: its joints were never leak-tested"},
    {K::suspect_rest, "{0}: tested and tight, so least likely"},
    {K::isolate_weigh, "Weigh {0} now."},
    {K::isolate_bottle,
     "Shut the bottle’s own valve for {1} and weigh again. If {0} got lighter, its valve leaks: "
     "leave that to the supplier. If not, go on."},
    {K::isolate_branch,
     "Shut {0} with all that hangs on it for {1}, all else as before, and weigh again. If the loss "
     "has stopped, it is there: go on with its kegs. If not, open it again."},
    {K::isolate_keg,
     "Take the gas off {0} for {1}, all else as before, and weigh again. If the loss has stopped, "
     "it is there. If not, put the gas back."},
    {K::isolate_rest,
     "All of these off at once for {0}, and still losing: it is the joints before them, from the "
     "bottle to {1}. Test those."},
    {K::gauge_tells_nothing,
     "While liquid remains the gauge tells nothing: there may be {0} or a full bottle. Weigh it."},
    {K::gauge_tells_vapour, "The liquid is gone. By its gauge {0} is left: change it soon."},
    {K::gauge_tells_mixed, "Mixed gas, so the gauge falls with what is used: {0} left."},
    {K::gauge_above_saturation,
     "The gauge stands above what CO₂ has at this temperature. The bottle is warmer than stated, "
     "overfilled, or holds another gas. Keep it cool and ask the supplier."},
    {K::gauge_needs_capacity,
     "What the gauge tells depends on the bottle’s size: register its content or water capacity."},
    {K::gauge_cant_tell, "This pressure or temperature is outside what can be computed."},
    {K::adv_bottle_warm,
     "A full {0} is all liquid at {1}, and its place is at {2}: keep it cooler"},
    {K::adv_bottle_warm_detail,
     "Above that its pressure rises steeply, up to the relief device. Never leave it in the sun or "
     "a closed car."},
});

}  // namespace

std::span<const Phrase> phrases_of_gas() { return gas_table; }

}  // namespace ullage::report
