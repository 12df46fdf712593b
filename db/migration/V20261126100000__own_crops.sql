-- What coordinators wrote of a crop, over the reference row of that id or beside the reference. Never edited: each change is
-- a row of the next version, and the newest rules.
create table own_crop (
  crop_id varchar(40) not null,
  version integer not null,
  -- false: taken back. The reference row counts again; a crop that the reference does not have is no longer offered.
  kept boolean not null,
  name varchar(80) not null,
  species varchar(80) not null,
  hardiness varchar(12) not null,
  weeks_indoors_min integer not null,
  weeks_indoors_max integer not null,
  plant_out_offset_days integer not null,
  plant_out_offset_days_latest integer not null,
  -- null here and below: not known
  night_minimum_c numeric(4, 1),
  depth_mm numeric(4, 1),
  light varchar(11) not null,
  treatment varchar(200) not null,
  maturity_min integer,
  maturity_max integer,
  maturity_basis varchar(13),
  seed_life_years integer,
  note varchar(400) not null,
  source varchar(200) not null,
  source_url varchar(400) not null,
  -- how its seed answers to warmth: as the reference says, as another crop's does, or in so many days as the trade states it
  emergence varchar(9) not null,
  emergence_like varchar(40),
  emergence_days_min numeric(4, 1),
  emergence_days_max numeric(4, 1),
  emergence_low_c numeric(4, 1),
  emergence_high_c numeric(4, 1),
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint own_crop_pk primary key (crop_id, version),
  constraint own_crop_version check (version >= 1),
  constraint own_crop_hardiness check (hardiness in ('hardy', 'half-hardy', 'tender', 'very tender')),
  constraint own_crop_weeks check (weeks_indoors_min >= 0 and weeks_indoors_min <= weeks_indoors_max),
  constraint own_crop_offsets check (plant_out_offset_days <= plant_out_offset_days_latest),
  constraint own_crop_depth check (depth_mm >= 0),
  constraint own_crop_light check (light in ('yes', 'no', 'indifferent', '')),
  constraint own_crop_maturity check (
    (maturity_min is null and maturity_max is null and maturity_basis is null)
    or (maturity_min >= 1 and maturity_min <= maturity_max and maturity_basis in ('transplanting', 'sowing'))),
  constraint own_crop_seed_life check (seed_life_years >= 1),
  constraint own_crop_source check (source <> ''),
  constraint own_crop_emergence check (
    emergence = 'reference'
    or (emergence = 'like' and emergence_like is not null)
    or (emergence = 'stated' and emergence_days_min > 0 and emergence_days_min <= emergence_days_max
      and emergence_low_c <= emergence_high_c)),
  constraint own_crop_made_by_fk foreign key (made_by) references member (id)
);

-- Days to the first harvest of one variety, as its packet or its breeder says; the crop's own days cover all its varieties.
create table variety (
  crop_id varchar(40) not null,
  -- the name in small letters: one variety is one row, however it is written
  name_key varchar(80) not null,
  name varchar(80) not null,
  maturity_min integer not null,
  maturity_max integer not null,
  maturity_basis varchar(13) not null,
  source varchar(200) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  version integer not null,
  constraint variety_pk primary key (crop_id, name_key),
  constraint variety_maturity check (maturity_min >= 1 and maturity_min <= maturity_max),
  constraint variety_basis check (maturity_basis in ('transplanting', 'sowing')),
  constraint variety_source check (source <> ''),
  constraint variety_made_by_fk foreign key (made_by) references member (id)
);
