# SPDX-License-Identifier: GPL-3.0-or-later
# Optimised benchmarks: tests/bench/run, in build-bench/.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")
set(ULLAGE_BENCH ON CACHE BOOL "")
set(ULLAGE_TESTS OFF CACHE BOOL "")
