-- Taking a tray home after the heat is a step of its own, confirmed by whoever does it.
alter table entry drop constraint entry_step;
alter table entry add constraint entry_step check (step in ('look', 'chilled', 'soaked', 'sown', 'moved-to-cells', 'off-heat',
  'under-light', 'taken-home', 'first-feed', 'potted-on', 'trimmed', 'hardening-off', 'planted-out', 'gave-up',
  'not-recorded', 'reading', 'undone'));
