// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether this is the build that watches every access to memory: it takes some three
// times as long, so what draws hundreds of cases draws fewer there.
#pragma once

namespace ullage::testing {

#ifdef __SANITIZE_ADDRESS__
inline constexpr bool under_sanitizers = true;
#else
inline constexpr bool under_sanitizers = false;
#endif

}  // namespace ullage::testing
