-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- Beer into, in and out of a keg, and gas on it.

CREATE TABLE filled (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  batch BLOB NOT NULL CHECK (length(batch) = 16),
  beer_volume_m3 REAL CHECK (beer_volume_m3 >= 0),
  gross_mass_kg REAL CHECK (gross_mass_kg >= 0),
  scale BLOB CHECK (length(scale) = 16),
  transfer TEXT NOT NULL CHECK (transfer IN ('open', 'closed')),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16),
  gravity_sg REAL CHECK (gravity_sg > 0),
  co2_at_fill TEXT NOT NULL CHECK (co2_at_fill IN ('still', 'spunded', 'measured')),
  co2_g_per_l REAL CHECK (co2_g_per_l >= 0),
  spund_pressure_pa REAL CHECK (spund_pressure_pa >= -110000.0),
  spund_dial BLOB CHECK (length(spund_dial) = 16)
) STRICT;

CREATE TABLE primed (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  sugar TEXT NOT NULL
    CHECK (sugar IN (
      'sucrose', 'glucose', 'glucose_monohydrate', 'dry_malt_extract')),
  mass_kg REAL NOT NULL CHECK (mass_kg >= 0)
) STRICT;

CREATE TABLE hops_in (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  hops TEXT NOT NULL,
  mass_kg REAL CHECK (mass_kg >= 0)
) STRICT;

CREATE TABLE hops_out (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16)
) STRICT;

CREATE TABLE level_reading (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  method TEXT NOT NULL
    CHECK (method IN (
      'weight', 'heft', 'condensation_line', 'glasses', 'metered')),
  gross_mass_kg REAL CHECK (gross_mass_kg >= 0),
  scale BLOB CHECK (length(scale) = 16),
  fraction_left REAL CHECK (fraction_left BETWEEN 0 AND 1),
  glasses REAL CHECK (glasses >= 0),
  glass_volume_m3 REAL CHECK (glass_volume_m3 >= 0),
  metered_m3 REAL CHECK (metered_m3 >= 0),
  meter BLOB CHECK (length(meter) = 16)
) STRICT;

CREATE TABLE carbonation_reading (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  pressure_pa REAL CHECK (pressure_pa >= -110000.0),
  instrument BLOB CHECK (length(instrument) = 16),
  temperature_k REAL CHECK (temperature_k > 0),
  thermometer BLOB CHECK (length(thermometer) = 16),
  co2_g_per_l REAL CHECK (co2_g_per_l >= 0),
  co2_half_width_g_per_l REAL CHECK (co2_half_width_g_per_l >= 0),
  meter BLOB CHECK (length(meter) = 16)
) STRICT;

CREATE TABLE tapped (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  line BLOB NOT NULL CHECK (length(line) = 16)
) STRICT;

CREATE TABLE untapped (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16)
) STRICT;

CREATE TABLE emptied (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16)
) STRICT;

CREATE TABLE gas_set (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  pressure_pa REAL NOT NULL CHECK (pressure_pa >= -110000.0),
  purpose TEXT NOT NULL CHECK (purpose IN ('burst', 'set_and_wait', 'serving', 'seat_lid')),
  regulator BLOB CHECK (length(regulator) = 16),
  instrument BLOB CHECK (length(instrument) = 16),
  co2_mole_fraction REAL CHECK (co2_mole_fraction BETWEEN 0 AND 1)
) STRICT;

CREATE TABLE gas_off (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16)
) STRICT;

CREATE TABLE vented (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  to_pressure_pa REAL CHECK (to_pressure_pa >= -110000.0)
) STRICT;

CREATE TABLE rocked (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB NOT NULL CHECK (length(keg) = 16),
  duration_s REAL NOT NULL CHECK (duration_s >= 0)
) STRICT;
