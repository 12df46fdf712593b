package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.check.Round;
import warmshelf.shelf.Site;
import warmshelf.sowing.ProblemAnswer;
import warmshelf.words.Numbers;

/** Walks the round of a day as the person on duty did. Today it has only been begun. */
final class DemoRound {
    private static final LocalTime EVENING = LocalTime.of(16, 30);
    /** Days before today on which nobody came, by site. */
    private static final List<Set<Integer>> MISSED = List.of(Set.of(9, 20), Set.of(15));

    private static final double SKIPPED_LOOKS = 0.06;
    private static final double SKIPPED_READINGS = 0.12;
    private static final double READING_SPREAD_C = 0.7;
    /** One thermometer slipped off its mat on this day. */
    private static final int COLD_READING_DAYS_AGO = 6;

    /** What was sown or moved since then has no label yet. */
    private static final int UNLABELLED_DAYS = 2;

    /** Today's round has got so far at each site. */
    private static final int SEEN_TODAY = 5;

    private final DemoHouse house;
    private final DemoClock clock;
    private final DemoSeason season;
    private final DemoRota rota;
    private final List<Site> sites;
    private final DemoVisit visit;
    private final Random chance = new Random(20_261_125);

    DemoRound(DemoHouse house, DemoClock clock, DemoSeason season, DemoRota rota) {
        this.house = house;
        this.clock = clock;
        this.season = season;
        this.rota = rota;
        this.sites = house.shelving().all();
        this.visit = new DemoVisit(house, clock, season);
    }

    void walk(LocalDate day) {
        Round round = house.rounds().whole(day);
        clock.goTo(day, EVENING);
        if (day.isBefore(season.today())) {
            answerProblems(round);
        }
        for (int site = 0; site < sites.size(); site++) {
            walkSite(round, sites.get(site).name(), site, day);
        }
        if (day.equals(season.today())) {
            noteBeforeSowing(round, day);
        }
        if (!day.isAfter(season.today().minusDays(UNLABELLED_DAYS))) {
            label(round, rota.onDuty(0, day));
        }
        for (Round.Item item : round.elsewhere()) {
            UUID grower = item.subject().sowing().grower().memberId();
            see(item, day, grower, false);
        }
    }

    private void label(Round round, UUID person) {
        Set<UUID> unlabelled = items(round)
                .filter(item ->
                        item.unlabelled() && !item.subject().progress().stage().isBeforeSowing())
                .map(item -> item.subject().sowing().id())
                .collect(Collectors.toSet());
        if (!unlabelled.isEmpty()) {
            house.labels().label(List.copyOf(house.histories().all(unlabelled).values()), person);
        }
    }

    /** Growers come the day after and deal with what was noted; what was noted last still waits. */
    private void answerProblems(Round round) {
        items(round).flatMap(item -> item.problems().stream()).forEach(noted -> {
            UUID grower = noted.sowing().grower().memberId();
            house.problems().answer(noted, ProblemAnswer.Word.DONE, grower);
        });
    }

    /** What whoever is on duty noticed of seed that is not sown yet, and its grower has still to answer. */
    private void noteBeforeSowing(Round round, LocalDate day) {
        items(round)
                .filter(item -> item.subject().progress().stage().isBeforeSowing())
                .map(item -> season.plant(item.subject().sowing().id()))
                .filter(plant -> plant.meets("torn"))
                .forEach(plant -> visit.noteTorn(plant, day, rota.onDuty(0, day)));
    }

    private static Stream<Round.Item> items(Round round) {
        return Stream.concat(round.stops().stream().flatMap(stop -> stop.items().stream()), round.elsewhere().stream());
    }

    private void walkSite(Round round, String name, int number, LocalDate day) {
        int daysAgo = (int) (season.today().toEpochDay() - day.toEpochDay());
        UUID person = rota.onDuty(number, day);
        List<Round.Stop> stops =
                round.stops().stream().filter(stop -> stop.site().equals(name)).toList();
        boolean missed = MISSED.get(number).contains(daysAgo);
        int toSee = daysAgo == 0 ? SEEN_TODAY : Integer.MAX_VALUE;
        for (Round.Stop stop : stops) {
            if (toSee > 0) {
                read(stop, day, person, missed, daysAgo);
            }
            for (Round.Item item :
                    stop.items().subList(0, Math.min(toSee, stop.items().size()))) {
                see(item, day, person, missed);
                toSee--;
            }
        }
    }

    private void read(Round.Stop stop, LocalDate day, UUID person, boolean missed, int daysAgo) {
        Round.MatReading mat = stop.mat();
        double off = READING_SPREAD_C * chance.nextGaussian();
        if (mat == null || missed || (daysAgo > 0 && chance.nextDouble() < SKIPPED_READINGS)) {
            return;
        }
        double slipped = daysAgo == COLD_READING_DAYS_AGO && mat.name().equals("M1") ? -4.5 : 0;
        double celsius = mat.setPointC() + Math.max(-1.6, Math.min(1.6, off)) + slipped;
        done(house.readings().add(UUID.randomUUID(), mat.matId(), day, Numbers.tenths(celsius), person));
        clock.tick();
    }

    /** Sowing and soaking wait for nobody: the grower comes for these even when the round is missed. */
    private void see(Round.Item item, LocalDate day, UUID person, boolean missed) {
        DemoPlant plant = season.plant(item.subject().sowing().id());
        int daysAgo = (int) (season.today().toEpochDay() - day.toEpochDay());
        boolean beforeSowing = item.subject().progress().stage().isBeforeSowing();
        if (beforeSowing) {
            if (daysAgo > 0) {
                visit.start(item, plant, day);
            }
            return;
        }
        // the ways of a trial are looked at alike
        boolean maySkip = daysAgo > 2 && item.subject().sowing().trial() == null;
        boolean skipped = missed || (maySkip && plant.chance().nextDouble() < SKIPPED_LOOKS);
        if (!skipped) {
            visit.look(item, plant, day, person);
        }
        if (!skipped && daysAgo > 0) {
            visit.moveOn(item, plant, day, person);
        }
    }
}
