// SPDX-License-Identifier: GPL-3.0-or-later
//
// append_until_killed FILE SEED: logs acts of one to six entries as fast as it
// can. After append has returned, writes the act's id to standard output: from
// then on it is promised. Every entry's note is the number of entries of its act.
#include <unistd.h>

#include <cstdio>
#include <cstdlib>

#include "core/store/journal_store.h"
#include "tests/support/payload_generator.h"

int main(int count, char** words) {
  using namespace ullage;
  if (count != 3) return 2;
  auto store = store::JournalStore::open(words[1]);
  if (!store) {
    std::fprintf(stderr, "%s %s\n", store::describe(store.error()).c_str(),
                 store.error().detail.c_str());
    return 3;
  }
  testing::SeededSource source(std::strtoull(words[2], nullptr, 10));
  for (;;) {
    // A maker of its own for each act: strikes and corrections stay within it.
    testing::PayloadMaker maker(source);
    const cellar::ActId act{maker.uuid()};
    const std::int64_t size = source.integer(1, 6);
    std::vector<cellar::Entry> entries;
    for (std::int64_t i = 0; i < size; ++i) {
      entries.push_back(maker.entry(maker.any_kind(), act));
      entries.back().header.note = std::to_string(size);
    }
    if (!store->append(entries)) return 4;
    if (::write(STDOUT_FILENO, act.uuid.bytes.data(), act.uuid.bytes.size()) < 0) return 5;
  }
}
