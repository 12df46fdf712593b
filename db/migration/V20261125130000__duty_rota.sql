-- On which weekdays a member can look at a site; 1 is Monday. Without a row somebody is not on the rota.
create table duty_willing (
  member_id uuid not null,
  site_id uuid not null,
  weekday integer not null,
  constraint duty_willing_pk primary key (member_id, site_id, weekday),
  constraint duty_willing_weekday check (weekday between 1 and 7),
  constraint duty_willing_member_fk foreign key (member_id) references member (id),
  constraint duty_willing_site_fk foreign key (site_id) references site (id)
);

-- Days on which a member cannot look anywhere; the first and the last are both among them.
create table duty_away (
  id uuid not null,
  member_id uuid not null,
  first_day date not null,
  last_day date not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint duty_away_pk primary key (id),
  constraint duty_away_order check (first_day <= last_day),
  constraint duty_away_member_fk foreign key (member_id) references member (id),
  constraint duty_away_made_by_fk foreign key (made_by) references member (id)
);
create index duty_away_member on duty_away (member_id, last_day);

-- How a site is looked after. A site without a row has its checks done by 18:00 and is not looked at together with another.
create table duty_site (
  site_id uuid not null,
  -- minutes since midnight, group time; null: no hour
  done_by_minute integer,
  -- whoever looks here can look at another such site on the same day
  together boolean not null,
  constraint duty_site_pk primary key (site_id),
  constraint duty_site_minute check (done_by_minute between 0 and 1439),
  constraint duty_site_site_fk foreign key (site_id) references site (id)
);

-- Who looks when the person on duty does not.
create table duty_stand_in (
  site_id uuid not null,
  on_day date not null,
  member_id uuid not null,
  constraint duty_stand_in_pk primary key (site_id, on_day),
  constraint duty_stand_in_site_fk foreign key (site_id) references site (id),
  constraint duty_stand_in_member_fk foreign key (member_id) references member (id)
);

create table duty_swap (
  id uuid not null,
  site_id uuid not null,
  on_day date not null,
  asked_by uuid not null,
  asked_at timestamp(3) with time zone not null,
  -- null: anyone
  asked_of uuid,
  -- the day of whoever is asked that the asker takes in exchange; null: none
  return_site_id uuid,
  return_day date,
  state varchar(10) not null,
  taken_by uuid,
  ended_at timestamp(3) with time zone,
  constraint duty_swap_pk primary key (id),
  constraint duty_swap_state check (state in ('open', 'taken', 'declined', 'withdrawn', 'overtaken')),
  constraint duty_swap_taken check ((state = 'taken') = (taken_by is not null)),
  constraint duty_swap_return check ((return_site_id is null) = (return_day is null)),
  constraint duty_swap_return_asks_one check (return_day is null or asked_of is not null),
  constraint duty_swap_site_fk foreign key (site_id) references site (id),
  constraint duty_swap_return_site_fk foreign key (return_site_id) references site (id),
  constraint duty_swap_asked_by_fk foreign key (asked_by) references member (id),
  constraint duty_swap_asked_of_fk foreign key (asked_of) references member (id),
  constraint duty_swap_taken_by_fk foreign key (taken_by) references member (id)
);
create index duty_swap_day on duty_swap (on_day, site_id);

-- Who has said no to a swap that anyone may take.
create table duty_swap_refusal (
  swap_id uuid not null,
  member_id uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint duty_swap_refusal_pk primary key (swap_id, member_id),
  constraint duty_swap_refusal_swap_fk foreign key (swap_id) references duty_swap (id),
  constraint duty_swap_refusal_member_fk foreign key (member_id) references member (id)
);
