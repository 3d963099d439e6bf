-- The bench. Where the ledger ends, beside the ledger itself: entries that go missing at its end show,
-- also where no revision saw them.
CREATE TABLE ledger_end (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    sequence INTEGER NOT NULL CHECK (sequence >= 0),
    hash TEXT NOT NULL
) STRICT;

INSERT INTO ledger_end VALUES (1, coalesce((SELECT max(sequence) FROM ledger), 0),
    coalesce((SELECT hash FROM ledger ORDER BY sequence DESC LIMIT 1), ''));

-- An end that was not there any more when the ledger went on with entry `next`.
CREATE TABLE ledger_lost (
    position INTEGER PRIMARY KEY,
    sequence INTEGER NOT NULL,
    hash TEXT NOT NULL,
    next INTEGER NOT NULL
) STRICT;

CREATE TRIGGER ledger_end_follows AFTER INSERT ON ledger
BEGIN
    INSERT INTO ledger_lost (sequence, hash, next)
        SELECT sequence, hash, NEW.sequence FROM ledger_end
        WHERE sequence <> NEW.sequence - 1
            OR hash <> coalesce(json_extract(NEW.entry, '$.previous'), '');
    UPDATE ledger_end SET sequence = NEW.sequence, hash = NEW.hash;
END;

-- Indexes of the ledger: they are filled from its entries, and can be filled anew. No generated
-- columns, since foods are compared without regard to letter case, which SQL knows of ASCII only, and
-- since an entry would be parsed once more for each of them wherever SQLite looks at the table.

-- Entry `sequence` names the entry `named`: it speaks of it (refers_to), or it weighed with it (its
-- tare, what the jar showed before, what went in).
CREATE TABLE ledger_reference (
    named INTEGER NOT NULL,
    speaks INTEGER NOT NULL CHECK (speaks IN (0, 1)),
    sequence INTEGER NOT NULL,
    PRIMARY KEY (named, speaks, sequence)
) STRICT, WITHOUT ROWID;

CREATE INDEX ledger_reference_by_entry ON ledger_reference (sequence);

-- Entries of the kinds Scale, Checked and Vessel.
CREATE TABLE ledger_equipment (
    sequence INTEGER PRIMARY KEY
) STRICT;

-- Yield series; `what` as the newest entry calls the food, `folded` without regard to letter case.
CREATE TABLE series (
    id INTEGER PRIMARY KEY,
    folded TEXT NOT NULL,
    kind TEXT NOT NULL,
    counted TEXT NOT NULL,
    what TEXT NOT NULL,
    readings INTEGER NOT NULL CHECK (readings > 0),
    newest INTEGER NOT NULL,
    UNIQUE (folded, kind, counted)
) STRICT;

CREATE TABLE series_entry (
    series INTEGER NOT NULL REFERENCES series (id),
    sequence INTEGER NOT NULL,
    PRIMARY KEY (series, sequence)
) STRICT, WITHOUT ROWID;

CREATE TABLE series_tag (
    series INTEGER NOT NULL REFERENCES series (id),
    tag TEXT NOT NULL,
    PRIMARY KEY (series, tag)
) STRICT, WITHOUT ROWID;
