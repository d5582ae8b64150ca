// SPDX-License-Identifier: GPL-3.0-or-later
//
// A made-up cellar of any size, as entries: kegs that go round and round from
// washing to the last glass, on lines that get cleaned, in boxes that get read.
#pragma once

#include <cstddef>
#include <vector>

#include "core/cellar/entry.h"

namespace ullage::bench {

struct CellarSize {
  std::size_t kegs = 200;
  std::size_t entries = 200000;
  cellar::Instant until{};  // the last entry happened just before
  int days = 4 * 365;       // that they are spread over
};

struct BigCellar {
  std::vector<cellar::Entry> entries;  // in the order they happened; sequences 0
  std::vector<cellar::KegId> kegs;
};

[[nodiscard]] BigCellar big_cellar(const CellarSize&, cellar::IdSource&);

}  // namespace ullage::bench
