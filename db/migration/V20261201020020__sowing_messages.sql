-- What people write to a grower or a coordinator about a sowing.
create table sowing_message (
  id uuid not null,
  sowing_id uuid not null,
  written_by uuid not null,
  written_to uuid not null,
  words varchar(500) not null,
  written_at timestamp(3) with time zone not null,
  constraint sowing_message_pk primary key (id),
  constraint sowing_message_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint sowing_message_written_by_fk foreign key (written_by) references member (id),
  constraint sowing_message_written_to_fk foreign key (written_to) references member (id)
);
create index sowing_message_sowing on sowing_message (sowing_id);
comment on table sowing_message is 'What somebody wrote about a sowing, kept with it and read by all who open its page.';
comment on column sowing_message.written_to is 'Who is told of it: the grower or a coordinator.';
comment on column sowing_message.words is 'What they wrote. Empty: whoever wrote it was erased.';
comment on column sowing_message.written_by is 'Who wrote it.';
comment on column sowing_message.written_at is 'When.';
