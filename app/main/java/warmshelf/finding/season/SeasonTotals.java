package warmshelf.finding.season;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import warmshelf.sowing.Problem;
import warmshelf.sowing.SowingStage;

/**
 * A season in figures.
 *
 * @param asked sowings asked for
 * @param members who sowed
 * @param sown sowings that were sown
 * @param withdrawn before they were sown
 * @param underWay sown, and neither planted out nor given up
 * @param seeds sown
 * @param counted seeds of sowings that were counted and are waited for no longer
 * @param came of those
 * @param plantedOut plants
 * @param given plants that were handed over to other members
 * @param lost seedlings
 * @param givenUp sowings
 * @param reasons the last problem noted at those given up, with how many; those without any are missing
 */
public record SeasonTotals(
        int asked,
        int members,
        int sown,
        int withdrawn,
        int underWay,
        int seeds,
        int counted,
        int came,
        int plantedOut,
        int given,
        int lost,
        int givenUp,
        Map<Problem, Integer> reasons) {

    static SeasonTotals of(List<SeasonSowing> sowings, List<CropFinding> crops) {
        List<SeasonSowing> sown = sowings.stream().filter(SeasonSowing::isSown).toList();
        List<SeasonSowing> givenUp =
                sown.stream().filter(SeasonSowing::isGivenUp).toList();
        Map<Problem, Integer> reasons = new EnumMap<>(Problem.class);
        for (SeasonSowing sowing : givenUp) {
            Problem problem = sowing.progress().lastProblem();
            if (problem != null) {
                reasons.merge(problem, 1, Integer::sum);
            }
        }
        return new SeasonTotals(
                sowings.size(),
                (int) sown.stream()
                        .map(each -> each.sowing().grower().memberId())
                        .distinct()
                        .count(),
                sown.size(),
                (int) sowings.stream()
                        .filter(each -> each.sowing().stage() == SowingStage.WITHDRAWN)
                        .count(),
                (int) sown.stream()
                        .filter(each -> !each.sowing().stage().isOver())
                        .count(),
                sown.stream().mapToInt(each -> each.sowing().seeds()).sum(),
                crops.stream()
                        .flatMap(crop -> crop.came().stream())
                        .mapToInt(share -> share.of())
                        .sum(),
                crops.stream()
                        .flatMap(crop -> crop.came().stream())
                        .mapToInt(share -> share.came())
                        .sum(),
                sown.stream().mapToInt(SeasonSowing::plantedOut).sum(),
                sown.stream().mapToInt(SeasonSowing::given).sum(),
                sown.stream().mapToInt(each -> each.progress().lost()).sum(),
                givenUp.size(),
                reasons);
    }
}
