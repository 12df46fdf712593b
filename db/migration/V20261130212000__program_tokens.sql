-- Words by which a member's own scripts come in, and what those were answered that sent something.
create table program_token (
  id uuid not null,
  member_id uuid not null,
  name varchar(60) not null,
  token_hash varchar(64) not null,
  scopes varchar(200) not null,
  made_at timestamp(3) with time zone not null,
  ends_on date,
  last_used_on date,
  revoked_by uuid,
  revoked_at timestamp(3) with time zone,
  constraint program_token_pk primary key (id),
  constraint program_token_hash unique (token_hash),
  constraint program_token_member_fk foreign key (member_id) references member (id),
  constraint program_token_revoked_by_fk foreign key (revoked_by) references member (id)
);
create index program_token_member on program_token (member_id);

comment on table program_token is 'Tokens by which members'' own scripts read and send. Each does at most what its member may at that moment.';
comment on column program_token.member_id is 'Who made it, and in whose name its script reads and sends.';
comment on column program_token.name is 'What it is for, as its member calls it.';
comment on column program_token.token_hash is 'SHA-256 in hexadecimal digits; the token itself was shown once and is kept nowhere.';
comment on column program_token.scopes is 'What its script may do: words such as lots:read with a space between them.';
comment on column program_token.made_at is 'When it was made.';
comment on column program_token.ends_on is 'The last day on which it works, in the group''s time zone. Empty: it works until it is revoked.';
comment on column program_token.last_used_on is 'The last day on which a script came in by it. Empty: none has yet.';
comment on column program_token.revoked_by is 'Who ended it: its member, a coordinator, or whoever let the member go. Empty: nobody has.';
comment on column program_token.revoked_at is 'When it was ended. Empty: it was not.';

create table program_answer (
  token_id uuid not null,
  key_hash varchar(64) not null,
  content_hash varchar(64) not null,
  claimed_at timestamp(3) with time zone not null,
  answer text,
  constraint program_answer_pk primary key (token_id, key_hash),
  constraint program_answer_token_fk foreign key (token_id) references program_token (id)
);
create index program_answer_claimed on program_answer (claimed_at);

comment on table program_answer is 'What scripts sent and were answered, for a week, so that what is sent twice counts once and gets its first answer again.';
comment on column program_answer.token_id is 'By which token it was sent.';
comment on column program_answer.key_hash is 'SHA-256 of its idempotency key, in hexadecimal digits.';
comment on column program_answer.content_hash is 'SHA-256 of its address and content, by which other content under the same key is known.';
comment on column program_answer.claimed_at is 'When it arrived.';
comment on column program_answer.answer is 'The answer as it was sent. Empty: it is being answered, or the server stopped before it was.';
