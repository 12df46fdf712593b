-- A coordinator's move of a stay, so that the next one is told what changed and the last one can be taken back.
create table stay_move (
  id uuid not null,
  -- the order in which moves were kept
  kept_order bigint generated always as identity,
  -- what was moved
  stay_id uuid not null,
  -- the same stay; or, where seed lay there already, the stay that begins where it was carried to
  new_stay_id uuid not null,
  old_place_id uuid not null,
  old_first_quarter integer not null,
  old_from_day date not null,
  old_to_day date not null,
  -- null: under a light
  old_celsius integer,
  new_place_id uuid not null,
  new_first_quarter integer not null,
  new_from_day date not null,
  new_to_day date not null,
  new_celsius integer,
  -- of the new stay, right after the move
  version_after integer not null,
  -- the move that this one takes back
  takes_back uuid,
  moved_by uuid not null,
  moved_at timestamp(3) with time zone not null,
  constraint stay_move_pk primary key (id),
  constraint stay_move_stay_fk foreign key (stay_id) references stay (id),
  constraint stay_move_new_stay_fk foreign key (new_stay_id) references stay (id),
  constraint stay_move_old_place_fk foreign key (old_place_id) references place (id),
  constraint stay_move_new_place_fk foreign key (new_place_id) references place (id),
  constraint stay_move_takes_back_fk foreign key (takes_back) references stay_move (id),
  constraint stay_move_by_fk foreign key (moved_by) references member (id)
);
create index stay_move_stay on stay_move (stay_id);
create index stay_move_new_stay on stay_move (new_stay_id);
