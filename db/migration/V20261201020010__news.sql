-- What is new for each member since they last looked.
create table news (
  id uuid not null,
  member_id uuid not null,
  kind varchar(20) not null,
  sowing_id uuid,
  entry_id uuid,
  swap_id uuid,
  caused_by uuid,
  told_at timestamp(3) with time zone not null,
  seen_at timestamp(3) with time zone,
  constraint news_pk primary key (id),
  constraint news_thing check ((sowing_id is null and swap_id is not null) or (sowing_id is not null and swap_id is null)),
  constraint news_member_fk foreign key (member_id) references member (id),
  constraint news_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint news_entry_fk foreign key (entry_id) references entry (id),
  constraint news_swap_fk foreign key (swap_id) references duty_swap (id),
  constraint news_caused_by_fk foreign key (caused_by) references member (id)
);
create index news_member on news (member_id, seen_at);
create index news_sowing on news (sowing_id);
comment on table news is 'What happened to a thing that concerns a member, written in the transaction in which it happened. Nobody gets news of what they did themselves. It goes ninety days after it was told.';
comment on column news.member_id is 'Whom it concerns.';
comment on column news.kind is 'What happened, as one of the words of NewsKind.';
comment on column news.sowing_id is 'The sowing it is about. Empty: it is about a swap.';
comment on column news.entry_id is 'The entry that tells of it, for a problem or a photo. Empty: no entry does.';
comment on column news.swap_id is 'The day on duty that somebody asks others to take. Empty: it is about a sowing.';
comment on column news.caused_by is 'Who did it. Empty: the program itself, or somebody who was erased.';
comment on column news.told_at is 'When it happened.';
comment on column news.seen_at is 'When the member looked at it, on whatever device, or said that all was seen. Empty: not yet.';
