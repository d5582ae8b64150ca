// SPDX-License-Identifier: GPL-3.0-or-later
//
// The value of an optional that cannot be absent where it is asked for: a keg that is
// carbonating has a filling, a reading that was validated has its pressure. Should it be
// absent all the same, that is a bug of ours, and it stops here instead of reading what
// is not there. Where a value may be absent, ask the optional itself.
#pragma once

#include <optional>
#include <stdexcept>
#include <utility>

namespace ullage {

[[noreturn]] inline void nothing_present() {
  throw std::logic_error("a value that must be there is absent");
}

template <class T>
[[nodiscard]] constexpr const T& present(const std::optional<T>& value) {
  if (!value) nothing_present();
  return *value;
}

template <class T>
[[nodiscard]] constexpr T& present(std::optional<T>& value) {
  if (!value) nothing_present();
  return *value;
}

template <class T>
[[nodiscard]] constexpr T present(std::optional<T>&& value) {
  if (!value) nothing_present();
  return *std::move(value);
}

}  // namespace ullage
