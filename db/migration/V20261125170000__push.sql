-- Phones and other devices that show notices by web push (RFC 8030).
create table push_address (
  id uuid not null,
  member_id uuid not null,
  -- given by the browser; whoever knows it and the keys could send to the device
  endpoint varchar(1000) not null,
  -- SHA-256: one device has one owner at a time
  endpoint_hash varchar(64) not null,
  -- the device's key and secret, base64url as RFC 8291 names them
  p256dh varchar(100) not null,
  auth varchar(40) not null,
  name varchar(60) not null,
  -- the sign-in on that device; when it is over, nothing more is sent there
  session_hash varchar(64) not null,
  added_by uuid not null,
  added_at timestamp(3) with time zone not null,
  last_told_at timestamp(3) with time zone,
  ended_at timestamp(3) with time zone,
  ended_why varchar(20),
  constraint push_address_pk primary key (id),
  constraint push_address_endpoint unique (endpoint_hash),
  constraint push_address_ended check ((ended_at is null) = (ended_why is null)),
  constraint push_address_why check (ended_why in ('stopped', 'signed out', 'left', 'gone')),
  constraint push_address_member_fk foreign key (member_id) references member (id),
  constraint push_address_added_by_fk foreign key (added_by) references member (id)
);
create index push_address_member on push_address (member_id);

-- What a member wants to be told on their devices. Without a row: everything.
create table push_wish (
  member_id uuid not null,
  in_the_morning boolean not null,
  in_the_evening boolean not null,
  of_alarms boolean not null,
  of_stand_ins boolean not null,
  changed_at timestamp(3) with time zone not null,
  constraint push_wish_pk primary key (member_id),
  constraint push_wish_member_fk foreign key (member_id) references member (id)
);

-- Notices waiting to be sent, and those sent. The key lets no device be told one thing twice, whichever node thinks of it.
create table push_notice (
  id uuid not null,
  address_id uuid not null,
  -- whose device it was when the notice was laid ready
  member_id uuid not null,
  -- what it is about, such as 'morning 2027-03-04' or 'alarm ' and the entry's id
  about varchar(60) not null,
  title varchar(120) not null,
  body varchar(200) not null,
  -- of our own pages
  path varchar(200) not null,
  -- 'high' or 'normal', as RFC 8030 names it
  urgency varchar(6) not null,
  -- a later notice with the same topic takes the place of one that has not reached the device
  topic varchar(60) not null,
  -- of no use any more then
  until_at timestamp(3) with time zone not null,
  made_at timestamp(3) with time zone not null,
  -- not tried before then
  due_at timestamp(3) with time zone not null,
  tries integer not null,
  sent_at timestamp(3) with time zone,
  given_up_at timestamp(3) with time zone,
  constraint push_notice_pk primary key (id),
  constraint push_notice_once unique (address_id, member_id, about),
  constraint push_notice_urgency check (urgency in ('high', 'normal')),
  constraint push_notice_address_fk foreign key (address_id) references push_address (id),
  constraint push_notice_member_fk foreign key (member_id) references member (id)
);
create index push_notice_due on push_notice (due_at);
create index push_notice_about on push_notice (member_id, about);

-- Letters tell of standing in too, where that is ticked.
alter table mail_wish add column of_stand_ins boolean default false not null;
