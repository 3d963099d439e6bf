-- A second calculation of a recipe's figures that shares nothing with the program but the document
-- and the public table. It prints component, basis, value, at_least, at_most and known_share.
--
-- Run in the folder of the extracts, tests/data/end_to_end:
--   sqlite3 -bail -cmd ".parameter set :document \"'FILE'\"" :memory: ".read THIS"
-- What it does not cover (kept recipes, drip, trimming by the table and more) it refuses.

.import --csv --skip 1 usda_sr28_foods.csv food_row
.import --csv --skip 1 usda_sr28_measures.csv measure_row
.import --csv --skip 1 traits.csv trait

create table doc as select cast(readfile(:document) as text) as body;

-- A row here stops the run: the document asks for more than is written below.
create table not_covered (what text check (what is null));

-- 1. Amounts: "3/4", "½", "1 1/2", and ranges, "2-3": by the document's rule their middle, least or
-- most. Other rules say how lines to taste, optional lines and a range of pieces count.

create table rule as
  select coalesce(json_extract(body, '$.counting.to_taste'), 'left out') as to_taste,
         coalesce(json_extract(body, '$.counting.optional'), 'counted') as optional,
         coalesce(json_extract(body, '$.counting.ranges'), 'middle') as ranges,
         coalesce(json_extract(body, '$.counting.makes'), 'middle') as makes
  from doc;

create table vulgar (sign text primary key, worth real);
insert into vulgar values
  ('½', 1.0 / 2), ('¼', 1.0 / 4), ('¾', 3.0 / 4), ('⅓', 1.0 / 3), ('⅔', 2.0 / 3);

create table written as
  select distinct atom as amount from doc, json_tree(body)
  where key in ('amount', 'pieces', 'weighed_for', 'share') and type = 'text';

create table term as
  select w.amount, p.key as part, t.value as sign
  from written w,
       json_each('["' || replace(replace(w.amount, '–', '-'), '-', '","') || '"]') p,
       json_each('["' || replace(trim(p.value), ' ', '","') || '"]') t;
insert into not_covered
  select 'amount ' || amount from term
  where sign not in (select sign from vulgar) and (sign = '' or sign glob '*[^0-9./]*');

create table amount as
  select amount, min(worth) as least, max(worth) as most,
         case ranges when 'least' then min(worth) when 'most' then max(worth)
                     else (min(worth) + max(worth)) / 2 end as worth
  from rule, (select t.amount, t.part,
               sum(case when v.worth is not null then v.worth
                        when instr(t.sign, '/') > 0
                          then cast(substr(t.sign, 1, instr(t.sign, '/') - 1) as real)
                               / cast(substr(t.sign, instr(t.sign, '/') + 1) as real)
                        else cast(t.sign as real) end) as worth
        from term t left join vulgar v using (sign) group by t.amount, t.part)
  group by amount;

-- 2. Units. The inch is 2.54 cm, the US gallon 231 cubic inches, the pound 453.59237 g (NIST
-- Handbook 44, appendix C). A cup is 1/16 gallon, 16 tablespoons, 48 teaspoons, 8 fluid ounces.

create table gallon as select 231 * 2.54 * 2.54 * 2.54 as ml;
create table volume (unit text primary key, ml real);
insert into volume select 'cup', ml / 16 from gallon;
insert into volume select 'tbsp', ml / 256 from gallon;
insert into volume select 'tsp', ml / 768 from gallon;
insert into volume select 'fl_oz', ml / 128 from gallon;
insert into volume select 'pint', ml / 8 from gallon;
insert into volume select 'quart', ml / 4 from gallon;
insert into volume values ('ml', 1), ('mL', 1), ('l', 1000), ('L', 1000);
create table mass (unit text primary key, grams real);
insert into mass values
  ('g', 1), ('kg', 1000), ('mg', 0.001), ('lb', 453.59237), ('oz', 453.59237 / 16);
insert into not_covered select 'measures' from doc where json_extract(body, '$.measures') <> 'us';

-- 3. Readings: gross less tare.

create table indication as
  select json_extract(i.value, '$.id') as id, json_extract(i.value, '$.scale') as scale,
         cast(json_extract(i.value, '$.shown') as real) as shown,
         json_extract(i.value, '$.state') as state
  from doc, json_each(body, '$.indications') i;
create table vessel as
  select json_extract(v.value, '$.id') as id, json_extract(v.value, '$.scale') as scale,
         cast(json_extract(v.value, '$.tare') as real) as tare
  from doc, json_each(body, '$.vessels') v;
create table scale as
  select json_extract(s.value, '$.id') as id, m.grams as unit_grams
  from doc, json_each(body, '$.scales') s
  left join mass m on m.unit = json_extract(s.value, '$.unit');
create table reading as
  select json_extract(r.value, '$.id') as id, g.state,
         coalesce(cast(json_extract(r.value, '$.pieces') as integer), 1) as pieces,
         g.shown * gs.unit_grams
           - coalesce(t.shown * ts.unit_grams, v.tare * vs.unit_grams) as net_grams
  from doc, json_each(body, '$.readings') r
  join indication g on g.id = json_extract(r.value, '$.gross')
  join scale gs on gs.id = g.scale
  left join indication t on t.id = json_extract(r.value, '$.tare')
  left join scale ts on ts.id = t.scale
  left join vessel v on v.id = json_extract(r.value, '$.vessel')
  left join scale vs on vs.id = v.scale;
insert into not_covered select 'reading ' || id from reading where net_grams is null;

-- 4. Series: the mean of a piece is the total by the count; a ratio is the ratio of sums.

create table piece_mean as
  select json_extract(s.value, '$.id') as id, sum(r.net_grams) / sum(r.pieces) as grams
  from doc, json_each(body, '$.series') s, json_each(s.value, '$.readings') m
  join reading r on r.id = m.value
  where json_extract(s.value, '$.kind') in ('per piece', 'per measure')
  group by 1;
create table ratio as
  select json_extract(s.value, '$.id') as id, sum(a.net_grams) / sum(b.net_grams) as share
  from doc, json_each(body, '$.series') s, json_each(s.value, '$.pairs') p
  join reading a on a.id = json_extract(p.value, '$.after')
  join reading b on b.id = json_extract(p.value, '$.before')
  group by 1;

-- 5. Foods of the document. A row's trait of added sugars speaks for the row, not for a pack.

create table food as
  select json_extract(f.value, '$.id') as id,
         json_extract(f.value, '$.table.number') as number,
         json_extract(f.value, '$.label') as label,
         json_extract(f.value, '$.stated') as stated,
         coalesce(json_extract(f.value, '$.added_sugars.kind'),
                  case when json_extract(f.value, '$.label') is null then t.added end) as added,
         cast(json_extract(f.value, '$.added_sugars.per_100g') as real) as added_grams,
         coalesce(json_extract(f.value, '$.plant') or t.plant = 'yes', 0) as plant
  from doc, json_each(body, '$.foods') f
  left join trait t on t.number = json_extract(f.value, '$.table.number');
insert into not_covered
  select 'kept recipe' from doc, json_each(body, '$.foods') f
  where json_extract(f.value, '$.recipe') is not null;
insert into not_covered
  select 'table row ' || number from food
  where number is not null
    and (number not in (select ndb_no from food_row) or number not in (select number from trait));

create table serving as
  select f.id as food, cast(json_extract(f.label, '$.serving_grams') as real) as grams,
         a.worth as amount, json_extract(f.label, '$.serving.unit') as unit
  from food f join amount a on a.amount = json_extract(f.label, '$.serving.amount');
create table measure as
  select f.id as food, m.unit, m.qualifier, m.grams / m.amount as grams_each
  from food f join measure_row m on m.ndb_no = f.number;

-- How many pieces the batch makes, and how many portions.
create table yield as
  select case r.makes when 'least' then a.least when 'most' then a.most
                      else (a.least + a.most) / 2 end as pieces,
         p.worth as portion_pieces
  from doc, rule r
  join amount a on a.amount = json_extract(body, '$.makes.pieces')
  left join amount p on p.amount = json_extract(body, '$.portion.pieces');

-- 6. Ways to grams of a line: weighed, series, label, table, density, assumed; the first that is
-- open, or the one that the cook chose. Where several of the table's measures fit, the middle of
-- their range; for a density, of those with the largest volume, which is rounded least.

create table line as
  select json_extract(l.value, '$.id') as id, json_extract(l.value, '$.food') as food,
         coalesce(a.worth, 1) as amount, json_extract(l.value, '$.unit') as unit,
         coalesce(json_extract(l.value, '$.unit'), json_extract(l.value, '$.piece')) as word,
         coalesce(json_extract(l.value, '$.to_taste'), 0) as to_taste,
         coalesce(json_extract(l.value, '$.optional'), 0) as optional,
         json_extract(l.value, '$.size') as size, json_extract(l.value, '$.way') as way,
         json_extract(l.value, '$.series.id') as series, json_extract(l.value, '$.trim') as trim,
         cast(json_extract(l.value, '$.assumed.grams') as real) as assumed_grams,
         w.worth as weighed_for, json_extract(l.value, '$.weighed') as weighed,
         json_extract(l.value, '$.as_purchased') as as_purchased
  from doc, json_each(body, '$.lines') l
  left join amount a on a.amount = json_extract(l.value, '$.amount')
  left join amount w on w.amount = json_extract(l.value, '$.weighed_for');
insert into not_covered
  select m.key || ': ' || json_extract(l.value, '$.id')
  from doc, json_each(body, '$.lines') l, json_each(l.value) m
  where m.key in ('fill', 'each', 'equals', 'yield', 'density', 'state');

-- A pinch, 1/16 teaspoon, for each portion.
update line set amount = y.pieces / y.portion_pieces / 16, unit = 'tsp', word = 'tsp'
from yield y, rule r
where line.to_taste and weighed is null and assumed_grams is null and r.to_taste = 'a pinch a portion';
insert into not_covered
  select 'pinch a portion in grams' from yield, rule
  where portion_pieces is null and to_taste = 'a pinch a portion';
insert into not_covered select 'as purchased: ' || id from line where as_purchased;
insert into not_covered select 'trim: ' || id from line where trim is not null and weighed is null;

create table way (line text, rank integer, name text, grams real);
insert into way
  select l.id, 1, 'weighed',
         sum(case r.state when 'edible portion' then r.net_grams
                          when 'as purchased' then r.net_grams * q.share end)
           * l.amount / coalesce(l.weighed_for, l.amount)
  from line l, json_each(l.weighed) w
  join reading r on r.id = w.value left join ratio q on q.id = l.trim
  group by l.id
  having count(*) = count(case r.state when 'edible portion' then 1
                                       when 'as purchased' then q.share end);
insert into not_covered
  select 'state weighed: ' || id from line
  where weighed is not null and id not in (select line from way);
insert into way
  select l.id, 2, 'series', l.amount * m.grams from line l join piece_mean m on m.id = l.series;
insert into way
  select l.id, 3, 'label', l.amount / s.amount * s.grams
  from line l join serving s on s.food = l.food and s.unit = l.word;
insert into way
  select l.id, 3, 'label', l.amount * lv.ml / (s.amount * sv.ml) * s.grams
  from line l join serving s on s.food = l.food and s.unit <> l.word
  join volume lv on lv.unit = l.unit join volume sv on sv.unit = s.unit;
insert into way
  select l.id, 4, 'table', l.amount * (min(m.grams_each) + max(m.grams_each)) / 2
  from line l join measure m on m.food = l.food and m.unit = l.word
   and (l.size is null or m.qualifier = l.size)
  group by l.id;
create table dense as
  select l.id as line, l.amount * lv.ml as ml, m.grams_each / mv.ml as grams_per_ml,
         rank() over (partition by l.id order by mv.ml desc) as place
  from line l join volume lv on lv.unit = l.unit join measure m on m.food = l.food
  join volume mv on mv.unit = m.unit
  where l.id not in (select line from way where name = 'table')
    and (l.size is null or m.qualifier = l.size);
insert into way
  select line, 5, 'density', ml * (min(grams_per_ml) + max(grams_per_ml)) / 2
  from dense where place = 1 group by line;
insert into way
  select l.id, 6, 'assumed', coalesce(l.assumed_grams, l.amount * m.grams)
  from line l left join mass m on m.unit = l.unit
  where l.assumed_grams is not null or m.grams is not null;

-- What is left out by the rules needs no weight.
create table used as
  select l.id as line, l.food,
         (select w.grams from way w where w.line = l.id and (l.way is null or l.way = w.name)
          order by w.rank limit 1) as grams,
         case when not l.optional then 1.0 when r.optional = 'left out' then 0.0
              when r.optional = 'between' then 0.5 else 1.0 end as counted
  from line l, rule r;
update used set grams = 0, counted = 0
where grams is null and (counted = 0 or line in (select id from line where to_taste));
insert into not_covered select 'no way to grams: ' || line from used where grams is null;

-- 7. Residues, one after the other: each line of a mixture loses the same share of what was in,
-- which is all that is left of it, or the share that is named of it as used. Cooking water is
-- water; what carries nothing is only weight.

create table residue as
  select r.key as id, r.value as body,
         (select sum(x.net_grams) from json_each(r.value, '$.readings') i
          join reading x on x.id = i.value) as grams
  from doc, json_each(doc.body, '$.residues') r;
insert into not_covered
  select 'residue' from residue
  where coalesce(json_extract(body, '$.mixture'), json_extract(body, '$.line'),
                 json_extract(body, '$.water'), json_extract(body, '$.not_eaten')) is null;
create table loss as
  select row_number() over (order by id) as place, id, grams, body
  from residue
  where json_extract(body, '$.mixture') is not null or json_extract(body, '$.line') is not null;
create table loser as
  select o.place, u.line, u.grams * a.worth as part
  from loss o, used u
  left join json_each(o.body, '$.shares') s on json_extract(s.value, '$.line') = u.line
  left join amount a on a.amount = json_extract(s.value, '$.share')
  where u.line = json_extract(o.body, '$.line')
     or u.line in (select value from json_each(o.body, '$.mixture'));

-- What is left of every line after so many residues.
create table remains as
  with recursive step(place, remains) as (
    select 0, (select json_group_object(line, grams) from used)
    union all
    select o.place,
           (select json_group_object(r.key, r.value - coalesce(coalesce(l.part, r.value)
              * case when l.line is not null then 1 end * o.grams
              / (select sum(coalesce(m.part, x.value)) from json_each(s.remains) x
                 join loser m on m.line = x.key where m.place = o.place), 0))
            from json_each(s.remains) r
            left join loser l on l.line = r.key and l.place = o.place)
    from step s join loss o on o.place = s.place + 1)
  select remains from step order by place desc limit 1;

create table eaten as
  select u.line, u.food, r.value * u.counted as grams
  from used u, remains m, json_each(m.remains) r
  where r.key = u.line and u.counted > 0;
create table without as
  select total(case when json_extract(body, '$.water') then grams end) as water,
         total(case when json_extract(body, '$.not_eaten') then grams end) as dead_weight
  from residue;

-- 8. Composition per 100 g: stated, else the label's fraction, else the table. Then the gaps.

create table component (tag text primary key, place integer);
insert into component
  select value, key from json_each('["WATER","ASH","ENERC_KCAL","ENERC_KJ","PROCNT","FAT","FASAT",
    "FATRN","FAMS","FAPU","CHOLE","CHOCDF","FIBTG","SUGAR","SUGAD","NA","CA","FE","K","VITD",
    "VITA_RAE","VITC","THIA","RIBF","NIA","VITB6A","FOL","FOLDFE","VITB12","VITK1","TOCPHA","MG",
    "P","ZN","CU","MN","SE","CHOLN","PANTAC","CAFFN","ALC"]');

create table published as
  select ndb_no as number, cell.key as tag, cast(cell.value as real) as per_100g
  from food_row, json_each(json_object(
    'WATER', "WATER (g)", 'ASH', "ASH (g)", 'ENERC_KCAL', "ENERC_KCAL (kcal)",
    'ENERC_KJ', "ENERC_KJ (kJ)", 'PROCNT', "PROCNT (g)", 'FAT', "FAT (g)", 'FASAT', "FASAT (g)",
    'FATRN', "FATRN (g)", 'FAMS', "FAMS (g)", 'FAPU', "FAPU (g)", 'CHOLE', "CHOLE (mg)",
    'CHOCDF', "CHOCDF (g)", 'FIBTG', "FIBTG (g)", 'SUGAR', "SUGAR (g)", 'NA', "NA (mg)",
    'CA', "CA (mg)", 'FE', "FE (mg)", 'K', "K (mg)", 'VITD', "VITD (µg)",
    'VITA_RAE', "VITA_RAE (µg)", 'VITC', "VITC (mg)", 'THIA', "THIA (mg)", 'RIBF', "RIBF (mg)",
    'NIA', "NIA (mg)", 'VITB6A', "VITB6A (mg)", 'FOL', "FOL (µg)", 'FOLDFE', "FOLDFE (µg)",
    'VITB12', "VITB12 (µg)", 'VITK1', "VITK1 (µg)", 'TOCPHA', "TOCPHA (mg)", 'MG', "MG (mg)",
    'P', "P (mg)", 'ZN', "ZN (mg)", 'CU', "CU (mg)", 'MN', "MN (mg)", 'SE', "SE (µg)",
    'CHOLN', "CHOLN (mg)", 'PANTAC', "PANTAC (mg)", 'CAFFN', "CAFFN (mg)", 'ALC', "ALC (g)")) cell
  where cell.value <> '';

create table printed as
  select f.id as food, json_extract(d.value, '$.component') as tag,
         json_extract(d.value, '$.printed') as text
  from food f, json_each(f.label, '$.declares') d;
insert into not_covered select 'printed ' || text from printed where text glob '*[^0-9.]*';

-- What a printed amount may stand for, 21 CFR 101.9(c)(2), (6) and (7), per 100 g; a part never weighs
-- more than its serving.
create table stands_for as
  select r.food, r.tag, 100 * r.least / s.grams as least, 100 * min(r.most, s.grams) / s.grams as most
  from (select food, tag,
               case when tag like 'FA%' then
                      case when n = 0 then 0 when n = 0.5 then 0.5 when n <= 5 then n - 0.25
                           else n - 0.5 end
                    else case when n = 0 then 0 else n - 0.5 end end as least,
               case when tag like 'FA%' and n > 0 and n < 5 then n + 0.25 else n + 0.5 end as most
        from (select food, tag, cast(text as real) as n from printed
              where tag in ('FAT', 'FASAT', 'FATRN', 'FAMS', 'FAPU', 'CHOCDF', 'FIBTG', 'SUGAR',
                            'SUGAD', 'PROCNT'))) r
  join serving s on s.food = r.food;

create table content as
  select f.id as food, c.tag,
         coalesce((select cast(json_extract(s.value, '$.per_100g') as real)
                   from json_each(f.stated) s where json_extract(s.value, '$.component') = c.tag),
                  100 * cast(p.text as real) / s.grams,
                  t.per_100g) as per_100g,
         cast(null as real) as low, cast(null as real) as high
  from food f join component c
  left join printed p on p.food = f.id and p.tag = c.tag
  left join serving s on s.food = f.id
  left join published t on t.number = f.number and t.tag = c.tag;

-- Trans fat of an unhydrogenated plant food is zero by kind.
update content set per_100g = 0
where tag = 'FATRN' and per_100g is null and food in (select id from food where plant);

-- Added sugars: none, all of the food's sugars, a stated amount; "between" is bounded below.
update content set per_100g =
  (select case f.added when 'none' then 0 when 'stated' then f.added_grams
                       when 'all' then (select s.per_100g from content s
                                        where s.food = content.food and s.tag = 'SUGAR') end
   from food f where f.id = content.food)
where tag = 'SUGAD' and per_100g is null;

-- The two units of energy are one fact: where a label or the cook gives energy in one unit only, the
-- table row, which is of another lot, gives neither.
create table energy_given as
  select food, tag from printed where tag in ('ENERC_KCAL', 'ENERC_KJ') union
  select f.id, json_extract(s.value, '$.component') from food f, json_each(f.stated) s
  where json_extract(s.value, '$.component') in ('ENERC_KCAL', 'ENERC_KJ');
update content set per_100g = null
where tag in ('ENERC_KCAL', 'ENERC_KJ')
  and food in (select food from energy_given)
  and (food, tag) not in (select food, tag from energy_given);

-- Energy in the other unit where only one is given: 1 kcal is 4.184 kJ.
update content set per_100g = 4.184 * (select o.per_100g from content o
                                       where o.food = content.food and o.tag = 'ENERC_KCAL')
where tag = 'ENERC_KJ' and per_100g is null;
update content set per_100g = (select o.per_100g from content o
                               where o.food = content.food and o.tag = 'ENERC_KJ') / 4.184
where tag = 'ENERC_KCAL' and per_100g is null;

-- A missing part is at least 0 and at most what its parent leaves: the most the parent may be less the
-- least the other parts may be, where a label prints them. The proximates' parent is the
-- 100 g themselves. A part that can only be zero is known.
update content set low = per_100g, high = per_100g;
create table part (parent text, tag text);
insert into part values
  ('100 g', 'WATER'), ('100 g', 'ASH'), ('100 g', 'PROCNT'), ('100 g', 'FAT'), ('100 g', 'CHOCDF'),
  ('100 g', 'ALC'), ('FAT', 'FASAT'), ('FAT', 'FATRN'), ('FAT', 'FAMS'), ('FAT', 'FAPU'),
  ('CHOCDF', 'FIBTG'), ('CHOCDF', 'SUGAR'), ('SUGAR', 'SUGAD');
create table level (parent text, place integer);
insert into level values ('100 g', 1), ('FAT', 2), ('CHOCDF', 2), ('SUGAR', 3);

create view leaves as
  select p.tag, w.food,
         max(0, case p.parent when '100 g' then 100 else
                  (select coalesce(f.most, c.high) from content c left join stands_for f using (food, tag)
                   where c.food = w.food and c.tag = p.parent) end
                - (select total(coalesce(f.least, c.per_100g)) from content c
                   left join stands_for f using (food, tag) join part q on q.tag = c.tag
                   where c.food = w.food and q.parent = p.parent)) as most, v.place
  from part p join level v using (parent), (select id as food from food) w;
update content set low = 0,
  high = (select most from leaves l where l.food = content.food and l.tag = content.tag)
where per_100g is null and tag in (select tag from leaves where place = 1);
update content set low = 0,
  high = (select most from leaves l where l.food = content.food and l.tag = content.tag)
where per_100g is null and tag in (select tag from leaves where place = 2);
update content set low = 0,
  high = (select most from leaves l where l.food = content.food and l.tag = content.tag)
where per_100g is null and tag in (select tag from leaves where place = 3);
update content set low = 0 where low is null;
update content set per_100g = 0 where per_100g is null and high = 0;

-- 9. The batch, and what it is per.

create table dish as
  select (select sum(net_grams) from json_each(body, '$.cooked.readings') i
          join reading r on r.id = i.value)
         - (select total(net_grams) from json_each(body, '$.cooked.not_eaten') i
            join reading r on r.id = i.value) as cooked_grams,
         (select sum(grams) from eaten) - w.water - w.dead_weight as eaten_grams,
         y.pieces, y.portion_pieces as portion,
         cast(json_extract(body, '$.portion.grams') as real) as portion_grams
  from doc, without w, yield y;

create table batch as
  select c.tag, total(c.per_100g * e.grams) / 100 as value,
         total(c.low * e.grams) / 100 as at_least,
         case when count(*) = count(c.high) then total(c.high * e.grams) / 100 end as at_most,
         max(0, 1 - total(case when c.per_100g is null then e.grams end) / d.eaten_grams)
           as known_share
  from eaten e join content c using (food), dish d group by c.tag;

-- Poured off, and gained or lost by the dish in cooking, is water.
create table change as
  select coalesce(d.cooked_grams - d.eaten_grams, 0) - w.water as grams from dish d, without w;
update batch set value = max(0, value + c.grams), at_least = max(0, at_least + c.grams),
                 at_most = max(0, at_most + c.grams)
from change c where tag = 'WATER';

create table basis as
  select 'piece' as name, 1 as place, 1 / pieces as factor from dish union all
  select 'portion', 2, coalesce(portion / pieces, portion_grams / cooked_grams) from dish union all
  select '100g', 3, 100 / coalesce(cooked_grams, eaten_grams) from dish union all
  select 'batch', 4, 1.0 from dish;

create table figure as
  select b.tag as component, s.name as basis, b.value * s.factor as value,
         b.at_least * s.factor as at_least, b.at_most * s.factor as at_most, b.known_share,
         c.place, s.place as basis_place
  from batch b join component c using (tag), basis s;

.mode csv
.headers on
select component, basis, value, at_least, at_most, known_share
from figure order by basis_place, place;
