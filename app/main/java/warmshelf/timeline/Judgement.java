package warmshelf.timeline;

import java.time.LocalDate;
import java.util.List;
import warmshelf.crop.Crop;
import warmshelf.timeline.PlantingOut.ByFrost;

/** The verdict on a sowing that has not happened yet, with the notes that explain it. */
record Judgement(Verdict verdict, List<String> notes) {

    static Judgement beforeSowing(
            TimelineQuestion question, DateWindow plantingOut, DateWindow sowing, ExpectedEmergence emergence) {
        if (neverFrostFree(question)) {
            return new Judgement(
                    Verdict.TOO_LATE,
                    List.of(
                            "At the risk you accept, the autumn's frosts begin before the spring's have ended: there is no"
                                    + " safe day outdoors. Grow it under cover only, or accept more risk."));
        }
        SeasonEnd end = SeasonEnd.of(question, plantingOut);
        LocalDate today = question.today();
        if (end.tooShortFor(sowing.earliest(), plantingOut.earliest())) {
            return new Judgement(Verdict.TOO_LATE, List.of(tooShort(end, plantingOut.earliest())));
        }
        if (!today.isAfter(sowing.latest())) {
            return inTime(end, sowing, plantingOut);
        }
        LocalDate last = lastSensibleSowing(end, question.crop(), sowing, plantingOut, emergence);
        if (!today.isAfter(last)) {
            return new Judgement(
                    Verdict.HURRY,
                    List.of("The usual sowing ended on %s; sown by %s it still makes sense."
                            .formatted(Words.day(sowing.latest()), Words.day(last))));
        }
        return new Judgement(Verdict.TOO_LATE, List.of(tooLate(question, end, plantingOut, last)));
    }

    static boolean neverFrostFree(TimelineQuestion question) {
        return question.plantingOut() instanceof ByFrost frost && frost.dates().neverFrostFree();
    }

    /** The last day from which the plants, as soon as they are big enough, still come to something. */
    static LocalDate lastSensibleSowing(
            SeasonEnd end, Crop crop, DateWindow sowing, DateWindow plantingOut, ExpectedEmergence emergence) {
        int untilReady = SowingWindow.daysUntilReady(crop, emergence);
        LocalDate last = sowing.latest();
        for (int day = 0; day < 366; day++) {
            LocalDate next = last.plusDays(1);
            LocalDate out = DateWindow.later(plantingOut.ideal(), next.plusDays(untilReady));
            if (!end.leavesTimeFor(next, out)) {
                return last;
            }
            last = next;
        }
        return last;
    }

    private static Judgement inTime(SeasonEnd end, DateWindow sowing, DateWindow plantingOut) {
        return end.leavesTimeFor(sowing.ideal(), plantingOut.ideal())
                ? new Judgement(Verdict.IN_TIME, List.of())
                : new Judgement(
                        Verdict.IN_TIME,
                        List.of("The season is short for it (%s): choose a quick variety."
                                .formatted(lengths(end, plantingOut.ideal()))));
    }

    private static String tooShort(SeasonEnd end, LocalDate plantingOut) {
        return "The season is too short even for the quickest kinds (%s%s): choose a quicker crop, or grow it under cover."
                .formatted(end.daysNeededAtLeast(), daysLeft(end, plantingOut));
    }

    private static String tooLate(TimelineQuestion question, SeasonEnd end, DateWindow plantingOut, LocalDate last) {
        String ended = "The last sensible sowing was on %s.".formatted(Words.day(last));
        LocalDate out = DateWindow.later(question.today(), plantingOut.ideal());
        // Bought plants are as old as if they had been sown the usual weeks before.
        LocalDate asIfSown = out.minusDays(SowingWindow.idealDaysIndoors(question.crop()));
        if (end.leavesTimeFor(asIfSown, out)) {
            return ended + " Buy plants: set out on %s they still make it.".formatted(Words.day(out));
        }
        return ended
                + " Even bought plants would come too late now: choose a quicker crop, or wait for the next season.";
    }

    private static String lengths(SeasonEnd end, LocalDate plantingOut) {
        return end.daysNeeded() + daysLeft(end, plantingOut);
    }

    private static String daysLeft(SeasonEnd end, LocalDate plantingOut) {
        return end.daysLeftAfter(plantingOut)
                .map(days -> ", and %d between %s and the first autumn frost".formatted(days, Words.day(plantingOut)))
                .orElse("");
    }

    /** The verdict on plants that were sown and are expected out, or went out, on these days. */
    static Judgement afterSowing(TimelineQuestion question, DateWindow usual, LocalDate sown, LocalDate plantingOut) {
        if (question.seen().plantedOut() == null && neverFrostFree(question)) {
            return new Judgement(
                    Verdict.TOO_LATE,
                    List.of("There is no safe day outdoors at the risk you accept: keep it under cover."));
        }
        SeasonEnd end = SeasonEnd.of(question, usual);
        if (!end.leavesTimeFor(sown, plantingOut)) {
            return new Judgement(Verdict.TOO_LATE, List.of(tooLateForHarvest(end, plantingOut)));
        }
        return new Judgement(plantingOut.isAfter(usual.latest()) ? Verdict.HURRY : Verdict.IN_TIME, List.of());
    }

    private static String tooLateForHarvest(SeasonEnd end, LocalDate plantingOut) {
        if (end.crop().maturity().isEmpty() || end.autumn() == null) {
            return "It will be ready to go out only on %s, more than four weeks after the usual time: buy plants if you need"
                            .formatted(Words.day(plantingOut))
                    + " them sooner.";
        }
        return "It is not expected to ripen before the autumn's frost (%s): cover it, or buy bigger plants."
                .formatted(lengths(end, plantingOut));
    }
}
