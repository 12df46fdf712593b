package warmshelf.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.BagFit;
import warmshelf.crop.HeatNeed;
import warmshelf.crop.Method;
import warmshelf.crop.Prospect;
import warmshelf.crop.RaisedFrom;
import warmshelf.timeline.PlantingOut.ByFrost;

/**
 * Works one timeline out: back from planting out to sowing, then forward from sowing, or from what was seen. What has not
 * been seen yet cannot lie before today.
 */
final class TimelinePlan {
    private final TimelineQuestion question;
    private final Seen seen;
    private final ExpectedEmergence emergence;
    private final PlantingOutWindow usualOut;
    private final SowingWindow usualSowing;

    TimelinePlan(TimelineQuestion question) {
        this.question = question;
        this.seen = question.seen();
        this.emergence = ExpectedEmergence.of(question.response(), question.matC());
        this.usualOut = PlantingOutWindow.of(question);
        this.usualSowing = SowingWindow.before(usualOut.days(), question, emergence);
    }

    Timeline timeline() {
        Judgement before = Judgement.beforeSowing(question, usualOut.days(), usualSowing.days(), emergence);
        DateWindow sowing = sowing(before.verdict());
        Seedlings seedlings = Seedlings.of(question, emergence, sowing);
        Outdoors outdoors = Outdoors.of(question, emergence, sowing, seedlings.up(), usualOut.days());
        StepList steps = new StepList(question.units());
        new StepsIndoors(question, emergence, usualSowing, !isSown() && !hasNoTimeForTheCold(before.verdict()))
                .addTo(steps, sowing, seedlings, outdoors);
        outdoors.addTo(steps, question, usualOut, sowing);
        Judgement judgement = isSown()
                ? Judgement.afterSowing(
                        question,
                        usualOut.days(),
                        sowing.ideal(),
                        outdoors.plantOut().ideal())
                : before;
        return new Timeline(
                judgement.verdict(),
                steps.steps(),
                warmDays(),
                notes(judgement, seedlings, outdoors),
                judgement.outlook(),
                judgement.quickest(),
                facts(judgement.verdict(), sowing.ideal()),
                SowingOutside.of(question, usualOut.days()));
    }

    private SeasonFacts facts(Verdict verdict, LocalDate sown) {
        return SeasonFacts.of(
                question,
                verdict == Verdict.TOO_LATE ? Optional.empty() : SowAgain.after(sown, question.today(), sowingDays()));
    }

    private SowingDays sowingDays() {
        return SowingDays.of(question, usualOut.days(), usualSowing.days(), emergence);
    }

    private boolean isSown() {
        return seen.sown() != null;
    }

    private DateWindow sowing(Verdict verdict) {
        LocalDate sown = seen.sown();
        LocalDate soaked = seen.soaked();
        if (sown != null) {
            return DateWindow.on(sown);
        }
        if (soaked != null) {
            return DateWindow.on(soaked.plusDays(1)).notBefore(question.today());
        }
        // A plan that comes too late is shown as it would have been.
        if (verdict == Verdict.TOO_LATE) {
            return usualSowing.days();
        }
        DateWindow days = latestSensible().notBefore(question.today());
        return afterTheCold(days).orElse(days);
    }

    /** The same where the cold that the seed wants still comes before; empty where it wants none, or there is no time for it. */
    private Optional<DateWindow> afterTheCold(DateWindow days) {
        return ColdSpell.of(question.crop()).flatMap(cold -> cold.delayed(days, seen.chilled(), question.today()));
    }

    private boolean hasNoTimeForTheCold(Verdict verdict) {
        return !isSown()
                && seen.soaked() == null
                && verdict != Verdict.TOO_LATE
                && ColdSpell.of(question.crop()).isPresent()
                && afterTheCold(latestSensible().notBefore(question.today())).isEmpty();
    }

    private DateWindow latestSensible() {
        if (!question.today().isAfter(usualSowing.days().latest())) {
            return usualSowing.days();
        }
        return new DateWindow(
                usualSowing.days().earliest(),
                usualSowing.days().ideal(),
                sowingDays().lastSensible(question.today()));
    }

    /** A bag is on the mat until its roots show, a tray until its seedlings are up; a day more to find and move them. */
    private int warmDays() {
        if (!question.warm() || !emergence.possible()) {
            return 0;
        }
        return 1 + (question.method() == Method.BAG ? emergence.roots() : emergence.seedlings()).last();
    }

    private List<TimelineNote> notes(Judgement judgement, Seedlings seedlings, Outdoors outdoors) {
        List<TimelineNote> notes = new ArrayList<>(judgement.notes());
        addTemperatureNote(notes);
        if (!isSown()) {
            addSeedNotes(notes);
        }
        if (hasNoTimeForTheCold(judgement.verdict())) {
            ColdSpell.of(question.crop())
                    .map(TimelineNote.NoTimeForTheCold::new)
                    .ifPresent(notes::add);
        }
        if (question.plantingOut() instanceof ByFrost frost && !frost.dates().isFrostFeared()) {
            notes.add(new TimelineNote.NoFrost(isSown()));
        }
        addWaitingNote(
                notes,
                seedlings.expectedUp(),
                seedlings.seenUp(),
                outdoors.plantOut().ideal());
        return notes;
    }

    /** What of the method does not suit the seed. */
    private void addSeedNotes(List<TimelineNote> notes) {
        String crop = question.crop().name();
        BagFit fit = BagFit.of(question.crop());
        if (question.method() == Method.BAG && fit != BagFit.FITS) {
            notes.add(
                    fit == BagFit.TOO_FINE
                            ? new TimelineNote.TooFineForBag(crop)
                            : new TimelineNote.RootsBreakInBag(crop));
        }
        if (question.warm() && HeatNeed.of(question.crop(), question.response()) == HeatNeed.NO_MAT) {
            notes.add(new TimelineNote.NeedsNoMat(crop));
        }
    }

    private void addTemperatureNote(List<TimelineNote> notes) {
        if (question.crop().raisedFrom() == RaisedFrom.SLIPS) {
            notes.add(new TimelineNote.RaisedFromSlips(question.crop()));
            return;
        }
        Prospect there = question.response().prospect(question.matC());
        if (!emergence.possible()) {
            notes.add(new TimelineNote.NoDaysThere(
                    question.crop().name(), question.matC(), question.response().comfortable(), there));
        } else if (there instanceof Prospect.Timed timed && timed.basis() == Prospect.Basis.PUBLISHED_RANGE) {
            notes.add(new TimelineNote.DaysNotTested(question.matC()));
        }
    }

    private void addWaitingNote(
            List<TimelineNote> notes, LocalDate expected, @Nullable LocalDate seenUp, LocalDate plantOut) {
        if (seenUp != null && seenUp.isBefore(expected) && seen.plantedOut() == null) {
            notes.add(new TimelineNote.UpSooner(ChronoUnit.DAYS.between(seenUp, expected), plantOut));
        }
    }
}
