// SPDX-License-Identifier: GPL-3.0-or-later
//
// The layout of pages, cells and records is that of SQLite's published file
// format: a leaf of a table begins with 13, then the number of cells at 3 and
// their places from 8; a cell is the size of its record, the row's number and
// the record; a record is a header of types and then the values.
#include "core/store/raw_headers.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <optional>
#include <span>
#include <vector>

#include "core/store/field_binding.h"
#include "core/store/vfs_file.h"

namespace ullage::store {

namespace {

constexpr std::size_t raw_page_size = 4096;
constexpr std::size_t entry_column_count = 10;

// Takes bytes off the front, never beyond the end.
class ByteReader {
 public:
  explicit ByteReader(std::span<const char> bytes) : bytes_(bytes) {}

  std::optional<std::uint64_t> varint() {
    std::uint64_t value = 0;
    for (int i = 0; i < 9; ++i) {
      const auto byte = take(1);
      if (!byte) return {};
      const auto b = static_cast<unsigned char>((*byte)[0]);
      if (i == 8) return (value << 8U) | b;
      value = (value << 7U) | (b & 0x7fU);
      if ((b & 0x80U) == 0) return value;
    }
    return {};
  }
  // Big-endian, with sign.
  std::optional<std::int64_t> integer(std::size_t size) {
    const auto taken = take(size);
    if (!taken || size == 0) return {};
    const auto top = static_cast<unsigned char>((*taken)[0]);
    std::int64_t value = top < 0x80 ? top : top - 0x100;
    for (std::size_t i = 1; i < size; ++i) {
      value = value * 256 + static_cast<unsigned char>((*taken)[i]);
    }
    return value;
  }
  std::optional<std::span<const char>> take(std::uint64_t size) {
    if (size > bytes_.size()) return {};
    const auto front = bytes_.first(static_cast<std::size_t>(size));
    bytes_ = bytes_.subspan(static_cast<std::size_t>(size));
    return front;
  }

 private:
  std::span<const char> bytes_;
};

// A value's type as the record says it.
struct SerialType {
  std::uint64_t code = 0;
  [[nodiscard]] bool null() const { return code == 0; }
  [[nodiscard]] bool uuid() const { return code == 12 + 2 * 16; }
  [[nodiscard]] bool text() const { return code >= 13 && code % 2 == 1; }
  [[nodiscard]] std::size_t text_size() const { return static_cast<std::size_t>((code - 13) / 2); }
};

std::optional<std::int64_t> take_integer(ByteReader& from, SerialType type) {
  constexpr std::array<std::size_t, 7> sizes = {0, 1, 2, 3, 4, 6, 8};
  if (type.code == 8) return 0;
  if (type.code == 9) return 1;
  if (type.code < 1 || type.code > 6) return {};
  return from.integer(sizes[type.code]);
}

bool take_uuid(ByteReader& from, SerialType type, cellar::Uuid& id) {
  const auto bytes = type.uuid() ? from.take(16) : std::nullopt;
  if (bytes) std::memcpy(id.bytes.data(), bytes->data(), 16);
  return bytes.has_value();
}

bool take_text(ByteReader& from, SerialType type, std::string& text) {
  const auto bytes = type.text() ? from.take(type.text_size()) : std::nullopt;
  if (!bytes) return false;
  text.assign(bytes->data(), bytes->size());
  return valid_utf8(text);
}

// The values in the order of the table's columns; the first is the row's number.
std::optional<RawHeader> header_from(std::int64_t sequence, std::span<const char> record) {
  ByteReader types(record);
  const auto header_size = types.varint();
  if (!header_size || *header_size > record.size()) return {};
  std::array<SerialType, entry_column_count> type;
  for (SerialType& t : type) {
    const auto code = types.varint();
    if (!code) return {};
    t.code = *code;
  }
  ByteReader values(record.subspan(static_cast<std::size_t>(*header_size)));
  RawHeader found;
  cellar::EntryHeader& h = found.header;
  h.sequence = sequence;
  if (!type[0].null() || !take_uuid(values, type[1], h.id.uuid) ||
      !take_uuid(values, type[2], h.act.uuid)) {
    return {};
  }
  const auto kind = take_integer(values, type[3]);
  const auto happened = take_integer(values, type[4]);
  const auto recorded = take_integer(values, type[5]);
  const auto offset = take_integer(values, type[6]);
  if (!kind || !happened || !recorded || !offset || !take_text(values, type[7], h.by)) return {};
  if (!type[8].null() && !take_uuid(values, type[8], h.replaces.emplace().uuid)) return {};
  if (!take_text(values, type[9], h.note)) return {};
  found.kind = *kind;
  h.happened_at = cellar::Instant(std::chrono::seconds(*happened));
  h.recorded_at = cellar::Instant(std::chrono::seconds(*recorded));
  h.utc_offset = cellar::UtcOffset(*offset);
  return found;
}

void take_page(std::span<const char> page, std::unordered_map<std::int64_t, RawHeader>& found) {
  constexpr char leaf_of_a_table = 13;
  if (page[0] != leaf_of_a_table) return;
  const auto two_bytes = [&](std::size_t at) {
    return static_cast<std::size_t>(static_cast<unsigned char>(page[at]) * 256U +
                                    static_cast<unsigned char>(page[at + 1]));
  };
  const std::size_t cells = std::min<std::size_t>(two_bytes(3), (page.size() - 8) / 2);
  for (std::size_t i = 0; i < cells; ++i) {
    const std::size_t at = two_bytes(8 + 2 * i);
    if (at >= page.size()) continue;
    ByteReader cell(page.subspan(at));
    const auto size = cell.varint();
    const auto row = cell.varint();
    if (!size || !row) continue;
    const auto record = cell.take(*size);
    if (!record) continue;
    const auto sequence = static_cast<std::int64_t>(*row);
    if (auto header = header_from(sequence, *record)) found.emplace(sequence, std::move(*header));
  }
}

}  // namespace

std::unordered_map<std::int64_t, RawHeader> raw_headers(const std::filesystem::path& path) {
  std::unordered_map<std::int64_t, RawHeader> found;
  auto file = VfsFile::open(path);
  const auto size = file ? file->size() : std::unexpected(file.error());
  if (!size) return found;
  std::vector<char> page(raw_page_size);
  constexpr auto step = static_cast<std::int64_t>(raw_page_size);
  for (std::int64_t at = step; at + step <= *size; at += step) {
    if (file->read(at, page)) take_page(page, found);
  }
  return found;
}

}  // namespace ullage::store
