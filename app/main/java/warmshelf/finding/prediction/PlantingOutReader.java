package warmshelf.finding.prediction;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.season.SeasonSowing;
import warmshelf.finding.season.SeasonStore;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;

/**
 * Works out anew on which day each sowing was to go out, as its timeline stood on the day on which it was sown; nobody kept what was told
 * then. Frost evidence and days to emergence are those of today.
 */
final class PlantingOutReader {
    private final SeasonStore seasons;
    private final SowingPlanner planner;

    PlantingOutReader(SeasonStore seasons, SowingPlanner planner) {
        this.seasons = seasons;
        this.planner = planner;
    }

    PlantingOutPredictions read() {
        List<PlantingOutPrediction> found = new ArrayList<>();
        for (int season : seasons.seasons()) {
            seasons.sowings(season).forEach(sowing -> prediction(sowing).ifPresent(found::add));
        }
        return PlantingOutPredictions.of(found);
    }

    private Optional<PlantingOutPrediction> prediction(SeasonSowing found) {
        @Nullable LocalDate sown = found.progress().seen().sown();
        @Nullable LocalDate out = found.progress().seen().plantedOut();
        if (sown == null || out == null || sown.equals(out)) {
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
