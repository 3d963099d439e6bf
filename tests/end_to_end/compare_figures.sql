-- Compares the program's figures (:figures, an array of its JSON answers) with the rows of the
-- second calculation (:second, CSV with a header, read into a table "second" before this).
-- Prints one line for each pair that is apart and for each that is missing; then how many agreed.

create table first as
  select json_extract(f.value, '$.component') as component,
         json_extract(f.value, '$.basis') as basis,
         json_extract(f.value, '$.value') as value, json_extract(f.value, '$.at_least') as at_least,
         json_extract(f.value, '$.at_most') as at_most,
         json_extract(f.value, '$.known_share') as known_share
  from json_each(cast(readfile(:figures) as text)) page, json_each(page.value, '$.figures') f;

create table both as
  select component, basis, name, one, other
  from (select f.component, f.basis, k.name,
               case k.name when 'value' then f.value when 'at_least' then f.at_least
                           when 'at_most' then f.at_most else f.known_share end as one,
               nullif(case k.name when 'value' then s.value when 'at_least' then s.at_least
                                  when 'at_most' then s.at_most else s.known_share end, '') as other
        from first f join second s using (component, basis),
             (select 'value' as name union all select 'at_least' union all select 'at_most'
              union all select 'known_share') k);

create table apart as
  select * from both
  where (one is null) <> (other is null)
     or abs(one - other) > max(1e-12, 1e-9 * max(abs(one), abs(other)));

select printf('%s of %s per %s: the program says %s, the second calculation %s', name, component,
              basis, coalesce(one, 'no bound'), coalesce(other, 'no bound')) from apart;
select printf('%d of %d numbers agree', (select count(*) from both) - (select count(*) from apart),
              41 * 4 * 4);
