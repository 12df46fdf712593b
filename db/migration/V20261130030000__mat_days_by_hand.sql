-- A set-point that a coordinator has chosen for a day stands even while nothing lies on the mat, and what is laid there
-- follows it. What a stay asked for goes with the stay.
alter table mat_day add column by_hand boolean default false not null;
