-- What the publication of a plan changed of a mat's set-points, so that an undo can turn the mat back.
create table season_plan_warmth (
  plan_id uuid not null,
  mat_id uuid not null,
  on_day date not null,
  -- null: the mat was not set on that day
  celsius_before integer,
  celsius_set integer not null,
  constraint season_plan_warmth_pk primary key (plan_id, mat_id, on_day),
  constraint season_plan_warmth_plan_fk foreign key (plan_id) references season_plan (id),
  constraint season_plan_warmth_mat_fk foreign key (mat_id) references mat (id)
);

-- The undone plan whose room this was: offered to nobody until a coordinator says so or another plan is published.
alter table freed_space add column held_for_plan uuid;
alter table freed_space add constraint freed_space_held_fk foreign key (held_for_plan) references season_plan (id);
