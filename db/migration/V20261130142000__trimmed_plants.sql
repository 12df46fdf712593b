-- Onions are trimmed and some flowers pinched: an entry that changes no stage.
alter table entry drop constraint entry_step;
alter table entry add constraint entry_step check (step in ('look', 'chilled', 'soaked', 'sown', 'moved-to-cells', 'off-heat',
  'under-light', 'first-feed', 'potted-on', 'trimmed', 'hardening-off', 'planted-out', 'gave-up', 'reading', 'undone'));
