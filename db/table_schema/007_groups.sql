-- The foods of a group, best first: what a pantry lists page by page.
CREATE INDEX food_by_group ON food (group_id, row_order);
