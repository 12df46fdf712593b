package warmshelf.finding.prediction;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import warmshelf.crop.Crop;
import warmshelf.finding.statistics.MeanEstimate;
import warmshelf.finding.statistics.ObservedShare;

/**
 * Days of planting out as they were planned at the sowing, against those on which it happened.
 *
 * @param sowings that went out and had a day planned
 * @param within how many went out on one of the days planned; empty where none went out
 * @param later by how many days they went out after the day planned; empty for fewer than {@value #FEWEST}
 * @param crops each with at least {@value #FEWEST} sowings
 */
record PlantingOutPredictions(
        List<PlantingOutPrediction> sowings,
        Optional<ObservedShare> within,
        Optional<MeanEstimate> later,
        List<OfCrop> crops) {
    static final int FEWEST = 3;

    /** A crop's sowings: by how many days they went out later than planned. */
    record OfCrop(Crop crop, ObservedShare within, MeanEstimate later) {}

    static PlantingOutPredictions of(List<PlantingOutPrediction> sowings) {
        return new PlantingOutPredictions(
                sowings,
                sowings.isEmpty() ? Optional.empty() : Optional.of(within(sowings)),
                sowings.size() < FEWEST ? Optional.empty() : Optional.of(later(sowings)),
                crops(sowings));
    }

    private static ObservedShare within(List<PlantingOutPrediction> sowings) {
        return new ObservedShare(
                (int) sowings.stream().filter(PlantingOutPrediction::isWithin).count(), sowings.size());
    }

    private static MeanEstimate later(List<PlantingOutPrediction> sowings) {
        return MeanEstimate.of(
                sowings.stream().mapToDouble(PlantingOutPrediction::daysLater).toArray());
    }

    private static List<OfCrop> crops(List<PlantingOutPrediction> sowings) {
        return sowings.stream()
                .collect(Collectors.groupingBy(each -> each.crop().name(), TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .filter(ofOne -> ofOne.size() >= FEWEST)
                .map(ofOne -> new OfCrop(ofOne.get(0).crop(), within(ofOne), later(ofOne)))
                .toList();
    }
}
