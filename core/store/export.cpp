// SPDX-License-Identifier: GPL-3.0-or-later
//
// Writing the cellar as JSON: one entry a line, keys in the order of the columns,
// doubles in the shortest form that reads back to the same bits.
#include <fstream>
#include <nlohmann/json.hpp>

#include "core/cellar/field_walk.h"
#include "core/store/exchange.h"
#include "core/store/exchange_text.h"
#include "core/store/field_binding.h"
#include "core/store/files.h"

namespace ullage::store {

namespace {

using Json = nlohmann::ordered_json;

template <class T>
Json json_of(const T& v) {
  if constexpr (RealField<T>) {
    return number_of(v);
  } else if constexpr (AnyId<T>) {
    return cellar::to_text(v.uuid);
  } else if constexpr (cellar::WordedEnum<T>) {
    return std::string(cellar::to_word(v));
  } else if constexpr (std::same_as<T, cellar::Instant>) {
    return instant_text(v);
  } else if constexpr (std::same_as<T, cellar::Date>) {
    return date_text(v);
  } else {
    return v;
  }
}

// What is not known is left out.
template <class T>
void put(Json& object, std::string_view name, const T& v) {
  if constexpr (cellar::IsOptional<T>::value) {
    if (v) put(object, name, *v);
  } else {
    object[std::string(name)] = json_of(v);
  }
}

Json json_of_entry(const cellar::Entry& entry) {
  const cellar::EntryHeader& header = entry.header;
  Json object = Json::object();
  put(object, "sequence", header.sequence);
  put(object, "id", header.id);
  put(object, "act", header.act);
  put(object, "kind", std::string(cellar::kind_of(entry.payload)));
  put(object, "happened_at", header.happened_at);
  put(object, "recorded_at", header.recorded_at);
  put(object, "utc_offset_min", static_cast<std::int64_t>(header.utc_offset.count()));
  put(object, "by", header.by);
  put(object, "replaces", header.replaces);
  put(object, "note", header.note);
  cellar::for_each_field(entry.payload,
                         [&](std::string_view name, const auto& v) { put(object, name, v); });
  return object;
}

}  // namespace

std::string to_exchange(std::span<const cellar::Entry> entries) {
  std::string text = "{\"format\": \"ullage-cellar\", \"version\": 1, \"entries\": [";
  bool first = true;
  for (const cellar::Entry& entry : entries) {
    text += first ? "\n" : ",\n";
    first = false;
    text += json_of_entry(entry).dump();
  }
  text += "\n]}\n";
  return text;
}

Expected<std::size_t> export_to(const JournalStore& store, const std::filesystem::path& to) {
  auto entries = store.load();
  if (!entries) return std::unexpected(entries.error());
  const TemporaryFile temporary(to, "exporting");
  {
    std::ofstream out(temporary.path(), std::ios::binary | std::ios::trunc);
    if (!out) return std::unexpected(StoreError{StoreFault::permission, to, "cannot be created"});
    out << to_exchange(*entries);
    out.close();
    if (!out) return std::unexpected(StoreError{StoreFault::disk_full, to, "cannot be written"});
  }
  if (auto moved = move_into_place(temporary.path(), to, Existing::replace); !moved) {
    return std::unexpected(moved.error());
  }
  return entries->size();
}

}  // namespace ullage::store
