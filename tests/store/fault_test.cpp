// SPDX-License-Identifier: GPL-3.0-or-later
//
// The disk fails at the first write or flush of an act, at the second, at the
// third ... until the act gets through. Each time the file is as before the act
// or as after it, never between.
#include <gmock/gmock.h>

#include "core/store/check.h"
#include "tests/store/fault_vfs.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

using store::JournalStore;
using store::StoreFault;

class FaultTest : public StoreTest, public ::testing::WithParamInterface<DiskFault> {
 public:
  ~FaultTest() override { fault_plan() = {}; }

 protected:
  FaultTest() {
    fault_plan() = {};
    before_ = fill(20, 1, "base.ullage");
    SeededSource source(2);
    PayloadMaker maker(source);
    act_ = maker.entries(6, 6);
  }

  [[nodiscard]] std::filesystem::path fresh_copy() const {
    for (const char* tail : {"", "-wal", "-shm"}) {
      std::filesystem::remove(file().string() + tail);
    }
    std::filesystem::copy_file(file("base.ullage"), file());
    return file();
  }
  [[nodiscard]] store::OpenOptions through_faults() const {
    store::OpenOptions options;
    options.vfs = fault_vfs();
    return options;
  }
  [[nodiscard]] static bool is_disk_fault(StoreFault fault) {
    return fault == StoreFault::device_error || fault == StoreFault::disk_full;
  }
  // As before, or with the whole act; says which.
  bool holds_the_act(int n) const {
    const auto sound = store::check_file(file(), store::CheckDepth::full);
    EXPECT_TRUE(sound) << "at operation " << n << ": " << why(sound);
    const auto loaded = opened().load();
    EXPECT_TRUE(loaded) << "at operation " << n << ": " << why(loaded);
    if (!loaded) return false;
    if (loaded->size() == before_.size()) {
      expect_same(*loaded, before_);
      return false;
    }
    std::vector<cellar::Entry> after = before_;
    auto numbered = act_;
    std::int64_t sequence = std::ssize(before_);
    for (auto& entry : numbered) entry.header.sequence = ++sequence;
    after.insert(after.end(), numbered.begin(), numbered.end());
    expect_same(*loaded, after);
    return true;
  }

  std::vector<cellar::Entry> before_, act_;
};

TEST_P(FaultTest, AFailureOnceIsSurvivedAndTheStoreIsUsableAtOnce) {
  int failures = 0;
  bool got_through = false;
  for (int n = 1; n < 200 && !got_through; ++n) {
    auto store = JournalStore::open(fresh_copy(), through_faults());
    ASSERT_TRUE(store) << why(store);
    fault_plan() = {.fail_at = n, .fault = GetParam()};
    auto act = act_;
    const auto kept = store->append(act);
    got_through = fault_plan().fired == 0;
    fault_plan() = {};
    if (kept) {
      EXPECT_EQ(store->load().value().size(), before_.size() + act_.size());
    } else {
      ++failures;
      EXPECT_TRUE(is_disk_fault(kept.error().fault)) << why(kept);
      if (GetParam() == DiskFault::disk_full && kept.error().fault == StoreFault::disk_full) {
        EXPECT_THAT(store::describe(kept.error()), ::testing::HasSubstr("disk is full"));
      }
      for (const auto& entry : act) EXPECT_EQ(entry.header.sequence, 0);
      EXPECT_EQ(store->load().value().size(), before_.size()) << "operation " << n;
      const auto again = store->append(act);
      EXPECT_TRUE(again) << "operation " << n << ": " << why(again);
    }
    store->close();
    EXPECT_TRUE(holds_the_act(n)) << "operation " << n;
  }
  EXPECT_TRUE(got_through);
  EXPECT_GE(failures, 3) << "too few operations failed for this to have shown anything";
}

TEST_P(FaultTest, ADiskThatDiesForGoodLeavesBeforeOrAfter) {
  int failures = 0;
  bool got_through = false;
  for (int n = 1; n < 200 && !got_through; ++n) {
    const auto path = fresh_copy();
    fault_plan() = {.fail_at = n, .from_then_on = true, .fault = GetParam()};
    bool acknowledged = false;
    {
      auto store = JournalStore::open(path, through_faults());
      if (store) {
        auto act = act_;
        acknowledged = store->append(act).has_value();
        if (!acknowledged) ++failures;
        // What closing does to the disk can fail too, and must not matter.
      } else {
        EXPECT_TRUE(is_disk_fault(store.error().fault)) << why(store);
        ++failures;
      }
    }
    got_through = fault_plan().fired == 0;
    fault_plan() = {};
    const bool there = holds_the_act(n);
    EXPECT_TRUE(there || !acknowledged) << "a promised act is lost at operation " << n;
  }
  EXPECT_TRUE(got_through);
  EXPECT_GE(failures, 3);
}

INSTANTIATE_TEST_SUITE_P(Disk, FaultTest,
                         ::testing::Values(DiskFault::write_error, DiskFault::torn_write,
                                           DiskFault::disk_full),
                         [](const auto& at) {
                           switch (at.param) {
                             case DiskFault::write_error:
                               return "WriteError";
                             case DiskFault::torn_write:
                               return "TornWrite";
                             case DiskFault::disk_full:
                               return "DiskFull";
                           }
                           return "Other";
                         });

}  // namespace
}  // namespace ullage::testing
