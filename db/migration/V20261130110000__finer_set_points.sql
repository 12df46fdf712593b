-- Set-points to a tenth of a degree Celsius, so that every whole degree Fahrenheit comes back as it was typed. Bands stay whole
-- degrees: a set-point suits one when the whole degree it rounds to lies within it.
alter table quarter_day drop constraint quarter_day_set_point_fk;
alter table quarter_day drop constraint quarter_day_band;
alter table mat_day alter column celsius set data type numeric(3, 1);
alter table quarter_day alter column celsius set data type numeric(3, 1);
alter table quarter_day add constraint quarter_day_band check (round(celsius) between low_c and high_c);
alter table quarter_day add constraint quarter_day_set_point_fk foreign key (mat_id, on_day, celsius)
  references mat_day (mat_id, on_day, celsius) on update cascade;

alter table mat drop constraint mat_usual;
alter table mat drop constraint mat_thermostat;
alter table mat alter column thermostat_low_c set data type numeric(3, 1);
alter table mat alter column thermostat_high_c set data type numeric(3, 1);
alter table mat alter column usual_c set data type numeric(3, 1);
alter table mat add constraint mat_thermostat check (thermostat_low_c <= thermostat_high_c);
alter table mat add constraint mat_usual check (round(usual_c) between round(thermostat_low_c) and round(thermostat_high_c));

alter table stay_move alter column old_celsius set data type numeric(3, 1);
alter table stay_move alter column new_celsius set data type numeric(3, 1);
alter table season_plan_before alter column celsius set data type numeric(3, 1);
alter table season_plan_warmth alter column celsius_before set data type numeric(3, 1);
alter table season_plan_warmth alter column celsius_set set data type numeric(3, 1);
alter table withdrawal_stay alter column celsius set data type numeric(3, 1);

-- H2 forgets what a column means when its type changes.
comment on column mat.thermostat_low_c is 'The lowest set-point that its thermostat offers, °C.';
comment on column mat.thermostat_high_c is 'The highest set-point, °C.';
comment on column mat.usual_c is 'The set-point that it is given on the first day that something lies on it, °C.';
comment on column mat_day.celsius is 'The set-point, °C.';
comment on column quarter_day.celsius is 'The mat''s set-point on that day, °C, held equal to mat_day by a key. Empty: under a light.';
comment on column season_plan_before.celsius is 'The set-point it lay at, °C. Empty: under a light.';
comment on column season_plan_warmth.celsius_before is 'The set-point before, °C. Empty: the mat was not set on that day.';
comment on column season_plan_warmth.celsius_set is 'The set-point that the publication gave it, °C.';
comment on column stay_move.old_celsius is 'The set-point it lay at, °C. Empty: under a light.';
comment on column stay_move.new_celsius is 'The set-point it lies at, °C. Empty: under a light.';
comment on column withdrawal_stay.celsius is 'The set-point it was to lie at, °C. Empty: under a light.';
