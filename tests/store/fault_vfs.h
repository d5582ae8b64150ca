// SPDX-License-Identifier: GPL-3.0-or-later
//
// An SQLite file layer that counts writes and flushes and makes the N-th fail,
// once or from then on, the way a full or a dying disk does.
#pragma once

namespace ullage::testing {

enum class DiskFault {
  write_error,  // nothing of the block is written
  torn_write,   // half of the block is written, then an error
  disk_full,
};

struct FaultPlan {
  int fail_at = 0;            // the how-many-th operation fails; 0: none
  bool from_then_on = false;  // and all after it
  DiskFault fault = DiskFault::write_error;
  int done = 0;   // operations so far
  int fired = 0;  // how many failed
};

// The one plan in force; tests set it and read it.
[[nodiscard]] FaultPlan& fault_plan();

// Registers the layer (once) and gives its name for OpenOptions::vfs.
[[nodiscard]] const char* fault_vfs();

}  // namespace ullage::testing
