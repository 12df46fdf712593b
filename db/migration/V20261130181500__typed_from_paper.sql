-- A round that was walked on paper: who looked need not be who types it in.
alter table entry add column typed_by uuid;
alter table entry add constraint entry_typed_by_fk foreign key (typed_by) references member (id);
comment on column entry.typed_by is 'Who typed it in from paper for whoever looked. Empty: who looked entered it.';
