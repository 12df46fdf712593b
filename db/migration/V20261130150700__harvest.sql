-- What its grower says of a sowing after the season: one row a sowing, changed as long as more is known.
create table harvest_note (
  sowing_id uuid not null,
  again varchar(13),
  amount varchar(6),
  kilograms numeric(6, 2),
  taste varchar(9),
  first_on date,
  last_on date,
  trouble varchar(400) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  constraint harvest_note_pk primary key (sowing_id),
  constraint harvest_note_again check (again in ('again', 'other-variety', 'not-again')),
  constraint harvest_note_amount check (amount in ('none', 'little', 'enough', 'plenty')),
  constraint harvest_note_kilograms check (kilograms >= 0),
  constraint harvest_note_taste check (taste in ('poor', 'good', 'very-good')),
  constraint harvest_note_days check (first_on <= last_on),
  constraint harvest_note_sowing_fk foreign key (sowing_id) references sowing (id),
  constraint harvest_note_made_by_fk foreign key (made_by) references member (id)
);

comment on table harvest_note is 'What its grower says after the season of a sowing that was planted out. What was not answered is empty.';
comment on column harvest_note.again is 'Whether they would grow it again: again, other-variety or not-again. Empty: not answered.';
comment on column harvest_note.amount is 'Roughly how much it gave: none, little, enough or plenty. Empty: not answered.';
comment on column harvest_note.kilograms is 'How much it gave. Empty: nobody weighed.';
comment on column harvest_note.taste is 'How it tasted: poor, good or very-good. Empty: not answered.';
comment on column harvest_note.first_on is 'The day of the first harvest. Empty: not answered.';
comment on column harvest_note.last_on is 'The day of the last harvest. Empty: not answered.';
comment on column harvest_note.trouble is 'What went wrong, in the words of the grower; as long as nothing did, no text.';
comment on column harvest_note.made_by is 'Who said so last.';
