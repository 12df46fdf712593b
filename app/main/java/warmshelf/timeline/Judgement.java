package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.timeline.HarvestOutlook.Reach;
import warmshelf.timeline.PlantingOut.ByFrost;
import warmshelf.words.DayWords;

/**
 * The verdict on a sowing, with the notes that explain it. It weighs both ends: whether the days of sowing have passed, and
 * how much of the harvest comes before the autumn's frost.
 *
 * @param outlook what comes before that frost; empty where it cannot be told
 * @param quickest the same of the quickest kinds, where the usual ones are not sure to ripen and quicker ones are known
 */
record Judgement(
        Verdict verdict, List<String> notes, Optional<HarvestOutlook> outlook, Optional<QuickestKinds> quickest) {
    private static final TimelineSentences SAY = TimelineSentences.SAY;

    static Judgement beforeSowing(
            TimelineQuestion question, DateWindow plantingOut, DateWindow sowing, ExpectedEmergence emergence) {
        if (neverFrostFree(question)) {
            return tooLate(SAY.neverFrostFree());
        }
        SowingDays days = SowingDays.of(question, plantingOut, sowing, emergence);
        SeasonEnd end = days.end();
        LocalDate today = question.today();
        if (end.tooShortFor(sowing.earliest(), plantingOut.earliest())) {
            return new Judgement(
                    Verdict.TOO_LATE,
                    List.of(tooShort(end, sowing.earliest(), plantingOut.earliest())),
                    end.outlook(sowing.earliest(), plantingOut.earliest()),
                    Optional.empty());
        }
        LocalDate sown = DateWindow.later(today, sowing.ideal());
        if (!today.isAfter(sowing.latest())) {
            return weighed(question, Verdict.IN_TIME, "", end, sown, days.plantedOut(sown));
        }
        LocalDate last = days.lastSensible(today);
        if (!today.isAfter(last)) {
            String passed = SAY.usualSowingEnded(DayWords.dayOfMonth(sowing.latest()), DayWords.dayOfMonth(last));
            return weighed(question, Verdict.HURRY, passed, end, sown, days.plantedOut(sown));
        }
        return tooLate(passed(question, end, plantingOut, last));
    }

    private static Judgement tooLate(String note) {
        return new Judgement(Verdict.TOO_LATE, List.of(note), Optional.empty(), Optional.empty());
    }

    /** The verdict by the days of sowing, unless the autumn's frost makes it worse. */
    private static Judgement weighed(
            TimelineQuestion question, Verdict byDays, String note, SeasonEnd end, LocalDate sown, LocalDate out) {
        Optional<HarvestOutlook> outlook = end.outlook(sown, out);
        boolean tight = outlook.filter(each -> each.reach() != Reach.SURE).isPresent();
        Optional<QuickestKinds> quickest = tight ? end.quickest(sown, out) : Optional.empty();
        List<String> notes = new ArrayList<>();
        if (question.plantingOut().seasonPart() == SeasonPart.WINTER) {
            notes.add(SAY.rootsInTime());
        }
        if (quickest.isPresent() && quickest.get().alone()) {
            notes.add(onlyQuickest(quickest.get()));
            outlook.ifPresent(each -> notes.add(SAY.usualKinds(each.firstInWords())));
        } else {
            outlook.ifPresent(each -> notes.add(each.sentence()));
            if (tight) {
                notes.add(quickest.map(each -> SAY.chooseQuickOf(each.days().words()))
                        .orElseGet(SAY::chooseQuick));
            }
        }
        if (!note.isEmpty()) {
            notes.add(note);
        }
        return new Judgement(tight ? Verdict.TIGHT : byDays, notes, outlook, quickest);
    }

    private static String onlyQuickest(QuickestKinds quickest) {
        return SAY.onlyQuickest(quickest.days().words(), quickest.harvest().sentence());
    }

    /** Whether frost kills the crop and the autumn's begin before the spring's have ended. */
    static boolean neverFrostFree(TimelineQuestion question) {
        return question.plantingOut() instanceof ByFrost frost
                && question.crop().hardiness().frostKills()
                && frost.dates().neverFrostFree();
    }

    private static String tooShort(SeasonEnd end, LocalDate sown, LocalDate plantingOut) {
        String days =
                end.fewestDays(sown, plantingOut).map(DaysToMaturity::words).orElse("");
        return end.daysLeftAfter(plantingOut)
                .map(left -> SAY.tooShortWithDaysLeft(days, left, DayWords.dayOfMonth(plantingOut)))
                .orElseGet(() -> SAY.tooShort(days));
    }

    private static String passed(TimelineQuestion question, SeasonEnd end, DateWindow plantingOut, LocalDate last) {
        String ended = SAY.lastSowingWas(DayWords.dayOfMonth(last));
        if (question.plantingOut().seasonPart() == SeasonPart.WINTER) {
            return SAY.wouldNotRoot(ended);
        }
        LocalDate out = DateWindow.later(question.today(), plantingOut.ideal());
        // Bought plants are as old as if they had been sown the usual weeks before.
        LocalDate asIfSown = out.minusDays(SowingWindow.idealDaysIndoors(question.crop()));
        return end.leavesTimeFor(asIfSown, out)
                ? SAY.buyPlants(
                                ended,
                                DayWords.dayOfMonth(out),
                                end.outlook(asIfSown, out)
                                        .map(HarvestOutlook::sentence)
                                        .orElse(""))
                        .strip()
                : SAY.boughtTooLate(ended);
    }

    /** The verdict on plants that were sown and are expected out, or went out, on these days. */
    static Judgement afterSowing(TimelineQuestion question, DateWindow usual, LocalDate sown, LocalDate plantingOut) {
        if (question.seen().plantedOut() == null && neverFrostFree(question)) {
            return tooLate(SAY.stayUnderCover());
        }
        SeasonEnd end = SeasonEnd.of(question, usual);
        if (!end.leavesTimeFor(sown, plantingOut)) {
            Optional<HarvestOutlook> outlook = end.outlook(sown, plantingOut);
            return new Judgement(
                    Verdict.TOO_LATE, List.of(tooLateForHarvest(outlook, plantingOut)), outlook, Optional.empty());
        }
        Verdict byDays = plantingOut.isAfter(usual.latest()) ? Verdict.HURRY : Verdict.IN_TIME;
        return weighed(question, byDays, "", end, sown, plantingOut);
    }

    private static String tooLateForHarvest(Optional<HarvestOutlook> outlook, LocalDate plantingOut) {
        return outlook.map(each -> SAY.notRipe(each.sentence()))
                .orElseGet(() -> SAY.outTooLate(DayWords.dayOfMonth(plantingOut)));
    }
}
