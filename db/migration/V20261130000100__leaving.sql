-- Somebody who left, with what they left and what became of it, so that it can be taken back for a day.
create table leaving (
  id uuid not null,
  member_id uuid not null,
  role_before varchar(12) not null,
  -- who takes over what is handed over; null: nothing is
  receiver_id uuid,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  undone_by uuid,
  undone_at timestamp(3) with time zone,
  constraint leaving_pk primary key (id),
  constraint leaving_role check (role_before in ('member', 'coordinator')),
  constraint leaving_undone check ((undone_by is null) = (undone_at is null)),
  constraint leaving_member_fk foreign key (member_id) references member (id),
  constraint leaving_receiver_fk foreign key (receiver_id) references member (id),
  constraint leaving_made_by_fk foreign key (made_by) references member (id),
  constraint leaving_undone_by_fk foreign key (undone_by) references member (id)
);
create index leaving_of_member on leaving (member_id, made_at);

create table leaving_thing (
  leaving_id uuid not null,
  kind varchar(8) not null,
  -- the sowing, the lot, or the site and day of a turn on duty
  thing varchar(60) not null,
  fate varchar(12) not null,
  -- of a lot that was taken along: the seeds left and offered before; null: nobody had counted
  seeds_before integer,
  offered_before integer,
  constraint leaving_thing_pk primary key (leaving_id, kind, thing),
  constraint leaving_thing_kind check (kind in ('tray', 'request', 'turn', 'lot')),
  constraint leaving_thing_fate check (fate in ('handed-over', 'kept', 'withdrawn', 'emptied', 'to-group', 'taken-along')),
  constraint leaving_thing_leaving_fk foreign key (leaving_id) references leaving (id)
);
