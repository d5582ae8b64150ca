# SPDX-License-Identifier: GPL-3.0-or-later
# Address and undefined-behaviour sanitizers: tests/run --sanitize, in build-asan/.
set(CMAKE_BUILD_TYPE Sanitize CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")
