// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/contents_graft.h"

#include <array>
#include <fstream>
#include <vector>

#include "core/store/connection.h"
#include "core/store/files.h"
#include "core/store/schema.h"

namespace ullage::store {

namespace {

constexpr std::size_t page_size = 4096;

std::vector<std::int64_t> pages_of_contents(const Connection& fresh) {
  std::vector<std::int64_t> pages;
  auto list = fresh.prepare("SELECT pageno FROM dbstat WHERE name = 'sqlite_schema'");
  if (!list) return {1};
  while (list->step() == SQLITE_ROW) pages.push_back(list->integer(0));
  return pages;
}

void put_big_endian(std::array<char, page_size>& page, std::size_t at, std::uint32_t v) {
  for (std::size_t i = 0; i < 4; ++i) page[at + i] = static_cast<char>(v >> (24U - 8U * i));
}

}  // namespace

Expected<void> graft_contents(const std::filesystem::path& path) {
  const TemporaryFile fresh_file(path, "fresh");
  std::vector<std::int64_t> pages;
  {
    auto fresh = Connection::open(fresh_file.path(), ConnectionMode::create);
    if (!fresh) return std::unexpected(fresh.error());
    if (auto made = create_schema(*fresh, schema_version); !made) return made;
    pages = pages_of_contents(*fresh);
  }
  std::error_code ignored;
  const auto size = std::filesystem::file_size(path, ignored);
  std::ifstream from(fresh_file.path(), std::ios::binary);
  std::fstream to(path, std::ios::binary | std::ios::in | std::ios::out);
  for (const std::int64_t number : pages) {
    const std::int64_t at = (number - 1) * static_cast<std::int64_t>(page_size);
    std::array<char, page_size> page{};
    from.seekg(at);
    from.read(page.data(), page_size);
    if (number == 1) {
      // The number of pages is this file's own; nothing is free for the taking.
      put_big_endian(page, 28, static_cast<std::uint32_t>(size / page_size));
      put_big_endian(page, 32, 0);
      put_big_endian(page, 36, 0);
      // A cellar in use keeps a log; what is in it, if anything, still counts.
      page[18] = 2;
      page[19] = 2;
    }
    to.seekp(at);
    to.write(page.data(), page_size);
  }
  to.close();
  if (!from || !to) {
    return std::unexpected(StoreError{StoreFault::damaged, path, "cannot rebuild its contents"});
  }
  return {};
}

}  // namespace ullage::store
