// SPDX-License-Identifier: GPL-3.0-or-later
//
// Feeds arbitrary bytes to the reader of a temperature logger's file. Beside not
// crashing: readings are within what a temperature can be, and no more bad lines
// are listed than promised.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/cellar/logger_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace ullage;
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const auto file = cellar::read_logger_file(bytes);
  if (!file) return 0;
  if (file->bad.size() > cellar::bad_lines_listed) std::abort();
  for (const cellar::LoggerReading& r : file->readings) {
    const double c = units::in_celsius(r.temperature);
    if (!(c >= -61 && c <= 121)) std::abort();
  }
  return 0;
}
