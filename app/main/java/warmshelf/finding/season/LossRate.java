package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import warmshelf.finding.statistics.ConfidenceInterval;
import warmshelf.finding.statistics.ObservedShare;

/**
 * How often a loss was noted among sowings that have something in common.
 *
 * @param of what they have in common, for example the name of a shelf
 * @param noted at how many of them
 * @param more the 95 % interval of how much larger this share is than that of all others; empty where that is not above chance, or too
 *     few were sown to say
 */
public record LossRate(String of, ObservedShare noted, Optional<ConfidenceInterval> more) {
    // With fewer sowings one tray makes a rate.
    private static final int FEWEST = 5;

    /**
     * By whatever they have in common, in its order; those of which that is not known are left out.
     *
     * @param lost whether the loss was noted at a sowing
     */
    static List<LossRate> by(
            List<SeasonSowing> sowings, Function<SeasonSowing, Optional<String>> common, Predicate<SeasonSowing> lost) {
        SortedMap<String, List<SeasonSowing>> alike = sowings.stream()
                .filter(SeasonSowing::isSown)
                .filter(sowing -> common.apply(sowing).isPresent())
                .collect(Collectors.groupingBy(
                        sowing -> common.apply(sowing).orElseThrow(), TreeMap::new, Collectors.toList()));
        int all = alike.values().stream().mapToInt(List::size).sum();
        int noted =
                alike.values().stream().mapToInt(group -> noted(group, lost)).sum();
        List<LossRate> rates = new ArrayList<>();
        alike.forEach((name, group) -> rates.add(rate(name, group, all, noted, lost)));
        return rates;
    }

    private static LossRate rate(
            String name, List<SeasonSowing> group, int all, int notedOfAll, Predicate<SeasonSowing> lost) {
        ObservedShare here = new ObservedShare(noted(group, lost), group.size());
        int others = all - group.size();
        if (group.size() < FEWEST || others < FEWEST) {
            return new LossRate(name, here, Optional.empty());
        }
        ConfidenceInterval more = here.less(new ObservedShare(notedOfAll - here.came(), others));
        return new LossRate(name, here, more.low() > 0 ? Optional.of(more) : Optional.empty());
    }

    private static int noted(List<SeasonSowing> sowings, Predicate<SeasonSowing> lost) {
        return (int) sowings.stream().filter(lost).count();
    }
}
