-- Whether a coordinator had chosen the set-point that a publication changed.
alter table season_plan_warmth add column by_hand_before boolean default false not null;
