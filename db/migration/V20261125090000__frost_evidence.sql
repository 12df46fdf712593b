-- What frost dates rest on beside the bundled surface: stations that the group brings in, its own thermometers, the places
-- of postcodes abroad, and what people who know better correct. Nothing here is edited: what no longer holds is ended.

-- Grows with every change to what frost dates rest on, so that what was reckoned before it is reckoned anew.
create table frost_evidence_version (
  id integer not null,
  version bigint not null,
  constraint frost_evidence_version_pk primary key (id),
  constraint frost_evidence_version_single check (id = 1)
);
insert into frost_evidence_version (id, version) values (1, 1);

-- A file brought in. Its rows come in one transaction and count for nothing until a coordinator takes them.
create table frost_import (
  id uuid not null,
  -- stations: our own table of published dates; normals: a national service's by-station table; nights: one station's
  -- daily minima; postcodes: places of postcodes
  kind varchar(12) not null,
  file_name varchar(200) not null,
  bytes_total bigint not null,
  bytes_read bigint not null,
  rows_read bigint not null,
  -- rows understood
  rows_good bigint not null,
  state varchar(12) not null,
  -- why it was refused or failed, or what was found in it
  words varchar(4000) not null,
  started_by uuid not null,
  started_at timestamp(3) with time zone not null,
  -- the reader's last sign of life, so that one whose program was stopped is told from one that is slow
  beat_at timestamp(3) with time zone not null,
  decided_by uuid,
  decided_at timestamp(3) with time zone,
  constraint frost_import_pk primary key (id),
  constraint frost_import_kind check (kind in ('stations', 'normals', 'nights', 'postcodes')),
  constraint frost_import_state
    check (state in ('reading', 'ready', 'taken', 'cancelled', 'refused', 'failed', 'removed')),
  constraint frost_import_started_by_fk foreign key (started_by) references member (id),
  constraint frost_import_decided_by_fk foreign key (decided_by) references member (id)
);

-- A row that was not understood, and why.
create table frost_import_problem (
  import_id uuid not null,
  line_number bigint not null,
  sentence varchar(500) not null,
  constraint frost_import_problem_pk primary key (import_id, line_number),
  constraint frost_import_problem_import_fk foreign key (import_id) references frost_import (id)
);

create table frost_station (
  id uuid not null,
  -- null: typed in
  import_id uuid,
  -- published: dates as a service prints them; nights: counted from daily minima; monthly: told from twelve mean minima
  kind varchar(12) not null,
  code varchar(40) not null,
  name varchar(120) not null,
  latitude double precision not null,
  longitude double precision not null,
  elevation_m double precision not null,
  -- for example '1991-2020', or 'Manual of the county, table 3'
  source varchar(200) not null,
  added_by uuid not null,
  added_at timestamp(3) with time zone not null,
  removed_by uuid,
  removed_at timestamp(3) with time zone,
  constraint frost_station_pk primary key (id),
  constraint frost_station_kind check (kind in ('published', 'nights', 'monthly')),
  constraint frost_station_latitude check (latitude between -90 and 90),
  constraint frost_station_longitude check (longitude between -180 and 180),
  constraint frost_station_elevation check (elevation_m between -430 and 6500),
  constraint frost_station_import_fk foreign key (import_id) references frost_import (id),
  constraint frost_station_added_by_fk foreign key (added_by) references member (id),
  constraint frost_station_removed_by_fk foreign key (removed_by) references member (id)
);
create index frost_station_import on frost_station (import_id);

-- One station's frost of one season at one threshold. Days are numbers of a 365-day year, as the frost tables count them.
create table frost_station_date (
  station_id uuid not null,
  -- 0.0 frost, -2.2 killing frost, 2.2 light frost on the ground
  threshold_c numeric(3, 1) not null,
  side varchar(6) not null,
  -- share of seasons with any frost; null: not told
  any_frost double precision,
  -- half of the seasons with a frost have it later; null where frost is too rare for a date
  median_day double precision,
  -- standard deviation from year to year; null: not told
  year_sd_days double precision,
  -- number of seasons it was counted from; null: published as a normal
  seasons integer,
  constraint frost_station_date_pk primary key (station_id, threshold_c, side),
  constraint frost_station_date_side check (side in ('spring', 'autumn')),
  constraint frost_station_date_any check (any_frost between 0 and 1),
  constraint frost_station_date_sd check (year_sd_days > 0),
  constraint frost_station_date_station_fk foreign key (station_id) references frost_station (id)
);

-- The seasons behind a station of kind 'nights', year by year.
create table frost_station_season (
  station_id uuid not null,
  threshold_c numeric(3, 1) not null,
  side varchar(6) not null,
  season_year integer not null,
  -- null: that season had no frost
  frost_on date,
  constraint frost_station_season_pk primary key (station_id, threshold_c, side, season_year),
  constraint frost_station_season_side check (side in ('spring', 'autumn')),
  constraint frost_station_season_station_fk foreign key (station_id) references frost_station (id)
);

-- Where postcodes lie, beside those that come with the program.
create table postcode_place (
  import_id uuid not null,
  country varchar(2) not null,
  -- in capitals, without spaces and hyphens
  code varchar(20) not null,
  place varchar(180) not null,
  region varchar(100) not null,
  latitude double precision not null,
  longitude double precision not null,
  constraint postcode_place_pk primary key (country, code, import_id),
  constraint postcode_place_import_fk foreign key (import_id) references frost_import (id)
);

-- Where a member's garden lies, exactly.
create table garden_point (
  member_id uuid not null,
  latitude double precision not null,
  longitude double precision not null,
  elevation_m double precision not null,
  set_by uuid not null,
  set_at timestamp(3) with time zone not null,
  version integer not null,
  constraint garden_point_pk primary key (member_id),
  constraint garden_point_latitude check (latitude between -90 and 90),
  constraint garden_point_longitude check (longitude between -180 and 180),
  constraint garden_point_elevation check (elevation_m between -430 and 6500),
  constraint garden_point_member_fk foreign key (member_id) references member (id),
  constraint garden_point_set_by_fk foreign key (set_by) references member (id)
);

-- What somebody who knows better says of a garden (member_id) or of all postcodes that begin alike (country, postcode_start).
create table frost_correction (
  id uuid not null,
  member_id uuid,
  country varchar(2),
  postcode_start varchar(12),
  how varchar(6) not null,
  -- how 'shift': spring frost so many days later, autumn frost so many days later (negative: earlier)
  spring_shift_days integer,
  autumn_shift_days integer,
  -- how 'dates': month and day, such as 05-24; null: that one is left as the evidence tells it
  spring_average varchar(5),
  spring_one_in_ten varchar(5),
  autumn_average varchar(5),
  autumn_one_in_ten varchar(5),
  reason varchar(300) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  ended_by uuid,
  ended_at timestamp(3) with time zone,
  constraint frost_correction_pk primary key (id),
  constraint frost_correction_how check (how in ('shift', 'dates')),
  constraint frost_correction_of check ((member_id is null) <> (country is null)),
  constraint frost_correction_area check ((country is null) = (postcode_start is null)),
  constraint frost_correction_member_fk foreign key (member_id) references member (id),
  constraint frost_correction_made_by_fk foreign key (made_by) references member (id),
  constraint frost_correction_ended_by_fk foreign key (ended_by) references member (id)
);

-- The chance of a later frost that a member accepts for plants of one hardiness, where it is not the usual one.
create table accepted_risk (
  member_id uuid not null,
  hardiness varchar(20) not null,
  risk numeric(4, 3) not null,
  set_at timestamp(3) with time zone not null,
  constraint accepted_risk_pk primary key (member_id, hardiness),
  constraint accepted_risk_range check (risk > 0 and risk < 1),
  constraint accepted_risk_member_fk foreign key (member_id) references member (id)
);

-- A minimum-maximum thermometer that people read in the morning.
create table thermometer (
  id uuid not null,
  name varchar(60) not null,
  -- whose garden it hangs in; null: a place of the group's
  member_id uuid,
  latitude double precision not null,
  longitude double precision not null,
  elevation_m double precision not null,
  added_by uuid not null,
  added_at timestamp(3) with time zone not null,
  -- null: still read
  retired_by uuid,
  retired_at timestamp(3) with time zone,
  constraint thermometer_pk primary key (id),
  constraint thermometer_latitude check (latitude between -90 and 90),
  constraint thermometer_longitude check (longitude between -180 and 180),
  constraint thermometer_elevation check (elevation_m between -430 and 6500),
  constraint thermometer_member_fk foreign key (member_id) references member (id),
  constraint thermometer_added_by_fk foreign key (added_by) references member (id),
  constraint thermometer_retired_by_fk foreign key (retired_by) references member (id)
);

-- The lowest temperature of the night that ended in the morning of a day.
create table thermometer_night (
  thermometer_id uuid not null,
  on_day date not null,
  celsius numeric(4, 1) not null,
  noted_by uuid not null,
  noted_at timestamp(3) with time zone not null,
  constraint thermometer_night_pk primary key (thermometer_id, on_day),
  constraint thermometer_night_range check (celsius between -60 and 45),
  constraint thermometer_night_thermometer_fk foreign key (thermometer_id) references thermometer (id),
  constraint thermometer_night_noted_by_fk foreign key (noted_by) references member (id)
);
