-- Grams per millilitre of the foods of one group, where at least three have an unqualified volume
-- measure: their median, and the standard deviation about it as a share of it.
CREATE TABLE group_density (
    group_id INTEGER PRIMARY KEY REFERENCES food_group,
    grams_per_ml REAL NOT NULL CHECK (grams_per_ml > 0),
    relative_spread REAL NOT NULL CHECK (relative_spread >= 0),
    foods INTEGER NOT NULL CHECK (foods >= 3)
) STRICT;
