package warmshelf.finding.prediction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.statistics.distribution.NormalDistribution;
import warmshelf.crop.Crop;
import warmshelf.crop.EmergenceCheck;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.finding.statistics.MeanEstimate;

/**
 * Days to emergence as the published figures told them, against what was seen in all seasons.
 *
 * @param sowings each of which it is known when half had come
 * @param ranges how many sowings fell into ranges that were told with a chance
 * @param crops each with at least {@value #FEWEST} sowings
 */
record EmergencePredictions(List<OfSowing> sowings, List<ToldRange> ranges, List<OfCrop> crops) {
    /** With fewer sowings of a crop a mean is no evidence. */
    static final int FEWEST = 3;

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /** One sowing: what was seen, held against the table. */
    record OfSowing(Crop crop, SeenEmergence seen, EmergenceCheck check) {}

    /**
     * A crop's sowings against the table.
     *
     * @param ratio of the days seen to those published, on average (the mean of the logarithms)
     * @param differs whether that is beyond what the spread of its sowings explains
     */
    record OfCrop(Crop crop, int sowings, double ratio, boolean differs) {}

    /**
     * Holds what was seen against the published response of each crop.
     *
     * @param seen by the crop
     */
    static EmergencePredictions of(Map<Crop, List<SeenEmergence>> seen, Function<Crop, TemperatureResponse> published) {
        List<OfSowing> all = new ArrayList<>();
        List<OfCrop> crops = new ArrayList<>();
        seen.forEach((crop, sowings) -> {
            List<OfSowing> checked = sowings.stream()
                    .flatMap(sowing ->
                            EmergenceCheck.of(published.apply(crop), sowing)
                                    .map(check -> new OfSowing(crop, sowing, check))
                                    .stream())
                    .toList();
            all.addAll(checked);
            if (checked.size() >= FEWEST) {
                crops.add(ofCrop(crop, checked));
            }
        });
        crops.sort(Comparator.comparing(each -> each.crop().name()));
        return new EmergencePredictions(all, ToldRange.of(all, EmergencePredictions::reached), crops);
    }

    private static double reached(OfSowing sowing) {
        return NORMAL.cumulativeProbability(sowing.check().standardized());
    }

    private static OfCrop ofCrop(Crop crop, List<OfSowing> sowings) {
        MeanEstimate logs = MeanEstimate.of(sowings.stream()
                .map(OfSowing::check)
                .mapToDouble(check -> Math.log(check.seenDays() / check.publishedDays()))
                .toArray());
        return new OfCrop(crop, logs.count(), Math.exp(logs.mean()), logs.differsFromZero());
    }

    /** The range that was told most surely; empty where nothing was seen. */
    Optional<ToldRange> widest() {
        return ranges.isEmpty() ? Optional.empty() : Optional.of(ranges.get(ranges.size() - 1));
    }
}
