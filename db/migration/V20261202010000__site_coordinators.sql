-- A coordinator for one site or some of them: elsewhere, and in what concerns the whole group, a member.
create table site_coordinator (
  member_id uuid not null,
  site_id uuid not null,
  made_by uuid not null,
  made_at timestamp with time zone not null,
  constraint site_coordinator_pk primary key (member_id, site_id),
  constraint site_coordinator_member_fk foreign key (member_id) references member (id),
  constraint site_coordinator_site_fk foreign key (site_id) references site (id) on delete cascade,
  constraint site_coordinator_made_by_fk foreign key (made_by) references member (id)
);
create index site_coordinator_site on site_coordinator (site_id);

comment on table site_coordinator is 'A member who coordinates a site: decides what lies there, its mats and who looks there. One whose role is coordinator does so everywhere and stands not here.';
comment on column site_coordinator.member_id is 'Who.';
comment on column site_coordinator.site_id is 'The site; when it is deleted, being its coordinator ends.';
comment on column site_coordinator.made_by is 'The coordinator of the whole group who said so.';
comment on column site_coordinator.made_at is 'When that was.';
