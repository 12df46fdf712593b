package warmshelf.finding.prediction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.crop.Crop;
import warmshelf.crop.SeenEmergence;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.frost.garden.ThermometerRecord;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.sowing.EndedSowing;
import warmshelf.sowing.SowingStores;

/** Reads what was told and what was seen, over all seasons. */
public final class PredictionReader {
    private final SowingStores stores;
    private final PlantsReader plants;
    private final PlantingOutReader plantingOut;
    private final FrostSource frost;
    private final ThermometerStore thermometers;

    /** @param frost the evidence that frost dates are told from */
    public PredictionReader(SowingStores stores, FrostSource frost) {
        this.stores = stores;
        this.plants = new PlantsReader(stores);
        this.plantingOut = new PlantingOutReader(stores.planner());
        this.frost = frost;
        this.thermometers = new ThermometerStore(stores.database(), stores.audit());
    }

    EmergencePredictions emergence() {
        Map<Crop, List<SeenEmergence>> seen = new LinkedHashMap<>();
        stores.emergence()
                .seen()
                .forEach((id, sowings) -> stores.crops().find(id).ifPresent(crop -> seen.put(crop, sowings)));
        return EmergencePredictions.of(seen, stores.crops()::responseOf);
    }

    /** What the predictions of plants and of their days are held against. */
    List<EndedSowing> ended() {
        return stores.ended().all();
    }

    PlantPredictions plants(List<EndedSowing> ended) {
        return plants.of(ended);
    }

    PlantingOutPredictions plantingOut(List<EndedSowing> ended) {
        return plantingOut.of(ended);
    }

    /** Of the thermometers that a person may see: their own and the group's; coordinators see all. */
    FrostPredictions frost(UUID visitor, boolean coordinator) {
        List<ThermometerRecord> seen = thermometers.allRecords().stream()
                .filter(each -> each.mayBeSeenBy(visitor, coordinator))
                .toList();
        return FrostPredictions.of(seen, frost.evidence());
    }
}
