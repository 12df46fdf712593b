-- A person can have themself erased. Their row stays without them, because sowings and entries name it.
alter table member add column erased_at timestamp(3) with time zone;
comment on column member.erased_at is 'When the person was erased: since then the row holds nothing of them, and its postcode is the group''s. Empty: they were not.';
