package warmshelf.finding.prediction;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.Lot;
import warmshelf.seed.PlantOutlook;
import warmshelf.sowing.EndedSowing;
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

    private final SowingStores stores;

    PlantsReader(SowingStores stores) {
        this.stores = stores;
    }

    PlantPredictions of(List<EndedSowing> ended) {
        Map<Integer, List<EndedSowing>> counted = ended.stream()
                .filter(PlantsReader::isCounted)
                .collect(
                        Collectors.groupingBy(each -> each.sowing().season(), LinkedHashMap::new, Collectors.toList()));
        List<PlantPrediction> found = new ArrayList<>();
        counted.forEach((season, sowings) -> found.addAll(ofSeason(season, sowings)));
        int leftOut =
                ended.size() - counted.values().stream().mapToInt(List::size).sum();
        return PlantPredictions.of(found, leftOut);
    }

    /**
     * Of what was given up none is left, whatever was counted. Seedlings of several seeds to a cell are thinned, which nobody notes: what
     * was counted there are not the plants.
     */
    private static boolean isCounted(EndedSowing sowing) {
        boolean addsUp = sowing.up() > 0 && sowing.up() <= sowing.sowing().seeds();
        return sowing.sowing().seedsPerCell() == 1 && (sowing.isGivenUp() || addsUp);
    }

    private List<PlantPrediction> ofSeason(int season, List<EndedSowing> sowings) {
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
        for (EndedSowing sowing : sowings) {
            UUID lotId = sowing.sowing().lotId();
            List<GerminationTest> known =
                    known(sowing, tests.getOrDefault(lotId, List.of()), results.getOrDefault(lotId, List.of()));
            found.add(one(sowing, Objects.requireNonNull(lots.get(lotId)), known, survival));
        }
        return found;
    }

    /** What had been seen of the lot when this was sown. */
    private static List<GerminationTest> known(
            EndedSowing sowing, List<GerminationTest> tests, List<GerminationTest> results) {
        LocalDate sown = sowing.sownOn();
        List<GerminationTest> known = new ArrayList<>();
        tests.stream().filter(test -> test.testedOn().isBefore(sown)).forEach(known::add);
        results.stream()
                .filter(result -> result.testedOn().isBefore(sown.minusDays(KNOWN_AFTER_DAYS)))
                .forEach(known::add);
        return known;
    }

    private static PlantPrediction one(EndedSowing found, Lot lot, List<GerminationTest> evidence, Survival survival) {
        Sowing sowing = found.sowing();
        GerminationShare share = lot.share(sowing.crop(), evidence, sowing.season());
        return new PlantPrediction(
                sowing.id(),
                sowing.season(),
                sowing.crop(),
                sowing.seeds(),
                new PlantOutlook(share, survival.share(), sowing.seedsPerCell(), sowing.cells()),
                sowing.plantsWanted(),
                Math.min(found.lived(), sowing.cells()));
    }
}
