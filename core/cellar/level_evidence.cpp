// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/level_evidence.h"

#include "core/cellar/presets.h"
#include "core/physics/atmosphere.h"
#include "core/physics/level.h"

namespace ullage::cellar {

namespace {

constexpr double stated_volume_error = 0.02;
constexpr double guessed_volume_error = 0.2;
// Beer whose gravity nobody read: 1.012, within 0.008 for nearly all beers.
constexpr double usual_gravity = 1.012;
constexpr double usual_gravity_error = 0.008;

struct Gravity {
  SpecificGravity value{usual_gravity};
  double half_width = usual_gravity_error;
};

Gravity gravity_of(std::optional<SpecificGravity> read, std::optional<BatchId> batch,
                   Lookup& lookup) {
  if (read) return {*read, 0.001};
  if (batch) {
    if (const auto b = lookup.find(*batch); b && b->final_gravity) {
      return {*b->final_gravity, 0.002};
    }
  }
  return {};
}

physics::Result<VolumeEstimate> weighed(const KegRecord& keg, const MassEstimate& gross,
                                        const MassEstimate& tare, Gravity gravity,
                                        GaugePressure headspace, Lookup& lookup) {
  const auto cellar = lookup.cellar();
  const auto ambient = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
  if (!ambient) return std::unexpected(ambient.error());
  const physics::Weighing w{gross,       tare,      gravity.value, units::celsius(5),
                            keg.holds(), headspace, *ambient};
  auto left = physics::beer_from_weight(w);
  if (!left) return left;
  const double share = gravity.half_width / gravity.value.count();
  return left->with({keg.tag + ": gravity of the beer"}, share * left->value().value());
}

}  // namespace

std::optional<MassEstimate> tare_of(const KegRecord& keg) {
  if (!keg.tare) return std::nullopt;
  const Mass usual = units::kilograms(has_two_posts(keg.keg_kind) ? 0.5 : 1.5);
  return MassEstimate(*keg.tare).with({keg.tag + ": tare"},
                                      units::in_kilograms(keg.tare_half_width.value_or(usual)));
}

LevelEvidence level_evidence(const LevelReading& r, const Entry& entry, const KegTimeline& keg,
                             Readings& readings, Lookup& lookup) {
  LevelEvidence out;
  const std::int64_t n = entry.header.sequence;
  const std::string& tag = keg.record.tag;
  const auto take = [&](const physics::Result<VolumeEstimate>& left) {
    if (left) {
      out.left = *left;
    } else {
      out.refused = message(MessageKey::level_reading_impossible);
    }
  };
  const Volume full = keg.record.holds();
  switch (r.method) {
    case LevelMethod::weight: {
      const auto tare = tare_of(keg.record);
      if (!tare) {
        out.refused = message(MessageKey::level_no_tare);
      } else if (r.gross_mass) {
        const auto batch = keg.filling ? keg.filling->batch : std::nullopt;
        take(weighed(keg.record, readings.mass(*r.gross_mass, r.scale, n), *tare,
                     gravity_of(std::nullopt, batch, lookup),
                     keg.gas.now.unvented.value_or(GaugePressure{}), lookup));
      }
      break;
    }
    case LevelMethod::heft:
      if (r.fraction_left) {
        take(physics::beer_from_heft(*r.fraction_left, full,
                                     {tag + ": by hand " + std::to_string(n)}));
      }
      break;
    case LevelMethod::condensation_line:
      if (r.fraction_left) {
        take(physics::beer_from_condensation_line(
            *r.fraction_left, full, {tag + ": condensation line " + std::to_string(n)}));
      }
      break;
    case LevelMethod::glasses:
      if (r.glasses && r.glass_volume) {
        const auto poured = physics::poured_by_glasses(
            {*r.glasses, *r.glass_volume, {"glasses: fill"}, {"glasses: foam and loss"}});
        if (poured) out.poured = *poured;
      }
      break;
    case LevelMethod::metered:
      if (r.metered) out.poured = readings.metered(*r.metered, r.meter, n);
      break;
  }
  return out;
}

std::optional<VolumeEstimate> filled_volume(const Filled& f, const Entry& entry,
                                            const KegRecord& keg, Readings& readings,
                                            Lookup& lookup) {
  if (f.volume) {
    return VolumeEstimate(*f.volume).with({keg.tag + ": volume filled"},
                                          stated_volume_error * f.volume->value());
  }
  const auto tare = tare_of(keg);
  if (!f.gross_mass || !tare) return std::nullopt;
  const auto left = weighed(keg, readings.mass(*f.gross_mass, f.scale, entry.header.sequence),
                            *tare, gravity_of(f.gravity, f.batch, lookup), {}, lookup);
  return left ? std::optional(*left) : std::nullopt;
}

VolumeEstimate wasted_volume(const Wasted& w, const Entry& entry) {
  return VolumeEstimate(w.volume).with({"wasted volume " + std::to_string(entry.header.sequence)},
                                       guessed_volume_error * w.volume.value());
}

}  // namespace ullage::cellar
