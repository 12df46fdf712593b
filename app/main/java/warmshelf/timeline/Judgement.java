package warmshelf.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.timeline.HarvestOutlook.Reach;
import warmshelf.timeline.PlantingOut.ByFrost;

/**
 * The verdict on a sowing, with the notes that explain it. It weighs both ends: whether the days of sowing have passed, and
 * how much of the harvest comes before the autumn's frost.
 *
 * @param outlook what comes before that frost; empty where it cannot be told
 * @param quickest the same of the quickest kinds, where the usual ones are not sure to ripen and quicker ones are known
 */
record Judgement(
        Verdict verdict, List<TimelineNote> notes, Optional<HarvestOutlook> outlook, Optional<QuickestKinds> quickest) {
    static Judgement beforeSowing(
            TimelineQuestion question, DateWindow plantingOut, DateWindow sowing, ExpectedEmergence emergence) {
        if (neverFrostFree(question)) {
            return tooLate(new TimelineNote.NeverFrostFree());
        }
        SowingDays days = SowingDays.of(question, plantingOut, sowing, emergence);
        SeasonEnd end = days.end();
        LocalDate today = question.today();
        if (end.tooShortFor(sowing.earliest(), plantingOut.earliest())) {
            return new Judgement(
                    Verdict.TOO_LATE,
                    List.of(new TimelineNote.TooShort(
                            end.fewestDays(sowing.earliest(), plantingOut.earliest()),
                            end.daysLeftAfter(plantingOut.earliest()),
                            plantingOut.earliest())),
                    end.outlook(sowing.earliest(), plantingOut.earliest()),
                    Optional.empty());
        }
        LocalDate sown = DateWindow.later(today, sowing.ideal());
        if (!today.isAfter(sowing.latest())) {
            return weighed(question, Verdict.IN_TIME, null, end, sown, days.plantedOut(sown));
        }
        LocalDate last = days.lastSensible(today);
        if (!today.isAfter(last)) {
            TimelineNote passed = new TimelineNote.UsualSowingEnded(sowing.latest(), last);
            return weighed(question, Verdict.HURRY, passed, end, sown, days.plantedOut(sown));
        }
        return tooLate(passed(question, end, plantingOut, last));
    }

    private static Judgement tooLate(TimelineNote note) {
        return new Judgement(Verdict.TOO_LATE, List.of(note), Optional.empty(), Optional.empty());
    }

    /** The verdict by the days of sowing, unless the autumn's frost makes it worse. */
    private static Judgement weighed(
            TimelineQuestion question,
            Verdict byDays,
            @Nullable TimelineNote note,
            SeasonEnd end,
            LocalDate sown,
            LocalDate out) {
        Optional<HarvestOutlook> outlook = end.outlook(sown, out);
        boolean tight = outlook.filter(each -> each.reach() != Reach.SURE).isPresent();
        Optional<QuickestKinds> quickest = tight ? end.quickest(sown, out) : Optional.empty();
        List<TimelineNote> notes = new ArrayList<>();
        if (question.plantingOut().seasonPart() == SeasonPart.WINTER) {
            notes.add(new TimelineNote.RootsInTime());
        }
        if (quickest.isPresent() && quickest.get().alone()) {
            notes.add(new TimelineNote.OnlyQuickest(quickest.get()));
            outlook.map(TimelineNote.UsualKindsTooLate::new).ifPresent(notes::add);
        } else {
            outlook.map(TimelineNote.InTime::new).ifPresent(notes::add);
            if (tight) {
                notes.add(new TimelineNote.ChooseQuick(quickest.map(QuickestKinds::days)));
            }
        }
        if (note != null) {
            notes.add(note);
        }
        return new Judgement(tight ? Verdict.TIGHT : byDays, notes, outlook, quickest);
    }

    /** Whether frost kills the crop and the autumn's begin before the spring's have ended. */
    static boolean neverFrostFree(TimelineQuestion question) {
        return question.plantingOut() instanceof ByFrost frost
                && question.crop().hardiness().frostKills()
                && frost.dates().neverFrostFree();
    }

    private static TimelineNote passed(
            TimelineQuestion question, SeasonEnd end, DateWindow plantingOut, LocalDate last) {
        if (question.plantingOut().seasonPart() == SeasonPart.WINTER) {
            return new TimelineNote.WouldNotRoot(last);
        }
        LocalDate out = DateWindow.later(question.today(), plantingOut.ideal());
        // Bought plants are as old as if they had been sown the usual weeks before.
        LocalDate asIfSown = out.minusDays(SowingWindow.idealDaysIndoors(question.crop()));
        return end.leavesTimeFor(asIfSown, out)
                ? new TimelineNote.BuyPlants(last, out, end.outlook(asIfSown, out))
                : new TimelineNote.BoughtTooLate(last);
    }

    /** The verdict on plants that were sown and are expected out, or went out, on these days. */
    static Judgement afterSowing(TimelineQuestion question, DateWindow usual, LocalDate sown, LocalDate plantingOut) {
        if (question.seen().plantedOut() == null && neverFrostFree(question)) {
            return tooLate(new TimelineNote.StayUnderCover());
        }
        SeasonEnd end = SeasonEnd.of(question, usual);
        if (!end.leavesTimeFor(sown, plantingOut)) {
            Optional<HarvestOutlook> outlook = end.outlook(sown, plantingOut);
            return new Judgement(
                    Verdict.TOO_LATE, List.of(tooLateForHarvest(outlook, plantingOut)), outlook, Optional.empty());
        }
        Verdict byDays = plantingOut.isAfter(usual.latest()) ? Verdict.HURRY : Verdict.IN_TIME;
        return weighed(question, byDays, null, end, sown, plantingOut);
    }

    private static TimelineNote tooLateForHarvest(Optional<HarvestOutlook> outlook, LocalDate plantingOut) {
        return outlook.<TimelineNote>map(TimelineNote.NotRipe::new)
                .orElseGet(() -> new TimelineNote.OutTooLate(plantingOut));
    }
}
