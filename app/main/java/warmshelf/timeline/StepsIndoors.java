package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;

/** Adds the steps from the soak to potting on. */
record StepsIndoors(TimelineQuestion question, ExpectedEmergence emergence, SowingWindow usualSowing) {
    // Common practice: pre-sprouted peppers are looked at daily from about day seven.
    private static final int FIRST_LOOK_DAY = 7;
    // Common practice: the first true leaves open 10 to 14 days after coming up; a pot is due after three to four
    // weeks.
    private static final LikelyDays TRUE_LEAVES = new LikelyDays(10, 12, 14);
    private static final LikelyDays FULL_CELL = new LikelyDays(21, 24, 28);
    // Fewer days in the pot than this are not worth the move.
    private static final int LEAST_DAYS_IN_POT = 7;

    void addTo(StepList steps, DateWindow sowing, Seedlings seedlings, Outdoors outdoors) {
        Seen seen = question.seen();
        if (SoakRule.soaks(question.crop(), question.method()) || seen.soaked() != null) {
            steps.add(Step.SOAK, soak(sowing), SoakRule.why(question.crop(), sowing.ideal()), seen.soaked());
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

    private DateWindow soak(DateWindow sowing) {
        DateWindow evenings = sowing.plusDays(-1);
        boolean planned = question.seen().sown() == null && !sowing.ideal().isBefore(question.today());
        return planned ? evenings.notBefore(question.today()) : evenings;
    }

    private void addFirstLook(StepList steps, DateWindow sowing) {
        int day = Math.min(FIRST_LOOK_DAY, emergence.seedlings().first());
        String why = "Look every day from day %d: at %s the first %s can show then, most by day %d."
                .formatted(day, temperature(), isBag() ? "roots" : "seedlings", usualDay());
        steps.add(Step.FIRST_LOOK, sowing.plusDays(day), why, question.seen().firstSprout());
    }

    private int usualDay() {
        int usual = (isBag() ? emergence.roots() : emergence.seedlings()).usual();
        return Math.max(usual, Math.min(FIRST_LOOK_DAY, emergence.seedlings().first()));
    }

    private String moveReason() {
        LikelyDays days = emergence.roots();
        return "Roots show about %s after sowing at %s (%d to %d); each seed moves as its root just shows."
                .formatted(TimelineWords.days(days.usual()), temperature(), days.first(), days.last());
    }

    private String offHeatReason() {
        return isBag()
                ? "The bag leaves the mat when its seeds have moved; the cells need no bottom heat."
                : "Seedlings come up about %s after sowing at %s (%d to %d); once up they need no bottom heat."
                        .formatted(
                                TimelineWords.days(emergence.seedlings().usual()),
                                temperature(),
                                emergence.seedlings().first(),
                                emergence.seedlings().last());
    }

    private @Nullable LocalDate offHeatDone() {
        Seen seen = question.seen();
        return seen.offHeat() == null && isBag() ? seen.movedToCells() : seen.offHeat();
    }

    private String lightReason() {
        return isBag()
                ? "Seedlings come up about %s after moving; without light they stretch within a day or two."
                        .formatted(TimelineWords.days(emergence.fromRoots().usual()))
                : "The same day as seedlings come up: without light they stretch within a day or two.";
    }

    private void addGrowingOn(StepList steps, DateWindow up, DateWindow hardenOff) {
        Seen seen = question.seen();
        steps.add(
                Step.FIRST_FEED,
                up.plus(TRUE_LEAVES).notAfter(hardenOff),
                "At the first true leaves, about 10 to 14 days after coming up; not before.",
                seen.firstFeed());
        DateWindow pot = up.plus(FULL_CELL);
        boolean worthIt = !pot.ideal().plusDays(LEAST_DAYS_IN_POT).isAfter(hardenOff.ideal());
        if (worthIt || seen.pottedOn() != null) {
            steps.add(
                    Step.POT_ON,
                    pot.notAfter(hardenOff),
                    "Three to four weeks after coming up, when the roots fill the cell; hardening off begins on %s."
                            .formatted(TimelineWords.day(hardenOff.ideal())),
                    seen.pottedOn());
        }
    }

    private String temperature() {
        // The days are those of the best temperature where the seed cannot come up at the one asked for.
        return question.measures()
                .temperature(
                        emergence.possible()
                                ? question.matC()
                                : question.response().bestC());
    }
}
