// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every message the cellar can give. Each has its words in
// core/report/phrases.cpp; a test fails when one has none or when its
// placeholders do not match the arguments noted here.
#pragma once

namespace ullage::cellar {

enum class MessageKey {
  // faults at a field or about an act
  fault_required,              // no args: the field must be filled in
  fault_too_long,              // (limit as int64)
  fault_below,                 // (lowest allowed: quantity)
  fault_above,                 // (highest allowed: quantity)
  fault_not_finite,            // -
  fault_future,                // (now: Instant)
  fault_tag_taken,             // (tag)
  fault_name_taken,            // (name)
  fault_unknown_subject,       // (what)
  fault_gravity_order,         // (og: SG, fg: SG)
  fault_more_than_keg,         // (volume typed: Volume, brimful: Volume)
  fault_reason_needed,         // -
  fault_release_not_passed,    // -
  fault_release_needs_name,    // -
  fault_already_struck,        // -
  fault_not_struck,            // -
  fault_nothing_to_undo,       // -
  fault_store,                 // (sentence from the store)
  fault_too_early,             // (earliest allowed: Instant)
  fault_not_text,              // -
  fault_range_order,           // -: the top of a range below its bottom
  fault_since_after,           // (happened at: Instant)
  fault_release_needs_check,   // -
  fault_release_needs_second,  // -
  fault_nothing_to_log,        // -
  fault_already_replaced,      // -: it was corrected since; correct the correction
  fault_not_correctable,       // -: strikes and restores are struck, not corrected
  fault_nothing_to_redo,       // -
  fault_unknown_zone,          // (zone)
  fault_read_only,             // (sentence from the store)
};

}  // namespace ullage::cellar
