package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;
import static warmshelf.demo.DemoSentences.SAY;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceWish;
import warmshelf.sowing.Asking;
import warmshelf.sowing.SowingPlanner;

/** Lives the demo's weeks day by day up to today: people ask, a coordinator places, and whoever is on duty looks. */
final class DemoDiary {
    private static final LocalTime ASKING = LocalTime.of(7, 30);
    private static final LocalTime PLACING = LocalTime.of(8, 10);
    private static final int DAYS_UNTIL_DECIDED = 2;
    private static final int WITHDRAWN_DAYS_AGO = 3;
    private static final int BOARD_DAYS = 400;

    private final DemoHouse house;
    private final DemoClock clock;
    private final DemoSeason season;
    private final UUID coordinator;
    private final DemoRound round;
    private final DemoTrials trials;
    private final Map<String, String> near = DemoTable.rows("members.csv").stream()
            .collect(Collectors.toMap(row -> row.get("name"), row -> row.get("near")));

    DemoDiary(DemoHouse house, DemoClock clock, DemoSeason season, DemoRota rota, UUID coordinator) {
        this.house = house;
        this.clock = clock;
        this.season = season;
        this.coordinator = coordinator;
        this.round = new DemoRound(house, clock, season, rota);
        this.trials = new DemoTrials(house, season);
    }

    void live() {
        season.firstDay().datesUntil(season.today().plusDays(1)).forEach(day -> {
            ask(day);
            decide(day);
            withdraw(day);
            round.walk(day);
        });
    }

    private void ask(LocalDate day) {
        clock.goTo(day, ASKING);
        for (DemoPlant plant : season.plants()) {
            if (plant.askedOn().equals(day)) {
                house.writes()
                        .ask(
                                plant.sowing(),
                                plant.request(),
                                !plant.row().target().equals("waiting"));
                if (!plant.sowing().warm()) {
                    warm(plant, SowingPlanner.ROOM_C);
                }
                clock.tick();
            }
        }
        trials.ask(day);
    }

    private void decide(LocalDate day) {
        List<DemoPlant> today = season.plants().stream()
                .filter(plant -> plant.request() != null)
                .filter(plant -> decidedOn(plant).equals(day))
                .filter(plant -> !plant.row().target().equals("waiting"))
                .sorted(Comparator.comparing(DemoPlant::start)
                        .thenComparing(plant -> plant.row().number()))
                .toList();
        if (today.isEmpty()) {
            return;
        }
        clock.goTo(day, PLACING);
        SpaceCalendar board = house.space().board(day, day.plusDays(BOARD_DAYS));
        for (DemoPlant plant : today) {
            SpaceRequest request = java.util.Objects.requireNonNull(plant.request());
            if (plant.row().target().equals("refused")) {
                house.writes().refuse(request, reason(plant), coordinator);
            } else {
                SpaceOffer offer = bestOffer(plant, board, day);
                house.writes().place(request, offer, coordinator);
                board.accept(offer);
                warm(plant, offer.warm().first());
            }
            clock.tick();
        }
    }

    private LocalDate decidedOn(DemoPlant plant) {
        return plant.askedOn().plusDays(DAYS_UNTIL_DECIDED);
    }

    private static String reason(DemoPlant plant) {
        return SAY.tooHotForMats(plant.sowing().crop().name());
    }

    /** On the day itself; mats rather at their usual temperature, so that others find theirs; then the nearer site. */
    private SpaceOffer bestOffer(DemoPlant plant, SpaceCalendar board, LocalDate day) {
        SpaceRequest request = java.util.Objects.requireNonNull(plant.request());
        SpaceWish wish = new SpaceWish(
                plant.sowing().id(),
                request.quarters(),
                plant.start(),
                plant.start(),
                plant.start(),
                request.band(),
                request.needsLight(),
                house.planner().daysAt(Asking.of(plant.sowing()), day, request.days()));
        String nearer = DemoTable.known(near, plant.row().member());
        return new FirstFit(board, day)
                .offers(wish, Integer.MAX_VALUE).stream()
                        .min(Comparator.comparingDouble(DemoDiary::degreesOffUsual)
                                .thenComparing(offer -> !offer.mat().where().startsWith(nearer)))
                        .orElseThrow(() -> new IllegalStateException("the demo has no room for " + plant.row()));
    }

    private static double degreesOffUsual(SpaceOffer offer) {
        return Math.abs(offer.warm().first() - offer.mat().usualC());
    }

    private void warm(DemoPlant plant, double celsius) {
        house.planner().emergence(plant.sowing().crop(), celsius).ifPresent(plant::warm);
    }

    private void withdraw(LocalDate day) {
        if (!day.equals(season.today().minusDays(WITHDRAWN_DAYS_AGO))) {
            return;
        }
        for (DemoPlant plant : season.plants()) {
            if (plant.row().target().equals("withdrawn")) {
                done(house.histories()
                        .withdraw(plant.sowing().id(), plant.sowing().grower().memberId()));
            }
        }
    }
}
