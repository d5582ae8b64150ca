// SPDX-License-Identifier: GPL-3.0-or-later
//
// The register as it stands: the last record in force of everything, kept at
// hand because each act is checked against it as it is typed.
#pragma once

#include <cstdint>
#include <unordered_map>

#include "core/cellar/journal.h"

namespace ullage::cellar {

class Register {
 public:
  // The journal must outlive the register.
  explicit Register(const Journal&);

  // Takes in what has changed in the journal; cheap when little has.
  void refresh();

  // The record of a thing, as it stood at the last refresh; nullptr when there is none.
  [[nodiscard]] const Payload* find(SubjectRef) const;
  template <class Record>
  [[nodiscard]] const Record* find(SubjectRef s) const {
    const Payload* payload = find(s);
    return payload == nullptr ? nullptr : get_if<Record>(payload);
  }
  // Calls f with every record of the type.
  template <class Record, class F>
  void for_each(F&& f) const {
    for (const auto& [s, entry] : records_) {
      if (const auto* record = get_if<Record>(&entry->payload)) f(*record);
    }
  }

 private:
  const Journal& journal_;
  std::uint64_t seen_ = 0;
  std::unordered_map<SubjectRef, const Entry*> records_;
};

// The thing that a record registers; nullopt for every other kind of entry.
[[nodiscard]] std::optional<SubjectRef> registers(const Payload&);

}  // namespace ullage::cellar
