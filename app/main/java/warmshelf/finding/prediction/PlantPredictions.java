package warmshelf.finding.prediction;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import warmshelf.crop.Crop;
import warmshelf.finding.statistics.Calibration;
import warmshelf.finding.statistics.MeanEstimate;

/**
 * Plants as the number of seeds was to give them, against those that there were.
 *
 * @param sowings that have ended and were counted
 * @param ranges how many of them fell into ranges that were told with a chance
 * @param wanted whether the plants wanted were there as often as told; empty where nothing has ended
 * @param crops each with at least {@value #FEWEST} sowings
 * @param leftOut ended too, but nobody counted, or the counts do not add up
 */
record PlantPredictions(
        List<PlantPrediction> sowings,
        List<ToldRange> ranges,
        Optional<Calibration> wanted,
        List<OfCrop> crops,
        int leftOut) {
    static final int FEWEST = 3;

    /** With fewer forecasts in a bin its share says nothing. */
    private static final int FEWEST_IN_BIN = 10;

    private static final int MOST_BINS = 4;

    /**
     * A crop's sowings.
     *
     * @param told plants, summed
     * @param seen plants, summed
     * @param differs whether the plants for each seed differ from those told by more than the spread of its sowings explains
     */
    record OfCrop(Crop crop, int sowings, double told, int seen, boolean differs) {}

    static PlantPredictions of(List<PlantPrediction> sowings, int leftOut) {
        return new PlantPredictions(
                sowings, ToldRange.of(sowings, PlantPrediction::reached), wanted(sowings), crops(sowings), leftOut);
    }

    private static Optional<Calibration> wanted(List<PlantPrediction> sowings) {
        int bins = Math.max(1, Math.min(MOST_BINS, sowings.size() / FEWEST_IN_BIN));
        List<Calibration.Told> told = sowings.stream()
                .map(each -> new Calibration.Told(each.chanceOfWanted(), each.hadWanted()))
                .toList();
        return told.isEmpty() ? Optional.empty() : Optional.of(Calibration.of(told, bins));
    }

    private static List<OfCrop> crops(List<PlantPrediction> sowings) {
        return sowings.stream()
                .collect(Collectors.groupingBy(each -> each.crop().name(), TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .filter(ofOne -> ofOne.size() >= FEWEST)
                .map(PlantPredictions::ofCrop)
                .toList();
    }

    private static OfCrop ofCrop(List<PlantPrediction> sowings) {
        MeanEstimate more = MeanEstimate.of(
                sowings.stream().mapToDouble(PlantPrediction::moreForEachSeed).toArray());
        return new OfCrop(
                sowings.get(0).crop(),
                sowings.size(),
                sowings.stream().mapToDouble(each -> each.told().expected()).sum(),
                sowings.stream().mapToInt(PlantPrediction::seen).sum(),
                more.differsFromZero());
    }
}
