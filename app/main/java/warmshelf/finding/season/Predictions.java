package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import warmshelf.crop.Crop;
import warmshelf.crop.EmergenceCheck;
import warmshelf.crop.SeenEmergence;
import warmshelf.crop.TemperatureResponse;
import warmshelf.finding.statistics.ObservedShare;

/**
 * Days to emergence as the published figures told them, against what was seen in all seasons.
 *
 * @param ranges how many sowings fell into ranges that were told with a chance
 * @param crops each with at least {@value #FEWEST} sowings
 */
public record Predictions(List<Range> ranges, List<OfCrop> crops) {
    /** With fewer sowings of a crop a mean is no evidence. */
    static final int FEWEST = 3;

    private static final List<Double> CHANCES = List.of(0.5, 0.8, 0.9);
    private static final double TAIL = 0.025;

    /** A chance that was told for a range of days, and how often the day fell into it. */
    public record Range(double chance, ObservedShare held) {}

    /**
     * A crop's sowings against the table.
     *
     * @param ratio of the days seen to those published, on average (the mean of the logarithms)
     * @param differs whether that is beyond what the spread of its sowings explains, by Student's t at 95 %
     */
    public record OfCrop(Crop crop, int sowings, double ratio, boolean differs) {}

    /**
     * Holds what was seen against the published response of each crop.
     *
     * @param seen by the crop
     */
    static Predictions of(Map<Crop, List<SeenEmergence>> seen, Function<Crop, TemperatureResponse> published) {
        List<EmergenceCheck> all = new ArrayList<>();
        List<OfCrop> crops = new ArrayList<>();
        seen.forEach((crop, sowings) -> {
            List<EmergenceCheck> checks = sowings.stream()
                    .map(sowing -> EmergenceCheck.of(published.apply(crop), sowing))
                    .flatMap(Optional::stream)
                    .toList();
            all.addAll(checks);
            if (checks.size() >= FEWEST) {
                crops.add(ofCrop(crop, checks));
            }
        });
        crops.sort(Comparator.comparing(each -> each.crop().name()));
        return new Predictions(all.isEmpty() ? List.of() : ranges(all), crops);
    }

    private static List<Range> ranges(List<EmergenceCheck> checks) {
        return CHANCES.stream()
                .map(chance -> new Range(chance, new ObservedShare(held(checks, chance), checks.size())))
                .toList();
    }

    private static int held(List<EmergenceCheck> checks, double chance) {
        double within = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.5 + chance / 2);
        return (int) checks.stream()
                .filter(check -> Math.abs(check.standardized()) <= within)
                .count();
    }

    private static OfCrop ofCrop(Crop crop, List<EmergenceCheck> checks) {
        double[] logs = checks.stream()
                .mapToDouble(check -> Math.log(check.seenDays() / check.publishedDays()))
                .toArray();
        double mean = Arrays.stream(logs).average().orElseThrow();
        double squares =
                Arrays.stream(logs).map(log -> (log - mean) * (log - mean)).sum();
        double confident = TDistribution.of(logs.length - 1.0).inverseSurvivalProbability(TAIL);
        double error = Math.sqrt(squares / (logs.length - 1) / logs.length);
        return new OfCrop(crop, logs.length, Math.exp(mean), Math.abs(mean) > confident * error);
    }

    /** The range that was told most surely; empty where nothing was seen. */
    public Optional<Range> widest() {
        return ranges.isEmpty() ? Optional.empty() : Optional.of(ranges.get(ranges.size() - 1));
    }
}
