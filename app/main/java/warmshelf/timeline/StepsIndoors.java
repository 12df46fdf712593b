package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.crop.SlowSeedlings;
import warmshelf.crop.UsualSowing;
import warmshelf.guide.PracticeDays;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/**
 * Adds the steps from the cold and the soak to potting on.
 *
 * @param chillsFirst whether there is time for the weeks of cold that the seed wants, where it wants any
 */
record StepsIndoors(
        TimelineQuestion question, ExpectedEmergence emergence, SowingWindow usualSowing, boolean chillsFirst) {
    // For seed that was chilled though nobody says that it wants it.
    private static final ColdSpell NO_COLD = new ColdSpell(0, 0);
    private static final int FIRST_LOOK_DAY =
            PracticeDays.of("checks", "first look into bags").least();
    private static final LikelyDays TRUE_LEAVES =
            LikelyDays.of(PracticeDays.of("feed", "first true leaves after coming up"));
    private static final LikelyDays SLOW_TRUE_LEAVES =
            LikelyDays.of(PracticeDays.of("feed", "first true leaves of slow seedlings"));
    private static final LikelyDays FULL_CELL =
            LikelyDays.of(PracticeDays.of("potting on", "full cell after coming up"));
    // Fewer days in the pot than this are not worth the move.
    private static final int LEAST_DAYS_IN_POT = 7;

    void addTo(StepList steps, DateWindow sowing, Seedlings seedlings, Outdoors outdoors) {
        Seen seen = question.seen();
        Optional<ColdSpell> cold = ColdSpell.of(question.crop());
        if (seen.chilled() != null || (cold.isPresent() && chillsFirst)) {
            addChill(steps, sowing, cold.orElse(NO_COLD));
        }
        if (SoakRule.soaks(question) || seen.soaked() != null) {
            steps.add(Step.SOAK, soak(sowing), SoakRule.why(question, sowing.ideal()), seen.soaked());
        }
        steps.add(Step.SOW, sowing, usualSowing.why(), seen.sown());
        if (seen.firstSprout() != null || nothingShowsYet(seedlings)) {
            addFirstLook(steps, sowing);
        }
        if (isBag()) {
            steps.add(Step.MOVE_TO_CELLS, seedlings.move(), moveReason(), seen.movedToCells());
        }
        if (question.warm()) {
            steps.add(Step.OFF_HEAT, seedlings.move(), offHeatReason(), offHeatDone());
        }
        steps.add(Step.LIGHT, seedlings.up(), lightReason(), seen.underLight());
        addGrowingOn(steps, seedlings.up(), outdoors.hardenOff());
    }

    private boolean isBag() {
        return question.method() == Method.BAG;
    }

    private boolean nothingShowsYet(Seedlings seedlings) {
        return seedlings.seenUp() == null && question.seen().movedToCells() == null;
    }

    private void addChill(StepList steps, DateWindow sowing, ColdSpell cold) {
        steps.add(
                Step.CHILL,
                notInThePast(cold.before(sowing), sowing),
                cold.why(question, sowing.ideal()),
                question.seen().chilled());
    }

    /** Days before a sowing that is still to come; those of one that comes too late stay as they would have been. */
    private DateWindow notInThePast(DateWindow days, DateWindow sowing) {
        boolean planned = question.seen().sown() == null && !sowing.ideal().isBefore(question.today());
        return planned ? days.notBefore(question.today()) : days;
    }

    private DateWindow soak(DateWindow sowing) {
        return notInThePast(sowing.plusDays(-1), sowing);
    }

    private void addFirstLook(StepList steps, DateWindow sowing) {
        int day = Math.min(FIRST_LOOK_DAY, emergence.seedlings().first());
        Reason why = Step.FIRST_LOOK.why(
                "why",
                Map.of("day", day, "warmth", temperature(), "inBag", isBag(), "usual", usualDay()),
                question.units());
        steps.add(Step.FIRST_LOOK, sowing.plusDays(day), why, question.seen().firstSprout());
    }

    private int usualDay() {
        int usual = (isBag() ? emergence.roots() : emergence.seedlings()).usual();
        return Math.max(usual, Math.min(FIRST_LOOK_DAY, emergence.seedlings().first()));
    }

    private Reason moveReason() {
        return Step.MOVE_TO_CELLS.why("why", days(emergence.roots()), question.units());
    }

    private Reason offHeatReason() {
        return Step.OFF_HEAT.why("why " + question.method().where(), days(emergence.seedlings()), question.units());
    }

    private Map<String, Object> days(LikelyDays days) {
        return Map.of(
                "usual",
                Counted.days(days.usual()),
                "warmth",
                temperature(),
                "first",
                days.first(),
                "last",
                days.last());
    }

    private @Nullable LocalDate offHeatDone() {
        Seen seen = question.seen();
        return seen.offHeat() == null && isBag() ? seen.movedToCells() : seen.offHeat();
    }

    private Reason lightReason() {
        return Step.LIGHT.why("why " + question.method().where(), days(emergence.fromRoots()), question.units());
    }

    private void addGrowingOn(StepList steps, DateWindow up, DateWindow hardenOff) {
        Seen seen = question.seen();
        boolean slow = SlowSeedlings.has(question.crop());
        DateWindow trueLeaves = up.plus(slow ? SLOW_TRUE_LEAVES : TRUE_LEAVES).notAfter(hardenOff);
        if (isToBeThinned()) {
            steps.add(
                    Step.THIN,
                    trueLeaves,
                    Step.THIN.why("why", Map.of("seeds", question.seedsToACell(), "isSlow", slow), question.units()),
                    null);
        }
        steps.add(
                Step.FIRST_FEED,
                trueLeaves,
                Step.FIRST_FEED.why("why", Map.of("isSlow", slow), question.units()),
                seen.firstFeed());
        DateWindow pot = up.plus(FULL_CELL);
        boolean worthIt = !pot.ideal().plusDays(LEAST_DAYS_IN_POT).isAfter(hardenOff.ideal());
        boolean bearsIt = UsualSowing.of(question.crop()).isEmpty();
        boolean trimmedFirst = seen.trimmed() != null && seen.pottedOn() == null;
        if (trimmedFirst) {
            addCare(steps, up, hardenOff);
        }
        if ((worthIt && bearsIt) || seen.pottedOn() != null) {
            steps.add(
                    Step.POT_ON,
                    pot.notAfter(hardenOff),
                    Step.POT_ON.why(
                            "why", Map.of("hardenOff", DayWords.dayOfMonth(hardenOff.ideal())), question.units()),
                    seen.pottedOn());
        }
        if (!trimmedFirst) {
            addCare(steps, up, hardenOff);
        }
    }

    /** Nobody notes it: it is to come until something is noted that is done after it. */
    private boolean isToBeThinned() {
        Seen seen = question.seen();
        return !isBag()
                && question.seedsToACell() > 1
                && Stream.of(seen.firstFeed(), seen.trimmed(), seen.pottedOn(), seen.hardeningOff(), seen.plantedOut())
                        .allMatch(Objects::isNull);
    }

    private void addCare(StepList steps, DateWindow up, DateWindow hardenOff) {
        PlantCare.indoors(question.crop())
                .ifPresent(care -> steps.add(
                        care.step(),
                        care.after(up).notAfter(hardenOff),
                        care.why(question),
                        question.seen().trimmed()));
    }

    private String temperature() {
        // The days are those of the best temperature where the seed cannot come up at the one asked for.
        return question.units()
                .temperature(
                        emergence.possible()
                                ? question.matC()
                                : question.response().bestC());
    }
}
