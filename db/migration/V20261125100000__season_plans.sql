-- A season plan: one computed allocation of all waiting requests; proposed, then published by a coordinator.
create table season_plan (
  id uuid not null,
  state varchar(9) not null,
  -- 'season' while a run works on it, else null: the key lets one run at a time have it, whichever node or person asks
  running varchar(6),
  seed bigint not null,
  seconds integer not null,
  -- SHA-256 of the question in words: the same question, seed and seconds give the same plan
  question_hash varchar(64) not null,
  asked_by uuid not null,
  asked_at timestamp(3) with time zone not null,
  -- when the run last said that it is alive
  beat_at timestamp(3) with time zone not null,
  cancel_asked boolean not null,
  spent_seconds integer not null,
  requests integer not null,
  placed_at_most integer not null,
  optimal boolean not null,
  -- the best plan so far, as JSON
  plan text not null,
  published_by uuid,
  published_at timestamp(3) with time zone,
  undone_by uuid,
  undone_at timestamp(3) with time zone,
  version integer not null,
  constraint season_plan_pk primary key (id),
  constraint season_plan_one_run unique (running),
  constraint season_plan_running check (running is null or running = 'season'),
  constraint season_plan_state check (state in ('running', 'proposed', 'lost', 'failed', 'published', 'undone')),
  constraint season_plan_seconds check (seconds between 5 and 300),
  constraint season_plan_asked_by_fk foreign key (asked_by) references member (id),
  constraint season_plan_published_by_fk foreign key (published_by) references member (id),
  constraint season_plan_undone_by_fk foreign key (undone_by) references member (id)
);

-- What a coordinator changed in a proposed plan by hand, by the version that it made.
create table season_plan_edit (
  plan_id uuid not null,
  version integer not null,
  words varchar(400) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint season_plan_edit_pk primary key (plan_id, version),
  constraint season_plan_edit_plan_fk foreign key (plan_id) references season_plan (id),
  constraint season_plan_edit_by_fk foreign key (made_by) references member (id)
);

-- A published stay that has not begun, and that a coordinator lets this plan move.
create table season_plan_freed (
  plan_id uuid not null,
  stay_id uuid not null,
  constraint season_plan_freed_pk primary key (plan_id, stay_id),
  constraint season_plan_freed_plan_fk foreign key (plan_id) references season_plan (id),
  constraint season_plan_freed_stay_fk foreign key (stay_id) references stay (id)
);

-- The stays that the publication of a plan made.
create table season_plan_stay (
  plan_id uuid not null,
  stay_id uuid not null,
  constraint season_plan_stay_pk primary key (plan_id, stay_id),
  constraint season_plan_stay_plan_fk foreign key (plan_id) references season_plan (id),
  constraint season_plan_stay_stay_fk foreign key (stay_id) references stay (id)
);

-- What a member is told of their own sowing when a plan is published, until they put it away.
create table plan_note (
  id uuid not null,
  plan_id uuid not null,
  member_id uuid not null,
  sowing_id uuid not null,
  placed boolean not null,
  words varchar(1000) not null,
  made_at timestamp(3) with time zone not null,
  dismissed_at timestamp(3) with time zone,
  constraint plan_note_pk primary key (id),
  constraint plan_note_plan_fk foreign key (plan_id) references season_plan (id),
  constraint plan_note_member_fk foreign key (member_id) references member (id),
  constraint plan_note_sowing_fk foreign key (sowing_id) references sowing (id)
);
create index plan_note_member on plan_note (member_id);

-- A request that its member put before or after their others; those without a row follow in the order of asking.
create table request_rank (
  sowing_id uuid not null,
  rank integer not null,
  constraint request_rank_pk primary key (sowing_id),
  constraint request_rank_sowing_fk foreign key (sowing_id) references sowing (id)
);

-- Days [from_day, to_day) on which a mat cannot be used; ended_at: it came back before they were over, on to_day.
create table mat_out (
  id uuid not null,
  mat_id uuid not null,
  from_day date not null,
  to_day date not null,
  reason varchar(200) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  ended_by uuid,
  ended_at timestamp(3) with time zone,
  constraint mat_out_pk primary key (id),
  constraint mat_out_days check (from_day <= to_day),
  constraint mat_out_mat_fk foreign key (mat_id) references mat (id),
  constraint mat_out_made_by_fk foreign key (made_by) references member (id),
  constraint mat_out_ended_by_fk foreign key (ended_by) references member (id)
);
create index mat_out_mat on mat_out (mat_id, from_day);

-- Room on a mat that a stay left before its time.
create table freed_space (
  id uuid not null,
  stay_id uuid not null,
  place_id uuid not null,
  first_quarter integer not null,
  quarters integer not null,
  from_day date not null,
  to_day date not null,
  freed_at timestamp(3) with time zone not null,
  constraint freed_space_pk primary key (id),
  constraint freed_space_days check (from_day < to_day),
  constraint freed_space_stay_fk foreign key (stay_id) references stay (id),
  constraint freed_space_place_fk foreign key (place_id) references place (id)
);
create index freed_space_to_day on freed_space (to_day);
