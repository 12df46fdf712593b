-- What the grower or a coordinator answered to a problem that somebody noted: 'seen', then 'done'; each once.
create table problem_answer (
  entry_id uuid not null,
  answer varchar(4) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  -- when whoever noted the problem put the answer away
  dismissed_at timestamp(3) with time zone,
  constraint problem_answer_pk primary key (entry_id, answer),
  constraint problem_answer_answer check (answer in ('seen', 'done')),
  constraint problem_answer_entry_fk foreign key (entry_id) references entry (id),
  constraint problem_answer_made_by_fk foreign key (made_by) references member (id)
);
