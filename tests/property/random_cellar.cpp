// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/property/random_cellar.h"

#include <fmt/format.h>

#include "core/cellar/field_walk.h"
#include "core/cellar/presets.h"
#include "core/units/magnitude.h"

namespace ullage::testing {

namespace {

using namespace cellar;  // NOLINT(google-build-using-namespace): the whole file is about it

class Dice {
 public:
  explicit Dice(std::uint32_t seed) : engine_(seed * 2654435761U + 1) {}
  double between(double low, double high) {
    const double unit = static_cast<double>(engine_() >> 5U) / static_cast<double>(1U << 27U);
    return low + (high - low) * unit;
  }
  std::size_t below(std::size_t n) { return engine_() % n; }
  bool chance(int percent) { return below(100) < static_cast<std::size_t>(percent); }
  template <class T>
  const T& one_of(const std::vector<T>& all) {
    return all[below(all.size())];
  }

 private:
  std::mt19937 engine_;
};

// What is found in cellars, more often than at the edges of what is allowed.
template <class T>
double likely(std::string_view column, Dice& dice) {
  if constexpr (std::is_same_v<T, GaugePressure>) return dice.between(0, 2.5e5);
  if constexpr (std::is_same_v<T, Temperature>) return dice.between(273.15, 298.15);
  if constexpr (std::is_same_v<T, Volume>) return dice.between(0, 0.02);
  if constexpr (std::is_same_v<T, Mass>) {
    return column == "gross_mass_kg" ? dice.between(4, 25) : dice.between(0, 0.3);
  }
  if constexpr (std::is_same_v<T, units::Duration>) return dice.between(1, 7200);
  if constexpr (std::is_same_v<T, Co2Concentration>) {
    return column.ends_with("half_width_g_per_l") ? dice.between(0.1, 1) : dice.between(0, 8);
  }
  if constexpr (std::is_same_v<T, SpecificGravity>) return dice.between(1.0, 1.08);
  if constexpr (std::is_same_v<T, units::Abv>) return dice.between(2, 12);
  if constexpr (std::is_same_v<T, Length>) return dice.between(0.003, 5);
  return dice.between(0, 1);
}

template <class T>
void fill(T& field, std::string_view column, const RandomThings& things, Dice& dice) {
  if constexpr (IsOptional<T>::value) {
    field.reset();
    if (dice.chance(60)) fill(field.emplace(), column, things, dice);
  } else if constexpr (std::is_same_v<T, KegId>) {
    field = dice.one_of(things.kegs);
  } else if constexpr (std::is_same_v<T, BeerId>) {
    field = dice.one_of(things.beers);
  } else if constexpr (std::is_same_v<T, BatchId>) {
    field = dice.one_of(things.batches);
  } else if constexpr (std::is_same_v<T, PlaceId>) {
    field = dice.one_of(things.places);
  } else if constexpr (std::is_same_v<T, LineId>) {
    field = dice.one_of(things.lines);
  } else if constexpr (std::is_same_v<T, BottleId>) {
    field = dice.one_of(things.bottles);
  } else if constexpr (std::is_same_v<T, RegulatorId>) {
    field = dice.one_of(things.regulators);
  } else if constexpr (std::is_same_v<T, InstrumentId>) {
    field = dice.one_of(things.instruments);
  } else if constexpr (std::is_same_v<T, SegmentId>) {
    field = dice.one_of(things.segments);
  } else if constexpr (std::is_same_v<T, RuleId>) {
    field = dice.one_of(things.rules);
  } else if constexpr (std::is_same_v<T, bool>) {
    field = dice.chance(50);
  } else if constexpr (WordedEnum<T>) {
    field = static_cast<T>(dice.below(EnumText<T>::words.size()));
  } else if constexpr (std::is_same_v<T, std::int64_t>) {
    field = static_cast<std::int64_t>(1 + dice.below(30));
  } else if constexpr (std::is_same_v<T, double>) {
    field = dice.between(0, 10);
  } else if constexpr (std::is_same_v<T, std::string>) {
    field = fmt::format("{} {}", column, dice.below(5));
  } else if constexpr (std::is_same_v<T, Instant>) {
    field = minute(-static_cast<int>(dice.below(10000)));
  } else if constexpr (std::is_same_v<T, Date>) {
    field = Date(std::chrono::local_days(std::chrono::year(2026) / 3 / 1)) +
            std::chrono::days(dice.below(90));
  } else if constexpr (units::Quantity<T>) {
    field = units::from_magnitude<T>(likely<T>(column, dice));
  }
}

bool is_record_or_bookkeeping(std::string_view kind) {
  return kind.ends_with("_record") || kind == "cellar_described" || kind == "struck" ||
         kind == "restored";
}

Payload random_payload(const RandomThings& things, Dice& dice) {
  std::vector<Payload> kinds;
  for (const Payload& blank : blank_payloads()) {
    if (!is_record_or_bookkeeping(kind_of(blank))) kinds.push_back(blank);
  }
  Payload payload = kinds[dice.below(kinds.size())];
  for_each_field(payload,
                 [&](std::string_view column, auto& field) { fill(field, column, things, dice); });
  return payload;
}

void add_pieces_and_rules(const RandomThings& t, std::uint8_t family,
                          std::vector<Payload>& records) {
  const auto named = [&](const char* what, std::size_t i) {
    return fmt::format("{} {}-{}", what, family, i);
  };
  for (std::size_t i = 0; i < t.segments.size(); ++i) {
    records.emplace_back(SegmentRecord{.segment = t.segments[i],
                                       .line = t.lines[0],
                                       .position = static_cast<std::int64_t>(i + 1),
                                       .length = units::metres(2),
                                       .bore = units::metres(0.006)});
  }
  records.emplace_back(
      RuleRecord{.rule = t.rules[0], .interval_days = 14, .source = named("source", 0)});
  records.emplace_back(RuleRecord{.rule = t.rules[1],
                                  .scope = RuleScope::keg,
                                  .work = WorkKind::keg_clean,
                                  .source = named("source", 1)});
}

}  // namespace

RandomThings random_things(std::uint8_t family) {
  CountingIds ids(static_cast<std::uint8_t>(0x40 + family));
  RandomThings t;
  for (int i = 0; i < 3; ++i) t.kegs.push_back(ids.make<KegId>());
  for (int i = 0; i < 2; ++i) {
    t.beers.push_back(ids.make<BeerId>());
    t.batches.push_back(ids.make<BatchId>());
    t.places.push_back(ids.make<PlaceId>());
    t.lines.push_back(ids.make<LineId>());
    t.regulators.push_back(ids.make<RegulatorId>());
  }
  t.bottles.push_back(ids.make<BottleId>());
  for (int i = 0; i < 3; ++i) t.instruments.push_back(ids.make<InstrumentId>());
  for (int i = 0; i < 2; ++i) {
    t.segments.push_back(ids.make<SegmentId>());
    t.rules.push_back(ids.make<RuleId>());
  }
  return t;
}

std::vector<Payload> records_of(const RandomThings& t, std::uint8_t family) {
  std::vector<Payload> records;
  const auto named = [&](const char* what, std::size_t i) {
    return fmt::format("{} {}-{}", what, family, i);
  };
  constexpr InstrumentKind kinds[] = {InstrumentKind::regulator_dial, InstrumentKind::thermometer,
                                      InstrumentKind::parcel_scale};
  for (std::size_t i = 0; i < t.instruments.size(); ++i) {
    InstrumentRecord r = instrument_from_preset(kinds[i]);
    r.instrument = t.instruments[i];
    r.name = named("instrument", i);
    records.emplace_back(r);
  }
  for (std::size_t i = 0; i < t.places.size(); ++i) {
    records.emplace_back(PlaceRecord{
        .place = t.places[i], .name = named("place", i), .set_temperature = units::celsius(4)});
  }
  records.emplace_back(BottleRecord{.bottle = t.bottles[0],
                                    .name = named("bottle", 0),
                                    .tare = units::kilograms(8),
                                    .content = units::kilograms(6)});
  for (std::size_t i = 0; i < t.regulators.size(); ++i) {
    records.emplace_back(RegulatorRecord{.regulator = t.regulators[i],
                                         .name = named("regulator", i),
                                         .bottle = t.bottles[0],
                                         .dial = t.instruments[0]});
  }
  for (std::size_t i = 0; i < t.beers.size(); ++i) {
    records.emplace_back(BeerRecord{.beer = t.beers[i],
                                    .name = named("beer", i),
                                    .co2_low = units::grams_per_litre(4.5),
                                    .co2_high = units::grams_per_litre(5.2)});
    records.emplace_back(BatchRecord{.batch = t.batches[i],
                                     .beer = t.beers[i],
                                     .name = named("batch", i),
                                     .original_gravity = units::specific_gravity(1.048),
                                     .final_gravity = units::specific_gravity(1.010)});
    records.emplace_back(LineRecord{.line = t.lines[i],
                                    .name = named("line", i),
                                    .place = t.places[i],
                                    .regulator = t.regulators[i],
                                    .clean_every_days = 14});
  }
  add_pieces_and_rules(t, family, records);
  for (std::size_t i = 0; i < t.kegs.size(); ++i) {
    KegRecord r = keg_from_preset(KegKind::ball_lock_19);
    r.keg = t.kegs[i];
    r.tag = fmt::format("K{}{}", family, i);
    r.place = t.places[i % t.places.size()];
    records.emplace_back(r);
  }
  return records;
}

Entry random_entry(std::uint32_t number, const RandomThings& things) {
  Dice dice(number);
  Entry e;
  for (std::size_t i = 0; i < 4; ++i) {
    e.header.id.uuid.bytes[4 + i] = static_cast<std::uint8_t>(number >> (8U * i));
  }
  e.header.id.uuid.bytes[0] = things.kegs[0].uuid.bytes[0];
  e.header.id.uuid.bytes[1] = 0xee;
  e.header.act.uuid = e.header.id.uuid;
  e.header.by = "AB";
  e.payload = random_payload(things, dice);
  e.header.happened_at = minute(10 + static_cast<int>(dice.below(std::size_t{60} * 24 * 60)));
  e.header.recorded_at = e.header.happened_at;
  if (holds_alternative<Noted>(e.payload)) e.header.note = "seen";
  return e;
}

}  // namespace ullage::testing
