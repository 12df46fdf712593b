-- Pests and virus go from tray to tray: their rack is held until a coordinator clears it.
create table rack_hold (
  entry_id uuid not null,
  rack_id uuid not null,
  cleared_by uuid,
  cleared_at timestamp with time zone,
  constraint rack_hold_pk primary key (entry_id, rack_id),
  constraint rack_hold_entry_fk foreign key (entry_id) references entry (id),
  constraint rack_hold_rack_fk foreign key (rack_id) references rack (id) on delete cascade,
  constraint rack_hold_cleared_by_fk foreign key (cleared_by) references member (id),
  constraint rack_hold_cleared check ((cleared_by is null) = (cleared_at is null))
);
create index rack_hold_rack on rack_hold (rack_id);

create table quarantine_shelf (
  shelf_id uuid not null,
  made_by uuid not null,
  made_at timestamp with time zone not null,
  constraint quarantine_shelf_pk primary key (shelf_id),
  constraint quarantine_shelf_shelf_fk foreign key (shelf_id) references shelf (id) on delete cascade,
  constraint quarantine_shelf_made_by_fk foreign key (made_by) references member (id)
);

comment on table rack_hold is 'A rack that is held because an entry told of something that spreads, such as pests or virus; nothing that lies there moves to another rack until it is cleared. It counts as long as no other entry corrects that one.';
comment on column rack_hold.entry_id is 'The entry that told of it.';
comment on column rack_hold.rack_id is 'Where its sowing lay that day.';
comment on column rack_hold.cleared_by is 'The coordinator who cleared the rack. Empty: it is held.';
comment on column rack_hold.cleared_at is 'When it was cleared. Empty: it is held.';
comment on table quarantine_shelf is 'A shelf for what comes from outside, and for what has pests: nothing is planned or offered there, and what lies on a held rack may move there.';
comment on column quarantine_shelf.shelf_id is 'The shelf.';
comment on column quarantine_shelf.made_by is 'The coordinator who named it so.';
comment on column quarantine_shelf.made_at is 'When that was.';
comment on column entry.problem is 'What is wrong, such as dry, mould, pests or damping-off. Empty: nothing.';
