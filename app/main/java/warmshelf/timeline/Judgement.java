package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.timeline.HarvestOutlook.Reach;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.words.DayWords;

/**
 * The verdict on a sowing, with the notes that explain it. It weighs both ends: whether the days of sowing have passed, and
 * how much of the harvest comes before the autumn's frost.
 *
 * @param outlook what comes before that frost; empty where it cannot be told
 */
record Judgement(Verdict verdict, List<String> notes, Optional<HarvestOutlook> outlook) {
    private static final String QUICKER = "Choose a quick variety, or have a cover ready in autumn.";

    static Judgement beforeSowing(
            TimelineQuestion question, DateWindow plantingOut, DateWindow sowing, ExpectedEmergence emergence) {
        if (neverFrostFree(question)) {
            return of(
                    Verdict.TOO_LATE,
                    "At the risk you accept, the autumn's frosts begin before the spring's have ended: there is no"
                            + " safe day outdoors. Grow it under cover only, or accept more risk.");
        }
        SeasonEnd end = SeasonEnd.of(question, plantingOut);
        LocalDate today = question.today();
        if (end.tooShortFor(sowing.earliest(), plantingOut.earliest())) {
            return new Judgement(
                    Verdict.TOO_LATE,
                    List.of(tooShort(end, plantingOut.earliest())),
                    end.outlook(sowing.earliest(), plantingOut.earliest()));
        }
        LocalDate sown = DateWindow.later(today, sowing.ideal());
        LocalDate out = DateWindow.later(
                plantingOut.ideal(), sown.plusDays(SowingWindow.daysUntilReady(question.crop(), emergence)));
        if (!today.isAfter(sowing.latest())) {
            return weighed(Verdict.IN_TIME, "", end.outlook(sown, out));
        }
        LocalDate last = lastSensibleSowing(end, question.crop(), sowing, plantingOut, emergence);
        if (!today.isAfter(last)) {
            String passed = "The usual sowing ended on %s; sown by %s it still makes sense."
                    .formatted(DayWords.dayOfMonth(sowing.latest()), DayWords.dayOfMonth(last));
            return weighed(Verdict.HURRY, passed, end.outlook(sown, out));
        }
        return of(Verdict.TOO_LATE, tooLate(question, end, plantingOut, last));
    }

    private static Judgement of(Verdict verdict, String note) {
        return new Judgement(verdict, List.of(note), Optional.empty());
    }

    /** The verdict by the days of sowing, unless the autumn's frost makes it worse. */
    private static Judgement weighed(Verdict byDays, String note, Optional<HarvestOutlook> outlook) {
        boolean tight = outlook.filter(each -> each.reach() != Reach.SURE).isPresent();
        List<String> notes = new ArrayList<>();
        outlook.ifPresent(each -> notes.add(each.sentence()));
        if (tight) {
            notes.add(QUICKER);
        }
        if (!note.isEmpty()) {
            notes.add(note);
        }
        return new Judgement(tight ? Verdict.TIGHT : byDays, notes, outlook);
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

    private static String tooShort(SeasonEnd end, LocalDate plantingOut) {
        return "The season is too short even for the quickest kinds (%s): choose a quicker crop, or grow it under cover."
                .formatted(end.daysNeededAtLeast() + daysLeft(end, plantingOut));
    }

    private static String tooLate(TimelineQuestion question, SeasonEnd end, DateWindow plantingOut, LocalDate last) {
        String ended = "The last sensible sowing was on %s.".formatted(DayWords.dayOfMonth(last));
        LocalDate out = DateWindow.later(question.today(), plantingOut.ideal());
        // Bought plants are as old as if they had been sown the usual weeks before.
        LocalDate asIfSown = out.minusDays(SowingWindow.idealDaysIndoors(question.crop()));
        if (end.leavesTimeFor(asIfSown, out)) {
            return "%s Buy plants: set out on %s they still make it.%s"
                    .formatted(
                            ended,
                            DayWords.dayOfMonth(out),
                            end.outlook(asIfSown, out)
                                    .map(outlook -> " " + outlook.sentence())
                                    .orElse(""));
        }
        return ended
                + " Even bought plants would come too late now: choose a quicker crop, or wait for the next season.";
    }

    private static String daysLeft(SeasonEnd end, LocalDate plantingOut) {
        return end.daysLeftAfter(plantingOut)
                .map(days -> ", and %d between %s and the usual first frost that kills it"
                        .formatted(days, DayWords.dayOfMonth(plantingOut)))
                .orElse("");
    }

    /** The verdict on plants that were sown and are expected out, or went out, on these days. */
    static Judgement afterSowing(TimelineQuestion question, DateWindow usual, LocalDate sown, LocalDate plantingOut) {
        if (question.seen().plantedOut() == null && neverFrostFree(question)) {
            return of(Verdict.TOO_LATE, "There is no safe day outdoors at the risk you accept: keep it under cover.");
        }
        SeasonEnd end = SeasonEnd.of(question, usual);
        Optional<HarvestOutlook> outlook = end.outlook(sown, plantingOut);
        if (!end.leavesTimeFor(sown, plantingOut)) {
            return new Judgement(Verdict.TOO_LATE, List.of(tooLateForHarvest(outlook, plantingOut)), outlook);
        }
        return weighed(plantingOut.isAfter(usual.latest()) ? Verdict.HURRY : Verdict.IN_TIME, "", outlook);
    }

    private static String tooLateForHarvest(Optional<HarvestOutlook> outlook, LocalDate plantingOut) {
        return outlook.map(each ->
                        "It is not expected to ripen before the autumn's frost: cover it, or buy bigger plants. "
                                + each.sentence())
                .orElseGet(() ->
                        "It will be ready to go out only on %s, more than four weeks after the usual time: buy plants if you need them sooner."
                                .formatted(DayWords.dayOfMonth(plantingOut)));
    }
}
