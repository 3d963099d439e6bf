-- Recipes: a draft with its journal, and the revisions kept from it with the foods they pinned.
CREATE TABLE recipe (
    position INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE CHECK (id GLOB '[a-z0-9]*'),
    added_at TEXT NOT NULL CHECK (added_at <> '')
) STRICT;

-- Small, since it is written with every edit; title and document_hash are of the document after
-- the first `cursor` edits.
CREATE TABLE draft (
    recipe TEXT PRIMARY KEY REFERENCES recipe (id),
    base_revision INTEGER,
    cursor INTEGER NOT NULL CHECK (cursor >= 0),
    changed_at TEXT NOT NULL CHECK (changed_at <> ''),
    title TEXT NOT NULL,
    document_hash TEXT NOT NULL CHECK (length(document_hash) = 64),
    FOREIGN KEY (recipe, base_revision) REFERENCES revision (recipe, number)
) STRICT;

CREATE TABLE draft_base (
    recipe TEXT PRIMARY KEY REFERENCES draft (recipe),
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;

CREATE TABLE draft_edit (
    recipe TEXT NOT NULL REFERENCES draft (recipe),
    position INTEGER NOT NULL CHECK (position >= 0),
    edit TEXT NOT NULL CHECK (json_valid(edit)),
    PRIMARY KEY (recipe, position)
) STRICT, WITHOUT ROWID;

-- The position says which version of a row the kitchen used first.
CREATE TABLE food_version (
    position INTEGER PRIMARY KEY,
    hash TEXT NOT NULL UNIQUE CHECK (length(hash) = 64),
    food TEXT NOT NULL CHECK (json_valid(food)),
    table_name TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(food) THEN json_extract(food, '$.row.table') END) VIRTUAL,
    release TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(food) THEN json_extract(food, '$.row.release') END) VIRTUAL,
    number TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(food) THEN json_extract(food, '$.row.number') END) VIRTUAL
) STRICT;

CREATE INDEX food_version_by_row ON food_version (table_name, release, number);

-- What a list shows stands before the long texts.
CREATE TABLE revision (
    position INTEGER PRIMARY KEY,
    recipe TEXT NOT NULL REFERENCES recipe (id),
    number INTEGER NOT NULL CHECK (number > 0),
    parent INTEGER CHECK (parent < number),
    kept_at TEXT NOT NULL CHECK (kept_at <> ''),
    note TEXT NOT NULL,
    document_hash TEXT NOT NULL CHECK (length(document_hash) = 64),
    arithmetic INTEGER NOT NULL CHECK (arithmetic > 0),
    ledger_head TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document)),
    figures TEXT NOT NULL CHECK (json_valid(figures)),
    title TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(document) THEN coalesce(json_extract(document, '$.title'), '') END)
        VIRTUAL,
    UNIQUE (recipe, number),
    FOREIGN KEY (recipe, parent) REFERENCES revision (recipe, number)
) STRICT;

-- Written before its revision: with the revision the list is closed.
CREATE TABLE revision_food (
    recipe TEXT NOT NULL,
    number INTEGER NOT NULL,
    position INTEGER NOT NULL CHECK (position >= 0),
    version TEXT NOT NULL REFERENCES food_version (hash),
    PRIMARY KEY (recipe, number, position),
    FOREIGN KEY (recipe, number) REFERENCES revision (recipe, number)
        DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE INDEX revision_food_by_version ON revision_food (version);

CREATE TRIGGER food_version_is_added_once BEFORE INSERT ON food_version
WHEN EXISTS (SELECT 1 FROM food_version WHERE hash = NEW.hash OR position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'this food version is there already and stays as it is');
END;

CREATE TRIGGER food_version_is_not_edited BEFORE UPDATE ON food_version
BEGIN
    SELECT RAISE(ABORT, 'a food version is never edited; another content is another version');
END;

CREATE TRIGGER food_version_is_not_removed BEFORE DELETE ON food_version
BEGIN
    SELECT RAISE(ABORT, 'a food version is never removed; revisions may rest on it');
END;

CREATE TRIGGER revision_is_the_next BEFORE INSERT ON revision
WHEN NEW.number <> 1 + coalesce((SELECT max(number) FROM revision WHERE recipe = NEW.recipe), 0)
    OR EXISTS (SELECT 1 FROM revision WHERE position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'a revision follows the last one of its recipe');
END;

CREATE TRIGGER revision_is_not_edited BEFORE UPDATE ON revision
BEGIN
    SELECT RAISE(ABORT, 'a revision is never edited; keep another one');
END;

CREATE TRIGGER revision_is_not_removed BEFORE DELETE ON revision
BEGIN
    SELECT RAISE(ABORT, 'a revision is never removed');
END;

CREATE TRIGGER revision_food_is_closed BEFORE INSERT ON revision_food
WHEN EXISTS (SELECT 1 FROM revision WHERE recipe = NEW.recipe AND number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'a revision that was kept pins no further foods');
END;

CREATE TRIGGER revision_food_is_not_edited BEFORE UPDATE ON revision_food
BEGIN
    SELECT RAISE(ABORT, 'the foods of a revision are never edited');
END;

CREATE TRIGGER revision_food_is_not_removed BEFORE DELETE ON revision_food
BEGIN
    SELECT RAISE(ABORT, 'the foods of a revision are never removed');
END;
