package warmshelf.timeline;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import warmshelf.crop.Crop;
import warmshelf.crop.LifeCycle;

/** For which part of the year to sow a crop where nobody chose: the first that is still in time. */
public final class NextPart {
    private NextPart() {}

    /**
     * The part and its timeline: the last of them where all are too late. Over winter is taken by itself only for what gives
     * nothing in its first year; for the rest it is a choice.
     *
     * @param parts those for which the crop can be sown, in the order of the year
     * @param plan what would come of it in a part
     * @return empty where no timeline can be told
     */
    public static Optional<Timeline> of(
            Crop crop, List<SeasonPart> parts, Function<SeasonPart, Optional<Timeline>> plan) {
        Optional<Timeline> last = Optional.empty();
        for (SeasonPart part : parts) {
            if (part == SeasonPart.WINTER && !isForLaterYears(crop)) {
                continue;
            }
            Optional<Timeline> timeline = plan.apply(part);
            if (timeline.filter(each -> each.verdict() != Verdict.TOO_LATE).isPresent()) {
                return timeline;
            }
            Optional<Timeline> before = last;
            last = timeline.or(() -> before);
        }
        return last;
    }

    private static boolean isForLaterYears(Crop crop) {
        return LifeCycle.of(crop).filter(cycle -> cycle.cropInYear() > 1).isPresent();
    }
}
