-- A season has three parts: what is planted out from spring on, what goes out in summer to be ripe in autumn, and what goes out
-- before the autumn's frosts to stand over winter. All that was asked for until now was counted from spring's last frost.
alter table sowing add column season_part varchar(10) default 'spring' not null;
alter table sowing add constraint sowing_season_part check (season_part in ('spring', 'autumn', 'winter'));
comment on column sowing.season_part is 'For which part of its season it is meant: spring, planted out by the last frost; autumn, ripe by the first one; winter, planted out before it to stand over winter.';
