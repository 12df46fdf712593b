-- What was used and is used no more: nothing new is laid there from a day on, and its history stays.
alter table site add column retired_from date;
alter table rack add column retired_from date;
alter table shelf add column retired_from date;
alter table mat add column retired_from date;

comment on column site.retired_from is 'The day from which nothing lies there any more. Empty: it is in use.';
comment on column rack.retired_from is 'The day from which nothing lies there any more. Empty: it is in use, unless its site is retired.';
comment on column shelf.retired_from is 'The day from which nothing lies there any more. Empty: it is in use, unless its rack or site is retired.';
comment on column mat.retired_from is 'The day from which nothing lies there any more. Empty: it is in use, unless its shelf, rack or site is retired.';
