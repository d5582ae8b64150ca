# SPDX-License-Identifier: GPL-3.0-or-later
# Unoptimised with line numbers, for daily work, in build-dev/.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_DISABLE_PRECOMPILE_HEADERS ON CACHE BOOL "")
