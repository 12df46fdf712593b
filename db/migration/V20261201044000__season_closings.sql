-- A season is closed, and the next opened. What nobody wrote anything of by then ends without being taken for a loss.
alter table sowing drop constraint sowing_stage;
alter table sowing add constraint sowing_stage check (stage in ('planned', 'chilled', 'soaked', 'sown', 'sprouting', 'in-cells',
  'emerged', 'under-light', 'fed', 'potted-on', 'hardening-off', 'planted-out', 'given-up', 'not-recorded', 'withdrawn'));
alter table entry drop constraint entry_step;
alter table entry add constraint entry_step check (step in ('look', 'chilled', 'soaked', 'sown', 'moved-to-cells', 'off-heat',
  'under-light', 'first-feed', 'potted-on', 'trimmed', 'hardening-off', 'planted-out', 'gave-up', 'not-recorded', 'reading', 'undone'));

create table season_closing (
  id uuid not null,
  season integer not null,
  standing integer,
  closed_by uuid not null,
  closed_at timestamp(3) with time zone not null,
  taken_back_by uuid,
  taken_back_at timestamp(3) with time zone,
  next_season integer,
  opened_by uuid,
  opened_at timestamp(3) with time zone,
  asked integer not null,
  members integer not null,
  sown integer not null,
  withdrawn integer not null,
  going_on integer not null,
  seeds integer not null,
  counted integer not null,
  came integer not null,
  plants_out integer not null,
  plants_given integer not null,
  seedlings_lost integer not null,
  given_up integer not null,
  not_recorded integer not null,
  constraint season_closing_pk primary key (id),
  constraint season_closing_once unique (standing),
  constraint season_closing_standing check (standing is null or standing = season),
  constraint season_closing_next check (next_season is null or next_season > season),
  constraint season_closing_closed_by_fk foreign key (closed_by) references member (id),
  constraint season_closing_taken_back_by_fk foreign key (taken_back_by) references member (id),
  constraint season_closing_opened_by_fk foreign key (opened_by) references member (id)
);
comment on table season_closing is 'A season that a coordinator closed, with its figures as they were then, and which season was opened after it.';
comment on column season_closing.season is 'The season that was closed, named by its year of planting out.';
comment on column season_closing.standing is 'The season again while the closing stands: the key keeps a season from being closed twice. Empty: it was taken back.';
comment on column season_closing.closed_by is 'Who closed it.';
comment on column season_closing.closed_at is 'When.';
comment on column season_closing.taken_back_by is 'Who took the closing back. Empty: it stands.';
comment on column season_closing.taken_back_at is 'When. Empty: the closing stands.';
comment on column season_closing.next_season is 'The season that was opened after it. Empty: none yet.';
comment on column season_closing.opened_by is 'Who opened it. Empty: not open yet.';
comment on column season_closing.opened_at is 'When. Empty: not yet.';
comment on column season_closing.asked is 'Sowings that were asked for.';
comment on column season_closing.members is 'How many members sowed.';
comment on column season_closing.sown is 'Sowings that were sown.';
comment on column season_closing.withdrawn is 'Sowings that were withdrawn before they were sown.';
comment on column season_closing.going_on is 'Sowings that go on beyond the season.';
comment on column season_closing.seeds is 'Seeds that were sown.';
comment on column season_closing.counted is 'Seeds of sowings that were counted and are waited for no longer.';
comment on column season_closing.came is 'How many of the counted came up, or showed a root.';
comment on column season_closing.plants_out is 'Plants that went out into their growers'' gardens.';
comment on column season_closing.plants_given is 'Plants that were handed over to other members.';
comment on column season_closing.seedlings_lost is 'Seedlings that were lost.';
comment on column season_closing.given_up is 'Sowings that were given up.';
comment on column season_closing.not_recorded is 'Sown, or not known to be, and closed without anybody knowing what became of them.';
