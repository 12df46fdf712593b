-- A tablet at a rack shows the round of its site, and whoever stands before it may tick there. What it keeps needs an author, as
-- every write names who: its row in member is that author. That row was never present, so that it is in no list of people, has no
-- passphrase, and nobody signs in by it.
alter table member drop constraint member_role;
alter table member add constraint member_role check (role in ('member', 'coordinator', 'tablet'));
comment on table member is 'A person who has joined, or a tablet at a rack as the author of what it keeps. Rows stay when somebody leaves, because sowings and entries name them.';
comment on column member.role is 'member or coordinator; tablet: no person, and left from the start.';

alter table access_link drop constraint access_link_purpose;
alter table access_link add constraint access_link_purpose check (purpose in ('open-group', 'join', 'sign-in', 'tablet'));

create table tablet (
  id uuid not null,
  name varchar(40) not null,
  site_id uuid not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  last_seen_at timestamp(3) with time zone,
  ended_by uuid,
  ended_at timestamp(3) with time zone,
  constraint tablet_pk primary key (id),
  constraint tablet_author_fk foreign key (id) references member (id),
  constraint tablet_site_fk foreign key (site_id) references site (id),
  constraint tablet_made_by_fk foreign key (made_by) references member (id),
  constraint tablet_ended_by_fk foreign key (ended_by) references member (id),
  constraint tablet_ended check ((ended_by is null) = (ended_at is null))
);
comment on table tablet is 'A tablet at a rack, which shows the round of one site and may tick there and nothing else. It comes in by a link that works once.';
comment on column tablet.id is 'Its row in member, which stands as the author of what it keeps; where somebody said that they tick, they are the author and this row has typed it.';
comment on column tablet.name is 'As its coordinator calls it, such as Cellar.';
comment on column tablet.site_id is 'Whose round it shows.';
comment on column tablet.made_by is 'The coordinator who made it.';
comment on column tablet.last_seen_at is 'When it last asked for something, to the hour. Empty: it has not been opened yet.';
comment on column tablet.ended_by is 'The coordinator who ended it. Empty: nobody has.';
comment on column tablet.ended_at is 'Since then it opens nothing. Empty: it has not been ended.';
