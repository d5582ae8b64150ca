-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- Schema 1. One row in `entry` for everything that happened, and one row with the
-- same sequence in the table named after its kind. Units are in the column names:
-- _pa pascal (gauge, where it is a dial's), _k kelvin, _m3 cubic metre, _kg, _m, _s;
-- _utc_s seconds since 1970-01-01 00:00 UTC; _day days since 1970-01-01 on the
-- cellar's own calendar. The checks refuse what can never be true (a temperature
-- below absolute zero), not what is bad practice. Columns are added by later
-- schemas and never given another meaning. docs/data-file.md says more.

-- Which cellar this is. Copies and backups carry the same id.
CREATE TABLE cellar_file (
  only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
  file_id BLOB NOT NULL CHECK (length(file_id) = 16),
  created_at_utc_s INTEGER NOT NULL
) STRICT;

-- The kinds of entry; `entry` names them by number.
CREATE TABLE kind (
  code INTEGER PRIMARY KEY,
  word TEXT NOT NULL UNIQUE
) STRICT;

-- What all entries share. `act` is the same for entries logged, and undone, together.
CREATE TABLE entry (
  sequence INTEGER PRIMARY KEY CHECK (sequence > 0),
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  act BLOB NOT NULL CHECK (length(act) = 16),
  kind INTEGER NOT NULL REFERENCES kind (code),
  happened_at_utc_s INTEGER NOT NULL
    CHECK (happened_at_utc_s BETWEEN -62135596800 AND 253402300799),
  recorded_at_utc_s INTEGER NOT NULL
    CHECK (recorded_at_utc_s BETWEEN -62135596800 AND 253402300799),
  utc_offset_min INTEGER NOT NULL CHECK (utc_offset_min BETWEEN -1440 AND 1440),
  by_initials TEXT NOT NULL,
  replaces BLOB REFERENCES entry (id),
  note TEXT NOT NULL
) STRICT;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
  SELECT raise(ABORT, 'entries are never changed: log a correction');
END;

CREATE TRIGGER entry_is_never_erased BEFORE DELETE ON entry
BEGIN
  SELECT raise(ABORT, 'entries are never erased: log a strike');
END;

-- The things an entry is about and the instruments it names, to find them by.
CREATE TABLE subject (
  uuid BLOB NOT NULL CHECK (length(uuid) = 16),
  sequence INTEGER NOT NULL REFERENCES entry (sequence),
  subject_kind TEXT NOT NULL
    CHECK (subject_kind IN ('keg', 'beer', 'batch', 'place', 'line', 'bottle', 'regulator',
      'instrument', 'cellar')),
  PRIMARY KEY (uuid, sequence)
) STRICT, WITHOUT ROWID;

INSERT INTO kind (code, word) VALUES
  (1, 'cellar_described'),
  (2, 'keg_record'),
  (3, 'beer_record'),
  (4, 'batch_record'),
  (5, 'place_record'),
  (6, 'line_record'),
  (7, 'bottle_record'),
  (8, 'regulator_record'),
  (9, 'instrument_record'),
  (10, 'found'),
  (11, 'received'),
  (12, 'moved'),
  (13, 'quarantined'),
  (14, 'cleared'),
  (15, 'lent'),
  (16, 'returned'),
  (17, 'wasted'),
  (18, 'inspected'),
  (19, 'cleaned'),
  (20, 'sanitised'),
  (21, 'hold_reading'),
  (22, 'purged'),
  (23, 'filled'),
  (24, 'primed'),
  (25, 'hops_in'),
  (26, 'hops_out'),
  (27, 'level_reading'),
  (28, 'carbonation_reading'),
  (29, 'tapped'),
  (30, 'untapped'),
  (31, 'emptied'),
  (32, 'gas_set'),
  (33, 'gas_off'),
  (34, 'vented'),
  (35, 'rocked'),
  (36, 'line_locked'),
  (37, 'line_cleaned'),
  (38, 'line_released'),
  (39, 'timed_pour'),
  (40, 'bottle_weighed'),
  (41, 'bottle_changed'),
  (42, 'gauge_read'),
  (43, 'leak_tested'),
  (44, 'temperature_read'),
  (45, 'alarm_checked'),
  (46, 'gravity_read'),
  (47, 'best_by_changed'),
  (48, 'batch_recalled'),
  (49, 'noted'),
  (50, 'struck'),
  (51, 'restored');
