-- A second calendar for days on duty alone, and what calendars were last told, so that programs see what changed. An address
-- ends when its member leaves, and does not come back with them.
create table calendar_address (
  member_id uuid not null,
  part varchar(4) not null,
  token_hash varchar(64) not null,
  made_at timestamp(3) with time zone not null,
  constraint calendar_address_pk primary key (member_id, part),
  constraint calendar_address_part check (part in ('all', 'duty')),
  constraint calendar_address_token unique (token_hash),
  constraint calendar_address_member_fk foreign key (member_id) references member (id)
);
comment on table calendar_address is 'The secret address of a member''s calendar.';
comment on column calendar_address.part is 'What it tells: all (next steps and days on duty) or duty (days on duty alone).';
comment on column calendar_address.token_hash is 'SHA-256 of the secret part, in hexadecimal; the address itself is kept nowhere.';
comment on column calendar_address.made_at is 'When it was made; the one before it ended then.';

insert into calendar_address (member_id, part, token_hash, made_at)
select calendar_link.member_id, 'all', calendar_link.token_hash, calendar_link.made_at
from calendar_link join member on member.id = calendar_link.member_id
where member.left_at is null;
drop table calendar_link;

create table calendar_event (
  member_id uuid not null,
  uid varchar(120) not null,
  kind varchar(4) not null,
  on_day date not null,
  summary varchar(300) not null,
  fingerprint varchar(64) not null,
  sequence integer not null,
  changed_at timestamp(3) with time zone not null,
  cancelled boolean not null,
  constraint calendar_event_pk primary key (member_id, uid),
  constraint calendar_event_kind check (kind in ('step', 'duty')),
  constraint calendar_event_sequence check (sequence >= 0),
  constraint calendar_event_member_fk foreign key (member_id) references member (id)
);
comment on table calendar_event is 'What a member''s calendars were last told of a day, so that a change raises its number (RFC 5545, SEQUENCE).';
comment on column calendar_event.uid is 'By which calendar programs know it again: what it is about, never on which day a step falls.';
comment on column calendar_event.kind is 'step (of a sowing) or duty.';
comment on column calendar_event.on_day is 'The day that was told.';
comment on column calendar_event.summary is 'Its title, told once more when it is called off.';
comment on column calendar_event.fingerprint is 'SHA-256 of all that was told, in hexadecimal.';
comment on column calendar_event.sequence is 'How often it was changed since it was first told.';
comment on column calendar_event.changed_at is 'When it was told first, or changed last.';
comment on column calendar_event.cancelled is 'Whether it was called off; it is told so until its day is over.';
