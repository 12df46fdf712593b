-- What a sowing taught once it is over, or once no more of its seed is waited for: kept beside its entries, so that whoever learns
-- from five seasons reads a row and not everything that was seen.
create table sowing_result (
  sowing_id uuid not null,
  crop_id varchar(40) not null,
  lot_id uuid not null,
  season integer not null,
  method varchar(5) not null,
  seeds integer not null,
  sown_on date,
  came_up integer,
  was_up integer,
  lived integer,
  half_after_days integer,
  half_by_days integer,
  mean_celsius double precision,
  warmth_open boolean not null,
  constraint sowing_result_pk primary key (sowing_id),
  constraint sowing_result_sowing_fk foreign key (sowing_id) references sowing (id)
);
create index sowing_result_lot on sowing_result (lot_id);
create index sowing_result_season on sowing_result (season);

comment on table sowing_result is 'What a sowing taught of seed and seedlings, worked out from its entries whenever one changes it. The program can make it anew.';
comment on column sowing_result.crop_id is 'The crop of the sowing: a word of the list of crops.';
comment on column sowing_result.lot_id is 'The lot it was sown from.';
comment on column sowing_result.season is 'The season of the sowing.';
comment on column sowing_result.method is 'How it was sown: cells or bag.';
comment on column sowing_result.seeds is 'How many seeds were sown.';
comment on column sowing_result.sown_on is 'The day it was sown. Empty: nobody noted it.';
comment on column sowing_result.came_up is 'How many of the seeds came up. Empty: it is not over, nobody counted, or an accident ended it.';
comment on column sowing_result.was_up is 'Seedlings that were up. Empty: it is not known yet how many of them lived, or none was up.';
comment on column sowing_result.lived is 'How many of those lived until they went out. Empty: as for was_up.';
comment on column sowing_result.half_after_days is 'Days from sowing to the last look at which fewer than half of what came had come. Empty: it is not known when half had come.';
comment on column sowing_result.half_by_days is 'Days from sowing to the first look at which half of what came had come. Empty: it is not known when half had come.';
comment on column sowing_result.mean_celsius is 'The mean set-point of the mats it lay on, °C. Empty: it lay on none, or that may still change.';
comment on column sowing_result.warmth_open is 'Whether days on a mat still lay ahead when this was worked out, so that its warmth is asked of the mats.';
