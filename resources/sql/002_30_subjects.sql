-- SPDX-License-Identifier: GPL-3.0-or-later
--
-- The step from schema 1 to 2: pieces of hose and rules are things to ask after.
-- The rule of a column cannot be changed in place, so the table is made anew.

CREATE TABLE subject_new (
  uuid BLOB NOT NULL CHECK (length(uuid) = 16),
  sequence INTEGER NOT NULL REFERENCES entry (sequence),
  subject_kind TEXT NOT NULL
    CHECK (subject_kind IN ('keg', 'beer', 'batch', 'place', 'line', 'bottle', 'regulator',
      'instrument', 'segment', 'rule', 'cellar')),
  PRIMARY KEY (uuid, sequence)
) STRICT, WITHOUT ROWID;
INSERT INTO subject_new (uuid, sequence, subject_kind)
  SELECT uuid, sequence, subject_kind FROM subject;
DROP TABLE subject;
ALTER TABLE subject_new RENAME TO subject;
