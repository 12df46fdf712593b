-- Whether an entry was corrected is asked for each that is handed out, so it is found by its key.
create index entry_supersedes on entry (supersedes);
