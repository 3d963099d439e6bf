-- The first 41 components are those of the program, by place; what else the table publishes follows
-- from 100 on, without a tagname where INFOODS has none.
CREATE TABLE component (
    component_id INTEGER PRIMARY KEY,
    tagname TEXT UNIQUE,
    number TEXT UNIQUE,
    name TEXT NOT NULL CHECK (name <> ''),
    unit TEXT NOT NULL CHECK (unit <> ''),
    CHECK (component_id >= 100 OR tagname IS NOT NULL)
) STRICT;

CREATE TABLE food_group (
    group_id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE
) STRICT;

-- How a value came about, and what kind of data it rests on, in the publisher's codes.
CREATE TABLE derivation (
    derivation_id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE,
    description TEXT NOT NULL
) STRICT;

CREATE TABLE source (
    source_id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE,
    description TEXT NOT NULL
) STRICT;

-- row_order is the ranking of a search: best first. food_id is the order of the publisher's files,
-- so that their values can be written as they come. energy_kcal_per_100g and known_components
-- repeat what food_component says, for lists of hits. other_names has one name a line.
CREATE TABLE food (
    row_order INTEGER PRIMARY KEY,
    food_id INTEGER NOT NULL UNIQUE,
    number TEXT NOT NULL UNIQUE CHECK (number <> ''),
    name TEXT NOT NULL CHECK (name <> ''),
    other_names TEXT NOT NULL,
    group_id INTEGER NOT NULL REFERENCES food_group,
    -- 0 plain, 1 processed, 2 composed, 3 branded
    place INTEGER NOT NULL CHECK (place BETWEEN 0 AND 3),
    energy_kcal_per_100g REAL CHECK (energy_kcal_per_100g >= 0),
    known_components INTEGER NOT NULL CHECK (known_components BETWEEN 0 AND 41),
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
    food_id INTEGER NOT NULL,
    component_id INTEGER NOT NULL REFERENCES component,
    value_per_100g REAL NOT NULL CHECK (value_per_100g >= 0),
    standard_error_per_100g REAL CHECK (standard_error_per_100g >= 0),
    data_points INTEGER CHECK (data_points > 0),
    derivation_id INTEGER REFERENCES derivation,
    source_id INTEGER REFERENCES source,
    PRIMARY KEY (food_id, component_id)
) STRICT, WITHOUT ROWID;

-- Relative spread of single lots for rows without a standard error of their own.
CREATE TABLE assumed_spread (
    group_id INTEGER NOT NULL REFERENCES food_group,
    component_id INTEGER NOT NULL REFERENCES component,
    relative REAL NOT NULL CHECK (relative >= 0),
    over_all_groups INTEGER NOT NULL CHECK (over_all_groups IN (0, 1)),
    PRIMARY KEY (group_id, component_id)
) STRICT, WITHOUT ROWID;
