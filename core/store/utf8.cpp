// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether bytes are UTF-8 as the Unicode standard defines it (table 3-7): no
// overlong forms, no surrogates, nothing above U+10FFFF.
#include "core/store/field_binding.h"

namespace ullage::store {

namespace {

struct Utf8Lead {
  int following = -1;                     // bytes that must follow; -1 when not a lead byte
  unsigned char low = 0x80, high = 0xbf;  // range of the first of them
};

Utf8Lead utf8_lead(unsigned char c) {
  if (c < 0x80) return {0};
  if (c >= 0xc2 && c <= 0xdf) return {1};
  if (c == 0xe0) return {2, 0xa0, 0xbf};
  if (c == 0xed) return {2, 0x80, 0x9f};
  if (c >= 0xe1 && c <= 0xef) return {2};
  if (c == 0xf0) return {3, 0x90, 0xbf};
  if (c == 0xf4) return {3, 0x80, 0x8f};
  if (c >= 0xf1 && c <= 0xf3) return {3};
  return {};
}

}  // namespace

bool valid_utf8(std::string_view text) {
  std::size_t i = 0;
  while (i < text.size()) {
    const Utf8Lead lead = utf8_lead(static_cast<unsigned char>(text[i++]));
    if (lead.following < 0) return false;
    for (int k = 0; k < lead.following; ++k, ++i) {
      if (i >= text.size()) return false;
      const auto c = static_cast<unsigned char>(text[i]);
      if (c < (k == 0 ? lead.low : 0x80) || c > (k == 0 ? lead.high : 0xbf)) return false;
    }
  }
  return true;
}

}  // namespace ullage::store
