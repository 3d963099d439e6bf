-- Every word of food_words with the number of foods that have it: what a slip of the hand may have
-- meant.
CREATE TABLE word (
    word TEXT PRIMARY KEY,
    foods INTEGER NOT NULL CHECK (foods > 0)
) STRICT, WITHOUT ROWID;
