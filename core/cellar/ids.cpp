// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/ids.h"

#include <cstring>

namespace ullage::cellar {

namespace {

constexpr std::string_view hex_digits = "0123456789abcdef";
constexpr std::size_t text_length = 36;

constexpr bool is_hyphen_place(std::size_t i) { return i == 8 || i == 13 || i == 18 || i == 23; }

std::optional<std::uint8_t> hex_value(char c) {
  if (c >= '0' && c <= '9') return static_cast<std::uint8_t>(c - '0');
  if (c >= 'a' && c <= 'f') return static_cast<std::uint8_t>(c - 'a' + 10);
  if (c >= 'A' && c <= 'F') return static_cast<std::uint8_t>(c - 'A' + 10);
  return std::nullopt;
}

}  // namespace

std::string to_text(const Uuid& u) {
  std::string text;
  text.reserve(text_length);
  for (const std::uint8_t byte : u.bytes) {
    if (is_hyphen_place(text.size())) text += '-';
    text += hex_digits[byte >> 4U];
    text += hex_digits[byte & 0x0fU];
  }
  return text;
}

std::optional<Uuid> uuid_from_text(std::string_view text) {
  if (text.size() != text_length) return std::nullopt;
  Uuid u;
  std::size_t byte = 0;
  for (std::size_t i = 0; i < text_length;) {
    if (is_hyphen_place(i)) {
      if (text[i] != '-') return std::nullopt;
      ++i;
      continue;
    }
    const auto high = hex_value(text[i]);
    const auto low = hex_value(text[i + 1]);
    if (!high || !low) return std::nullopt;
    u.bytes[byte++] = static_cast<std::uint8_t>((*high << 4U) | *low);
    i += 2;
  }
  return u;
}

// UUIDs are random already: their bytes are the hash.
std::size_t UuidHash::operator()(const Uuid& u) const noexcept {
  std::size_t front = 0;
  std::size_t back = 0;
  std::memcpy(&front, u.bytes.data(), sizeof front);
  std::memcpy(&back, u.bytes.data() + u.bytes.size() - sizeof back, sizeof back);
  return front ^ (back * 0x9e3779b97f4a7c15ULL);
}

}  // namespace ullage::cellar
