-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- Kegs as stock, and making an empty keg fit to fill.

CREATE TABLE found (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  contents TEXT NOT NULL
    CHECK (contents IN (
      'unknown', 'empty_dirty', 'empty_clean', 'empty_sanitised', 'empty_purged',
      'beer')),
  batch BLOB CHECK (length(batch) = 16),
  beer_volume_m3 REAL CHECK (beer_volume_m3 >= 0),
  beer_volume_half_width_m3 REAL CHECK (beer_volume_half_width_m3 >= 0),
  pressure_pa REAL CHECK (pressure_pa >= -110000.0),
  instrument BLOB CHECK (length(instrument) = 16),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16),
  co2_g_per_l REAL CHECK (co2_g_per_l >= 0),
  co2_half_width_g_per_l REAL CHECK (co2_half_width_g_per_l >= 0),
  gas_on INTEGER NOT NULL CHECK (gas_on IN (0, 1)),
  regulator BLOB CHECK (length(regulator) = 16),
  line BLOB CHECK (length(line) = 16),
  since_utc_s INTEGER CHECK (since_utc_s BETWEEN -62135596800 AND 253402300799)
) STRICT;

CREATE TABLE received (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  batch BLOB NOT NULL CHECK (length(batch) = 16),
  supplier TEXT NOT NULL,
  best_by_day INTEGER CHECK (best_by_day BETWEEN -719162 AND 2932896),
  beer_volume_m3 REAL CHECK (beer_volume_m3 >= 0),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16),
  co2_g_per_l REAL CHECK (co2_g_per_l >= 0),
  co2_half_width_g_per_l REAL CHECK (co2_half_width_g_per_l >= 0),
  seal_intact INTEGER CHECK (seal_intact IN (0, 1))
) STRICT;

CREATE TABLE moved (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  place BLOB NOT NULL CHECK (length(place) = 16)
) STRICT;

CREATE TABLE quarantined (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  reason TEXT NOT NULL
) STRICT;

CREATE TABLE cleared (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  reason TEXT NOT NULL
) STRICT;

CREATE TABLE lent (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  "to" TEXT NOT NULL,
  deposit_minor INTEGER CHECK (deposit_minor >= 0),
  due_back_day INTEGER CHECK (due_back_day BETWEEN -719162 AND 2932896)
) STRICT;

CREATE TABLE returned (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16)
) STRICT;

CREATE TABLE wasted (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB CHECK (length(keg) = 16),
  batch BLOB CHECK (length(batch) = 16),
  reason TEXT NOT NULL
    CHECK (reason IN (
      'foam', 'line_cleaning', 'spoiled', 'short_fill', 'spill', 'given_away',
      'other')),
  volume_m3 REAL NOT NULL CHECK (volume_m3 >= 0)
) STRICT;

CREATE TABLE inspected (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  seals_renewed INTEGER NOT NULL CHECK (seals_renewed IN (0, 1)),
  seals_lubricated INTEGER NOT NULL CHECK (seals_lubricated IN (0, 1)),
  lid_seated INTEGER NOT NULL CHECK (lid_seated IN (0, 1)),
  fit_to_use INTEGER NOT NULL CHECK (fit_to_use IN (0, 1))
) STRICT;

CREATE TABLE cleaned (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  method TEXT NOT NULL CHECK (method IN ('rinse', 'caustic', 'percarbonate', 'acid', 'other')),
  agent TEXT NOT NULL,
  strength_percent REAL CHECK (strength_percent BETWEEN 0 AND 100),
  contact_s REAL CHECK (contact_s >= 0),
  temperature_k REAL CHECK (temperature_k > 0)
) STRICT;

CREATE TABLE sanitised (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  method TEXT NOT NULL
    CHECK (method IN (
      'acid_sanitiser', 'iodine', 'chlorine', 'quaternary', 'hot_water', 'other')),
  agent TEXT NOT NULL,
  contact_s REAL CHECK (contact_s >= 0)
) STRICT;

CREATE TABLE hold_reading (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  pressure_pa REAL NOT NULL CHECK (pressure_pa >= -110000.0),
  instrument BLOB CHECK (length(instrument) = 16),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16),
  starts_test INTEGER NOT NULL CHECK (starts_test IN (0, 1))
) STRICT;

CREATE TABLE purged (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  method TEXT NOT NULL CHECK (method IN ('cycles', 'pushed_liquid', 'swept')),
  cycles INTEGER CHECK (cycles >= 0),
  pressure_pa REAL CHECK (pressure_pa >= -110000.0),
  instrument BLOB CHECK (length(instrument) = 16),
  vessel_volumes REAL CHECK (vessel_volumes >= 0)
) STRICT;
