-- What is open stays few while what is over grows from season to season: found by an index, and not by looking through all.
create index stay_to_day on stay (to_day);
create index space_request_state on space_request (state);
create index sowing_of_season on sowing (season);
