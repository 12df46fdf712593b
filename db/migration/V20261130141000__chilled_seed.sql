-- Seed that wants weeks of moist cold is put into it before it is soaked or sown.
alter table sowing drop constraint sowing_stage;
alter table sowing add constraint sowing_stage check (stage in ('planned', 'chilled', 'soaked', 'sown', 'sprouting', 'in-cells',
  'emerged', 'under-light', 'fed', 'potted-on', 'hardening-off', 'planted-out', 'given-up', 'withdrawn'));
alter table entry drop constraint entry_step;
alter table entry add constraint entry_step check (step in ('look', 'chilled', 'soaked', 'sown', 'moved-to-cells', 'off-heat',
  'under-light', 'first-feed', 'potted-on', 'hardening-off', 'planted-out', 'gave-up', 'reading', 'undone'));
