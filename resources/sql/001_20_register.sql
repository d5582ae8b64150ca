-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- The register: what the cellar consists of. A record states the whole thing; the
-- last one before a date is how it was then. Things are named by 16-byte UUIDs.

CREATE TABLE cellar_described (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  name TEXT NOT NULL,
  altitude_m REAL NOT NULL,
  time_zone TEXT NOT NULL,
  units_preset TEXT NOT NULL CHECK (units_preset IN ('metric', 'us', 'british'))
) STRICT;

CREATE TABLE keg_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  tag TEXT NOT NULL,
  keg_kind TEXT NOT NULL
    CHECK (keg_kind IN (
      'ball_lock_9', 'ball_lock_11', 'ball_lock_19', 'pin_lock_9', 'pin_lock_11',
      'pin_lock_19', 'us_half_barrel', 'us_quarter_barrel', 'us_slim_quarter',
      'us_sixth_barrel', 'keg_20', 'keg_30', 'keg_50', 'custom')),
  nominal_m3 REAL NOT NULL CHECK (nominal_m3 >= 0),
  brimful_m3 REAL NOT NULL CHECK (brimful_m3 >= 0),
  brimful_half_width_m3 REAL NOT NULL CHECK (brimful_half_width_m3 >= 0),
  tare_kg REAL CHECK (tare_kg >= 0),
  tare_half_width_kg REAL CHECK (tare_half_width_kg >= 0),
  rated_pressure_pa REAL CHECK (rated_pressure_pa >= -110000.0),
  coupler TEXT NOT NULL,
  owner TEXT NOT NULL CHECK (owner IN ('ours', 'rented', 'supplier')),
  deposit_minor INTEGER CHECK (deposit_minor >= 0),
  place BLOB CHECK (length(place) = 16),
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE beer_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  beer BLOB NOT NULL CHECK (length(beer) = 16),
  name TEXT NOT NULL,
  style TEXT NOT NULL,
  co2_low_g_per_l REAL CHECK (co2_low_g_per_l >= 0),
  co2_high_g_per_l REAL CHECK (co2_high_g_per_l >= 0),
  allergens TEXT NOT NULL,
  price_minor_per_litre INTEGER CHECK (price_minor_per_litre >= 0)
) STRICT;

CREATE TABLE batch_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  batch BLOB NOT NULL CHECK (length(batch) = 16),
  beer BLOB NOT NULL CHECK (length(beer) = 16),
  name TEXT NOT NULL,
  origin TEXT NOT NULL CHECK (origin IN ('brewed_here', 'delivered')),
  original_gravity_sg REAL CHECK (original_gravity_sg > 0),
  final_gravity_sg REAL CHECK (final_gravity_sg > 0),
  abv_percent REAL CHECK (abv_percent BETWEEN 0 AND 100),
  packaged_on_day INTEGER CHECK (packaged_on_day BETWEEN -719162 AND 2932896),
  best_by_day INTEGER CHECK (best_by_day BETWEEN -719162 AND 2932896),
  supplier TEXT NOT NULL,
  warmest_after_fermentation_k REAL CHECK (warmest_after_fermentation_k > 0)
) STRICT;

CREATE TABLE place_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  place BLOB NOT NULL CHECK (length(place) = 16),
  name TEXT NOT NULL,
  place_kind TEXT NOT NULL CHECK (place_kind IN ('cold_box', 'cellar_room', 'room', 'bar')),
  set_temperature_k REAL CHECK (set_temperature_k > 0),
  net_air_volume_m3 REAL CHECK (net_air_volume_m3 >= 0),
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE line_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  line BLOB NOT NULL CHECK (length(line) = 16),
  name TEXT NOT NULL,
  tap TEXT NOT NULL,
  place BLOB CHECK (length(place) = 16),
  regulator BLOB CHECK (length(regulator) = 16),
  length_m REAL CHECK (length_m > 0),
  bore_m REAL CHECK (bore_m > 0),
  rise_m REAL,
  material TEXT NOT NULL
    CHECK (material IN (
      'vinyl', 'barrier', 'polyethylene', 'stainless', 'other')),
  clean_every_days INTEGER CHECK (clean_every_days >= 0),
  clean_reason TEXT NOT NULL,
  clean_source TEXT NOT NULL,
  second_initials_to_release INTEGER NOT NULL CHECK (second_initials_to_release IN (0, 1)),
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE bottle_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  bottle BLOB NOT NULL CHECK (length(bottle) = 16),
  name TEXT NOT NULL,
  co2_mole_fraction REAL NOT NULL CHECK (co2_mole_fraction BETWEEN 0 AND 1),
  tare_kg REAL CHECK (tare_kg >= 0),
  content_kg REAL CHECK (content_kg >= 0),
  water_capacity_m3 REAL CHECK (water_capacity_m3 >= 0),
  retest_due_day INTEGER CHECK (retest_due_day BETWEEN -719162 AND 2932896),
  place BLOB CHECK (length(place) = 16),
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE regulator_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  regulator BLOB NOT NULL CHECK (length(regulator) = 16),
  name TEXT NOT NULL,
  bottle BLOB CHECK (length(bottle) = 16),
  place BLOB CHECK (length(place) = 16),
  dial BLOB CHECK (length(dial) = 16),
  mass_kg REAL CHECK (mass_kg >= 0),
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE instrument_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  instrument BLOB NOT NULL CHECK (length(instrument) = 16),
  name TEXT NOT NULL,
  instrument_kind TEXT NOT NULL
    CHECK (instrument_kind IN (
      'regulator_dial', 'spunding_dial', 'pressure_gauge', 'fridge_display',
      'thermometer', 'bathroom_scale', 'parcel_scale', 'hydrometer', 'co2_meter',
      'flow_meter')),
  pressure_bias_pa REAL CHECK (pressure_bias_pa >= 0),
  pressure_repeatability_pa REAL CHECK (pressure_repeatability_pa >= 0),
  temperature_bias_k REAL CHECK (temperature_bias_k >= 0),
  temperature_repeatability_k REAL CHECK (temperature_repeatability_k >= 0),
  mass_bias_kg REAL CHECK (mass_bias_kg >= 0),
  mass_repeatability_kg REAL CHECK (mass_repeatability_kg >= 0),
  relative_bias_percent REAL CHECK (relative_bias_percent BETWEEN 0 AND 100),
  relative_repeatability_percent REAL CHECK (relative_repeatability_percent BETWEEN 0 AND 100),
  checked_on_day INTEGER CHECK (checked_on_day BETWEEN -719162 AND 2932896),
  check_note TEXT NOT NULL,
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;
