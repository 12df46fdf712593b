-- The secret address of a member's calendar; only its hash is kept.
create table calendar_link (
  member_id uuid not null,
  token_hash varchar(64) not null,
  made_at timestamp(3) with time zone not null,
  constraint calendar_link_pk primary key (member_id),
  constraint calendar_link_token unique (token_hash),
  constraint calendar_link_member_fk foreign key (member_id) references member (id)
);

-- When a member wants to be written to.
create table mail_wish (
  member_id uuid not null,
  address varchar(254) not null,
  in_the_morning boolean not null,
  in_the_evening boolean not null,
  of_alarms boolean not null,
  changed_at timestamp(3) with time zone not null,
  constraint mail_wish_pk primary key (member_id),
  constraint mail_wish_member_fk foreign key (member_id) references member (id)
);

-- Letters waiting to be sent, and those sent. The key lets nobody be told one thing twice, whichever node thinks of it.
create table letter (
  id uuid not null,
  member_id uuid not null,
  -- what it is about, such as 'morning 2027-03-04' or 'alarm ' and the entry's id
  about varchar(60) not null,
  address varchar(254) not null,
  subject varchar(200) not null,
  words text not null,
  made_at timestamp(3) with time zone not null,
  -- not tried before then
  due_at timestamp(3) with time zone not null,
  tries integer not null,
  sent_at timestamp(3) with time zone,
  given_up_at timestamp(3) with time zone,
  constraint letter_pk primary key (id),
  constraint letter_once unique (member_id, about),
  constraint letter_member_fk foreign key (member_id) references member (id)
);
create index letter_due on letter (due_at);
