create table sowing (
  id uuid not null,
  member_id uuid not null,
  season integer not null,
  crop_id varchar(40) not null,
  lot_id uuid not null,
  plants_wanted integer not null,
  method varchar(5) not null,
  warm boolean not null,
  container varchar(10) not null,
  quarters integer not null,
  seeds integer not null,
  seeds_per_cell integer not null,
  cells integer not null,
  -- the chance of a later frost the member accepts
  risk numeric(4, 3) not null,
  -- the day the plants go out under cover, where no frost date decides; null: outdoors, by frost
  under_cover_on date,
  stage varchar(16) not null,
  asked_at timestamp(3) with time zone not null,
  note varchar(400) not null,
  version integer not null,
  constraint sowing_pk primary key (id),
  constraint sowing_plants_wanted check (plants_wanted >= 1),
  constraint sowing_seeds check (seeds >= 1),
  constraint sowing_cells check (cells >= 1 and seeds_per_cell >= 1),
  constraint sowing_method check (method in ('cells', 'bag')),
  constraint sowing_container check (container in ('tray', 'half-tray', 'bag')),
  constraint sowing_quarters check (quarters in (1, 2, 4)),
  constraint sowing_risk check (risk > 0 and risk < 1),
  constraint sowing_stage check (stage in ('planned', 'soaked', 'sown', 'sprouting', 'in-cells', 'emerged', 'under-light',
    'fed', 'potted-on', 'hardening-off', 'planted-out', 'given-up', 'withdrawn')),
  constraint sowing_member_fk foreign key (member_id) references member (id),
  constraint sowing_lot_fk foreign key (lot_id) references lot (id)
);
create index sowing_member on sowing (member_id);
create index sowing_stage_index on sowing (stage);

-- What a sowing asks of the mats. low_c..high_c is the crop's comfortable band.
create table space_request (
  sowing_id uuid not null,
  state varchar(9) not null,
  earliest date not null,
  ideal date not null,
  latest date not null,
  days integer not null,
  quarters integer not null,
  low_c integer not null,
  high_c integer not null,
  reason varchar(400) not null,
  decided_by uuid,
  decided_at timestamp(3) with time zone,
  version integer not null,
  constraint space_request_pk primary key (sowing_id),
  constraint space_request_state check (state in ('waiting', 'placed', 'refused', 'withdrawn')),
  constraint space_request_dates check (earliest <= ideal and ideal <= latest),
  constraint space_request_days check (days >= 1),
  constraint space_request_quarters check (quarters in (1, 2, 4)),
  constraint space_request_band check (low_c <= high_c),
  constraint space_request_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint space_request_decided_by_fk foreign key (decided_by) references member (id)
);

-- A sowing lying on quarters first_quarter .. first_quarter + quarters - 1 of a place, from from_day up to but not on to_day.
create table stay (
  id uuid not null,
  sowing_id uuid not null,
  place_id uuid not null,
  first_quarter integer not null,
  quarters integer not null,
  from_day date not null,
  to_day date not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  version integer not null,
  constraint stay_pk primary key (id),
  constraint stay_days check (from_day <= to_day),
  constraint stay_within_place check (
    (quarters = 4 and first_quarter = 1)
    or (quarters = 2 and first_quarter in (1, 3))
    or (quarters = 1 and first_quarter between 1 and 4)),
  constraint stay_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint stay_place_fk foreign key (place_id) references place (id),
  constraint stay_made_by_fk foreign key (made_by) references member (id)
);
create index stay_sowing on stay (sowing_id);
create index stay_place on stay (place_id, from_day);

-- The judge of double booking: one row for every quarter and day that is taken, whatever the code believes.
-- On a mat the row also carries the mat's set-point of that day, tied to mat_day by a key, and the band of what
-- lies there; so neither a stay nor a later change of the set-point can leave a tray at a temperature it cannot bear.
create table quarter_day (
  place_id uuid not null,
  quarter integer not null,
  on_day date not null,
  stay_id uuid not null,
  kind varchar(3) not null,
  mat_id uuid,
  celsius integer,
  low_c integer,
  high_c integer,
  constraint quarter_day_pk primary key (place_id, quarter, on_day),
  constraint quarter_day_quarter check (quarter between 1 and 4),
  constraint quarter_day_kind check (
    (kind = 'lit' and mat_id is null and celsius is null)
    or (kind = 'mat' and mat_id is not null and celsius is not null and low_c is not null and high_c is not null)),
  constraint quarter_day_band check (celsius between low_c and high_c),
  constraint quarter_day_stay_fk foreign key (stay_id) references stay (id),
  constraint quarter_day_place_fk foreign key (place_id, kind) references place (id, kind),
  constraint quarter_day_mat_fk foreign key (place_id, mat_id) references place (id, mat_id),
  constraint quarter_day_set_point_fk foreign key (mat_id, on_day, celsius)
    references mat_day (mat_id, on_day, celsius) on update cascade
);
create index quarter_day_stay on quarter_day (stay_id);
create index quarter_day_mat on quarter_day (mat_id, on_day);
