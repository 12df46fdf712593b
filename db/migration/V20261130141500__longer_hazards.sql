-- More words can be ticked for one crop than fitted.
alter table own_crop alter column hazards set data type varchar(200);
comment on column own_crop.hazards is 'Words, with spaces between, for what can hurt whoever handles it, eats it or grazes it: burns, hot-kinds, poisonous, parts, sun, sensitises, irritates, pets, grazing, bitter, treated; an empty text for none.';
