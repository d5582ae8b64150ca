// SPDX-License-Identifier: GPL-3.0-or-later
//
// How one field of a payload goes into a column and comes out again. Ids are
// 16-byte blobs, quantities REAL in the SI unit of the column's name, enums
// their words, instants and dates whole seconds and days. Nothing is parsed but
// enum words, which are matched against at most fourteen.
#pragma once

#include <cmath>
#include <concepts>
#include <cstring>
#include <type_traits>

#include "core/cellar/fields.h"
#include "core/cellar/ids.h"
#include "core/cellar/time.h"
#include "core/store/connection.h"
#include "core/units/magnitude.h"

namespace ullage::store {

template <class T>
concept AnyId = requires(const T& id) {
  { id.uuid } -> std::convertible_to<const cellar::Uuid&>;
};
template <class T>
concept RealField = units::Quantity<T> || std::same_as<T, double>;

template <RealField T>
[[nodiscard]] double number_of(const T& v) {
  if constexpr (units::Quantity<T>) {
    return units::to_magnitude(v);
  } else {
    return v;
  }
}
template <RealField T>
[[nodiscard]] T from_number(double v) {
  if constexpr (units::Quantity<T>) {
    return units::from_magnitude<T>(v);
  } else {
    return v;
  }
}

enum class ColumnType { integer, real, text, blob };

template <class T>
[[nodiscard]] constexpr ColumnType column_type() {
  if constexpr (cellar::IsOptional<T>::value) {
    return column_type<typename T::value_type>();
  } else if constexpr (RealField<T>) {
    return ColumnType::real;
  } else if constexpr (AnyId<T>) {
    return ColumnType::blob;
  } else if constexpr (std::same_as<T, std::string> || cellar::WordedEnum<T>) {
    return ColumnType::text;
  } else {
    static_assert(std::same_as<T, bool> || std::same_as<T, std::int64_t> ||
                  std::same_as<T, cellar::Instant> || std::same_as<T, cellar::Date>);
    return ColumnType::integer;
  }
}

// Binds fields in order. `fault` names the first one that no column may hold.
struct FieldBinder {
  Statement& statement;
  int next;
  std::string_view fault = {};  // the field's name
  std::string_view why = {};

  template <class T>
  void operator()(std::string_view name, const T& v) {
    put(name, v);
    ++next;
  }

 private:
  void refuse(std::string_view name, std::string_view reason) {
    if (fault.empty()) {
      fault = name;
      why = reason;
    }
  }
  template <class T>
  void put(std::string_view name, const T& v);
};

// Reads fields in order. `fault` names the first one whose stored value makes no sense.
struct FieldReader {
  sqlite3_stmt* statement;
  int next;
  std::string_view fault = {};

  template <class T>
  void operator()(std::string_view name, T& v) {
    if (!get(v)) fault = name;
    ++next;
  }

 private:
  template <class T>
  [[nodiscard]] bool get(T& v);
};

inline constexpr std::size_t text_limit = std::size_t{64} * 1024;  // bytes of one text

[[nodiscard]] bool valid_utf8(std::string_view);

inline bool read_uuid(sqlite3_stmt* s, int column, cellar::Uuid& id) {
  const void* blob = sqlite3_column_blob(s, column);
  if (blob == nullptr || sqlite3_column_bytes(s, column) != 16) return false;
  std::memcpy(id.bytes.data(), blob, 16);
  return true;
}

inline bool read_text(sqlite3_stmt* s, int column, std::string& text) {
  const unsigned char* t = sqlite3_column_text(s, column);
  if (t == nullptr) return false;
  text.assign(reinterpret_cast<const char*>(t),
              static_cast<std::size_t>(sqlite3_column_bytes(s, column)));
  return true;
}

template <class T>
void FieldBinder::put(std::string_view name, const T& v) {
  if constexpr (cellar::IsOptional<T>::value) {
    if (v) {
      put(name, *v);
    } else {
      statement.bind_null(next);
    }
  } else if constexpr (RealField<T>) {
    const double number = number_of(v);
    if (!std::isfinite(number)) refuse(name, "is not a finite number");
    statement.bind(next, number);
  } else if constexpr (AnyId<T>) {
    statement.bind(next, std::span<const std::uint8_t>(v.uuid.bytes));
  } else if constexpr (std::same_as<T, std::string>) {
    if (v.size() > text_limit) refuse(name, "is longer than 64 KiB");
    if (!valid_utf8(v)) refuse(name, "is not valid UTF-8 text");
    statement.bind(next, std::string_view(v));
  } else if constexpr (cellar::WordedEnum<T>) {
    const auto index = static_cast<std::size_t>(v);
    if (index >= cellar::EnumText<T>::words.size()) {
      refuse(name, "has no word");
      statement.bind_null(next);
      return;
    }
    statement.bind(next, cellar::to_word(v));
  } else if constexpr (std::same_as<T, bool>) {
    statement.bind(next, std::int64_t{v ? 1 : 0});
  } else if constexpr (std::same_as<T, std::int64_t>) {
    statement.bind(next, v);
  } else {
    statement.bind(next, static_cast<std::int64_t>(v.time_since_epoch().count()));
  }
}

template <class T>
bool FieldReader::get(T& v) {
  if constexpr (cellar::IsOptional<T>::value) {
    if (sqlite3_column_type(statement, next) == SQLITE_NULL) {
      v.reset();
      return true;
    }
    return get(v.emplace());
  } else if constexpr (RealField<T>) {
    v = from_number<T>(sqlite3_column_double(statement, next));
    return true;
  } else if constexpr (AnyId<T>) {
    return read_uuid(statement, next, v.uuid);
  } else if constexpr (std::same_as<T, std::string>) {
    return read_text(statement, next, v);
  } else if constexpr (cellar::WordedEnum<T>) {
    const unsigned char* t = sqlite3_column_text(statement, next);
    if (t == nullptr) return false;
    const auto word = cellar::from_word<T>(
        std::string_view(reinterpret_cast<const char*>(t),
                         static_cast<std::size_t>(sqlite3_column_bytes(statement, next))));
    if (word) v = *word;
    return word.has_value();
  } else if constexpr (std::same_as<T, bool>) {
    v = sqlite3_column_int64(statement, next) != 0;
    return true;
  } else if constexpr (std::same_as<T, std::int64_t>) {
    v = sqlite3_column_int64(statement, next);
    return true;
  } else {
    v = T(typename T::duration(sqlite3_column_int64(statement, next)));
    return true;
  }
}

}  // namespace ullage::store
