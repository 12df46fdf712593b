-- What electricity cost in a season, as a coordinator says.
create table energy_price (
  season integer not null,
  per_kwh numeric(8, 4) not null,
  currency varchar(8) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint energy_price_pk primary key (season),
  constraint energy_price_positive check (per_kwh > 0),
  constraint energy_price_made_by_fk foreign key (made_by) references member (id)
);

comment on table energy_price is 'What electricity cost in a season, as a coordinator says, to tell what the mats cost at most.';
comment on column energy_price.season is 'The season, named by its year of planting out.';
comment on column energy_price.per_kwh is 'The price of one kilowatt-hour.';
comment on column energy_price.currency is 'The currency as people write it, for example USD or €.';
comment on column energy_price.made_by is 'Who set it last.';
