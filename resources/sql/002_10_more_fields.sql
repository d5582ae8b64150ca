-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- The step from schema 1 to 2: what the register knows more. All of it may be
-- absent, so that every row of schema 1 stays true as it is.

ALTER TABLE cellar_described
  ADD COLUMN leak_limit_kg_per_day REAL CHECK (leak_limit_kg_per_day >= 0);
ALTER TABLE cellar_described ADD COLUMN country TEXT;

ALTER TABLE place_record
  ADD COLUMN air_changes_per_hour REAL CHECK (air_changes_per_hour >= 0);
ALTER TABLE place_record ADD COLUMN below_ground INTEGER CHECK (below_ground IN (0, 1));
ALTER TABLE place_record ADD COLUMN walk_order INTEGER CHECK (walk_order >= 0);
ALTER TABLE place_record ADD COLUMN sensor_height_m REAL CHECK (sensor_height_m >= 0);

ALTER TABLE line_record ADD COLUMN coupler_loss_pa REAL CHECK (coupler_loss_pa >= 0);
ALTER TABLE line_record ADD COLUMN shank_loss_pa REAL CHECK (shank_loss_pa >= 0);
ALTER TABLE line_record ADD COLUMN faucet_loss_pa REAL CHECK (faucet_loss_pa >= 0);
ALTER TABLE line_record ADD COLUMN restrictor_length_m REAL CHECK (restrictor_length_m > 0);
ALTER TABLE line_record ADD COLUMN restrictor_bore_m REAL CHECK (restrictor_bore_m > 0);

ALTER TABLE bottle_record ADD COLUMN fill_ratio REAL CHECK (fill_ratio >= 0);
ALTER TABLE bottle_record ADD COLUMN price_minor INTEGER CHECK (price_minor >= 0);

ALTER TABLE regulator_record ADD COLUMN fed_by BLOB CHECK (length(fed_by) = 16);
ALTER TABLE regulator_record ADD COLUMN secured INTEGER CHECK (secured IN (0, 1));
