// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_files.h"

#include <fmt/format.h>

#include <array>
#include <charconv>

#include "core/store/file_probe.h"
#include "core/store/verified_copy.h"

namespace ullage::store {

namespace {

struct ReasonWords {
  BackupReason reason;
  std::string_view words;
};
constexpr std::array reason_words = {
    ReasonWords{BackupReason::daily, "daily"},
    ReasonWords{BackupReason::before_migration, "before an update"},
    ReasonWords{BackupReason::put_aside, "put aside"},
    ReasonWords{BackupReason::by_hand, "by hand"},
};

std::optional<int> digits(std::string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || text.front() == '-') return {};
  return value;
}

std::optional<cellar::Date> day_from(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return {};
  const auto year = digits(text.substr(0, 4));
  const auto month = digits(text.substr(5, 2));
  const auto day = digits(text.substr(8, 2));
  if (!year || !month || !day) return {};
  const std::chrono::year_month_day date{std::chrono::year(*year),
                                         std::chrono::month(static_cast<unsigned>(*month)),
                                         std::chrono::day(static_cast<unsigned>(*day))};
  if (!date.ok()) return {};
  return cellar::Date(date);
}

// Takes " (3)" off the end; 1 when there is none.
int take_number(std::string_view& stem) {
  if (!stem.ends_with(')')) return 1;
  const std::size_t open = stem.rfind(" (");
  if (open == std::string_view::npos) return 1;
  const auto number = digits(stem.substr(open + 2, stem.size() - open - 3));
  if (!number || *number < 2) return 1;
  stem = stem.substr(0, open);
  return *number;
}

}  // namespace

std::filesystem::path backup_folder(const std::filesystem::path& cellar_file) {
  return cellar_file.parent_path() / (cellar_file.stem().string() + " backups");
}

std::filesystem::path backup_path(const std::filesystem::path& cellar_file, BackupReason reason,
                                  cellar::Date day, int number) {
  const std::chrono::year_month_day date(day);
  std::string name =
      fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  for (const ReasonWords& r : reason_words) {
    if (r.reason == reason) name += fmt::format(" {}", r.words);
  }
  if (number > 1) name += fmt::format(" ({})", number);
  return backup_folder(cellar_file) / (name + cellar_file.extension().string());
}

std::optional<Backup> backup_from_name(const std::filesystem::path& file) {
  const std::string stem_text = file.stem().string();
  std::string_view stem = stem_text;
  if (stem.size() < 12) return {};
  const auto day = day_from(stem.substr(0, 10));
  if (!day || stem[10] != ' ') return {};
  stem.remove_prefix(11);
  const int number = take_number(stem);
  for (const ReasonWords& r : reason_words) {
    if (r.words == stem) return Backup{file, r.reason, *day, number, 0};
  }
  return {};
}

Expected<Backup> next_backup(const std::filesystem::path& cellar_file, BackupReason reason,
                             cellar::Date day) {
  std::error_code error;
  std::filesystem::create_directories(backup_folder(cellar_file), error);
  if (error) {
    return std::unexpected(
        system_error(StoreFault::backup_failed, backup_folder(cellar_file), error.value()));
  }
  Backup backup{{}, reason, day, 0, 0};
  do {
    backup.file = backup_path(cellar_file, reason, day, ++backup.number);
  } while (std::filesystem::exists(backup.file, error));
  return backup;
}

Expected<Backup> back_up(const Connection& db, BackupReason reason, cellar::Date day) {
  auto backup = next_backup(db.path(), reason, day);
  if (!backup) return backup;
  if (auto copied = verified_copy(db, backup->file, Existing::refuse); !copied) {
    return std::unexpected(copied.error());
  }
  std::error_code ignored;
  backup->size = std::filesystem::file_size(backup->file, ignored);
  return backup;
}

}  // namespace ullage::store
