// SPDX-License-Identifier: GPL-3.0-or-later
//
// How an entry's payload describes itself. Each payload is a plain struct with
//
//   static constexpr std::string_view kind = "filled";
//   template <class Self, class Visit>
//   static void fields(Self& self, Visit&& visit) {
//     visit("keg", self.keg);
//     visit("beer_volume_m3", self.volume);
//     ...
//   }
//
// The names are the columns of the kind's table and the keys of its JSON object,
// with the SI unit in the name; they are never renamed or given another meaning.
// The store, the exchange format, validation, the Log page and the generators of
// the tests all walk the fields through this one description, so a new field
// is written once here and once in the schema.
//
// Field types allowed: Id<...>, bool, std::int64_t, double (plain numbers such
// as a percentage only), std::string, any units quantity, Instant, Date, any
// enum with an EnumText, and std::optional of each.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <type_traits>
#include <utility>

namespace ullage::cellar {

// The stored words of an enum, in the order of its values from 0. Specialise
// next to the enum: template <> struct EnumText<E> { static constexpr std::array
// words = {"a", "b"}; };
template <class E>
struct EnumText;

template <class E>
concept WordedEnum = std::is_enum_v<E> && requires { EnumText<E>::words.size(); };

template <WordedEnum E>
[[nodiscard]] constexpr std::string_view to_word(E e) {
  return EnumText<E>::words[static_cast<std::size_t>(e)];
}
template <WordedEnum E>
[[nodiscard]] constexpr std::optional<E> from_word(std::string_view word) {
  for (std::size_t i = 0; i < EnumText<E>::words.size(); ++i) {
    if (EnumText<E>::words[i] == word) return static_cast<E>(i);
  }
  return std::nullopt;
}

template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};

}  // namespace ullage::cellar

#define ULLAGE_ENUM_WORDS(Enum, ...)                                              \
  template <>                                                                     \
  struct EnumText<Enum> {                                                         \
    static constexpr auto words = std::to_array<std::string_view>({__VA_ARGS__}); \
  }
