-- What is kept back of a lot whoever asks, and whether others may plan on the rest without asking its owner.
alter table lot add column kept_back integer default 0 not null;
alter table lot add column without_asking boolean default false not null;
alter table lot add constraint lot_kept_back check (kept_back >= 0);

-- Seeds written off the lot when this was sown; null: none, because it is not sown or nobody has counted the lot.
alter table sowing add column seeds_taken integer;
alter table sowing add constraint sowing_seeds_taken check (seeds_taken >= 1);
create index sowing_lot on sowing (lot_id);

-- What became of a sowing's wish for seed that is not simply there: it is another member's, or went to others meanwhile.
create table lot_request (
  sowing_id uuid not null,
  lot_id uuid not null,
  state varchar(7) not null,
  asked integer not null,
  -- null: not answered, or nothing is given
  given integer,
  reason varchar(400) not null,
  asked_by uuid not null,
  asked_at timestamp(3) with time zone not null,
  answered_by uuid,
  answered_at timestamp(3) with time zone,
  constraint lot_request_pk primary key (sowing_id),
  constraint lot_request_state check (state in ('waiting', 'given', 'refused', 'gone')),
  constraint lot_request_given check ((state = 'given') = (given is not null)),
  constraint lot_request_figures check (asked >= 1 and (given is null or given between 1 and asked)),
  constraint lot_request_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint lot_request_lot_fk foreign key (lot_id) references lot (id),
  constraint lot_request_asked_by_fk foreign key (asked_by) references member (id),
  constraint lot_request_answered_by_fk foreign key (answered_by) references member (id)
);
create index lot_request_lot on lot_request (lot_id);
create index lot_request_state on lot_request (state);

-- What was sown of counted lots so far was written off once.
update sowing set seeds_taken = seeds
where exists (select 1 from entry where entry.sowing_id = sowing.id and entry.step = 'sown')
  and exists (select 1 from lot where lot.id = sowing.lot_id and lot.seeds_left is not null);
