-- What a withdrawal gave up, so that it can be taken back for a day.
create table withdrawal (
  id uuid not null,
  sowing_id uuid not null,
  stage_before varchar(16) not null,
  -- null: it asked for no space
  request_before varchar(9),
  reason_before varchar(400) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  taken_back_by uuid,
  taken_back_at timestamp(3) with time zone,
  constraint withdrawal_pk primary key (id),
  constraint withdrawal_taken_back check ((taken_back_by is null) = (taken_back_at is null)),
  constraint withdrawal_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint withdrawal_made_by_fk foreign key (made_by) references member (id),
  constraint withdrawal_taken_back_by_fk foreign key (taken_back_by) references member (id)
);
create index withdrawal_sowing on withdrawal (sowing_id);

-- Where it was to lie, over days [from_day, to_day).
create table withdrawal_stay (
  withdrawal_id uuid not null,
  stay_id uuid not null,
  place_id uuid not null,
  first_quarter integer not null,
  quarters integer not null,
  from_day date not null,
  to_day date not null,
  -- null: under a light
  celsius integer,
  constraint withdrawal_stay_pk primary key (withdrawal_id, stay_id),
  constraint withdrawal_stay_withdrawal_fk foreign key (withdrawal_id) references withdrawal (id),
  constraint withdrawal_stay_stay_fk foreign key (stay_id) references stay (id),
  constraint withdrawal_stay_place_fk foreign key (place_id) references place (id)
);
