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

    /** Why nothing is to be done for them this season, by its section of the text. */
    static String late(String section, Map<String, ?> values, Units units) {
        return Advice.in(units).say(Advice.stepFile("slips"), section, values);
    }

    /** The days on which to do that in one garden, or why there are none; empty where the timeline has them not. */
    public static Optional<String> dates(Timeline timeline, Units units) {
        Optional<TimelineStep> roots = timeline.step(Step.LAY_ROOTS);
        Optional<TimelineStep> slips = timeline.step(Step.CUT_SLIPS);
        Optional<TimelineStep> out = timeline.step(Step.PLANT_OUT);
        if (roots.isEmpty() || slips.isEmpty() || out.isEmpty()) {
            return Optional.empty();
        }
        if (timeline.verdict() == Verdict.TOO_LATE) {
            return timeline.notes().stream().findFirst().map(note -> note.words(units));
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
