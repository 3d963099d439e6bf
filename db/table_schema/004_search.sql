-- The words of each food; rowid is food.row_order, so rows come out best first.
CREATE VIRTUAL TABLE food_words USING fts5 (
    name,
    other_names,
    content = '',
    prefix = '1 2 3',
    tokenize = 'unicode61 remove_diacritics 2'
);
