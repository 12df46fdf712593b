-- What was seen or done, append-only. The id is made by the phone, so that sending twice stores once.
create table entry (
  id uuid not null,
  -- the order in which entries were kept, for those that were seen at the same moment
  kept_order bigint generated always as identity,
  sowing_id uuid,
  mat_id uuid,
  step varchar(16) not null,
  seen_on date not null,
  seen_at timestamp(3) with time zone not null,
  -- counts are 'so far': roots showing in a bag or seedlings up in cells, moved into cells, lost
  sprouted integer,
  moved integer,
  lost integer,
  -- the bag is done with: what has not sprouted by now is not waited for
  finished boolean not null,
  celsius numeric(4, 1),
  problem varchar(20),
  note varchar(1000) not null,
  supersedes uuid,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint entry_pk primary key (id),
  constraint entry_subject check ((sowing_id is null) <> (mat_id is null)),
  constraint entry_step check (step in ('look', 'soaked', 'sown', 'moved-to-cells', 'off-heat', 'under-light', 'first-feed',
    'potted-on', 'hardening-off', 'planted-out', 'gave-up', 'reading')),
  constraint entry_counts check (sprouted >= 0 and moved >= 0 and lost >= 0),
  constraint entry_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint entry_mat_fk foreign key (mat_id) references mat (id),
  constraint entry_made_by_fk foreign key (made_by) references member (id),
  constraint entry_supersedes_fk foreign key (supersedes) references entry (id)
);
create index entry_sowing on entry (sowing_id, seen_on);
create index entry_mat on entry (mat_id, seen_on);

create table duty (
  site_id uuid not null,
  on_day date not null,
  member_id uuid not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint duty_pk primary key (site_id, on_day),
  constraint duty_site_fk foreign key (site_id) references site (id),
  constraint duty_member_fk foreign key (member_id) references member (id),
  constraint duty_made_by_fk foreign key (made_by) references member (id)
);
