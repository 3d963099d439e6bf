-- The kitchen itself, and the ledger of what scales showed. The JSON of an entry is what counts; the
-- columns behind it are read from it.
CREATE TABLE kitchen (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    uuid TEXT NOT NULL CHECK (length(uuid) = 36),
    created_at TEXT NOT NULL CHECK (created_at <> '')
) STRICT;

CREATE TABLE ledger (
    sequence INTEGER PRIMARY KEY CHECK (sequence > 0),
    hash TEXT NOT NULL UNIQUE CHECK (length(hash) = 64),
    entry TEXT NOT NULL CHECK (json_valid(entry)),
    previous TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(entry) THEN coalesce(json_extract(entry, '$.previous'), '') END) VIRTUAL,
    id TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(entry) THEN json_extract(entry, '$.id') END) VIRTUAL,
    recipe TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(entry) THEN json_extract(entry, '$.recipe') END) VIRTUAL,
    indication TEXT GENERATED ALWAYS AS (
        CASE WHEN json_valid(entry) THEN json_extract(entry, '$.indication') END) VIRTUAL
) STRICT;

CREATE UNIQUE INDEX ledger_by_id ON ledger (id);
CREATE INDEX ledger_by_indication ON ledger (recipe, indication);

CREATE TRIGGER ledger_is_a_chain BEFORE INSERT ON ledger
WHEN NEW.sequence <> 1 + coalesce((SELECT max(sequence) FROM ledger), 0)
    OR json_extract(NEW.entry, '$.sequence') IS NOT NEW.sequence
    OR coalesce(json_extract(NEW.entry, '$.previous'), '')
        <> coalesce((SELECT hash FROM ledger ORDER BY sequence DESC LIMIT 1), '')
BEGIN
    SELECT RAISE(ABORT, 'a ledger entry follows the last one and names its hash');
END;

CREATE TRIGGER ledger_is_not_edited BEFORE UPDATE ON ledger
BEGIN
    SELECT RAISE(ABORT, 'a ledger entry is never edited; add one that supersedes it');
END;

CREATE TRIGGER ledger_is_not_shortened BEFORE DELETE ON ledger
BEGIN
    SELECT RAISE(ABORT, 'a ledger entry is never removed; add one that supersedes it');
END;
