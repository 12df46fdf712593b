-- Some seed comes up in light only. Whether light reaches a mat is a fact of its place; of mats that stand already nobody has said.
alter table mat add column light varchar(8);
alter table mat add constraint mat_light check (light in ('lamp', 'daylight', 'none'));
alter table space_request add column needs_light boolean default false not null;
-- what waits asks as what is asked from now on; what is placed stays as it was placed
update space_request set needs_light = true
where state = 'waiting' and sowing_id in (select id from sowing where crop_id in (
  'lettuce', 'leaf-lettuce', 'celery', 'celeriac', 'dill', 'thyme', 'oregano', 'lavender', 'ageratum', 'snapdragon', 'begonia',
  'lisianthus', 'impatiens', 'flowering-tobacco', 'petunia', 'moss-rose', 'salvia', 'coleus', 'sweet-alyssum', 'foxglove'));

comment on column mat.light is 'What light reaches what lies on it from above: lamp, daylight, or none. Empty: nobody has said.';
comment on column space_request.needs_light is 'Whether its seed needs light from sowing on, and nobody has said that it gets it otherwise: it is then not laid on a mat without light.';
