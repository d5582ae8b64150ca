# SPDX-License-Identifier: GPL-3.0-or-later
# Optimised, assertions kept: what app/run and tests/run build, in build/.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")
