-- Seed taken by mistake goes back only while nobody has counted the lot meanwhile: who counts sees what lies there.
alter table lot add column counts integer default 0 not null;
alter table sowing add column seeds_taken_counts integer;
-- whether what was sown so far was counted meanwhile is not known
update sowing set seeds_taken_counts = 0 where seeds_taken is not null;
alter table sowing add constraint sowing_seeds_taken_counts check ((seeds_taken is null) = (seeds_taken_counts is null));

comment on column lot.counts is 'How often what is left was counted anew. Taking and putting back are no counts.';
comment on column sowing.seeds_taken_counts is 'The counts of the lot when the seeds were taken; after another count they are not put back. Empty: none were taken.';
