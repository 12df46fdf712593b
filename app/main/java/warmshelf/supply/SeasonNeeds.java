package warmshelf.supply;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;

/** What sowings under way still need, by their timelines. */
record SeasonNeeds(SowingPlanner planner, Map<UUID, Integer> cellsInTray, LocalDate today) {

    Supplies of(List<History> underWay, Predicate<Sowing> which) {
        return Supplies.sum(underWay.stream()
                .filter(history -> which.test(history.sowing()))
                .map(history -> needs(history).supplies())
                .toList());
    }

    private SowingNeeds needs(History history) {
        Sowing sowing = history.sowing();
        SowingStage stage = history.progress().stage();
        @Nullable
        Timeline timeline = planner.timeline(sowing, history.progress(), history.celsius(planner), today)
                .orElse(null);
        boolean toBeSown = stage.isBeforeSowing();
        boolean inTheBag = sowing.method() == Method.BAG
                && (stage == SowingStage.SOWN || stage == SowingStage.SPROUTING)
                && history.progress().moved() == 0;
        return new SowingNeeds(
                sowing.crop(),
                sowing.method(),
                sowing.plantsWanted(),
                sowing.cells(),
                cellsInTray.get(sowing.id()),
                sowing.treatedSeed(),
                stage.compareTo(SowingStage.SOAKED) < 0 && isToCome(timeline, Step.SOAK),
                toBeSown,
                toBeSown || inTheBag,
                isToCome(timeline, Step.POT_ON));
    }

    private static boolean isToCome(@Nullable Timeline timeline, Step step) {
        return timeline != null
                && timeline.step(step).map(TimelineStep::done).isEmpty()
                && timeline.step(step).isPresent();
    }
}
