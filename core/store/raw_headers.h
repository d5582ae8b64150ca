// SPDX-License-Identifier: GPL-3.0-or-later
//
// Headers of entries found by looking at every page of a file, without the tree
// that leads to them. For a file whose inner pages are broken while the pages
// with the rows are not.
#pragma once

#include <cstdint>
#include <filesystem>
#include <unordered_map>

#include "core/cellar/entry.h"

namespace ullage::store {

struct RawHeader {
  cellar::EntryHeader header;
  std::int64_t kind = -1;  // the kind's number in the file
};

// By sequence. Takes rows that have the shape of table `entry` of schema 1 and
// stand whole on one page (a note of some 3,900 bytes or more does not); empty
// when the file cannot be read. The file's log must have been folded in.
[[nodiscard]] std::unordered_map<std::int64_t, RawHeader> raw_headers(const std::filesystem::path&);

}  // namespace ullage::store
