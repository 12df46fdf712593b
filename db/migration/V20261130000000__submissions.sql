-- One row for each form that was sent and has written something, made in the transaction that wrote it: the same form,
-- sent again, finds its row here and writes nothing.
create table submission (
  -- SHA-256 of what the page gave the form as a name of its own, its address and all that was typed, in hexadecimal
  fingerprint varchar(64) not null,
  member_id uuid not null,
  -- which of the requests that brought this form has written
  request_id uuid not null,
  sent_at timestamp(3) with time zone not null,
  constraint submission_pk primary key (fingerprint),
  constraint submission_member_fk foreign key (member_id) references member (id)
);
create index submission_sent_at on submission (sent_at);
