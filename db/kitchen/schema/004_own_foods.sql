-- Foods of the cook's own. The JSON of a version is what counts; the columns behind it are read from it.
CREATE TABLE own_food_version (
    position INTEGER PRIMARY KEY,
    hash TEXT NOT NULL CHECK (length(hash) = 64),
    content TEXT NOT NULL CHECK (json_valid(content)),
    food TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(content) THEN json_extract(content, '$.food.row.number') END) VIRTUAL,
    version INTEGER GENERATED ALWAYS AS (
        CASE WHEN json_valid(content)
            THEN CAST(json_extract(content, '$.food.row.release') AS INTEGER) END) VIRTUAL
) STRICT;

CREATE UNIQUE INDEX own_food_version_by_food ON own_food_version (food, version);

-- What happened to own foods, in order: which version counts from then on, whether the food is out
-- of use, and which other one stands for it. Taking something back is another entry.
CREATE TABLE own_food_event (
    position INTEGER PRIMARY KEY,
    food TEXT NOT NULL CHECK (length(food) = 36),
    kind TEXT NOT NULL CHECK (kind IN ('counts', 'retired', 'returned', 'merged', 'parted')),
    version INTEGER,
    stays TEXT CHECK (length(stays) = 36),
    at TEXT NOT NULL CHECK (at <> ''),
    CHECK ((kind = 'counts') = (version IS NOT NULL)),
    CHECK ((kind = 'merged') = (stays IS NOT NULL))
) STRICT;

CREATE INDEX own_food_event_by_food ON own_food_event (food);

-- The rows that each draft uses: an index that is filled from the drafts.
CREATE TABLE draft_food (
    recipe TEXT NOT NULL,
    table_name TEXT NOT NULL,
    release TEXT NOT NULL,
    number TEXT NOT NULL,
    PRIMARY KEY (recipe, table_name, release, number)
) STRICT, WITHOUT ROWID;

CREATE INDEX draft_food_by_row ON draft_food (table_name, number);

CREATE TRIGGER own_food_version_is_the_next BEFORE INSERT ON own_food_version
WHEN EXISTS (SELECT 1 FROM own_food_version WHERE position = NEW.position)
    OR json_extract(NEW.content, '$.food.row.table') IS NOT 'own'
    OR CAST(json_extract(NEW.content, '$.food.row.release') AS INTEGER)
        IS NOT 1 + coalesce((SELECT max(version) FROM own_food_version
            WHERE food = json_extract(NEW.content, '$.food.row.number')), 0)
BEGIN
    SELECT RAISE(ABORT, 'a version of an own food follows the last one');
END;

CREATE TRIGGER own_food_version_is_not_edited BEFORE UPDATE ON own_food_version
BEGIN
    SELECT RAISE(ABORT, 'a version of an own food is never edited; add another one');
END;

CREATE TRIGGER own_food_version_is_not_removed BEFORE DELETE ON own_food_version
BEGIN
    SELECT RAISE(ABORT, 'a version of an own food is never removed; recipes may rest on it');
END;

CREATE TRIGGER own_food_event_is_of_a_food BEFORE INSERT ON own_food_event
WHEN EXISTS (SELECT 1 FROM own_food_event WHERE position = NEW.position)
    OR NOT EXISTS (SELECT 1 FROM own_food_version
        WHERE food = NEW.food AND version = coalesce(NEW.version, 1))
    OR (NEW.stays IS NOT NULL AND (NEW.stays = NEW.food
        OR NOT EXISTS (SELECT 1 FROM own_food_version WHERE food = NEW.stays)))
BEGIN
    SELECT RAISE(ABORT, 'what happens to an own food names versions that are there');
END;

CREATE TRIGGER own_food_event_is_not_edited BEFORE UPDATE ON own_food_event
BEGIN
    SELECT RAISE(ABORT, 'what happened to an own food is never edited; add what takes it back');
END;

CREATE TRIGGER own_food_event_is_not_removed BEFORE DELETE ON own_food_event
BEGIN
    SELECT RAISE(ABORT, 'what happened to an own food is never removed; add what takes it back');
END;
