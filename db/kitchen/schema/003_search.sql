-- The words of each draft; rowid is recipe.position. An index that is filled from the drafts.
CREATE VIRTUAL TABLE recipe_search USING fts5 (
    title,
    foods,
    note,
    steps,
    prefix = '1 2 3',
    tokenize = 'unicode61 remove_diacritics 2'
);
