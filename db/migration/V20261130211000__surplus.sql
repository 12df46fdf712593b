-- Seedlings that their grower gives away, and who takes some.
create table surplus_offer (
  sowing_id uuid not null,
  plants integer not null,
  taken integer not null,
  offered_by uuid not null,
  offered_at timestamp(3) with time zone not null,
  constraint surplus_offer_pk primary key (sowing_id),
  constraint surplus_offer_taken check (taken between 0 and plants),
  constraint surplus_offer_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint surplus_offer_offered_by_fk foreign key (offered_by) references member (id)
);
comment on table surplus_offer is 'Seedlings of a sowing that are given away. An offer ends by itself once the sowing is given up, three weeks after it went out, or when the season is over.';
comment on column surplus_offer.plants is 'How many are given away in all, those that somebody takes among them.';
comment on column surplus_offer.taken is 'How many of them somebody takes or has: the sum of its takings that have not ended, kept here so that the database itself lets nobody take more than there are.';
comment on column surplus_offer.offered_by is 'Who offered them last: the grower or a coordinator.';
comment on column surplus_offer.offered_at is 'When they were offered last.';

create table surplus_taking (
  id uuid not null,
  sowing_id uuid not null,
  member_id uuid not null,
  plants integer not null,
  taken_at timestamp(3) with time zone not null,
  handed_over_by uuid,
  handed_over_at timestamp(3) with time zone,
  handed_over_on date,
  ended_by uuid,
  ended_at timestamp(3) with time zone,
  constraint surplus_taking_pk primary key (id),
  constraint surplus_taking_plants check (plants > 0),
  constraint surplus_taking_handed_over check (ended_at is null or handed_over_at is null),
  constraint surplus_taking_offer_fk foreign key (sowing_id) references surplus_offer (sowing_id),
  constraint surplus_taking_member_fk foreign key (member_id) references member (id),
  constraint surplus_taking_handed_over_by_fk foreign key (handed_over_by) references member (id),
  constraint surplus_taking_ended_by_fk foreign key (ended_by) references member (id)
);
create index surplus_taking_sowing on surplus_taking (sowing_id);
create index surplus_taking_member on surplus_taking (member_id);
comment on table surplus_taking is 'Somebody takes seedlings that are given away. It stands until they are handed over or one side ends it.';
comment on column surplus_taking.sowing_id is 'The sowing of whose seedlings they are.';
comment on column surplus_taking.member_id is 'Who takes them.';
comment on column surplus_taking.plants is 'How many.';
comment on column surplus_taking.taken_at is 'When they said so.';
comment on column surplus_taking.handed_over_by is 'Who confirmed that they were handed over, of either side. Empty: nobody has yet.';
comment on column surplus_taking.handed_over_at is 'When that was confirmed. Empty: nobody has yet.';
comment on column surplus_taking.handed_over_on is 'The day of that, in the group''s time zone. Empty: nobody has confirmed it yet.';
comment on column surplus_taking.ended_by is 'Who gave them back or kept them after all. Empty: it stands.';
comment on column surplus_taking.ended_at is 'When that was. Empty: it stands.';
