package warmshelf.finding.prediction;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.sowing.Asking;
import warmshelf.sowing.EndedSowing;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;

/**
 * Works out anew on which day each sowing was to go out, as its timeline stood on the day on which it was sown; nobody kept what was told
 * then. Frost evidence and days to emergence are those of today.
 */
final class PlantingOutReader {
    private final SowingPlanner planner;

    PlantingOutReader(SowingPlanner planner) {
        this.planner = planner;
    }

    PlantingOutPredictions of(List<EndedSowing> sowings) {
        return PlantingOutPredictions.of(
                sowings.stream().flatMap(each -> prediction(each).stream()).toList());
    }

    private Optional<PlantingOutPrediction> prediction(EndedSowing found) {
        LocalDate sown = found.sownOn();
        @Nullable LocalDate out = found.plantedOutOn();
        if (out == null || sown.equals(out)) {
            return Optional.empty();
        }
        Sowing sowing = found.sowing();
        double celsius = found.meanC() == null ? planner.reckonedC(sowing.crop(), sowing.warm()) : found.meanC();
        return planner.timeline(Asking.of(sowing), celsius, sown, Seen.sownOn(sown))
                .flatMap(timeline -> timeline.step(Step.PLANT_OUT))
                .map(step -> new PlantingOutPrediction(
                        sowing.id(),
                        sowing.season(),
                        sowing.crop(),
                        step.earliest(),
                        step.ideal(),
                        step.latest(),
                        out));
    }
}
