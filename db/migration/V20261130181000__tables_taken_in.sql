-- Tables that people brought in as files: which, by whom and when. The rows themselves are lots, links and nights like all others.
create table incoming_table (
  id uuid not null,
  kind varchar(10) not null,
  file_name varchar(200) not null,
  fingerprint varchar(64) not null,
  rows_taken integer not null,
  rows_there integer not null,
  thermometer_id uuid,
  taken_by uuid not null,
  taken_at timestamp(3) with time zone not null,
  constraint incoming_table_pk primary key (id),
  constraint incoming_table_kind check (kind in ('lots', 'members', 'nights')),
  constraint incoming_table_nights check (thermometer_id is null or kind = 'nights'),
  constraint incoming_table_thermometer_fk foreign key (thermometer_id) references thermometer (id),
  constraint incoming_table_taken_by_fk foreign key (taken_by) references member (id)
);
create index incoming_table_fingerprint on incoming_table (fingerprint);

comment on table incoming_table is 'Tables that people brought in as files. Its row is written in the transaction that takes all its rows in.';
comment on column incoming_table.id is 'The id under which the file was looked at before it was taken in.';
comment on column incoming_table.kind is 'What its rows are: lots, members (of whom each gets a link to join by) or nights of a thermometer.';
comment on column incoming_table.file_name is 'As its owner calls it.';
comment on column incoming_table.fingerprint is 'SHA-256 of the file in hexadecimal digits, by which the same file is known again.';
comment on column incoming_table.rows_taken is 'Rows of it that were taken in.';
comment on column incoming_table.rows_there is 'Rows of it that were left out because the same was there already.';
comment on column incoming_table.thermometer_id is 'Whose nights they are. Empty: it is no table of nights.';
comment on column incoming_table.taken_by is 'Who brought it in.';
comment on column incoming_table.taken_at is 'When it was taken in.';
