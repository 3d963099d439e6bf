-- Photographs of packages, the evidence of labels, called by the hash of their bytes. A label may name
-- one that was never brought here, as when it came from another kitchen.
CREATE TABLE label_photo (
    position INTEGER PRIMARY KEY,
    hash TEXT NOT NULL UNIQUE CHECK (length(hash) = 64),
    media_type TEXT NOT NULL CHECK (media_type IN ('image/jpeg', 'image/png')),
    kept_at TEXT NOT NULL CHECK (kept_at <> ''),
    bytes BLOB NOT NULL
) STRICT;

CREATE TRIGGER label_photo_is_added_once BEFORE INSERT ON label_photo
WHEN EXISTS (SELECT 1 FROM label_photo WHERE hash = NEW.hash OR position = NEW.position)
BEGIN
    SELECT RAISE(ABORT, 'this photograph is there already and stays as it is');
END;

CREATE TRIGGER label_photo_is_not_edited BEFORE UPDATE ON label_photo
BEGIN
    SELECT RAISE(ABORT, 'a photograph is never edited; other bytes are another photograph');
END;

CREATE TRIGGER label_photo_is_not_removed BEFORE DELETE ON label_photo
BEGIN
    SELECT RAISE(ABORT, 'a photograph is never removed; labels may rest on it');
END;
