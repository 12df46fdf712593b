-- Whoever took plants of a sowing is asked how it was too, so a sowing has a report of each who grew some of it.
create table harvest_report (
  sowing_id uuid not null,
  member_id uuid not null,
  again varchar(13),
  amount varchar(6),
  kilograms numeric(6, 2),
  taste varchar(9),
  first_on date,
  last_on date,
  trouble varchar(400) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint harvest_report_pk primary key (sowing_id, member_id),
  constraint harvest_report_again check (again in ('again', 'other-variety', 'not-again')),
  constraint harvest_report_amount check (amount in ('none', 'little', 'enough', 'plenty')),
  constraint harvest_report_kilograms check (kilograms >= 0),
  constraint harvest_report_taste check (taste in ('poor', 'good', 'very-good')),
  constraint harvest_report_days check (first_on <= last_on),
  constraint harvest_report_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint harvest_report_member_fk foreign key (member_id) references member (id),
  constraint harvest_report_made_by_fk foreign key (made_by) references member (id)
);

insert into harvest_report (sowing_id, member_id, again, amount, kilograms, taste, first_on, last_on, trouble, made_by, made_at)
select harvest_note.sowing_id, sowing.member_id, harvest_note.again, harvest_note.amount, harvest_note.kilograms,
  harvest_note.taste, harvest_note.first_on, harvest_note.last_on, harvest_note.trouble, harvest_note.made_by, harvest_note.made_at
from harvest_note
join sowing on sowing.id = harvest_note.sowing_id;

drop table harvest_note;

comment on table harvest_report is 'What somebody says after the season of plants that they planted out: of their own sowing, or of plants that they took from another''s. What was not answered is empty.';
comment on column harvest_report.member_id is 'Whose plants they were: the grower, or somebody who took some.';
comment on column harvest_report.again is 'Whether they would grow it again: again, other-variety or not-again. Empty: not answered.';
comment on column harvest_report.amount is 'Roughly how much it gave: none, little, enough or plenty. Empty: not answered.';
comment on column harvest_report.kilograms is 'How much it gave. Empty: nobody weighed.';
comment on column harvest_report.taste is 'How it tasted: poor, good or very-good. Empty: not answered.';
comment on column harvest_report.first_on is 'The day of the first harvest. Empty: not answered.';
comment on column harvest_report.last_on is 'The day of the last harvest. Empty: not answered.';
comment on column harvest_report.trouble is 'What went wrong, in the words of the grower; as long as nothing did, no text.';
comment on column harvest_report.made_by is 'Who said so last.';
