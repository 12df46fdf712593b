-- Photos of packets go into the table of those of entries; each is of an entry or of a lot.
alter table photo alter column entry_id drop not null;
alter table photo add column lot_id uuid;
alter table photo add constraint photo_lot_fk foreign key (lot_id) references lot (id);
-- Ids come from browsers, so that two tables may hold the same one; such a photo of a packet gets another, and is kept.
insert into photo (id, lot_id, width, height, jpeg, added_by, added_at, removed_by, removed_at)
  select case when exists (select 1 from photo there where there.id = packet_photo.id) then gen_random_uuid() else id end,
    lot_id, width, height, jpeg, added_by, added_at, removed_by, removed_at
  from packet_photo;
alter table photo add constraint photo_of_one check ((entry_id is null and lot_id is not null)
  or (entry_id is not null and lot_id is null));
create index photo_of_lot on photo (lot_id);
drop table packet_photo;

comment on table photo is 'A picture of what was seen or of a seed packet, made small and freed of all it tells beside the picture before it is kept.';
comment on column photo.entry_id is 'The entry that it goes with. Empty: it shows a packet.';
comment on column photo.lot_id is 'The lot whose packet it shows. Empty: it goes with an entry.';
