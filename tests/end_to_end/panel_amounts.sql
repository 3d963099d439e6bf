-- Amounts of one portion from portion.json, 100g.json and batch.json, tab separated, for
-- panel_lines.awk. The lower end of each amount; the grams and the number of portions follow from
-- the same component in all three.

.mode tabs
create table figure as
  select json_extract(f.value, '$.component') as component,
         json_extract(f.value, '$.basis') as basis,
         json_extract(f.value, '$.at_least') as amount
  from (select 'portion.json' as file union all select '100g.json' union all select 'batch.json') p,
       json_each(cast(readfile(p.file) as text), '$.figures') f;
create table sodium as
  select max(amount) filter (where basis = 'portion') as portion,
         max(amount) filter (where basis = '100g') as hundred,
         max(amount) filter (where basis = 'batch') as batch
  from figure where component = 'NA';

select component, printf('%!.17g', amount) from figure where basis = 'portion';
select 'household', substr(json_extract(cast(readfile('portion.json') as text), '$.per'),
                           length('per portion of ') + 1);
select 'serving_grams', 100 * portion / hundred from sodium;
select 'servings', batch / portion from sodium;
