-- A passkey is a key pair that a member's phone or computer keeps: it signs what the server asks, and only the public half is here.
create table passkey (
  id uuid not null,
  member_id uuid not null,
  name varchar(60) not null,
  credential_id varchar(1400) not null,
  credential_data varchar(4000) not null,
  sign_count bigint not null,
  made_at timestamp(3) with time zone not null,
  last_used_at timestamp(3) with time zone,
  constraint passkey_pk primary key (id),
  constraint passkey_credential_key unique (credential_id),
  constraint passkey_member_fk foreign key (member_id) references member (id),
  constraint passkey_sign_count check (sign_count >= 0)
);
create index passkey_member on passkey (member_id);
comment on table passkey is 'A phone or computer that signs a member in without a passphrase (W3C Web Authentication). Gone once it is ended.';
comment on column passkey.name is 'As the member calls it, such as my phone.';
comment on column passkey.credential_id is 'By which the device names the key, in base64url.';
comment on column passkey.credential_data is 'The public key with its kind, as the device sent it (attested credential data, CBOR), in base64url.';
comment on column passkey.sign_count is 'How often the device says that it has signed; 0 where it does not count. One that goes backwards is refused.';
comment on column passkey.last_used_at is 'Empty: not yet.';

create table passkey_challenge (
  challenge_hash varchar(64) not null,
  member_id uuid,
  name varchar(60) not null,
  expires_at timestamp(3) with time zone not null,
  constraint passkey_challenge_pk primary key (challenge_hash),
  constraint passkey_challenge_member_fk foreign key (member_id) references member (id)
);
create index passkey_challenge_expiry on passkey_challenge (expires_at);
comment on table passkey_challenge is 'What a device was asked to sign. Gone once it is answered, or its time is over.';
comment on column passkey_challenge.challenge_hash is 'SHA-256 of the challenge, in hexadecimal.';
comment on column passkey_challenge.member_id is 'Who is adding a passkey. Empty: somebody signs in.';
comment on column passkey_challenge.expires_at is 'From then on it can be answered no more.';
comment on column passkey_challenge.name is 'As the new passkey will be called; nothing at signing in.';
