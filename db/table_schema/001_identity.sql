-- Which public table this file holds, and what it was made from.
CREATE TABLE identity (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    table_name TEXT NOT NULL CHECK (table_name <> ''),
    release TEXT NOT NULL CHECK (release <> ''),
    citation TEXT NOT NULL CHECK (citation <> ''),
    -- Medians of standard deviation / grams over the measures that have one; NULL where none has.
    piece_spread_relative REAL CHECK (piece_spread_relative >= 0),
    piece_spread_rows INTEGER NOT NULL CHECK (piece_spread_rows >= 0),
    volume_spread_relative REAL CHECK (volume_spread_relative >= 0),
    volume_spread_rows INTEGER NOT NULL CHECK (volume_spread_rows >= 0)
) STRICT;

CREATE TABLE input (
    name TEXT PRIMARY KEY,
    sha256 TEXT NOT NULL CHECK (length(sha256) = 64)
) STRICT;
