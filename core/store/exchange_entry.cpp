// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/exchange_entry.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "core/cellar/field_walk.h"
#include "core/store/exchange_text.h"
#include "core/store/field_binding.h"

namespace ullage::store {

namespace {

template <class T>
std::string words_of_type() {
  if constexpr (RealField<T>) {
    return "It must be a number.";
  } else if constexpr (AnyId<T>) {
    return "It must be an id such as \"6f1c2d5e-0000-4000-8000-000000000000\".";
  } else if constexpr (cellar::WordedEnum<T>) {
    std::string words;
    for (const std::string_view word : cellar::EnumText<T>::words) {
      words += words.empty() ? std::string(word) : ", " + std::string(word);
    }
    return fmt::format("It must be one of: {}.", words);
  } else if constexpr (std::same_as<T, bool>) {
    return "It must be true or false.";
  } else if constexpr (std::same_as<T, std::int64_t>) {
    return "It must be a whole number.";
  } else if constexpr (std::same_as<T, std::string>) {
    return "It must be a text of at most 64 KiB.";
  } else if constexpr (std::same_as<T, cellar::Instant>) {
    return "It must be a time in UTC such as \"2026-03-01T18:00:00Z\".";
  } else {
    return "It must be a day such as \"2026-03-01\".";
  }
}

// Takes fields by name out of one raw entry and remembers which names were known.
class FieldTaker {
 public:
  FieldTaker(const RawEntry& raw, ProblemList& problems)
      : raw_(raw), problems_(problems), known_(raw.fields.size(), false) {}

  template <class T>
  void operator()(std::string_view name, T& v) {
    const RawField* field = raw_.find(name);
    if (field != nullptr) known_[static_cast<std::size_t>(field - raw_.fields.data())] = true;
    const bool given =
        field != nullptr && !holds_alternative<boost::variant2::monostate>(field->value);
    if constexpr (cellar::IsOptional<T>::value) {
      if (given) take(*field, v.emplace());
    } else if (given) {
      take(*field, v);
    } else {
      complain(field != nullptr ? field->line : raw_.line, name, "It is missing.");
    }
  }

  void complain(std::size_t line, std::string_view name, std::string what) {
    ok_ = false;
    problems_.add({line, raw_.number, std::string(name), std::move(what)});
  }

  // Names that mean nothing, or came twice.
  void complain_of_others() {
    for (std::size_t i = 0; i < known_.size(); ++i) {
      const RawField& field = raw_.fields[i];
      if (known_[i]) continue;
      const bool twice = raw_.find(field.name) != &field;
      complain(field.line, field.name,
               twice ? "It comes twice in one entry."
                     : fmt::format("An entry of this kind has no “{}”.", field.name));
    }
  }
  [[nodiscard]] bool ok() const { return ok_; }

 private:
  template <class T>
  void take(const RawField& field, T& v) {
    if (!read(field.value, v)) complain(field.line, field.name, words_of_type<T>());
  }

  template <class T>
  static bool read(const RawValue& raw, T& v) {
    if constexpr (RealField<T>) {
      const auto* const real = get_if<double>(&raw);
      const auto* const whole = get_if<std::int64_t>(&raw);
      if (real == nullptr && whole == nullptr) return false;
      v = from_number<T>(real != nullptr ? *real : static_cast<double>(*whole));
      return true;
    } else if constexpr (std::same_as<T, bool> || std::same_as<T, std::int64_t>) {
      const T* const same = get_if<T>(&raw);
      if (same != nullptr) v = *same;
      return same != nullptr;
    } else {
      const auto* const text = get_if<std::string>(&raw);
      return text != nullptr && read_text_form(*text, v);
    }
  }

  template <class T>
  static bool read_text_form(const std::string& text, T& v) {
    if constexpr (std::same_as<T, std::string>) {
      if (text.size() > import_text_limit) return false;
      v = text;
      return true;
    } else {
      const auto found = [&] {
        if constexpr (AnyId<T>) {
          return cellar::uuid_from_text(text);
        } else if constexpr (cellar::WordedEnum<T>) {
          return cellar::from_word<T>(text);
        } else if constexpr (std::same_as<T, cellar::Instant>) {
          return instant_from_text(text);
        } else {
          return date_from_text(text);
        }
      }();
      if (!found) return false;
      if constexpr (AnyId<T>) {
        v.uuid = *found;
      } else {
        v = *found;
      }
      return true;
    }
  }

  const RawEntry& raw_;
  ProblemList& problems_;
  std::vector<bool> known_;
  bool ok_ = true;
};

}  // namespace

std::optional<cellar::Entry> entry_from(const RawEntry& raw, ProblemList& problems) {
  cellar::Entry entry;
  cellar::EntryHeader& header = entry.header;
  FieldTaker take(raw, problems);
  std::string kind;
  std::int64_t offset_min = 0;
  take("sequence", header.sequence);
  take("id", header.id);
  take("act", header.act);
  take("kind", kind);
  take("happened_at", header.happened_at);
  take("recorded_at", header.recorded_at);
  take("utc_offset_min", offset_min);
  take("by", header.by);
  take("replaces", header.replaces);
  take("note", header.note);
  if (offset_min < -1440 || offset_min > 1440) {
    take.complain(raw.line, "utc_offset_min", "It is more than a day.");
    offset_min = 0;
  }
  header.utc_offset = cellar::UtcOffset(offset_min);
  if (kind.empty()) return std::nullopt;
  auto payload = cellar::make_payload(kind);
  if (!payload) {
    take.complain(raw.find("kind")->line, "kind",
                  fmt::format("“{}” is not a kind of entry.", kind));
    return std::nullopt;
  }
  cellar::for_each_field(*payload, take);
  take.complain_of_others();
  if (!take.ok()) return std::nullopt;
  entry.payload = std::move(*payload);
  return entry;
}

std::vector<std::pair<std::string, cellar::EntryId>> entries_named_by(const cellar::Entry& entry) {
  std::vector<std::pair<std::string, cellar::EntryId>> named;
  if (entry.header.replaces) named.emplace_back("replaces", *entry.header.replaces);
  cellar::for_each_field(entry.payload, [&]<class T>(std::string_view name, const T& v) {
    if constexpr (std::same_as<T, cellar::EntryId>) named.emplace_back(name, v);
  });
  return named;
}

}  // namespace ullage::store
