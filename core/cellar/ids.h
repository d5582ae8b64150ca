// SPDX-License-Identifier: GPL-3.0-or-later
//
// Identity. Everything registered, every entry and every act is known by a
// UUID, so that two files or two machines never give one name to two things. A
// KegId is not a LineId: the types do not mix.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace ullage::cellar {

struct Uuid {
  std::array<std::uint8_t, 16> bytes{};
  friend auto operator<=>(const Uuid&, const Uuid&) = default;
};

// "6f1c2d5e-....": RFC 4122 text form, lower case.
[[nodiscard]] std::string to_text(const Uuid&);
[[nodiscard]] std::optional<Uuid> uuid_from_text(std::string_view);

template <class Tag>
struct Id {
  Uuid uuid;
  friend auto operator<=>(const Id&, const Id&) = default;
};

using KegId = Id<struct KegIdTag>;
using BeerId = Id<struct BeerIdTag>;
using BatchId = Id<struct BatchIdTag>;
using PlaceId = Id<struct PlaceIdTag>;
using LineId = Id<struct LineIdTag>;
using BottleId = Id<struct BottleIdTag>;
using RegulatorId = Id<struct RegulatorIdTag>;
using InstrumentId = Id<struct InstrumentIdTag>;
using SegmentId = Id<struct SegmentIdTag>;
using RuleId = Id<struct RuleIdTag>;
using EntryId = Id<struct EntryIdTag>;
using ActId = Id<struct ActIdTag>;

enum class SubjectKind {
  keg,
  beer,
  batch,
  place,
  line,
  bottle,
  regulator,
  instrument,
  segment,
  rule,
  cellar
};

// Any registered thing, when the kind is only known at run time.
struct SubjectRef {
  SubjectKind kind = SubjectKind::cellar;
  Uuid uuid;
  friend auto operator<=>(const SubjectRef&, const SubjectRef&) = default;
};

[[nodiscard]] inline SubjectRef subject(KegId id) { return {SubjectKind::keg, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(BeerId id) { return {SubjectKind::beer, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(BatchId id) { return {SubjectKind::batch, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(PlaceId id) { return {SubjectKind::place, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(LineId id) { return {SubjectKind::line, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(BottleId id) { return {SubjectKind::bottle, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(RegulatorId id) {
  return {SubjectKind::regulator, id.uuid};
}
[[nodiscard]] inline SubjectRef subject(InstrumentId id) {
  return {SubjectKind::instrument, id.uuid};
}
[[nodiscard]] inline SubjectRef subject(SegmentId id) { return {SubjectKind::segment, id.uuid}; }
[[nodiscard]] inline SubjectRef subject(RuleId id) { return {SubjectKind::rule, id.uuid}; }
// The cellar itself: there is one to a file, so it needs no id.
[[nodiscard]] inline SubjectRef cellar_subject() { return {SubjectKind::cellar, {}}; }

// Where fresh UUIDs come from. Injected: core has no source of randomness.
class IdSource {
 public:
  virtual ~IdSource() = default;
  virtual Uuid next() = 0;
  template <class Tag>
  void fill(Id<Tag>& id) {
    id.uuid = next();
  }
};

struct UuidHash {
  std::size_t operator()(const Uuid& u) const noexcept;
};

}  // namespace ullage::cellar

template <>
struct std::hash<ullage::cellar::Uuid> {
  std::size_t operator()(const ullage::cellar::Uuid& u) const noexcept {
    return ullage::cellar::UuidHash{}(u);
  }
};
template <class Tag>
struct std::hash<ullage::cellar::Id<Tag>> {
  std::size_t operator()(const ullage::cellar::Id<Tag>& id) const noexcept {
    return ullage::cellar::UuidHash{}(id.uuid);
  }
};
template <>
struct std::hash<ullage::cellar::SubjectRef> {
  std::size_t operator()(const ullage::cellar::SubjectRef& s) const noexcept {
    return ullage::cellar::UuidHash{}(s.uuid) ^ static_cast<std::size_t>(s.kind);
  }
};
