-- What a sowing was sown in, so that losses can be told by compost.
alter table sowing add column compost varchar(60);
comment on column sowing.compost is 'The compost in which it was sown, or into which it was moved from its bag, as people call it. Empty: nobody noted it.';
