-- What changed on the boards since somebody last looked is marked there for them until they have seen it.
create table board_look (
  member_id uuid not null,
  seen_until timestamp with time zone not null,
  looked_at timestamp with time zone not null,
  constraint board_look_pk primary key (member_id),
  constraint board_look_member_fk foreign key (member_id) references member (id)
);

comment on table board_look is 'How far somebody has seen what changed on Racks and Weeks.';
comment on column board_look.member_id is 'Who looked.';
comment on column board_look.seen_until is 'What changed after this is marked for them.';
comment on column board_look.looked_at is 'When they last looked.';
