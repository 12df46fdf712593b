-- Side-by-side trials: the same lot, sown on the same day in two or three ways.
create table trial (
  id uuid not null,
  number integer not null,
  kind varchar(6) not null,
  lot_id uuid not null,
  season integer not null,
  seeds_each integer not null,
  declared_by uuid not null,
  declared_at timestamp(3) with time zone not null,
  constraint trial_pk primary key (id),
  constraint trial_number unique (number),
  constraint trial_kind check (kind in ('method', 'heat', 'warmth', 'soak')),
  constraint trial_seeds_each check (seeds_each >= 2),
  constraint trial_lot_fk foreign key (lot_id) references lot (id),
  constraint trial_declared_by_fk foreign key (declared_by) references member (id)
);
create index trial_lot on trial (lot_id);
comment on table trial is 'A question asked of seed before it is sown: the same lot in two or three ways, so many seeds of each.';
comment on column trial.number is 'By which people call it, on labels and in the round: trial 3.';
comment on column trial.kind is 'What differs between its ways: method (cells or bag), heat (mat or room), warmth (degrees of the mat), soak (soaked or dry).';
comment on column trial.season is 'The season that the group worked towards when it was declared, by its year.';
comment on column trial.seeds_each is 'Seeds of each way in each block.';
comment on column trial.declared_by is 'Who declared it, and so asked the question.';
comment on column trial.declared_at is 'When it was declared, before anything of it was sown.';

create table trial_way (
  trial_id uuid not null,
  letter varchar(1) not null,
  method varchar(5) not null,
  warm boolean not null,
  celsius integer,
  soaked boolean not null,
  constraint trial_way_pk primary key (trial_id, letter),
  constraint trial_way_letter check (letter in ('A', 'B', 'C')),
  constraint trial_way_method check (method in ('cells', 'bag')),
  constraint trial_way_celsius check (celsius is null or warm),
  constraint trial_way_trial_fk foreign key (trial_id) references trial (id)
);
comment on table trial_way is 'One of the ways that a trial compares.';
comment on column trial_way.letter is 'A, B or C: what labels and the round call it.';
comment on column trial_way.method is 'cells or bag.';
comment on column trial_way.warm is 'Whether it lies on a mat; else in a room.';
comment on column trial_way.celsius is 'The mat’s set-point in whole °C that the way asks for. Empty: any that suits the crop.';
comment on column trial_way.soaked is 'Whether its seed is soaked the evening before; the same for all ways, unless that is the question.';

create table trial_block (
  trial_id uuid not null,
  number integer not null,
  member_id uuid not null,
  sow_on date not null,
  draw integer not null,
  dealt varchar(800) not null,
  laid_out varchar(3) not null,
  joined_at timestamp(3) with time zone not null,
  constraint trial_block_pk primary key (trial_id, number),
  constraint trial_block_number check (number >= 1),
  constraint trial_block_trial_fk foreign key (trial_id) references trial (id),
  constraint trial_block_member_fk foreign key (member_id) references member (id)
);
create index trial_block_member on trial_block (member_id);
comment on table trial_block is 'One tray or bag of each way of a trial, carried by one member and compared within itself.';
comment on column trial_block.number is 'Counts the blocks of a trial from 1.';
comment on column trial_block.member_id is 'Who carries it.';
comment on column trial_block.sow_on is 'The day on which all its ways are sown.';
comment on column trial_block.draw is 'The number from which its draw was made, so that anybody can make it again.';
comment on column trial_block.dealt is 'The draw of the seeds: the letter of the way for each, in the order in which they come out of the packet.';
comment on column trial_block.laid_out is 'The draw of the places: the letters of the ways in the order in which they are laid, from the left.';
comment on column trial_block.joined_at is 'When the draw was made.';

create table trial_sowing (
  sowing_id uuid not null,
  trial_id uuid not null,
  block integer not null,
  letter varchar(1) not null,
  constraint trial_sowing_pk primary key (sowing_id),
  constraint trial_sowing_once unique (trial_id, block, letter),
  constraint trial_sowing_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint trial_sowing_block_fk foreign key (trial_id, block) references trial_block (trial_id, number),
  constraint trial_sowing_way_fk foreign key (trial_id, letter) references trial_way (trial_id, letter)
);
comment on table trial_sowing is 'A sowing that is one way of one block of a trial.';
comment on column trial_sowing.trial_id is 'Of which trial.';
comment on column trial_sowing.block is 'The number of its block within the trial.';
comment on column trial_sowing.letter is 'The letter of its way.';
