-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- The step from schema 1 to 2: pieces of hose, rules, work done and put off.

CREATE TABLE segment_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  segment BLOB NOT NULL CHECK (length(segment) = 16),
  line BLOB NOT NULL CHECK (length(line) = 16),
  position INTEGER NOT NULL CHECK (position >= 0),
  length_m REAL NOT NULL CHECK (length_m >= 0),
  bore_m REAL NOT NULL CHECK (bore_m >= 0),
  material TEXT NOT NULL
    CHECK (material IN (
      'vinyl', 'barrier', 'polyethylene', 'stainless', 'other')),
  place BLOB CHECK (length(place) = 16),
  rise_m REAL,
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE rule_record (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  rule BLOB NOT NULL CHECK (length(rule) = 16),
  scope TEXT NOT NULL CHECK (scope IN ('line', 'keg', 'coupler', 'bottle', 'place', 'alarm')),
  work TEXT NOT NULL
    CHECK (work IN (
      'caustic', 'acid', 'strip_down', 'seals', 'keg_clean', 'coupler_clean', 'place_clean',
      'alarm_check', 'bottle_retest', 'leak_test')),
  keg BLOB CHECK (length(keg) = 16),
  line BLOB CHECK (length(line) = 16),
  bottle BLOB CHECK (length(bottle) = 16),
  place BLOB CHECK (length(place) = 16),
  interval_days INTEGER CHECK (interval_days >= 0),
  reason TEXT NOT NULL,
  source TEXT NOT NULL,
  in_force INTEGER NOT NULL CHECK (in_force IN (0, 1))
) STRICT;

CREATE TABLE work_done (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  work TEXT NOT NULL
    CHECK (work IN (
      'caustic', 'acid', 'strip_down', 'seals', 'keg_clean', 'coupler_clean', 'place_clean',
      'alarm_check', 'bottle_retest', 'leak_test')),
  rule BLOB CHECK (length(rule) = 16),
  keg BLOB CHECK (length(keg) = 16),
  line BLOB CHECK (length(line) = 16),
  bottle BLOB CHECK (length(bottle) = 16),
  place BLOB CHECK (length(place) = 16),
  agent_kind TEXT NOT NULL
    CHECK (agent_kind IN (
      'caustic', 'acid', 'chlorinated', 'other', 'water')),
  agent TEXT NOT NULL,
  strength_percent REAL CHECK (strength_percent BETWEEN 0 AND 100),
  concentrate_m3 REAL CHECK (concentrate_m3 >= 0),
  concentrate_kg REAL CHECK (concentrate_kg >= 0),
  water_m3 REAL CHECK (water_m3 >= 0),
  contact_s REAL CHECK (contact_s >= 0),
  complete INTEGER NOT NULL CHECK (complete IN (0, 1)),
  next_due_day INTEGER CHECK (next_due_day BETWEEN -719162 AND 2932896),
  done_by TEXT NOT NULL,
  countersigned_by TEXT NOT NULL
) STRICT;

CREATE TABLE work_moved (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  work TEXT NOT NULL
    CHECK (work IN (
      'caustic', 'acid', 'strip_down', 'seals', 'keg_clean', 'coupler_clean', 'place_clean',
      'alarm_check', 'bottle_retest', 'leak_test')),
  rule BLOB CHECK (length(rule) = 16),
  keg BLOB CHECK (length(keg) = 16),
  line BLOB CHECK (length(line) = 16),
  bottle BLOB CHECK (length(bottle) = 16),
  place BLOB CHECK (length(place) = 16),
  to_day INTEGER NOT NULL CHECK (to_day BETWEEN -719162 AND 2932896),
  reason TEXT NOT NULL
) STRICT;

INSERT INTO kind (code, word) VALUES
  (52, 'segment_record'),
  (53, 'rule_record'),
  (54, 'work_done'),
  (55, 'work_moved');
