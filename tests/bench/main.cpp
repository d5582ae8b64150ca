// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <string_view>

#include "tests/bench/window_start.h"

int main(int argc, char** argv) {
  // Started by the benchmark of starting.
  if (argc == 3 && std::string_view(argv[1]) == "--window") {
    return ullage::bench::show_a_window_and_leave(argv[2], argc, argv);
  }
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
  return 0;
}
