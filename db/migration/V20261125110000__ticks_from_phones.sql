-- A tick can be taken back: an entry that supersedes another and counts for nothing itself.
alter table entry drop constraint entry_step;
alter table entry add constraint entry_step check (step in ('look', 'soaked', 'sown', 'moved-to-cells', 'off-heat',
  'under-light', 'first-feed', 'potted-on', 'hardening-off', 'planted-out', 'gave-up', 'reading', 'undone'));
