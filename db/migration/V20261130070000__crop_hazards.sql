-- What of a crop can hurt someone, and what its seed wants before sowing, become codes and figures; nothing reads the words any
-- more. Of what coordinators wrote before, the codes are taken from their words here, once; the words stay as their note.
alter table own_crop add column hazards varchar(60) default '' not null;
alter table own_crop add column soak varchar(10) default '' not null;
-- null: not known
alter table own_crop add column soak_hours_min integer;
alter table own_crop add column soak_hours_max integer;
alter table own_crop add column nick boolean default false not null;
alter table own_crop add column cold_weeks_min integer;
alter table own_crop add column cold_weeks_max integer;

-- Peppers had their caution by their id alone. Words that deny a hazard never make one.
update own_crop set hazards = 'burns' where crop_id in ('pepper', 'pepper-very-hot');
update own_crop set hazards = 'irritates' where crop_id = 'okra';
update own_crop set hazards = trim(hazards || ' poisonous')
where crop_id = 'vinca'
  or replace(replace(replace(lower(treatment || ' ' || note), 'not poison', ''), 'non-poison', ''), 'nonpoison', '') like '%poison%'
  or replace(replace(replace(lower(treatment || ' ' || note), 'not toxic', ''), 'non-toxic', ''), 'nontoxic', '') like '%toxic%';

update own_crop set nick = true where lower(treatment) like '%nick%';
update own_crop set soak = 'optional' where lower(treatment) like '%soak%';
update own_crop set soak = 'never'
where soak = '' and (lower(treatment) like '%dust%' or lower(treatment) like '%surface%' or lower(treatment) like '%slips%');

alter table own_crop add constraint own_crop_soak check (soak in ('', 'needless', 'optional', 'helps', 'never'));
alter table own_crop add constraint own_crop_soak_hours check (soak_hours_min >= 1 and soak_hours_min <= soak_hours_max);
alter table own_crop add constraint own_crop_cold_weeks check (cold_weeks_min >= 1 and cold_weeks_min <= cold_weeks_max);

-- These are the words of the reference, which its form had filled in, and no one's own.
update own_crop set treatment = '' where treatment in (
  'alternating temperatures (15 C for 24 h or 25 C for 8 h inserted in 30 C) or light broke dormancy in one accession; warm soak up to 24 h',
  'as celery',
  'as head lettuce',
  'cluster seed; soak optional',
  'cold-moist 2-4 weeks helps',
  'cool dark germination 65-70 F',
  'diffuse light and night 10-15 F below day; long cold below 55 F makes it bolt',
  'do not grow cool',
  'dust-fine seed',
  'germinate in the dark, warm',
  'nick or soak 12-24 h (hard coat)',
  'no warmth: germination falls above 70 F',
  'none',
  'none (seedless types need 85-90 F)',
  'none needed; soak optional',
  'none; chilled seedlings bolt',
  'none; dislikes root disturbance',
  'none; dislikes transplanting',
  'none; use fresh seed',
  'pelleted dust seed',
  'pelleted dust seed; very slow',
  'plant is poisonous',
  'poisonous: gloves, label',
  'raised from slips, not seed',
  'scarified seed sold',
  'seedlings chilled about 10 days below 50 F for first-year heads',
  'slow, four weeks or more; low germination',
  'soak 12-24 h in warm water; slow',
  'soak 24 h optional',
  'soak optional',
  'soak or nick; dislikes root disturbance',
  'split the husk or soak',
  'surface sow',
  'thermo-dormant above about 80 F (27 C)');
