-- How near a lamp hangs depends on its kind, and one without a timer is switched by whoever is there.
alter table shelf add column lamp varchar(11);
alter table shelf add constraint shelf_lamp check (lamp in ('fluorescent', 'led', 'other'));
alter table shelf add column lamp_hours integer;
alter table shelf add constraint shelf_lamp_hours check (lamp_hours between 1 and 24);
alter table shelf add column lamp_timer boolean;

comment on column shelf.lamp is 'The kind of its lamps: fluorescent (tubes), led, or other. Empty: nobody has said.';
comment on column shelf.lamp_hours is 'Hours a day for which its lamps are on. Empty: nobody has said.';
comment on column shelf.lamp_timer is 'Whether a timer switches its lamps. Empty: nobody has said.';
