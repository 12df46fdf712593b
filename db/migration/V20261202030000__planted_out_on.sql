-- The day on which plants went out is kept with what a sowing taught, so that predictions are held against it without its entries.
alter table sowing_result add column planted_out_on date;
comment on column sowing_result.planted_out_on is 'The day its plants went out. Empty: they have not, or nobody noted it.';

update sowing_result set planted_out_on = (
  select min(entry.seen_on) from entry
  where entry.sowing_id = sowing_result.sowing_id and entry.step = 'planted-out'
    and not exists (select 1 from entry later where later.supersedes = entry.id));
