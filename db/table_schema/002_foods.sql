CREATE TABLE component (
    component_id INTEGER PRIMARY KEY,
    tagname TEXT NOT NULL UNIQUE,
    unit TEXT NOT NULL CHECK (unit IN ('g', 'mg', 'µg', 'kcal', 'kJ'))
) STRICT;

CREATE TABLE food_group (
    group_id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE
) STRICT;

-- row_order is the ranking of a search: best first.
CREATE TABLE food (
    row_order INTEGER PRIMARY KEY,
    number TEXT NOT NULL UNIQUE CHECK (number <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    group_id INTEGER NOT NULL REFERENCES food_group,
    refuse_percent REAL CHECK (refuse_percent BETWEEN 0 AND 100),
    refuse_note TEXT,
    plant INTEGER NOT NULL CHECK (plant IN (0, 1)),
    nitrogen_factor_g_per_g REAL CHECK (nitrogen_factor_g_per_g > 0),
    protein_kcal_per_g REAL CHECK (protein_kcal_per_g >= 0),
    fat_kcal_per_g REAL CHECK (fat_kcal_per_g >= 0),
    carbohydrate_kcal_per_g REAL CHECK (carbohydrate_kcal_per_g >= 0),
    added_sugars TEXT NOT NULL CHECK (added_sugars IN ('none', 'all', 'stated', 'between')),
    added_sugars_g_per_100g REAL CHECK (added_sugars_g_per_100g BETWEEN 0 AND 100),
    added_sugars_reason TEXT NOT NULL CHECK (added_sugars_reason <> ''),
    CHECK ((added_sugars = 'stated') = (added_sugars_g_per_100g IS NOT NULL))
) STRICT;

-- Per 100 g edible portion, in the component's unit. A missing value has no row.
CREATE TABLE food_component (
    row_order INTEGER NOT NULL REFERENCES food,
    component_id INTEGER NOT NULL REFERENCES component,
    value_per_100g REAL NOT NULL CHECK (value_per_100g >= 0),
    standard_error_per_100g REAL CHECK (standard_error_per_100g >= 0),
    data_points INTEGER CHECK (data_points > 0),
    PRIMARY KEY (row_order, component_id)
) STRICT, WITHOUT ROWID;

-- Relative spread of single lots for rows without a standard error of their own.
CREATE TABLE assumed_spread (
    group_id INTEGER NOT NULL REFERENCES food_group,
    component_id INTEGER NOT NULL REFERENCES component,
    relative REAL NOT NULL CHECK (relative >= 0),
    over_all_groups INTEGER NOT NULL CHECK (over_all_groups IN (0, 1)),
    PRIMARY KEY (group_id, component_id)
) STRICT, WITHOUT ROWID;
