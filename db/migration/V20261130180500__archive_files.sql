-- The files with the whole group that were made here, and the one from which this group was taken in.
create table archive_file (
  id uuid not null,
  kind varchar(8) not null,
  bytes_total bigint not null,
  sha256 varchar(64) not null,
  made_by uuid,
  made_at timestamp(3) with time zone not null,
  constraint archive_file_pk primary key (id),
  constraint archive_file_kind check (kind in ('made', 'taken-in')),
  constraint archive_file_made_by_fk foreign key (made_by) references member (id)
);
create index archive_file_made_at on archive_file (made_at);
comment on table archive_file is 'A file with the whole group that was made here, or the one from which this installation took the group in. It tells of the installation, so it is not in such a file itself.';
comment on column archive_file.kind is 'made or taken-in.';
comment on column archive_file.bytes_total is 'Its size in bytes.';
comment on column archive_file.sha256 is 'Its SHA-256, as hexadecimal digits.';
comment on column archive_file.made_by is 'The coordinator who downloaded it. Empty: it was made or taken in on the command line.';
comment on column archive_file.made_at is 'When it was made or taken in here.';
