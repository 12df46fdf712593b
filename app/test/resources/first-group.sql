-- A group as the first program would have kept it, with the first six steps of its tables. Invented.
insert into group_profile values (1, 'Cellar Growers', 'America/Chicago', 'F', 'in', 'US', '55806', 2027, 1);
insert into member (id, name, name_key, role, country, postcode, passphrase_hash, joined_at, version) values
  ('00000000-0000-0000-0000-000000000001', 'Ilse Brandt', 'ilse brandt', 'coordinator', 'US', '55803', 'none', '2027-01-10 12:00:00+00', 1);
insert into audit_line values
  ('00000000-0000-0000-0000-000000000002', '2027-01-10 12:00:00+00', '00000000-0000-0000-0000-000000000001', 'open group', 'group', '1', '');
insert into lot (id, crop_id, variety, seed_year, treated, note, made_by, made_at, version) values
  ('00000000-0000-0000-0000-000000000003', 'pepper', 'Cellar Red', 2026, false, '', '00000000-0000-0000-0000-000000000001', '2027-01-11 12:00:00+00', 1);
insert into sowing (id, member_id, season, crop_id, lot_id, plants_wanted, method, warm, container, quarters, seeds,
  seeds_per_cell, cells, risk, stage, asked_at, note, version) values
  ('00000000-0000-0000-0000-000000000004', '00000000-0000-0000-0000-000000000001', 2027, 'pepper',
  '00000000-0000-0000-0000-000000000003', 6, 'cells', true, 'tray', 4, 12, 2, 6, 0.1, 'sown', '2027-02-01 12:00:00+00', '', 1);
insert into entry (id, sowing_id, step, seen_on, seen_at, finished, note, made_by, made_at) values
  ('00000000-0000-0000-0000-000000000005', '00000000-0000-0000-0000-000000000004', 'sown', '2027-03-02', '2027-03-02 15:00:00+00',
  false, '', '00000000-0000-0000-0000-000000000001', '2027-03-02 15:00:00+00');
