package warmshelf.timeline;

import java.util.Map;
import java.util.Optional;
import warmshelf.crop.Crop;
import warmshelf.crop.RaisedFrom;
import warmshelf.guide.Advice;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;
import warmshelf.words.Units;

/** What to do with a crop that is raised from slips: nobody can sow it. */
public final class Slips {
    private Slips() {}

    /** In sentences; empty for a crop that is raised from seed. The weeks are those of the crop's row. */
    public static Optional<String> insteadOfSowing(Crop crop, Units units) {
        if (crop.raisedFrom() != RaisedFrom.SLIPS) {
            return Optional.empty();
        }
        return Optional.of(Advice.in(units)
                .say(
                        Advice.stepFile("slips"),
                        "how",
                        Map.of(
                                "crop",
                                crop.name(),
                                "weeks",
                                Counted.weeks(crop.weeksIndoorsMin(), crop.weeksIndoorsMax()))));
    }

    /** The days on which to do that in one garden, or that it is too late for roots; empty where the timeline has them not. */
    public static Optional<String> dates(Timeline timeline, Units units) {
        Optional<TimelineStep> roots = timeline.step(Step.LAY_ROOTS);
        Optional<TimelineStep> slips = timeline.step(Step.CUT_SLIPS);
        Optional<TimelineStep> out = timeline.step(Step.PLANT_OUT);
        if (roots.isEmpty() || slips.isEmpty() || out.isEmpty()) {
            return Optional.empty();
        }
        if (timeline.verdict() == Verdict.TOO_LATE) {
            return Optional.of(Advice.in(units)
                    .say(
                            Advice.stepFile("slips"),
                            "too late",
                            Map.of("out", DayWords.dayOfMonth(out.get().ideal()))));
        }
        return Optional.of(Advice.in(units)
                .say(
                        Advice.stepFile("slips"),
                        "dates",
                        Map.of(
                                "roots", DayWords.dayOfMonth(roots.get().ideal()),
                                "slips", DayWords.dayOfMonth(slips.get().ideal()),
                                "out", DayWords.dayOfMonth(out.get().ideal()))));
    }
}
