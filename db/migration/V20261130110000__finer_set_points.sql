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
