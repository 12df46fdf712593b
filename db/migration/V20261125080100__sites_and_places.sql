create table site (
  id uuid not null,
  name varchar(60) not null,
  walk_order integer not null,
  circuit_amps numeric(5, 1) not null,
  circuit_volts integer not null,
  note varchar(400) not null,
  version integer not null,
  constraint site_pk primary key (id),
  constraint site_name_key unique (name),
  constraint site_circuit_positive check (circuit_amps > 0 and circuit_volts > 0)
);

create table rack (
  id uuid not null,
  site_id uuid not null,
  name varchar(40) not null,
  walk_order integer not null,
  version integer not null,
  constraint rack_pk primary key (id),
  constraint rack_name_key unique (site_id, name),
  constraint rack_site_fk foreign key (site_id) references site (id)
);

-- Shelves are counted from the top: from_top 1 is the topmost. A shelf with lit places is a lit shelf.
create table shelf (
  id uuid not null,
  rack_id uuid not null,
  from_top integer not null,
  lit_places integer not null,
  light_watts integer not null,
  version integer not null,
  constraint shelf_pk primary key (id),
  constraint shelf_level_key unique (rack_id, from_top),
  constraint shelf_level_positive check (from_top >= 1),
  constraint shelf_lit_places check (lit_places between 0 and 12),
  constraint shelf_light_watts check (light_watts >= 0),
  constraint shelf_rack_fk foreign key (rack_id) references rack (id)
);

create table mat (
  id uuid not null,
  shelf_id uuid not null,
  name varchar(20) not null,
  walk_order integer not null,
  places integer not null,
  thermostat_low_c integer not null,
  thermostat_high_c integer not null,
  watts integer not null,
  -- the set-point a mat is given on the first day that something lies on it
  usual_c integer not null,
  version integer not null,
  constraint mat_pk primary key (id),
  constraint mat_name_key unique (name),
  constraint mat_places check (places between 1 and 12),
  constraint mat_thermostat check (thermostat_low_c <= thermostat_high_c),
  constraint mat_usual check (usual_c between thermostat_low_c and thermostat_high_c),
  constraint mat_watts check (watts > 0),
  constraint mat_shelf_fk foreign key (shelf_id) references shelf (id)
);

-- A place holds one standard tray, on a mat or on a lit shelf.
create table place (
  id uuid not null,
  kind varchar(3) not null,
  mat_id uuid,
  lit_shelf_id uuid,
  number integer not null,
  constraint place_pk primary key (id),
  constraint place_kind_key unique (id, kind),
  constraint place_mat_key unique (id, mat_id),
  constraint place_mat_number_key unique (mat_id, number),
  constraint place_lit_number_key unique (lit_shelf_id, number),
  constraint place_kind check (
    (kind = 'mat' and mat_id is not null and lit_shelf_id is null)
    or (kind = 'lit' and mat_id is null and lit_shelf_id is not null)),
  constraint place_number_positive check (number >= 1),
  constraint place_mat_fk foreign key (mat_id) references mat (id),
  constraint place_lit_shelf_fk foreign key (lit_shelf_id) references shelf (id)
);

-- The set-point of a mat on a day: one temperature for everything that lies on it.
create table mat_day (
  mat_id uuid not null,
  on_day date not null,
  celsius integer not null,
  constraint mat_day_pk primary key (mat_id, on_day),
  constraint mat_day_celsius_key unique (mat_id, on_day, celsius),
  constraint mat_day_mat_fk foreign key (mat_id) references mat (id)
);
