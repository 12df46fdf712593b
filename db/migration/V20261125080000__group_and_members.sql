-- The group itself: one row, written when the first coordinator opens it.
create table group_profile (
  id integer not null,
  name varchar(80) not null,
  time_zone varchar(60) not null,
  temperature_unit varchar(1) not null,
  length_unit varchar(2) not null,
  country varchar(2) not null,
  home_postcode varchar(12) not null,
  season integer not null,
  version integer not null,
  constraint group_profile_pk primary key (id),
  constraint group_profile_single check (id = 1),
  constraint group_profile_temperature_unit check (temperature_unit in ('C', 'F')),
  constraint group_profile_length_unit check (length_unit in ('cm', 'in'))
);

create table member (
  id uuid not null,
  name varchar(60) not null,
  -- the name folded to lower case, so that two people cannot differ by capitals alone
  name_key varchar(60) not null,
  role varchar(12) not null,
  country varchar(2) not null,
  postcode varchar(12) not null,
  passphrase_hash varchar(200) not null,
  -- null: as the group shows it
  temperature_unit varchar(1),
  length_unit varchar(2),
  joined_at timestamp(3) with time zone not null,
  left_at timestamp(3) with time zone,
  version integer not null,
  constraint member_pk primary key (id),
  constraint member_name_key unique (name_key),
  constraint member_role check (role in ('member', 'coordinator')),
  constraint member_temperature_unit check (temperature_unit in ('C', 'F')),
  constraint member_length_unit check (length_unit in ('cm', 'in'))
);

-- Only hashes of tokens are kept: a stolen copy of the database opens no session.
create table member_session (
  token_hash varchar(64) not null,
  member_id uuid not null,
  csrf_token varchar(64) not null,
  started_at timestamp(3) with time zone not null,
  last_seen_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  constraint member_session_pk primary key (token_hash),
  constraint member_session_member_fk foreign key (member_id) references member (id)
);
create index member_session_expiry on member_session (expires_at);

create table access_link (
  token_hash varchar(64) not null,
  purpose varchar(20) not null,
  role varchar(12) not null,
  -- the member who is signed in by it, for purpose 'sign-in'
  member_id uuid,
  note varchar(80) not null,
  made_by uuid,
  made_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  -- null: any number of times until it expires (the demo's sign-in links)
  uses_left integer,
  used_at timestamp(3) with time zone,
  used_by uuid,
  constraint access_link_pk primary key (token_hash),
  constraint access_link_purpose check (purpose in ('open-group', 'join', 'sign-in')),
  constraint access_link_role check (role in ('member', 'coordinator')),
  constraint access_link_uses check (uses_left >= 0),
  constraint access_link_member_fk foreign key (member_id) references member (id),
  constraint access_link_made_by_fk foreign key (made_by) references member (id),
  constraint access_link_used_by_fk foreign key (used_by) references member (id)
);

-- One line for every write: who did what to which thing, and when.
create table audit_line (
  id uuid not null,
  at timestamp(3) with time zone not null,
  member_id uuid,
  action varchar(60) not null,
  subject varchar(40) not null,
  subject_id varchar(64) not null,
  detail varchar(1000) not null,
  constraint audit_line_pk primary key (id),
  constraint audit_line_member_fk foreign key (member_id) references member (id)
);
create index audit_line_at on audit_line (at);
