-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- Remarks, and entries that strike or bring back another.

CREATE TABLE noted (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  keg BLOB CHECK (length(keg) = 16),
  line BLOB CHECK (length(line) = 16),
  batch BLOB CHECK (length(batch) = 16),
  place BLOB CHECK (length(place) = 16),
  bottle BLOB CHECK (length(bottle) = 16)
) STRICT;

CREATE TABLE struck (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  target_entry BLOB NOT NULL REFERENCES entry (id),
  reason TEXT NOT NULL
) STRICT;

CREATE TABLE restored (
  sequence INTEGER PRIMARY KEY REFERENCES entry (sequence),
  target_entry BLOB NOT NULL REFERENCES entry (id),
  reason TEXT NOT NULL
) STRICT;
