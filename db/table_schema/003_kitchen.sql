CREATE TABLE measure (
    food_id INTEGER NOT NULL,
    position INTEGER NOT NULL CHECK (position >= 0),
    amount REAL NOT NULL CHECK (amount > 0),
    unit TEXT NOT NULL CHECK (unit <> ''),
    qualifier TEXT,
    grams REAL NOT NULL CHECK (grams > 0),
    data_points INTEGER CHECK (data_points > 0),
    standard_deviation_grams REAL CHECK (standard_deviation_grams >= 0),
    PRIMARY KEY (food_id, position)
) STRICT, WITHOUT ROWID;
