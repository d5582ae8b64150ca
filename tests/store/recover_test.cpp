// SPDX-License-Identifier: GPL-3.0-or-later
//
// Pages are overwritten; what can be read is saved, and the rest is named.
#include "core/store/recover.h"

#include <gmock/gmock.h>

#include <map>
#include <set>

#include "core/store/check.h"
#include "core/store/connection.h"
#include "core/units/present.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

using store::Connection;
using store::ConnectionMode;
using store::Loss;
using store::StoreFault;

constexpr std::size_t page_size = 4096;

class RecoverTest : public StoreTest {
 protected:
  [[nodiscard]] std::vector<std::size_t> pages_of(const std::string& table,
                                                  const std::string& type) const {
    auto db = Connection::open(file(), ConnectionMode::read_only);
    EXPECT_TRUE(db);
    auto rows = db->prepare("SELECT pageno FROM dbstat WHERE name = ?1 AND pagetype = ?2");
    rows->bind(1, std::string_view(table));
    rows->bind(2, std::string_view(type));
    std::vector<std::size_t> pages;
    while (rows->step() == SQLITE_ROW) pages.push_back(static_cast<std::size_t>(rows->integer(0)));
    return pages;
  }
  void overwrite(std::size_t page) const {
    std::string bytes = bytes_of(file());
    ASSERT_LE(page * page_size, bytes.size());
    std::mt19937 random(5);
    for (std::size_t i = 0; i < page_size; ++i) {
      bytes[(page - 1) * page_size + i] = static_cast<char>(random());
    }
    write_bytes(file(), bytes);
  }
  // Saved entries are as they were, and each of the others is named with its kind.
  void expect_all_accounted_for(const std::vector<cellar::Entry>& before,
                                const store::RecoveryReport& report) const {
    auto store = store::JournalStore::open(file("new.ullage"));
    ASSERT_TRUE(store) << why(store);
    const auto saved = store->load();
    ASSERT_TRUE(saved) << why(saved);
    EXPECT_EQ(std::ssize(*saved), report.saved);
    std::map<std::int64_t, const cellar::Entry*> by_sequence;
    for (const auto& entry : *saved) by_sequence[entry.header.sequence] = &entry;
    std::map<std::int64_t, const store::LostEntry*> lost;
    for (const auto& entry : report.lost) lost[entry.sequence] = &entry;
    for (const auto& entry : before) {
      const std::int64_t sequence = entry.header.sequence;
      if (by_sequence.contains(sequence)) {
        EXPECT_TRUE(cellar::same(*by_sequence[sequence], entry)) << sequence;
        EXPECT_FALSE(lost.contains(sequence)) << sequence;
      } else if (lost.contains(sequence)) {
        if (!lost[sequence]->kind.empty()) {
          EXPECT_EQ(lost[sequence]->kind, cellar::kind_of(entry.payload)) << sequence;
        }
        if (lost[sequence]->header) {
          EXPECT_EQ(present(lost[sequence]->header).id, entry.header.id);
        }
      } else {
        EXPECT_TRUE(report.end_uncertain) << sequence << " is neither saved nor named as lost";
      }
    }
    const auto sound = store::check_file(file("new.ullage"), store::CheckDepth::full);
    EXPECT_TRUE(sound) << why(sound);
  }
};

TEST_F(RecoverTest, ABrokenPageOfHeadersCostsTheEntriesOnIt) {
  const auto before = fill(800);
  overwrite(pages_of("entry", "leaf").at(2));
  const auto damaged_bytes = bytes_of(file());
  const auto opened = store::JournalStore::open(file());
  ASSERT_FALSE(opened);
  EXPECT_EQ(opened.error().fault, StoreFault::damaged);

  const auto report = store::recover(file(), file("new.ullage"));
  ASSERT_TRUE(report) << why(report);
  EXPECT_FALSE(report->lost.empty());
  EXPECT_LT(report->lost.size(), 200U);
  EXPECT_FALSE(report->contents_rebuilt);
  expect_all_accounted_for(before, *report);
  EXPECT_EQ(bytes_of(file()), damaged_bytes) << "the damaged file is not touched";
  EXPECT_THAT(store::summary(*report), ::testing::HasSubstr("could not be"));
  const auto known = std::ranges::count_if(report->lost, [](const auto& lost) {
    return lost.loss == Loss::header && !lost.kind.empty();
  });
  EXPECT_GT(known, 0) << "the kind is still known from the kind's own table";
}

TEST_F(RecoverTest, ABrokenPageOfAKindNamesWhatItHeld) {
  const auto before = fill(3000);
  const auto pages = pages_of("keg_record", "leaf");
  ASSERT_GE(pages.size(), 2U);
  overwrite(pages.front());
  const auto report = store::recover(file(), file("new.ullage"));
  ASSERT_TRUE(report) << why(report);
  EXPECT_FALSE(report->lost.empty());
  for (const auto& lost : report->lost) {
    if (lost.loss == Loss::orphan) continue;
    EXPECT_EQ(lost.kind, "keg_record");
    EXPECT_EQ(lost.loss, Loss::payload);
    ASSERT_TRUE(lost.header);
    EXPECT_FALSE(lost.subjects.empty()) << "which keg it was about is known from the index";
  }
  expect_all_accounted_for(before, *report);
}

TEST_F(RecoverTest, ABrokenInnerPageOrIndexIsSurvived) {
  const auto before = fill(1500);
  for (const auto& [table, type] : std::vector<std::pair<std::string, std::string>>{
           {"subject", "leaf"}, {"sqlite_autoindex_entry_1", "leaf"}, {"entry", "internal"}}) {
    const std::string whole = bytes_of(file());
    const auto pages = pages_of(table, type);
    ASSERT_FALSE(pages.empty()) << table;
    overwrite(pages.front());
    std::filesystem::remove(file("new.ullage"));
    const auto report = store::recover(file(), file("new.ullage"));
    ASSERT_TRUE(report) << table << ": " << why(report);
    EXPECT_EQ(report->saved, std::ssize(before)) << table << " holds nothing of its own";
    expect_all_accounted_for(before, *report);
    write_bytes(file(), whole);
  }
}

TEST_F(RecoverTest, BrokenFirstPagesAreRebuilt) {
  const auto before = fill(300);
  overwrite(1);
  const auto opened = store::JournalStore::open(file());
  ASSERT_FALSE(opened);
  const auto report = store::recover(file(), file("new.ullage"));
  ASSERT_TRUE(report) << why(report);
  EXPECT_TRUE(report->contents_rebuilt);
  EXPECT_EQ(report->saved, std::ssize(before));
  expect_all_accounted_for(before, *report);
  EXPECT_EQ(store::JournalStore::open(file("new.ullage"))->file_id(), numbered_uuid(7));
}

TEST_F(RecoverTest, ACutFileGivesWhatIsLeft) {
  const auto before = fill(1500);
  std::filesystem::resize_file(file(), std::filesystem::file_size(file()) * 3 / 4);
  const auto report = store::recover(file(), file("new.ullage"));
  ASSERT_TRUE(report) << why(report);
  EXPECT_GT(report->saved, 0);
  EXPECT_FALSE(report->lost.empty());
  expect_all_accounted_for(before, *report);
}

TEST_F(RecoverTest, TakesWhatIsInTheLog) {
  auto writer = made();
  SeededSource source(3);
  auto entries = PayloadMaker(source).entries(50);
  ASSERT_TRUE(writer.append(entries));
  const auto report = store::recover(file(), file("new.ullage"));
  ASSERT_TRUE(report) << why(report);
  EXPECT_EQ(report->saved, 50);
  EXPECT_TRUE(report->lost.empty());
}

TEST_F(RecoverTest, AnyOnePageMayBreak) {
  const auto before = fill(250);
  const std::string whole = bytes_of(file());
  const std::size_t pages = whole.size() / page_size;
  int recovered = 0;
  for (std::size_t page = 1; page <= pages; page += 5) {
    overwrite(page);
    std::filesystem::remove(file("new.ullage"));
    const auto report = store::recover(file(), file("new.ullage"));
    if (report) {
      ++recovered;
      expect_all_accounted_for(before, *report);
    } else {
      EXPECT_EQ(report.error().fault, StoreFault::damaged) << "page " << page << why(report);
    }
    write_bytes(file(), whole);
  }
  EXPECT_GT(recovered, 10);
}

TEST_F(RecoverTest, LeavesNothingBehindWhenStopped) {
  fill(100);
  store::RecoverOptions options;
  const std::stop_source stop;
  stop.request_stop();
  options.stop = stop.get_token();
  const auto stopped = store::recover(file(), file("new.ullage"), options);
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error().fault, StoreFault::cancelled);
  EXPECT_EQ(snapshot().size(), 1U);
}

TEST_F(RecoverTest, WantsNothingOfOtherProgramsFiles) {
  write_bytes(file("letter.txt"), std::string(20'000, 'x'));
  const auto letter = store::recover(file("letter.txt"), file("new.ullage"));
  ASSERT_FALSE(letter);
  EXPECT_EQ(letter.error().fault, StoreFault::not_ours);
  {
    auto other = Connection::open(file("other.db"), ConnectionMode::create);
    ASSERT_TRUE(other->run("CREATE TABLE t (x); INSERT INTO t VALUES (1)"));
  }
  const auto foreign = store::recover(file("other.db"), file("new.ullage"));
  ASSERT_FALSE(foreign);
  EXPECT_EQ(foreign.error().fault, StoreFault::not_ours);
  EXPECT_FALSE(std::filesystem::exists(file("new.ullage")));
}

}  // namespace
}  // namespace ullage::testing
