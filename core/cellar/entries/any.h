// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entries about entries, and remarks.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

// A remark, about one thing or the cellar as a whole. The text is the header note.
struct Noted {
  static constexpr std::string_view kind = "noted";
  std::optional<KegId> keg;
  std::optional<LineId> line;
  std::optional<BatchId> batch;
  std::optional<PlaceId> place;
  std::optional<BottleId> bottle;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("line", self.line);
    visit("batch", self.batch);
    visit("place", self.place);
    visit("bottle", self.bottle);
  }
};

// Takes an entry out of the story; it stays readable. A struck Struck is undone by Restored.
struct Struck {
  static constexpr std::string_view kind = "struck";
  EntryId target;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("target_entry", self.target);
    visit("reason", self.reason);
  }
};

// Brings a struck entry back.
struct Restored {
  static constexpr std::string_view kind = "restored";
  EntryId target;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("target_entry", self.target);
    visit("reason", self.reason);
  }
};

}  // namespace ullage::cellar
