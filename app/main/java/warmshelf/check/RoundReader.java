package warmshelf.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.crop.Emergence;
import warmshelf.crop.Method;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.LateSeed;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.timeline.Timeline;

/** Makes of a sowing's history what the round needs to know of it on a day. */
public final class RoundReader {
    private final SowingPlanner planner;
    private final SeedShares shares;

    public RoundReader(SowingPlanner planner, SeedShares shares) {
        this.planner = planner;
        this.shares = shares;
    }

    /** What was known of a sowing's seed before it was sown; empty where nobody can tell. Asked only of seed that is late. */
    public interface SeedShares {
        Optional<GerminationShare.Uncertain> of(Sowing sowing);
    }

    Subject subject(History history, LocalDate today) {
        Sowing sowing = history.sowing();
        Progress progress = history.progress();
        double celsius = history.celsius(planner);
        @Nullable Timeline timeline = planner.timeline(history, today).orElse(null);
        OptionalInt nearlyAllBy = nearlyAllBy(sowing, celsius, timeline);
        return new Subject(
                sowing,
                progress,
                whereItLies(history, progress, today),
                timeline,
                nearlyAllBy,
                moreToCome(history, progress, nearlyAllBy, celsius, today));
    }

    private OptionalDouble moreToCome(
            History history, Progress progress, OptionalInt nearlyAllBy, double celsius, LocalDate today) {
        Sowing sowing = history.sowing();
        int day = history.dayCount(today);
        boolean waiting = progress.stage().isWaitingForSeed() || progress.stage() == SowingStage.EMERGED;
        if (!waiting || nearlyAllBy.isEmpty() || day <= nearlyAllBy.getAsInt()) {
            return OptionalDouble.empty();
        }
        int shown = Math.min(sowing.seeds(), Math.max(progress.sprouted(), progress.up()));
        return planner.emergence(sowing, celsius)
                .flatMap(emergence -> shares.of(sowing)
                        .map(share -> LateSeed.chanceOfMore(share, sowing.seeds(), shown, emergence.shownAfter(day))))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** Seed that is not up lies on its mat even when the days kept for it have run out, or those of its lit place begun. */
    private static @Nullable Stay whereItLies(History history, Progress progress, LocalDate today) {
        Stay stay = history.stayOn(today);
        boolean onMat = stay != null && stay.isOnMat();
        if (onMat || !progress.isWhereItWasSown(history.sowing().method())) {
            return stay;
        }
        List<Stay> past = history.stays().stream().filter(Stay::isOnMat).toList();
        return past.isEmpty() ? stay : past.get(past.size() - 1);
    }

    private OptionalInt nearlyAllBy(Sowing sowing, double celsius, @Nullable Timeline timeline) {
        if (sowing.method() == Method.BAG && timeline != null && timeline.warmDays() > 1) {
            return OptionalInt.of(timeline.warmDays() - 1);
        }
        return planner.emergence(sowing, celsius)
                .map(Emergence::days95)
                .map(days -> OptionalInt.of((int) Math.ceil(days)))
                .orElse(OptionalInt.empty());
    }
}
