-- A picture of a lot's packet, made small and freed of all it tells beside the picture before it is kept.
create table packet_photo (
  id uuid not null,
  lot_id uuid not null,
  width integer not null,
  height integer not null,
  jpeg bytea not null,
  added_by uuid not null,
  added_at timestamp(3) with time zone not null,
  -- taken out: the picture is gone, its id stays
  removed_by uuid,
  removed_at timestamp(3) with time zone,
  constraint packet_photo_pk primary key (id),
  constraint packet_photo_lot_fk foreign key (lot_id) references lot (id),
  constraint packet_photo_added_by_fk foreign key (added_by) references member (id),
  constraint packet_photo_removed_by_fk foreign key (removed_by) references member (id),
  constraint packet_photo_removed check ((removed_by is null and removed_at is null)
    or (removed_by is not null and removed_at is not null and octet_length(jpeg) = 0)),
  constraint packet_photo_size check (octet_length(jpeg) <= 307200),
  constraint packet_photo_measures check (width between 1 and 4096 and height between 1 and 4096)
);
create index packet_photo_of_lot on packet_photo (lot_id);
