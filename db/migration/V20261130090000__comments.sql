-- What each table and each column that is not plain from its name means: the handbook's page of the data is made from these.
-- A new table or column brings its comment with it, in the migration that makes it.

comment on table group_profile is 'The group itself: one row, written when the first coordinator opens it, changed in Settings.';
comment on column group_profile.time_zone is 'The zone in which the group counts its days, such as America/Chicago.';
comment on column group_profile.temperature_unit is 'C or F: how pages show temperatures to whoever has not chosen. Kept figures are always °C.';
comment on column group_profile.length_unit is 'cm or in: how pages show lengths and amounts to whoever has not chosen. Kept figures are metric.';
comment on column group_profile.country is 'Two letters (ISO 3166) of the country that the home postcode is in.';
comment on column group_profile.home_postcode is 'Where the group is at home; its frost dates count where no member''s do.';
comment on column group_profile.season is 'The year of planting out that the group works towards now.';

comment on table member is 'A person who has joined. Rows stay when somebody leaves, because sowings and entries name them.';
comment on column member.name_key is 'The name in small letters, so that two people cannot differ by capitals alone.';
comment on column member.role is 'member or coordinator.';
comment on column member.country is 'Two letters (ISO 3166) of the country that the postcode is in.';
comment on column member.postcode is 'Where the garden is; its frost dates are told from it.';
comment on column member.passphrase_hash is 'Argon2id hash of the passphrase; the passphrase itself is kept nowhere.';
comment on column member.temperature_unit is 'C or F. Empty: as the group shows it.';
comment on column member.length_unit is 'cm or in. Empty: as the group shows it.';
comment on column member.joined_at is 'When the person joined.';
comment on column member.left_at is 'Empty: has not left.';

comment on table member_session is 'One sign-in on one device. Made at signing in, gone after signing out or expiry.';
comment on column member_session.token_hash is 'SHA-256 of the cookie, in hexadecimal: a stolen copy of the database opens no session.';
comment on column member_session.csrf_token is 'The word that this session''s forms carry, so that no other site can send them.';
comment on column member_session.started_at is 'When it was signed in.';
comment on column member_session.last_seen_at is 'When it last asked for a page, to within an hour.';
comment on column member_session.expires_at is 'Of no use any more from then on.';

comment on table access_link is 'A link that lets somebody in: it opens the group, joins it or signs in.';
comment on column access_link.token_hash is 'SHA-256 of the link''s secret part, in hexadecimal.';
comment on column access_link.purpose is 'open-group, join or sign-in.';
comment on column access_link.role is 'What whoever follows it becomes: member or coordinator.';
comment on column access_link.member_id is 'Who is signed in by it. Empty: it is not for signing in.';
comment on column access_link.note is 'Whom the link is for, as its maker wrote.';
comment on column access_link.made_by is 'Empty: the program, at its first start or in the demo.';
comment on column access_link.expires_at is 'Of no use any more from then on.';
comment on column access_link.uses_left is 'Empty: any number of times until it expires (the demo''s sign-in links).';
comment on column access_link.used_at is 'When it was used last. Empty: not yet.';
comment on column access_link.used_by is 'Who used it last. Empty: nobody yet.';

comment on table audit_line is 'One line for every write: who did what to which thing, and when. Only ever added to.';
comment on column audit_line.at is 'When it was written.';
comment on column audit_line.member_id is 'Who did it. Empty: the program itself.';
comment on column audit_line.action is 'What was done, such as ''recount''.';
comment on column audit_line.subject is 'The kind of thing it was done to, such as lot.';
comment on column audit_line.subject_id is 'The key of that thing in its own table.';
comment on column audit_line.detail is 'What is worth knowing of it; may be cut at 1,000 characters.';

comment on table site is 'Where racks stand, such as a cellar, with the rating of its electrical circuit.';
comment on column site.walk_order is 'Sites are walked by this number, then by name.';
comment on column site.circuit_amps is 'Rating of the breaker in amperes.';
comment on column site.circuit_volts is 'Voltage of the circuit.';

comment on table rack is 'A stand of shelves at a site.';
comment on column rack.walk_order is 'The racks of a site are walked by this number, then by name.';

comment on table shelf is 'A level of a rack.';
comment on column shelf.from_top is 'Levels are counted from the top: 1 is the topmost.';
comment on column shelf.lit_places is 'How many trays fit under its light; 0: no light.';
comment on column shelf.light_watts is 'What its light draws while it is on, in watts.';

comment on table mat is 'A heat mat on a shelf; everything on it lies at one temperature.';
comment on column mat.walk_order is 'The mats of a shelf are walked by this number, then by name.';
comment on column mat.places is 'How many standard trays lie on it side by side.';
comment on column mat.thermostat_low_c is 'The lowest set-point that its thermostat offers, °C.';
comment on column mat.thermostat_high_c is 'The highest set-point, °C.';
comment on column mat.watts is 'What it draws while it heats, in watts.';
comment on column mat.usual_c is 'The set-point that it is given on the first day that something lies on it, °C.';

comment on table place is 'Room for one standard tray, on a mat or on a lit shelf; it has four quarters.';
comment on column place.kind is 'mat or lit.';
comment on column place.mat_id is 'The mat it is on. Empty: it is on a lit shelf.';
comment on column place.lit_shelf_id is 'The lit shelf it is on. Empty: it is on a mat.';
comment on column place.number is 'Counted from the left, from 1.';

comment on table mat_day is 'The set-point of a mat on a day: one temperature for everything that lies on it. Written by stays, plans and coordinators.';
comment on column mat_day.on_day is 'The day in the group''s time zone.';
comment on column mat_day.celsius is 'The set-point, °C.';
comment on column mat_day.by_hand is 'True: a coordinator has chosen it; it stands even while nothing lies on the mat. Else it goes with the stay that asked for it.';

comment on table lot is 'A packet or jar of seed: the seed box is made of these.';
comment on column lot.crop_id is 'The crop''s word in the reference table or in own_crop, such as pepper.';
comment on column lot.variety is 'As the packet names it.';
comment on column lot.seed_year is 'The year for which the packet was packed, or in which the seed was saved.';
comment on column lot.seeds_left is 'How many seeds are in it. Empty: nobody has counted.';
comment on column lot.owner_id is 'Whose it is. Empty: the group''s own.';
comment on column lot.treated is 'Whether the seed carries a pesticide.';
comment on column lot.source is 'packet, saved or swapped.';
comment on column lot.storage is 'How it is kept: fridge, cupboard, shed, unknown, or own (measured; then the next two say how).';
comment on column lot.storage_c is 'Measured temperature where it is kept, °C. Empty: as that kind of storage usually has it.';
comment on column lot.storage_moisture is 'Measured moisture of the seed, % of its fresh weight. Empty: as that kind of storage usually has it.';
comment on column lot.offered is 'How many of its seeds anybody may take.';
comment on column lot.taken_from is 'The lot out of which these seeds were taken. Empty: they came otherwise.';
comment on column lot.kept_back is 'How many of its seeds are kept back, whoever asks.';
comment on column lot.without_asking is 'Whether others may plan on the rest without asking its owner.';

comment on table germination_test is 'A test of a lot: so many seeds were laid out and so many came up.';
comment on column germination_test.tested_on is 'The day on which it was counted.';
comment on column germination_test.germinated is 'How many came up.';
comment on column germination_test.seeds is 'How many were laid out.';

comment on table sowing is 'One member''s intent for one season; what happened to it stands in entry.';
comment on column sowing.season is 'The year of planting out that the group worked towards when it was asked for; no later date changes it.';
comment on column sowing.crop_id is 'The crop''s word in the reference table or in own_crop.';
comment on column sowing.plants_wanted is 'How many plants the member wants to plant out.';
comment on column sowing.method is 'cells (sown in a tray) or bag (pre-sprouted in damp paper, then moved into cells).';
comment on column sowing.warm is 'Whether it asks for a place on a mat.';
comment on column sowing.container is 'tray, half-tray or bag.';
comment on column sowing.quarters is 'How many quarters of a place the container takes: 4, 2 or 1.';
comment on column sowing.seeds is 'How many seeds are sown.';
comment on column sowing.seeds_per_cell is 'How many of them go into a cell.';
comment on column sowing.cells is 'How many cells are filled.';
comment on column sowing.risk is 'The chance, 0 to 1, of a later frost that the member accepts.';
comment on column sowing.under_cover_on is 'The day on which the plants go out under cover. Empty: outdoors, by frost dates.';
comment on column sowing.stage is 'How far it has come; worked out from its entries and repeated here in the same transaction.';
comment on column sowing.cells_in_tray is 'How many cells a whole tray of that kind has. Empty: nobody has said.';
comment on column sowing.seeds_taken is 'Seeds written off the lot when it was sown. Empty: none, because it is not sown or nobody has counted the lot.';

comment on table space_request is 'What a sowing asks of the mats, and what a coordinator or a plan decided.';
comment on column space_request.state is 'waiting, placed, refused or withdrawn.';
comment on column space_request.earliest is 'The first day on which it can begin.';
comment on column space_request.ideal is 'The day on which it best begins.';
comment on column space_request.latest is 'The last day on which it can begin and still be in time.';
comment on column space_request.days is 'How many days it needs at the warmth that suits it best.';
comment on column space_request.quarters is 'How many quarters of a place it takes.';
comment on column space_request.low_c is 'The lowest set-point that suits the crop''s seed, °C.';
comment on column space_request.high_c is 'The highest set-point that suits it, °C.';
comment on column space_request.reason is 'Why it was refused; else an empty text.';
comment on column space_request.decided_by is 'Empty: nobody has decided.';
comment on column space_request.decided_at is 'Empty: nobody has decided.';
comment on column space_request.under_light is 'Whether it is to go under the group''s lights when it comes off the heat; false: it goes home.';

comment on table stay is 'A sowing lying on quarters of one place over days. What somebody moves or ends early is changed here, its history kept in stay_move.';
comment on column stay.first_quarter is 'The first of its quarters, 1 to 4; 1 and 2 are the left half.';
comment on column stay.quarters is 'How many quarters it takes, side by side.';
comment on column stay.from_day is 'The first day on which it lies there.';
comment on column stay.to_day is 'The day on which it leaves; it does not lie there any more.';

comment on table quarter_day is 'One row for each quarter of a place and day that is taken; its key lets no two stays have the same. Written with its stay.';
comment on column quarter_day.place_id is 'The place.';
comment on column quarter_day.quarter is 'Which quarter of the place, 1 to 4.';
comment on column quarter_day.on_day is 'The day in the group''s time zone.';
comment on column quarter_day.kind is 'mat or lit, as the place is.';
comment on column quarter_day.mat_id is 'The mat. Empty: under a light.';
comment on column quarter_day.celsius is 'The mat''s set-point on that day, °C, held equal to mat_day by a key. Empty: under a light.';
comment on column quarter_day.low_c is 'The lowest set-point that what lies there can bear, °C. Empty: under a light.';
comment on column quarter_day.high_c is 'The highest set-point that it can bear, °C. Empty: under a light.';

comment on table entry is 'What was seen or done, only ever added to. The key is made by the phone, so that sending twice stores once.';
comment on column entry.kept_order is 'The order in which entries were kept, for those that were seen at the same moment; the database counts it.';
comment on column entry.sowing_id is 'What was looked at. Empty: a mat.';
comment on column entry.mat_id is 'What was looked at. Empty: a sowing.';
comment on column entry.step is 'What was done: look, a step of the sowing, reading (of a mat''s thermometer) or undone (takes another entry back).';
comment on column entry.seen_on is 'The day on which it was seen, in the group''s time zone.';
comment on column entry.seen_at is 'The moment: the phone''s, set right by the server, or that of entering it where only the day is known.';
comment on column entry.sprouted is 'Roots showing in a bag or seedlings up in cells, so far. Empty: not counted.';
comment on column entry.moved is 'Moved from the bag into cells, so far. Empty: not counted.';
comment on column entry.lost is 'Lost so far. Empty: not counted.';
comment on column entry.finished is 'The bag is done with: what has not sprouted by now is not waited for.';
comment on column entry.celsius is 'What the thermometer on the mat showed, °C. Empty: not read.';
comment on column entry.problem is 'What is wrong, such as dry, mould or damping-off. Empty: nothing.';
comment on column entry.supersedes is 'The entry that this one corrects or takes back. Empty: none.';

comment on table duty is 'Who looks at a site on a day.';
comment on column duty.on_day is 'The day of the turn.';

comment on table frost_evidence_version is 'One row that grows with every change to what frost dates rest on, so that what was reckoned before is reckoned anew.';
comment on column frost_evidence_version.version is 'The count of changes so far.';

comment on table frost_import is 'A file brought in for frost dates. Its rows count for nothing until a coordinator takes them.';
comment on column frost_import.kind is 'stations (our own table of published dates), normals (a national service''s by-station table), nights (one station''s daily minima) or postcodes.';
comment on column frost_import.file_name is 'As it was called where it came from.';
comment on column frost_import.bytes_total is 'Size of the file.';
comment on column frost_import.bytes_read is 'How much of it has been read so far.';
comment on column frost_import.rows_read is 'Rows read so far.';
comment on column frost_import.rows_good is 'Rows understood.';
comment on column frost_import.state is 'reading, ready, taken, cancelled, refused, failed or removed.';
comment on column frost_import.words is 'Why it was refused or failed, or what was found in it.';
comment on column frost_import.beat_at is 'The reader''s last sign of life, so that one whose program was stopped is told from one that is slow.';
comment on column frost_import.decided_by is 'Who took, cancelled or removed it. Empty: nobody yet.';
comment on column frost_import.decided_at is 'Empty: nobody has decided.';

comment on table frost_import_problem is 'A row of a file that was not understood, and why.';
comment on column frost_import_problem.line_number is 'Counted from 1.';
comment on column frost_import_problem.sentence is 'What was wrong with it.';

comment on table frost_station is 'A weather station that the group brought in or typed in.';
comment on column frost_station.import_id is 'The file it came with. Empty: typed in.';
comment on column frost_station.kind is 'published (dates as a service prints them), nights (counted from daily minima) or monthly (told from twelve mean minima).';
comment on column frost_station.code is 'The service''s own key of the station; an empty text where it has none.';
comment on column frost_station.elevation_m is 'Height above the sea in metres.';
comment on column frost_station.source is 'Where its figures are from, such as ''1991-2020''.';
comment on column frost_station.removed_by is 'Empty: it counts.';
comment on column frost_station.removed_at is 'Empty: it counts.';

comment on table frost_station_date is 'One station''s frost of one season at one threshold. Days are numbers of a 365-day year.';
comment on column frost_station_date.threshold_c is 'A night at or below this counts, °C: 0 frost, -2.2 killing frost, 2.2 light frost on the ground.';
comment on column frost_station_date.side is 'spring or autumn.';
comment on column frost_station_date.any_frost is 'Share of seasons with any frost, 0 to 1. Empty: not told.';
comment on column frost_station_date.median_day is 'Half of the seasons with a frost have it later. Empty: frost is too rare for a date.';
comment on column frost_station_date.year_sd_days is 'Standard deviation from year to year, in days. Empty: not told.';
comment on column frost_station_date.seasons is 'How many seasons it was counted from. Empty: published as a normal.';

comment on table frost_station_season is 'The seasons behind a station that was counted from its nights, year by year.';
comment on column frost_station_season.threshold_c is 'A night at or below this counts, °C.';
comment on column frost_station_season.side is 'spring or autumn.';
comment on column frost_station_season.season_year is 'The year of the season.';
comment on column frost_station_season.frost_on is 'The last spring or first autumn frost. Empty: that season had none.';

comment on table postcode_place is 'Where postcodes lie, beside those that come with the program; from a file brought in.';
comment on column postcode_place.country is 'Two letters (ISO 3166).';
comment on column postcode_place.code is 'The postcode in capitals, without spaces and hyphens.';
comment on column postcode_place.place is 'Name of the place.';
comment on column postcode_place.region is 'Name of the region it is in.';

comment on table garden_point is 'Where a member''s garden lies, exactly; it counts instead of the postcode.';
comment on column garden_point.elevation_m is 'Height above the sea in metres.';

comment on table frost_correction is 'What somebody who knows better says of frost in a garden, or wherever postcodes begin alike. Ended, never edited.';
comment on column frost_correction.member_id is 'Whose garden it is. Empty: it is said of an area.';
comment on column frost_correction.country is 'Of the area, two letters (ISO 3166). Empty: it is said of a garden.';
comment on column frost_correction.postcode_start is 'How the postcodes of the area begin. Empty: it is said of a garden.';
comment on column frost_correction.how is 'shift (so many days) or dates.';
comment on column frost_correction.spring_shift_days is 'Last spring frost so many days later; negative: earlier. Empty: dates are given instead.';
comment on column frost_correction.autumn_shift_days is 'First autumn frost so many days later; negative: earlier. Empty: dates are given instead.';
comment on column frost_correction.spring_average is 'Month and day, such as 05-24, after which half of the springs have a frost. Empty: as the evidence tells.';
comment on column frost_correction.spring_one_in_ten is 'Month and day after which one spring in ten has a frost. Empty: as the evidence tells.';
comment on column frost_correction.autumn_average is 'Month and day before which half of the autumns had a frost. Empty: as the evidence tells.';
comment on column frost_correction.autumn_one_in_ten is 'Month and day before which one autumn in ten had a frost. Empty: as the evidence tells.';
comment on column frost_correction.reason is 'Why, as whoever corrected it wrote.';
comment on column frost_correction.ended_by is 'Empty: it holds.';
comment on column frost_correction.ended_at is 'Empty: it holds.';

comment on table accepted_risk is 'The chance of a later frost that a member accepts for plants of one hardiness, where it is not the usual one.';
comment on column accepted_risk.hardiness is 'hardy, half-hardy, tender or very tender.';
comment on column accepted_risk.risk is 'The chance, 0 to 1.';

comment on table thermometer is 'A minimum-maximum thermometer outdoors that people read in the morning.';
comment on column thermometer.member_id is 'In whose garden it hangs. Empty: at a place of the group''s.';
comment on column thermometer.elevation_m is 'Height above the sea in metres.';
comment on column thermometer.retired_by is 'Empty: it is still read.';
comment on column thermometer.retired_at is 'Empty: it is still read.';

comment on table thermometer_night is 'The lowest temperature of the night that ended in the morning of a day.';
comment on column thermometer_night.on_day is 'The day on whose morning it was read.';
comment on column thermometer_night.celsius is 'The lowest temperature, °C.';

comment on table stay_move is 'A coordinator''s move of a stay, with the old and the new, so that the next one is told what changed and the last one can be taken back.';
comment on column stay_move.kept_order is 'The order in which moves were kept; the database counts it.';
comment on column stay_move.stay_id is 'What was moved.';
comment on column stay_move.new_stay_id is 'The same stay; or, where seed lay there already, the stay that begins where it was carried to.';
comment on column stay_move.old_place_id is 'Where it lay.';
comment on column stay_move.old_first_quarter is 'The first of its quarters there.';
comment on column stay_move.old_from_day is 'The first day on which it was to lie there.';
comment on column stay_move.old_to_day is 'The day on which it was to leave.';
comment on column stay_move.old_celsius is 'The set-point it lay at, °C. Empty: under a light.';
comment on column stay_move.new_place_id is 'Where it lies after the move.';
comment on column stay_move.new_first_quarter is 'The first of its quarters there.';
comment on column stay_move.new_from_day is 'The first day on which it lies there.';
comment on column stay_move.new_to_day is 'The day on which it leaves.';
comment on column stay_move.new_celsius is 'The set-point it lies at, °C. Empty: under a light.';
comment on column stay_move.version_after is 'The version of the new stay right after the move; another one says that somebody has changed it since.';
comment on column stay_move.takes_back is 'The move that this one takes back. Empty: none.';

comment on table season_plan is 'A season plan: one computed allocation of all waiting requests; proposed, then published by a coordinator.';
comment on column season_plan.state is 'running, proposed, lost (its run ended with the program; its best plan is kept), failed, published or undone.';
comment on column season_plan.running is '''season'' while a run works on it: the key lets one run at a time have it. Empty: no run works on it.';
comment on column season_plan.seed is 'The starting number of the search: the same question, number and seconds give the same plan.';
comment on column season_plan.seconds is 'How long it may search.';
comment on column season_plan.question_hash is 'SHA-256 of the question, in hexadecimal; another one says that something has changed since.';
comment on column season_plan.beat_at is 'When the run last said that it is alive.';
comment on column season_plan.cancel_asked is 'Whether somebody has asked the run to stop.';
comment on column season_plan.spent_seconds is 'How long it has searched so far.';
comment on column season_plan.requests is 'How many requests it was asked about.';
comment on column season_plan.placed_at_most is 'No plan can place more requests than this.';
comment on column season_plan.optimal is 'Proven: no plan is fairer or places more.';
comment on column season_plan.plan is 'The best plan so far, as JSON.';
comment on column season_plan.published_by is 'Empty: not published.';
comment on column season_plan.published_at is 'Empty: not published.';
comment on column season_plan.undone_by is 'Empty: not undone.';
comment on column season_plan.undone_at is 'Empty: not undone.';
comment on column season_plan.with_light is 'Whether what is to go under a light after the mat is placed only with a place under one.';

comment on table season_plan_edit is 'What a coordinator changed by hand in a proposed plan.';
comment on column season_plan_edit.version is 'The version of the plan that the change made.';
comment on column season_plan_edit.words is 'What was changed.';

comment on table season_plan_freed is 'A published stay that has not begun, and that a coordinator lets this plan move.';

comment on table season_plan_stay is 'A stay that the publication of a plan made.';

comment on table season_plan_before is 'Where a published stay lay before the publication of a plan moved it or took it away, so that an undo can lay it there again.';
comment on column season_plan_before.stay_id is 'The stay as it was.';
comment on column season_plan_before.first_quarter is 'The first of its quarters there.';
comment on column season_plan_before.quarters is 'How many quarters it took.';
comment on column season_plan_before.from_day is 'The first day on which it was to lie there.';
comment on column season_plan_before.to_day is 'The day on which it was to leave.';
comment on column season_plan_before.celsius is 'The set-point it lay at, °C. Empty: under a light.';

comment on table season_plan_warmth is 'What the publication of a plan changed of a mat''s set-points, so that an undo can turn the mat back.';
comment on column season_plan_warmth.on_day is 'The day of the set-point.';
comment on column season_plan_warmth.celsius_before is 'The set-point before, °C. Empty: the mat was not set on that day.';
comment on column season_plan_warmth.celsius_set is 'The set-point that the publication gave it, °C.';
comment on column season_plan_warmth.by_hand_before is 'Whether a coordinator had chosen the set-point before.';

comment on table plan_note is 'What a member is told of their own sowing when a plan is published, until they put it away.';
comment on column plan_note.placed is 'True: it has a place; false: it was refused.';
comment on column plan_note.words is 'What the member reads.';
comment on column plan_note.dismissed_at is 'When the member put it away. Empty: still shown.';

comment on table request_rank is 'A request that its member put before or after their others; those without a row follow in the order of asking.';
comment on column request_rank.rank is '1 is wanted most.';

comment on table mat_out is 'Days on which a mat cannot be used.';
comment on column mat_out.from_day is 'The first day out of use.';
comment on column mat_out.to_day is 'The first day on which it can be used again.';
comment on column mat_out.reason is 'Why, as whoever took it out wrote.';
comment on column mat_out.ended_by is 'Who said that it came back before those days were over. Empty: nobody.';
comment on column mat_out.ended_at is 'When. Empty: it did not come back early.';

comment on table freed_space is 'Room on a mat that a stay left before its time, which those who wait are offered.';
comment on column freed_space.stay_id is 'The stay that left it.';
comment on column freed_space.first_quarter is 'The first of the free quarters.';
comment on column freed_space.quarters is 'How many quarters are free.';
comment on column freed_space.from_day is 'The first free day.';
comment on column freed_space.to_day is 'The day on which it would have been free anyway.';
comment on column freed_space.freed_at is 'When it became free.';
comment on column freed_space.held_for_plan is 'The undone plan whose room this was; it is offered to nobody until a coordinator says so. Empty: it is offered.';

comment on table duty_willing is 'On which weekdays a member can look at a site. Without a row somebody is not on the rota.';
comment on column duty_willing.weekday is '1 is Monday, 7 is Sunday.';

comment on table duty_away is 'Days on which a member cannot look anywhere.';
comment on column duty_away.first_day is 'The first of them.';
comment on column duty_away.last_day is 'The last of them; it counts too.';

comment on table duty_site is 'How a site is looked after. A site without a row has its checks done by 18:00 and is not looked at together with another.';
comment on column duty_site.done_by_minute is 'The site''s hour, in minutes since midnight in the group''s time zone. Empty: no hour.';
comment on column duty_site.together is 'Whether whoever looks here can look at another such site on the same day.';

comment on table duty_stand_in is 'Who looks when the person on duty has not by the site''s hour. Written with every change of the rota.';
comment on column duty_stand_in.on_day is 'The day of the turn.';
comment on column duty_stand_in.member_id is 'Who stands in.';

comment on table duty_swap is 'A person on duty asks others to take a turn.';
comment on column duty_swap.on_day is 'The day of the turn.';
comment on column duty_swap.asked_of is 'Who is asked. Empty: anyone.';
comment on column duty_swap.return_site_id is 'The site of the turn that the asker takes in exchange. Empty: none.';
comment on column duty_swap.return_day is 'Its day. Empty: none.';
comment on column duty_swap.state is 'open, taken, declined, withdrawn or overtaken (the turn changed otherwise).';
comment on column duty_swap.taken_by is 'Who has the turn now. Empty: nobody took it.';
comment on column duty_swap.ended_at is 'When it was taken, declined, withdrawn or overtaken. Empty: still open.';

comment on table duty_swap_refusal is 'Who has said no to a swap that anyone may take.';

comment on table short_code is 'A short code on a label, of one rack, mat or sowing. Never given to anything else, so that an old label cannot mislead.';
comment on column short_code.code is 'What stands on the label.';
comment on column short_code.kind is 'rack, mat or sowing.';
comment on column short_code.subject_id is 'The key of that rack, mat or sowing.';

comment on table calendar_link is 'The secret address of a member''s calendar.';
comment on column calendar_link.token_hash is 'SHA-256 of the secret part, in hexadecimal; the address itself is kept nowhere.';

comment on table mail_wish is 'When a member wants to be written to. Without a row: never.';
comment on column mail_wish.address is 'Where letters go.';
comment on column mail_wish.in_the_morning is 'Whether to be told in the morning what is due.';
comment on column mail_wish.in_the_evening is 'Whether to be told in the evening what is due on the next day.';
comment on column mail_wish.of_alarms is 'Whether to be told at once when a mat is too hot or too cold.';
comment on column mail_wish.of_stand_ins is 'Whether to be told at once when one is to stand in.';
comment on column mail_wish.changed_at is 'When the member said so.';

comment on table letter is 'A letter waiting to be sent, or sent. The key lets nobody be told one thing twice.';
comment on column letter.about is 'What it is about, such as ''morning 2027-03-04''.';
comment on column letter.address is 'Where it goes, as it was when the letter was laid ready.';
comment on column letter.subject is 'Its subject line.';
comment on column letter.words is 'Its text.';
comment on column letter.due_at is 'Not tried before then.';
comment on column letter.tries is 'How often it has been tried.';
comment on column letter.sent_at is 'Empty: not sent.';
comment on column letter.given_up_at is 'Empty: not given up.';

comment on table photo is 'A picture of what was seen, made small and freed of all it tells beside the picture before it is kept.';
comment on column photo.entry_id is 'The entry that it goes with.';
comment on column photo.width is 'In pixels.';
comment on column photo.height is 'In pixels.';
comment on column photo.jpeg is 'The picture; without a byte once it is taken out.';
comment on column photo.removed_by is 'Empty: it is still there. Its id stays, so that a phone that sends it again does not bring it back.';
comment on column photo.removed_at is 'Empty: it is still there.';

comment on table packet_photo is 'A picture of a lot''s packet, made small and freed of all it tells beside the picture before it is kept.';
comment on column packet_photo.width is 'In pixels.';
comment on column packet_photo.height is 'In pixels.';
comment on column packet_photo.jpeg is 'The picture; without a byte once it is taken out.';
comment on column packet_photo.removed_by is 'Empty: it is still there.';
comment on column packet_photo.removed_at is 'Empty: it is still there.';

comment on table push_address is 'A phone or other device that shows notices by web push (RFC 8030).';
comment on column push_address.endpoint is 'The address that the browser gave; whoever knows it and the keys could send to the device.';
comment on column push_address.endpoint_hash is 'SHA-256 of it, in hexadecimal: one device has one owner at a time.';
comment on column push_address.p256dh is 'The device''s public key, base64url, as RFC 8291 names it.';
comment on column push_address.auth is 'The device''s secret, base64url, as RFC 8291 names it.';
comment on column push_address.name is 'What the member calls the device.';
comment on column push_address.session_hash is 'The sign-in on that device; when it is over, nothing more is sent there.';
comment on column push_address.last_told_at is 'When a notice last reached the push service. Empty: none yet.';
comment on column push_address.ended_at is 'Empty: still told.';
comment on column push_address.ended_why is 'stopped, signed out, left, or gone (the push service no longer knows it). Empty: still told.';

comment on table push_wish is 'What a member wants to be told on their devices. Without a row: everything.';
comment on column push_wish.in_the_morning is 'Whether to be told in the morning what is due.';
comment on column push_wish.in_the_evening is 'Whether to be told in the evening what is due on the next day.';
comment on column push_wish.of_alarms is 'Whether to be told at once when a mat is too hot or too cold.';
comment on column push_wish.of_stand_ins is 'Whether to be told at once when one is to stand in.';
comment on column push_wish.changed_at is 'When the member said so.';

comment on table push_notice is 'A notice waiting to be sent to one device, or sent. The key lets no device be told one thing twice.';
comment on column push_notice.address_id is 'The device.';
comment on column push_notice.member_id is 'Whose device it was when the notice was laid ready.';
comment on column push_notice.about is 'What it is about, such as ''morning 2027-03-04''.';
comment on column push_notice.title is 'What the device shows in bold.';
comment on column push_notice.body is 'What it shows below.';
comment on column push_notice.path is 'The page of ours that it opens.';
comment on column push_notice.urgency is 'high or normal, as RFC 8030 names it.';
comment on column push_notice.topic is 'A later notice with the same topic takes the place of one that has not reached the device.';
comment on column push_notice.until_at is 'Of no use any more then.';
comment on column push_notice.due_at is 'Not tried before then.';
comment on column push_notice.tries is 'How often it has been tried.';
comment on column push_notice.sent_at is 'Empty: not sent.';
comment on column push_notice.given_up_at is 'Empty: not given up.';

comment on table supply_promise is 'So much of a season''s supplies that somebody brings, or that lies in the group''s cupboard already.';
comment on column supply_promise.season is 'The year of planting out.';
comment on column supply_promise.item is 'What, such as sowing-compost or labels.';
comment on column supply_promise.amount is 'Millilitres of what is poured, else pieces.';
comment on column supply_promise.member_id is 'Who brings it. Empty: there already, the group''s own.';
comment on column supply_promise.brought_by is 'Who said that it is there. Empty: not brought yet.';
comment on column supply_promise.brought_at is 'Empty: not brought yet.';
comment on column supply_promise.taken_back_by is 'Empty: it stands.';
comment on column supply_promise.taken_back_at is 'Empty: it stands.';

comment on table own_crop is 'What coordinators wrote of a crop, over the reference row of that id or beside the reference. Never edited: the newest version rules.';
comment on column own_crop.crop_id is 'The crop''s word, such as pepper.';
comment on column own_crop.version is 'Counts the changes of a crop from 1; the highest rules.';
comment on column own_crop.kept is 'False: taken back. The reference counts again; a crop that it does not have is no longer offered.';
comment on column own_crop.species is 'Botanical name.';
comment on column own_crop.hardiness is 'hardy, half-hardy, tender or very tender.';
comment on column own_crop.weeks_indoors_min is 'The fewest weeks from sowing to planting out.';
comment on column own_crop.weeks_indoors_max is 'The most.';
comment on column own_crop.plant_out_offset_days is 'Days from the average last spring frost to the usual earliest planting out; negative: before it.';
comment on column own_crop.plant_out_offset_days_latest is 'The later end of the same range.';
comment on column own_crop.night_minimum_c is 'Nights should stay above this before planting out, °C. Empty: not known.';
comment on column own_crop.depth_mm is 'Sowing depth in millimetres. Empty: not known.';
comment on column own_crop.light is 'Whether the seed needs light: yes, no (dark), indifferent, or an empty text where nobody says.';
comment on column own_crop.treatment is 'What the seed wants before sowing, in words for people; no code reads it.';
comment on column own_crop.maturity_min is 'Fewest days to the first harvest. Empty: not known.';
comment on column own_crop.maturity_max is 'Most days. Empty: not known.';
comment on column own_crop.maturity_basis is 'Counted from transplanting or sowing. Empty: days to the harvest are not known.';
comment on column own_crop.seed_life_years is 'Years that well-kept seed usually lasts. Empty: not known.';
comment on column own_crop.source is 'Where the figures are from.';
comment on column own_crop.source_url is 'Its address; an empty text where there is none.';
comment on column own_crop.emergence is 'How the seed answers to warmth: as the reference says, like another crop''s, or stated (a range of days).';
comment on column own_crop.emergence_like is 'The crop whose seed it resembles. Empty: told otherwise.';
comment on column own_crop.emergence_days_min is 'Fewest days to emergence. Empty: told otherwise.';
comment on column own_crop.emergence_days_max is 'Most days. Empty: told otherwise.';
comment on column own_crop.emergence_low_c is 'The lowest temperature at which those days hold, °C. Empty: told otherwise.';
comment on column own_crop.emergence_high_c is 'The highest, °C. Empty: told otherwise.';
comment on column own_crop.hazards is 'Words, with spaces between, for what can hurt whoever handles it: burns, irritates, poisonous, treated; an empty text for none.';
comment on column own_crop.soak is 'Whether to soak the seed: needless, optional, helps, never, or an empty text where nobody says.';
comment on column own_crop.soak_hours_min is 'Fewest hours of soaking. Empty: not known.';
comment on column own_crop.soak_hours_max is 'Most hours. Empty: not known.';
comment on column own_crop.nick is 'Whether the seed coat is to be nicked.';
comment on column own_crop.cold_weeks_min is 'Fewest weeks of moist cold before sowing. Empty: none, or not known.';
comment on column own_crop.cold_weeks_max is 'Most weeks. Empty: none, or not known.';

comment on table variety is 'Days to the first harvest of one variety, as its packet or its breeder says; they count instead of the crop''s.';
comment on column variety.crop_id is 'The crop''s word.';
comment on column variety.name_key is 'The name in small letters: one variety is one row, however it is written.';
comment on column variety.maturity_min is 'Fewest days.';
comment on column variety.maturity_max is 'Most days.';
comment on column variety.maturity_basis is 'Counted from transplanting or sowing.';
comment on column variety.source is 'Who says so.';

comment on table submission is 'One row for each form that was sent and has written something, so that the same form, sent again, writes nothing.';
comment on column submission.fingerprint is 'SHA-256 of the form''s own random name, its address and all that was typed, in hexadecimal.';
comment on column submission.request_id is 'Which of the requests that brought this form has written.';
comment on column submission.sent_at is 'When it was written; rows are thrown away after a while.';

comment on table leaving is 'Somebody who left, with what they left and what became of it, so that it can be taken back for a day.';
comment on column leaving.role_before is 'member or coordinator: what they were.';
comment on column leaving.receiver_id is 'Who takes over what is handed over. Empty: nothing is.';
comment on column leaving.undone_by is 'Empty: not taken back.';
comment on column leaving.undone_at is 'Empty: not taken back.';

comment on table leaving_thing is 'One thing that somebody who left had, and what became of it.';
comment on column leaving_thing.kind is 'tray, request, turn or lot.';
comment on column leaving_thing.thing is 'The key of the sowing or lot, or the site and day of a turn on duty.';
comment on column leaving_thing.fate is 'handed-over, kept, withdrawn, emptied, to-group or taken-along.';
comment on column leaving_thing.seeds_before is 'Of a lot that was taken along, the seeds left before. Empty: nobody had counted, or something else.';
comment on column leaving_thing.offered_before is 'Of a lot that was taken along, the seeds offered before. Empty: something else.';

comment on table withdrawal is 'What the withdrawal of a sowing gave up, so that it can be taken back for a day.';
comment on column withdrawal.stage_before is 'How far the sowing had come.';
comment on column withdrawal.request_before is 'The state of its request. Empty: it asked for no space.';
comment on column withdrawal.reason_before is 'The reason that stood with its request; an empty text for none.';
comment on column withdrawal.taken_back_by is 'Empty: not taken back.';
comment on column withdrawal.taken_back_at is 'Empty: not taken back.';

comment on table withdrawal_stay is 'Where a withdrawn sowing was to lie.';
comment on column withdrawal_stay.stay_id is 'The stay that was ended.';
comment on column withdrawal_stay.first_quarter is 'The first of its quarters there.';
comment on column withdrawal_stay.quarters is 'How many quarters it took.';
comment on column withdrawal_stay.from_day is 'The first day on which it was to lie there.';
comment on column withdrawal_stay.to_day is 'The day on which it was to leave.';
comment on column withdrawal_stay.celsius is 'The set-point it was to lie at, °C. Empty: under a light.';

comment on table lot_request is 'A sowing''s wish for seed that is not simply there: it is another member''s, or went to others meanwhile.';
comment on column lot_request.state is 'waiting, given, refused or gone (to others meanwhile).';
comment on column lot_request.asked is 'How many seeds.';
comment on column lot_request.given is 'How many are given. Empty: not answered, or nothing is given.';
comment on column lot_request.reason is 'What the owner said; an empty text for nothing.';
comment on column lot_request.answered_by is 'Empty: not answered.';
comment on column lot_request.answered_at is 'Empty: not answered.';

comment on table problem_answer is 'What the grower or a coordinator answered to a problem that somebody noted; each answer once.';
comment on column problem_answer.entry_id is 'The entry that noted the problem.';
comment on column problem_answer.answer is 'seen, then done.';
comment on column problem_answer.dismissed_at is 'When whoever noted the problem put the answer away. Empty: still shown to them.';
