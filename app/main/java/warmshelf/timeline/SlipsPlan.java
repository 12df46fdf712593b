package warmshelf.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.crop.QuickKinds;
import warmshelf.guide.PracticeDays;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/** The short way of a crop that is raised from slips: roots are laid to shoot, slips cut, rooted and planted out. */
final class SlipsPlan {
    private static final PracticeDays ROOTING = PracticeDays.of("slips", "rooting in water");

    private final TimelineQuestion question;
    private final ExpectedEmergence emergence;
    private final PlantingOutWindow usualOut;
    private final DateWindow roots;

    SlipsPlan(TimelineQuestion question) {
        this.question = question;
        this.emergence = ExpectedEmergence.of(question.response(), question.matC());
        this.usualOut = PlantingOutWindow.of(question);
        this.roots = SowingWindow.before(usualOut.days(), question, emergence).days();
    }

    Timeline timeline() {
        Judgement judgement = Judgement.beforeSowing(question, usualOut.days(), roots, emergence);
        DateWindow laid = judgement.verdict() == Verdict.TOO_LATE ? roots : roots.notBefore(question.today());
        LocalDate shot =
                laid.ideal().plusWeeks(question.crop().weeksIndoorsMin()).minusDays(ROOTING.least());
        DateWindow cut = usualOut.days()
                .plusDays(-ROOTING.most(), -(ROOTING.least() + ROOTING.most()) / 2, -ROOTING.least())
                .notBefore(shot);
        StepList steps = new StepList(question.units());
        steps.add(Step.LAY_ROOTS, laid, layWhy(), null);
        steps.add(Step.CUT_SLIPS, cut, cutWhy(), null);
        Outdoors outdoors = Outdoors.of(question, emergence, laid, cut, usualOut.days());
        outdoors.addTo(steps, question, usualOut, laid);
        return new Timeline(
                judgement.verdict(),
                steps.steps(),
                question.warm() ? (int) ChronoUnit.DAYS.between(laid.ideal(), cut.ideal()) : 0,
                notes(judgement),
                judgement.outlook(),
                judgement.quickest(),
                SeasonFacts.of(question, Optional.empty()),
                Optional.empty());
    }

    private Reason layWhy() {
        Crop crop = question.crop();
        return Step.LAY_ROOTS.why(
                "why",
                Map.of(
                        "weeks",
                        Counted.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()),
                        "plantingOut",
                        plantingOut()),
                question.units());
    }

    private Reason cutWhy() {
        return Step.CUT_SLIPS.why("why", Map.of("plantingOut", plantingOut()), question.units());
    }

    /** Whether the season is too short whatever the day, roots come too late but bought slips do not, or both do. */
    private TimelineNote late(DaysToMaturity quickest) {
        SeasonEnd end = SeasonEnd.of(question, usualOut.days());
        LocalDate first = usualOut.days().earliest();
        if (end.tooShortFor(roots.earliest(), first)) {
            return new TimelineNote.LateForSlips(
                    TimelineNote.LateForSlips.What.ANY_DAY, quickest, end.daysLeftAfter(first), first);
        }
        LocalDate out = DateWindow.later(question.today(), usualOut.days().ideal());
        LocalDate laid = out.minusDays(SowingWindow.idealDaysIndoors(question.crop()));
        TimelineNote.LateForSlips.What what = end.leavesTimeFor(laid, out)
                ? TimelineNote.LateForSlips.What.ROOTS
                : TimelineNote.LateForSlips.What.BOUGHT_SLIPS;
        return new TimelineNote.LateForSlips(what, quickest, end.daysLeftAfter(out), out);
    }

    private String plantingOut() {
        return DayWords.dayOfMonth(usualOut.days().ideal());
    }

    private List<TimelineNote> notes(Judgement judgement) {
        List<TimelineNote> notes = new ArrayList<>();
        Optional<DaysToMaturity> quickest = QuickKinds.of(question.crop().id()).or(question.crop()::maturity);
        if (judgement.verdict() == Verdict.TOO_LATE && !Judgement.neverFrostFree(question) && quickest.isPresent()) {
            notes.add(late(quickest.get()));
        } else {
            notes.addAll(judgement.notes());
        }
        notes.add(new TimelineNote.RaisedFromSlips(question.crop()));
        return notes;
    }
}
