package warmshelf.finding.prediction;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.season.SeasonSowing;
import warmshelf.finding.season.SeasonStore;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.Lot;
import warmshelf.seed.PlantOutlook;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;
import warmshelf.sowing.Survival;

/**
 * Works out anew how many plants each sowing was to give, from what was known of its seed when it was sown; nobody kept what was told
 * then.
 */
final class PlantsReader {
    /** About so long after it was sown it is known what came of a sowing. */
    private static final int KNOWN_AFTER_DAYS = 30;

    private final SeasonStore seasons;
    private final SowingStores stores;

    PlantsReader(SeasonStore seasons, SowingStores stores) {
        this.seasons = seasons;
        this.stores = stores;
    }

    PlantPredictions read() {
        List<PlantPrediction> found = new ArrayList<>();
        int leftOut = 0;
        for (int season : seasons.seasons()) {
            List<SeasonSowing> ended = seasons.sowings(season).stream()
                    .filter(PlantsReader::hasEnded)
                    .toList();
            List<SeasonSowing> counted =
                    ended.stream().filter(PlantsReader::isCounted).toList();
            leftOut += ended.size() - counted.size();
            found.addAll(ofSeason(season, counted));
        }
        return PlantPredictions.of(found, leftOut);
    }

    private static boolean hasEnded(SeasonSowing sowing) {
        return sowing.isSown()
                && (sowing.isGivenUp() || sowing.progress().seen().plantedOut() != null);
    }

    /**
     * Of what was given up none is left, whatever was counted. Seedlings of several seeds to a cell are thinned, which nobody notes: what
     * was counted there are not the plants.
     */
    private static boolean isCounted(SeasonSowing sowing) {
        Progress progress = sowing.progress();
        boolean addsUp = progress.up() > 0 && progress.up() <= sowing.sowing().seeds();
        return sowing.sowing().seedsPerCell() == 1 && (sowing.isGivenUp() || addsUp);
    }

    private List<PlantPrediction> ofSeason(int season, List<SeasonSowing> sowings) {
        if (sowings.isEmpty()) {
            return List.of();
        }
        Survival survival = stores.use().survivalBefore(season);
        Map<UUID, Lot> lots =
                stores
                        .lots()
                        .all(sowings.stream()
                                .map(each -> each.sowing().lotId())
                                .distinct()
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(Lot::id, Function.identity()));
        Map<UUID, List<GerminationTest>> tests = stores.lots().testsOf(lots.keySet());
        Map<UUID, List<GerminationTest>> results = stores.use().results(lots.keySet());
        List<PlantPrediction> found = new ArrayList<>();
        for (SeasonSowing sowing : sowings) {
            UUID lotId = sowing.sowing().lotId();
            known(sowing, tests.getOrDefault(lotId, List.of()), results.getOrDefault(lotId, List.of()))
                    .ifPresent(evidence ->
                            found.add(one(sowing, Objects.requireNonNull(lots.get(lotId)), evidence, survival)));
        }
        return found;
    }

    /** What had been seen of the lot when this was sown; empty where it is not known when that was. */
    private static Optional<List<GerminationTest>> known(
            SeasonSowing sowing, List<GerminationTest> tests, List<GerminationTest> results) {
        @Nullable LocalDate sown = sowing.progress().seen().sown();
        if (sown == null) {
            return Optional.empty();
        }
        List<GerminationTest> known = new ArrayList<>();
        tests.stream().filter(test -> test.testedOn().isBefore(sown)).forEach(known::add);
        results.stream()
                .filter(result -> result.testedOn().isBefore(sown.minusDays(KNOWN_AFTER_DAYS)))
                .forEach(known::add);
        return Optional.of(known);
    }

    private static PlantPrediction one(SeasonSowing found, Lot lot, List<GerminationTest> evidence, Survival survival) {
        Sowing sowing = found.sowing();
        GerminationShare share = lot.share(sowing.crop(), evidence, sowing.season());
        return new PlantPrediction(
                sowing.id(),
                sowing.season(),
                sowing.crop(),
                sowing.seeds(),
                new PlantOutlook(share, survival.share(), sowing.seedsPerCell(), sowing.cells()),
                sowing.plantsWanted(),
                Math.min(found.grown(), sowing.cells()));
    }
}
