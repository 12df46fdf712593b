-- Where the seed came from and how it is kept: both decide what may be expected of it.
alter table lot add column source varchar(7) default 'packet' not null;
alter table lot add column storage varchar(8) default 'unknown' not null;
-- null: what the kind of storage usually has
alter table lot add column storage_c numeric(4, 1);
alter table lot add column storage_moisture numeric(3, 1);
-- seeds of it that anybody may take; never more than there are
alter table lot add column offered integer default 0 not null;
-- the lot these seeds were taken out of, where they were offered
alter table lot add column taken_from uuid;
alter table lot add constraint lot_source check (source in ('packet', 'saved', 'swapped'));
alter table lot add constraint lot_storage check (storage in ('fridge', 'cupboard', 'shed', 'unknown', 'own'));
alter table lot add constraint lot_storage_own check (storage <> 'own' or (storage_c is not null and storage_moisture is not null));
-- the range in which the ageing of seed is known
alter table lot add constraint lot_storage_range check (storage_c between -20 and 50 and storage_moisture between 5 and 25);
alter table lot add constraint lot_offered check (offered >= 0 and (seeds_left is null or offered <= seeds_left));
alter table lot add constraint lot_taken_from_fk foreign key (taken_from) references lot (id);
