-- Sowings of seasons that are over can be brought in as a table.
alter table incoming_table drop constraint incoming_table_kind;
alter table incoming_table add constraint incoming_table_kind check (kind in ('lots', 'members', 'nights', 'sowings'));
comment on column incoming_table.kind is 'What its rows are: lots, members (of whom each gets a link to join by), nights of a thermometer, or sowings of seasons that are over.';
