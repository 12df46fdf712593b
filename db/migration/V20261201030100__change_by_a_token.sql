-- What a member's script changed is told from what the member did on a page.
alter table audit_line add column token_name varchar(60);
comment on column audit_line.token_name is 'The name of the token by which a script of the member''s did it. Empty: the member did it on a page, or the program by itself.';
