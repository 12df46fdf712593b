-- A picture of what was seen, made small and freed of all it tells beside the picture before it is kept.
create table photo (
  id uuid not null,
  entry_id uuid not null,
  width integer not null,
  height integer not null,
  jpeg bytea not null,
  added_by uuid not null,
  added_at timestamp(3) with time zone not null,
  -- taken out: the picture is gone, its id stays, so that a phone that sends it again does not bring it back
  removed_by uuid,
  removed_at timestamp(3) with time zone,
  constraint photo_pk primary key (id),
  constraint photo_entry_fk foreign key (entry_id) references entry (id),
  constraint photo_added_by_fk foreign key (added_by) references member (id),
  constraint photo_removed_by_fk foreign key (removed_by) references member (id),
  constraint photo_removed check ((removed_by is null and removed_at is null)
    or (removed_by is not null and removed_at is not null and octet_length(jpeg) = 0)),
  constraint photo_size check (octet_length(jpeg) <= 307200),
  constraint photo_measures check (width between 1 and 4096 and height between 1 and 4096)
);
create index photo_of_entry on photo (entry_id);
