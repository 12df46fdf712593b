-- Whether what comes off the heat is to go under the group's lights; false: it goes home.
alter table space_request add column under_light boolean default false not null;

-- Whether a plan places only what gets a place under a light after the mat as well.
alter table season_plan add column with_light boolean default false not null;

-- Where a published stay lay before the publication of a plan moved it or took it away, so that an undo can lay it there again.
create table season_plan_before (
  plan_id uuid not null,
  -- the stay as it was
  stay_id uuid not null,
  place_id uuid not null,
  first_quarter integer not null,
  quarters integer not null,
  from_day date not null,
  to_day date not null,
  -- null: under a light
  celsius integer,
  constraint season_plan_before_pk primary key (plan_id, stay_id),
  constraint season_plan_before_plan_fk foreign key (plan_id) references season_plan (id),
  constraint season_plan_before_stay_fk foreign key (stay_id) references stay (id),
  constraint season_plan_before_place_fk foreign key (place_id) references place (id)
);
