create table lot (
  id uuid not null,
  crop_id varchar(40) not null,
  variety varchar(80) not null,
  -- the year the packet was packed for, or the seed was saved
  seed_year integer not null,
  -- null: nobody has counted
  seeds_left integer,
  -- null: the group's own seed
  owner_id uuid,
  treated boolean not null,
  note varchar(400) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  version integer not null,
  constraint lot_pk primary key (id),
  constraint lot_seeds_left check (seeds_left >= 0),
  constraint lot_owner_fk foreign key (owner_id) references member (id),
  constraint lot_made_by_fk foreign key (made_by) references member (id)
);
create index lot_crop on lot (crop_id);

create table germination_test (
  id uuid not null,
  lot_id uuid not null,
  tested_on date not null,
  germinated integer not null,
  seeds integer not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint germination_test_pk primary key (id),
  constraint germination_test_counts check (germinated >= 0 and germinated <= seeds and seeds >= 1),
  constraint germination_test_lot_fk foreign key (lot_id) references lot (id),
  constraint germination_test_made_by_fk foreign key (made_by) references member (id)
);
create index germination_test_lot on germination_test (lot_id);
