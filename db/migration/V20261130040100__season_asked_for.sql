-- A sowing belongs to the season that the group worked towards when it was asked for. Those that go out under cover were kept
-- with the year of that day; what the group worked towards then lies between what was asked for outdoors before and after them.
update sowing set season = least(
  greatest(
    season,
    coalesce(
      (select o.season from sowing o where o.under_cover_on is null and o.asked_at <= sowing.asked_at
        order by o.asked_at desc, o.id fetch first 1 rows only),
      (select o.season from sowing o where o.under_cover_on is null and o.asked_at > sowing.asked_at
        order by o.asked_at, o.id fetch first 1 rows only),
      (select g.season from group_profile g where g.id = 1),
      season)),
  coalesce(
    (select o.season from sowing o where o.under_cover_on is null and o.asked_at > sowing.asked_at
      order by o.asked_at, o.id fetch first 1 rows only),
    (select g.season from group_profile g where g.id = 1),
    season))
where under_cover_on is not null;
