// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/status.h"

#include <algorithm>
#include <cctype>

namespace ullage::cellar {

namespace {

template <class List, class Match>
auto* first(const List& list, Match&& match) {
  const auto at = std::find_if(list.begin(), list.end(), match);
  return at == list.end() ? nullptr : &*at;
}

bool same_tag(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
    return std::tolower(static_cast<unsigned char>(x)) ==
           std::tolower(static_cast<unsigned char>(y));
  });
}

}  // namespace

const KegStatus* CellarStatus::find(KegId id) const {
  return first(kegs, [&](const KegStatus& k) { return k.record.keg == id; });
}
// A tag is free again once its keg is out of use, so one in use goes first.
const KegStatus* CellarStatus::keg_by_tag(std::string_view tag) const {
  const KegStatus* in_use = first(
      kegs, [&](const KegStatus& k) { return k.registered_now && same_tag(k.record.tag, tag); });
  return in_use ? in_use
                : first(kegs, [&](const KegStatus& k) { return same_tag(k.record.tag, tag); });
}
const LineStatus* CellarStatus::find(LineId id) const {
  return first(lines, [&](const LineStatus& l) { return l.record.line == id; });
}
const PlaceStatus* CellarStatus::find(PlaceId id) const {
  return first(places, [&](const PlaceStatus& p) { return p.record.place == id; });
}
const BottleStatus* CellarStatus::find(BottleId id) const {
  return first(bottles, [&](const BottleStatus& b) { return b.record.bottle == id; });
}

}  // namespace ullage::cellar
