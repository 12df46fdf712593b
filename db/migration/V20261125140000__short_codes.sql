-- A short code on a label, of one rack, mat or sowing. Never given to anything else, so that an old label cannot mislead.
create table short_code (
  code varchar(6) not null,
  kind varchar(6) not null,
  subject_id uuid not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint short_code_pk primary key (code),
  constraint short_code_subject unique (kind, subject_id),
  constraint short_code_kind check (kind in ('rack', 'mat', 'sowing')),
  constraint short_code_made_by_fk foreign key (made_by) references member (id)
);
