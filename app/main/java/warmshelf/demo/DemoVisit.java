package warmshelf.demo;

import static warmshelf.demo.DemoDecisions.done;
import static warmshelf.demo.DemoSentences.SAY;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.LitPlace;
import warmshelf.check.Check;
import warmshelf.check.CheckKind;
import warmshelf.check.PlaceAddress;
import warmshelf.check.Round;
import warmshelf.check.Tick;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;
import warmshelf.sowing.SowingStage;
import warmshelf.timeline.Step;
import warmshelf.timeline.TimelineStep;

/** What one person does at one sowing on one day: looks, counts, and moves it on when that is due. */
final class DemoVisit {
    private static final int LIGHT_DAYS_AHEAD = 120;
    private static final int USUAL_LIGHT_DAYS = 42;
    /** So long ago pests were found, and a coordinator still keeps that rack held. */
    private static final int PESTS_DAYS_AGO = 2;

    private static final double NOTED = 0.05;
    private static final List<String> NOTES =
            List.of(SAY.watered(), SAY.stillDamp(), SAY.wipedLid(), SAY.turned(), SAY.looksWell(), SAY.aired());

    private final DemoHouse house;
    private final DemoClock clock;
    private final DemoSeason season;

    DemoVisit(DemoHouse house, DemoClock clock, DemoSeason season) {
        this.house = house;
        this.clock = clock;
        this.season = season;
    }

    /** Chills, soaks or sows, where that is due and meant to have happened by today. */
    void start(Round.Item item, DemoPlant plant, LocalDate day) {
        UUID grower = plant.sowing().grower().memberId();
        for (Check check : item.checks()) {
            boolean soaks = check.kind() == CheckKind.SOAK && !plant.sowing().treatedSeed();
            boolean chills = check.kind() == CheckKind.CHILL;
            if ((chills && mayBecome(plant, SowingStage.CHILLED))
                    || (soaks && mayBecome(plant, SowingStage.SOAKED))
                    || (check.kind() == CheckKind.SOW && mayBecome(plant, SowingStage.SOWN))) {
                tick(plant, new DemoTick(check.kind().step(), day), grower);
            }
        }
    }

    /** A torn packet or bag, seen before anything is sown. */
    void noteTorn(DemoPlant plant, LocalDate day, UUID person) {
        DemoTick torn = new DemoTick(EntryStep.LOOK, day).problem(Problem.TORN).note(SAY.cornerOpen());
        tick(plant, torn, person);
    }

    /** The look of the day, where one is due. */
    void look(Round.Item item, DemoPlant plant, LocalDate day, UUID person) {
        boolean due = item.checks().stream().anyMatch(check -> check.kind().isLook());
        if (!due) {
            return;
        }
        SowingStage stage = item.subject().progress().stage();
        DemoTick look = new DemoTick(EntryStep.LOOK, day);
        if (stage == SowingStage.SOWN || stage == SowingStage.SPROUTING) {
            look = look.sprouted(plant.inBag() ? plant.rootsOn(day) : plant.upOn(day));
        } else if (item.checks().stream().anyMatch(check -> check.kind() == CheckKind.CELLS_LOOK)) {
            look = look.sprouted(plant.upOn(day));
        }
        look = withTrouble(plant, look, item.subject().progress().lost());
        Integer counted = look.sprouted();
        if (counted != null && counted > 0 && plant.meets("corrected")) {
            correct(plant, look, counted, person);
        } else {
            tick(plant, look, person);
        }
    }

    /** A slip of the thumb, mended a minute later by an entry that supersedes it. */
    private void correct(DemoPlant plant, DemoTick look, int counted, UUID person) {
        UUID slip = tick(plant, look.sprouted(Math.min(plant.sowing().seeds(), counted + 10)), person);
        tick(plant, look.superseding(slip).note(SAY.miscounted()), person);
    }

    private DemoTick withTrouble(DemoPlant plant, DemoTick look, int lostBefore) {
        boolean light = look.sprouted() == null;
        if (light && plant.meets("damping-off")) {
            int lost = plant.row().furthest() == SowingStage.GIVEN_UP ? plant.upOn(look.day()) - 3 : 4;
            return look.lost(lostBefore + Math.max(0, lost))
                    .problem(Problem.DAMPING_OFF)
                    .note(SAY.stoodApart());
        }
        boolean lately = !look.day().isBefore(season.today().minusDays(PESTS_DAYS_AGO));
        if (lately && plant.meets("pests")) {
            return look.problem(Problem.PESTS).note("Small dark flies about the cells, a dozen on the sticky card.");
        }
        if (plant.meets("dry")) {
            return look.problem(Problem.DRY).note(SAY.dryAtEdges());
        }
        if (plant.meets("wet")) {
            return look.problem(Problem.WET).note(SAY.tippedWater());
        }
        if (plant.meets("no-label")) {
            return look.problem(Problem.NO_LABEL).note(SAY.newLabel());
        }
        if (plant.meets("mould")) {
            return look.problem(Problem.MOULD).note(SAY.fluffTaken());
        }
        return plant.chance().nextDouble() < NOTED
                ? look.note(NOTES.get(plant.chance().nextInt(NOTES.size())))
                : look;
    }

    /** Does what else is due today, one thing a day. */
    void moveOn(Round.Item item, DemoPlant plant, LocalDate day, UUID person) {
        if (plant.row().furthest() == SowingStage.GIVEN_UP && givesUp(item, plant, day)) {
            tick(plant, new DemoTick(EntryStep.GAVE_UP, day).note(whyGivenUp(plant)), person);
            return;
        }
        SowingStage stage = item.subject().progress().stage();
        if (plant.inBag() && (stage == SowingStage.SOWN || stage == SowingStage.SPROUTING)) {
            moveToCells(item, plant, day, person);
            return;
        }
        UUID grower = plant.sowing().grower().memberId();
        for (Check check : item.checks()) {
            if (check.kind() == CheckKind.OFF_HEAT || check.kind() == CheckKind.TAKE_HOME) {
                putUnderLight(item, plant, day, person);
            } else if (!check.kind().isLook() && mayBecome(plant, stageAfter(check.kind()))) {
                tick(plant, new DemoTick(check.kind().step(), day), grower);
            }
        }
    }

    private static boolean givesUp(Round.Item item, DemoPlant plant, LocalDate day) {
        return plant.row().has("dead-seed")
                ? plant.isLongOverdue(day)
                : item.subject().progress().lastProblem() == null
                        && item.subject().progress().lost() > 0;
    }

    private static String whyGivenUp(DemoPlant plant) {
        return plant.row().has("dead-seed") ? SAY.seedTooOld() : SAY.fellOver();
    }

    private void moveToCells(Round.Item item, DemoPlant plant, LocalDate day, UUID person) {
        int roots = plant.rootsOn(day);
        boolean lastChance = day.equals(season.today().minusDays(1));
        boolean finished =
                mayBecome(plant, SowingStage.IN_CELLS) && (plant.bagIsDone(day) || (lastChance && isDueInCells(plant)));
        if (roots == 0 || (roots == item.subject().progress().moved() && !finished)) {
            return;
        }
        plant.move(roots);
        DemoTick move =
                new DemoTick(EntryStep.MOVED_TO_CELLS, day).sprouted(roots).moved(roots);
        tick(plant, finished ? move.finished().under(light(item, plant, day)) : move, lightUntil(item, day), person);
    }

    private static boolean isDueInCells(DemoPlant plant) {
        return plant.row().furthest() == SowingStage.IN_CELLS;
    }

    private void putUnderLight(Round.Item item, DemoPlant plant, LocalDate day, UUID person) {
        LocalDate up = item.subject().progress().seen().emerged();
        boolean enough = plant.mostlyUp(day) || (up != null && up.isBefore(day.minusDays(1)));
        if (enough && mayBecome(plant, SowingStage.UNDER_LIGHT)) {
            Tick.LightPlace light = light(item, plant, day);
            DemoTick move = new DemoTick(light == null ? EntryStep.TAKEN_HOME : EntryStep.UNDER_LIGHT, day)
                    .sprouted(plant.upOn(day))
                    .under(light);
            tick(plant, move, lightUntil(item, day), person);
        }
    }

    private static boolean mayBecome(DemoPlant plant, SowingStage stage) {
        return stage.compareTo(plant.row().furthest()) <= 0;
    }

    private static SowingStage stageAfter(CheckKind kind) {
        return switch (kind) {
            case FIRST_FEED -> SowingStage.FED;
            case POT_ON -> SowingStage.POTTED_ON;
            case HARDEN_OFF -> SowingStage.HARDENING_OFF;
            default -> SowingStage.PLANTED_OUT;
        };
    }

    /**
     * Room under a light for as long as it is wanted, on the same rack or at least at the same site;
     * null: taken home.
     */
    private Tick.@Nullable LightPlace light(Round.Item item, DemoPlant plant, LocalDate day) {
        int quarters = Math.max(2, plant.sowing().container().quarters());
        PlaceAddress from = item.address();
        LocalDate until = lightUntil(item, day);
        if (from == null) {
            return null;
        }
        UUID lies = house.histories()
                .find(plant.sowing().id())
                .flatMap(history -> history.liesOn(day))
                .orElse(null);
        return house.space().litPlacesFrom(lies, day, day.plusDays(LIGHT_DAYS_AHEAD), quarters).stream()
                .filter(place -> !place.freeUntil().isBefore(until))
                .min(Comparator.comparing((LitPlace place) -> !place.siteId().equals(from.siteId()))
                        .thenComparing(place -> !place.rack().equals(from.rack())))
                .map(place -> new Tick.LightPlace(place.placeId(), place.slot()))
                .orElse(null);
    }

    /** Until when it wants a place under a light: until hardening off. */
    private static LocalDate lightUntil(Round.Item item, LocalDate day) {
        return item.subject()
                .step(Step.HARDEN_OFF)
                .map(TimelineStep::ideal)
                .filter(harden -> harden.isAfter(day))
                .orElse(day.plusDays(USUAL_LIGHT_DAYS));
    }

    private UUID tick(DemoPlant plant, DemoTick tick, UUID person) {
        return tick(plant, tick, tick.day(), person);
    }

    private UUID tick(DemoPlant plant, DemoTick told, LocalDate lightUntil, UUID person) {
        Tick tick = told.tick();
        done(house.ticks().keep(plant.sowing().id(), tick, lightUntil, person));
        clock.tick();
        return tick.id();
    }
}
