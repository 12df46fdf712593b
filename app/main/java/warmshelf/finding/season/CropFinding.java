package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.finding.CountedSeeds;
import warmshelf.finding.statistics.GerminationCurve;
import warmshelf.finding.statistics.ObservedShare;
import warmshelf.finding.statistics.SproutingTime;

/**
 * What came of one crop, sown in one way, in a season.
 *
 * @param seeds sown
 * @param came of the seeds that somebody counted and that are waited for no longer: roots in a bag, seedlings in cells; empty where
 *     there are none
 * @param half the day since sowing by which half of what came had
 * @param plantedOut plants
 * @param lost seedlings
 * @param waiting sowings of which more may still come
 * @param withheld sowings of which nothing can be said, because their counts are missing or do not add up
 */
public record CropFinding(
        Crop crop,
        Method method,
        int sowings,
        int seeds,
        Optional<ObservedShare> came,
        OptionalDouble half,
        int plantedOut,
        int lost,
        int waiting,
        int withheld) {

    /** One for each crop and method of what was sown, by the crop's name. */
    static List<CropFinding> of(List<SeasonSowing> sowings) {
        Map<String, List<SeasonSowing>> alike = sowings.stream()
                .filter(SeasonSowing::isSown)
                .collect(Collectors.groupingBy(each ->
                        each.sowing().crop().id() + " " + each.sowing().method().word()));
        return alike.values().stream()
                .map(CropFinding::ofAlike)
                .sorted(Comparator.comparing((CropFinding found) -> found.crop().name())
                        .thenComparing(CropFinding::method))
                .toList();
    }

    private static CropFinding ofAlike(List<SeasonSowing> sowings) {
        List<SproutingTime> times = new ArrayList<>();
        int withheld = 0;
        for (SeasonSowing sowing : sowings) {
            CountedSeeds counted = sowing.counted();
            if (sowing.progress().settled()) {
                times.addAll(counted.times());
                withheld += counted.given() ? 0 : 1;
            }
        }
        int came = (int) times.stream().filter(SproutingTime::sprouted).count();
        return new CropFinding(
                sowings.get(0).sowing().crop(),
                sowings.get(0).sowing().method(),
                sowings.size(),
                sowings.stream().mapToInt(each -> each.sowing().seeds()).sum(),
                times.isEmpty() ? Optional.empty() : Optional.of(new ObservedShare(came, times.size())),
                times.isEmpty()
                        ? OptionalDouble.empty()
                        : GerminationCurve.of(times).halfOfThoseThatCame(),
                sowings.stream().mapToInt(SeasonSowing::plantedOut).sum(),
                sowings.stream().mapToInt(each -> each.progress().lost()).sum(),
                (int) sowings.stream()
                        .filter(each -> !each.progress().settled())
                        .count(),
                withheld);
    }
}
