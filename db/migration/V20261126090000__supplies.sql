-- How many cells a whole tray of the kind asked for has; null: nobody has said, or it was asked for before this was kept.
alter table sowing add column cells_in_tray integer;
alter table sowing add constraint sowing_cells_in_tray check (cells_in_tray between 1 and 1000);

-- Who brings what of a season's supplies, or what lies in the group's cupboard already. Amounts in millilitres or pieces.
create table supply_promise (
  id uuid not null,
  season integer not null,
  item varchar(20) not null,
  amount numeric(10, 1) not null,
  -- null: there already, the group's own
  member_id uuid,
  note varchar(200) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  brought_by uuid,
  brought_at timestamp(3) with time zone,
  taken_back_by uuid,
  taken_back_at timestamp(3) with time zone,
  constraint supply_promise_pk primary key (id),
  constraint supply_promise_amount check (amount > 0),
  constraint supply_promise_brought check ((brought_by is null) = (brought_at is null)),
  constraint supply_promise_taken_back check ((taken_back_by is null) = (taken_back_at is null)),
  constraint supply_promise_member_fk foreign key (member_id) references member (id),
  constraint supply_promise_made_by_fk foreign key (made_by) references member (id),
  constraint supply_promise_brought_by_fk foreign key (brought_by) references member (id),
  constraint supply_promise_taken_back_by_fk foreign key (taken_back_by) references member (id)
);
create index supply_promise_season on supply_promise (season);
