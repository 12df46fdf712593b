package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.finding.CountedSeeds;
import warmshelf.finding.Doubt;
import warmshelf.finding.WaysCompared;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.ManyComparisons;

/**
 * Bags beside cells for one crop, as it happened and as nobody planned: a hint. Seedlings that are up are compared under both, lot by
 * lot, because lots differ more than methods do.
 *
 * @param adjusted the chance of so large a difference, adjusted for all crops that were compared so; empty where there is no test
 */
public record MethodHint(Crop crop, WaysCompared compared, OptionalDouble adjusted) {
    /** Of each crop of which some lot was sown in both ways and counted; what is of a trial was planned, and is told there. */
    static List<MethodHint> of(List<SeasonSowing> sowings) {
        Map<String, List<SeasonSowing>> ofCrop = sowings.stream()
                .filter(each -> each.sowing().trial() == null)
                .filter(sowing -> sowing.isSown() && sowing.progress().settled())
                .collect(Collectors.groupingBy(each -> each.sowing().crop().name(), TreeMap::new, Collectors.toList()));
        List<MethodHint> hints = new ArrayList<>();
        ofCrop.values().forEach(ofOne -> ofOneCrop(ofOne).ifPresent(hints::add));
        return adjusted(hints);
    }

    private static Optional<MethodHint> ofOneCrop(List<SeasonSowing> sowings) {
        Map<UUID, List<SeasonSowing>> ofLot = sowings.stream()
                .collect(Collectors.groupingBy(each -> each.sowing().lotId(), TreeMap::new, Collectors.toList()));
        List<List<Arm>> blocks = ofLot.values().stream()
                .map(MethodHint::block)
                .filter(block -> block.size() == 2)
                .toList();
        if (blocks.isEmpty()) {
            return Optional.empty();
        }
        Set<Doubt> doubts = EnumSet.of(Doubt.NOT_PLANNED);
        if (blocks.size() == 1) {
            doubts.add(Doubt.ONE_TRAY_A_WAY);
        }
        return Optional.of(new MethodHint(
                sowings.get(0).sowing().crop(), WaysCompared.ofLooks(blocks, doubts), OptionalDouble.empty()));
    }

    private static List<Arm> block(List<SeasonSowing> ofLot) {
        List<Arm> block = new ArrayList<>();
        for (Method method : List.of(Method.BAG, Method.CELLS)) {
            List<CountedSeeds> counted = ofLot.stream()
                    .filter(each -> each.sowing().method() == method)
                    .map(each -> CountedSeeds.up(method, each.sowing().seeds(), each.progress()))
                    .filter(CountedSeeds::given)
                    .toList();
            if (!counted.isEmpty()) {
                block.add(new Arm(
                        method.word(),
                        counted.stream().flatMap(each -> each.times().stream()).toList()));
            }
        }
        return block;
    }

    private static List<MethodHint> adjusted(List<MethodHint> hints) {
        List<MethodHint> tested = hints.stream()
                .filter(hint -> hint.compared.logRank().isPresent())
                .toList();
        double[] chances = tested.stream()
                .mapToDouble(hint -> hint.compared
                        .dealtOut()
                        .orElse(hint.compared.logRank().orElseThrow().p()))
                .toArray();
        double[] adjusted = ManyComparisons.adjusted(chances);
        List<MethodHint> told = new ArrayList<>();
        for (int i = 0; i < adjusted.length; i++) {
            told.add(new MethodHint(tested.get(i).crop, tested.get(i).compared, OptionalDouble.of(adjusted[i])));
        }
        return told;
    }
}
