package warmshelf.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Tests of some lots and what came of their sowings here. */
record LotEvidence(Map<UUID, List<GerminationTest>> tests, Map<UUID, List<GerminationTest>> results) {
    List<GerminationTest> tests(Lot lot) {
        return tests.getOrDefault(lot.id(), List.of());
    }

    List<GerminationTest> results(Lot lot) {
        return results.getOrDefault(lot.id(), List.of());
    }

    /** Both, as they count for what may be expected. */
    List<GerminationTest> all(Lot lot) {
        List<GerminationTest> all = new ArrayList<>(tests(lot));
        all.addAll(results(lot));
        return all;
    }
}
