-- Members see each other by a first name. The program makes these names anew at each start, and where two share one it adds
-- what tells them apart; here it is the first word, so that none is longer until then.
alter table member add column called varchar(60);
update member set called = case
  when erased_at is null and position(' ' in trim(name)) > 0 then substring(trim(name) from 1 for position(' ' in trim(name)) - 1)
  else name
end;
alter table member alter column called set not null;
comment on column member.called is 'What other members see in the place of the name: the first name, with the fewest letters of the last that tell it from others.';
