// SPDX-License-Identifier: GPL-3.0-or-later
//
// A folder of its own for each test, and short words for what most tests do.
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "core/store/journal_store.h"
#include "tests/support/payload_generator.h"

namespace ullage::testing {

inline constexpr cellar::Instant test_now{std::chrono::seconds(1'780'000'000)};
inline constexpr cellar::Date test_today{std::chrono::days(20'600)};

[[nodiscard]] inline cellar::Uuid numbered_uuid(std::uint8_t n) {
  cellar::Uuid id;
  id.bytes.fill(n);
  return id;
}

[[nodiscard]] inline std::string bytes_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}
inline void write_bytes(const std::filesystem::path& path, std::string_view bytes) {
  std::ofstream out(path, std::ios::binary | std::ios::trunc);
  out << bytes;
}

// What failed, in full, for the message of an assertion.
template <class T>
[[nodiscard]] std::string why(const store::Expected<T>& result) {
  if (result) return "succeeded";
  return store::describe(result.error()) + " [" + result.error().detail + "]";
}

class StoreTest : public ::testing::Test {
 public:
  ~StoreTest() override {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }

 protected:
  StoreTest() {
    std::string pattern = (std::filesystem::temp_directory_path() / "ullage-XXXXXX").string();
    folder_ = ::mkdtemp(pattern.data());
  }

  [[nodiscard]] std::filesystem::path file(std::string_view name = "home.ullage") const {
    return folder_ / name;
  }
  [[nodiscard]] store::JournalStore made(std::string_view name = "home.ullage") const {
    auto made = store::JournalStore::create(file(name), numbered_uuid(7), test_now);
    EXPECT_TRUE(made) << why(made);
    return std::move(*made);
  }
  [[nodiscard]] store::JournalStore opened(std::string_view name = "home.ullage") const {
    auto opened = store::JournalStore::open(file(name));
    EXPECT_TRUE(opened) << why(opened);
    return std::move(*opened);
  }
  // A closed cellar of `count` made-up entries; gives what it holds.
  std::vector<cellar::Entry> fill(std::size_t count, std::uint64_t seed = 1,
                                  std::string_view name = "home.ullage") const {
    SeededSource source(seed);
    auto entries = PayloadMaker(source).entries(count);
    auto store = made(name);
    const auto appended = store.append(entries);
    EXPECT_TRUE(appended) << why(appended);
    return entries;
  }
  // Every file in the folder with its bytes, to show that nothing was touched.
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> snapshot() const {
    std::vector<std::pair<std::string, std::string>> all;
    for (const auto& at : std::filesystem::recursive_directory_iterator(folder_)) {
      if (at.is_regular_file()) all.emplace_back(at.path().string(), bytes_of(at.path()));
    }
    std::ranges::sort(all);
    return all;
  }

  std::filesystem::path folder_;
};

inline void expect_same(const std::vector<cellar::Entry>& a, const std::vector<cellar::Entry>& b) {
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    EXPECT_TRUE(cellar::same(a[i], b[i])) << "entry " << i << ", " << cellar::kind_of(a[i].payload);
  }
}

}  // namespace ullage::testing
