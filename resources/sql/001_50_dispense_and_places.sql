-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- Lines, gas bottles, places, beers and batches over time.

CREATE TABLE line_locked (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  line BLOB NOT NULL CHECK (length(line) = 16),
  agent_kind TEXT NOT NULL
    CHECK (agent_kind IN (
      'caustic', 'acid', 'chlorinated', 'other', 'water')),
  agent TEXT NOT NULL,
  reason TEXT NOT NULL
) STRICT;

CREATE TABLE line_cleaned (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  line BLOB NOT NULL CHECK (length(line) = 16),
  agent_kind TEXT NOT NULL
    CHECK (agent_kind IN (
      'caustic', 'acid', 'chlorinated', 'other', 'water')),
  agent TEXT NOT NULL,
  strength_percent REAL CHECK (strength_percent BETWEEN 0 AND 100),
  method TEXT NOT NULL CHECK (method IN ('static_soak', 'recirculated', 'flushed')),
  contact_s REAL CHECK (contact_s >= 0),
  temperature_k REAL CHECK (temperature_k > 0),
  flush_check TEXT NOT NULL
    CHECK (flush_check IN (
      'litmus', 'ph', 'coloured_cleaner_clear', 'none')),
  flush_passed INTEGER CHECK (flush_passed IN (0, 1)),
  faucet INTEGER NOT NULL CHECK (faucet IN (0, 1)),
  coupler INTEGER NOT NULL CHECK (coupler IN (0, 1)),
  foam_detector INTEGER NOT NULL CHECK (foam_detector IN (0, 1)),
  beer_lost_m3 REAL CHECK (beer_lost_m3 >= 0)
) STRICT;

CREATE TABLE line_released (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  line BLOB NOT NULL CHECK (length(line) = 16),
  flush_check TEXT NOT NULL
    CHECK (flush_check IN (
      'litmus', 'ph', 'coloured_cleaner_clear', 'none')),
  passed INTEGER NOT NULL CHECK (passed IN (0, 1)),
  checked_by TEXT NOT NULL,
  countersigned_by TEXT NOT NULL
) STRICT;

CREATE TABLE timed_pour (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  line BLOB NOT NULL CHECK (length(line) = 16),
  volume_m3 REAL NOT NULL CHECK (volume_m3 >= 0),
  duration_s REAL NOT NULL CHECK (duration_s >= 0),
  pressure_pa REAL CHECK (pressure_pa >= -110000.0),
  instrument BLOB CHECK (length(instrument) = 16),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16)
) STRICT;

CREATE TABLE bottle_weighed (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  bottle BLOB NOT NULL CHECK (length(bottle) = 16),
  gross_mass_kg REAL NOT NULL CHECK (gross_mass_kg >= 0),
  scale BLOB CHECK (length(scale) = 16),
  with_regulator BLOB CHECK (length(with_regulator) = 16)
) STRICT;

CREATE TABLE bottle_changed (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  regulator BLOB NOT NULL CHECK (length(regulator) = 16),
  bottle BLOB NOT NULL CHECK (length(bottle) = 16),
  co2_on_tag_mole_fraction REAL CHECK (co2_on_tag_mole_fraction BETWEEN 0 AND 1),
  washer_renewed INTEGER NOT NULL CHECK (washer_renewed IN (0, 1)),
  secured INTEGER NOT NULL CHECK (secured IN (0, 1))
) STRICT;

CREATE TABLE gauge_read (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  bottle BLOB NOT NULL CHECK (length(bottle) = 16),
  pressure_pa REAL NOT NULL CHECK (pressure_pa >= -110000.0),
  instrument BLOB CHECK (length(instrument) = 16),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16)
) STRICT;

CREATE TABLE leak_tested (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB CHECK (length(keg) = 16),
  bottle BLOB CHECK (length(bottle) = 16),
  regulator BLOB CHECK (length(regulator) = 16),
  line BLOB CHECK (length(line) = 16),
  method TEXT NOT NULL
    CHECK (method IN (
      'soapy_water', 'under_water', 'listening', 'pressure_drop')),
  leak_found INTEGER NOT NULL CHECK (leak_found IN (0, 1)),
  "where" TEXT NOT NULL
) STRICT;

CREATE TABLE temperature_read (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  place BLOB NOT NULL CHECK (length(place) = 16),
  temperature_k REAL NOT NULL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16),
  of_what TEXT NOT NULL CHECK (of_what IN ('air', 'liquid', 'glass'))
) STRICT;

CREATE TABLE alarm_checked (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  place BLOB NOT NULL CHECK (length(place) = 16),
  passed INTEGER NOT NULL CHECK (passed IN (0, 1))
) STRICT;

CREATE TABLE gravity_read (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  batch BLOB NOT NULL CHECK (length(batch) = 16),
  keg BLOB CHECK (length(keg) = 16),
  gravity_sg REAL NOT NULL CHECK (gravity_sg > 0),
  stage TEXT NOT NULL CHECK (stage IN ('original', 'in_progress', 'final')),
  hydrometer BLOB CHECK (length(hydrometer) = 16),
  temperature_k REAL CHECK (temperature_k > 0)
) STRICT;

CREATE TABLE best_by_changed (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  batch BLOB NOT NULL CHECK (length(batch) = 16),
  best_by_day INTEGER NOT NULL CHECK (best_by_day BETWEEN -719162 AND 2932896),
  reason TEXT NOT NULL
) STRICT;

CREATE TABLE batch_recalled (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  batch BLOB NOT NULL CHECK (length(batch) = 16),
  reason TEXT NOT NULL
) STRICT;
