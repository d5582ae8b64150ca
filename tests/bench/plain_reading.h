// SPDX-License-Identifier: GPL-3.0-or-later
//
// The floor that opening is measured against: every row of every table of a
// cellar's journal, read through the plain SQLite C API and thrown away.
#pragma once

#include <cstdint>
#include <filesystem>

namespace ullage::bench {

struct PlainReading {
  std::int64_t rows = 0;
  std::int64_t bytes = 0;  // of text and blobs, so that nothing is optimised away
  double sum = 0;
};
[[nodiscard]] PlainReading read_plainly(const std::filesystem::path&);

}  // namespace ullage::bench
