-- What members gathered on Ask, to be sent all at once.
create table gathered (
  id uuid not null,
  member_id uuid not null,
  title varchar(200) not null,
  answers varchar(8000) not null,
  gathered_at timestamp(3) with time zone not null,
  taken_out_at timestamp(3) with time zone,
  constraint gathered_pk primary key (id),
  constraint gathered_member_fk foreign key (member_id) references member (id)
);
create index gathered_member on gathered (member_id);
comment on table gathered is 'A request that a member planned and put aside, to be sent with others. It holds no seed and no place; it is judged anew each time it is shown and when it is sent, and goes then. What was taken out goes with the next that is gathered.';
comment on column gathered.title is 'Crop and variety, as they were called when it was gathered.';
comment on column gathered.answers is 'The answers of Ask as in the address of its plan: name=value, percent-encoded, joined by &.';
comment on column gathered.gathered_at is 'When the member gathered it; they are shown and sent in this order.';
comment on column gathered.taken_out_at is 'When the member took it out unsent. Empty: it waits to be sent.';
