-- Why the last plan had no place for a request, as codes with their figures, so that each reader gets it in their own units.
alter table plan_note add column refused varchar(1000);
comment on column plan_note.refused is 'Where it was refused: why, and what would help, as codes with their figures in SI (JSON); follows the words. Empty: the words say all.';
comment on column plan_note.words is 'What the member reads, or how it begins.';
