package warmshelf.finding;

import static warmshelf.finding.FindingSentences.SAY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.statistics.ConfidenceInterval;
import warmshelf.finding.statistics.SpeedDifference;
import warmshelf.words.Counted;
import warmshelf.words.Numbers;

/** A comparison in sentences, the answer first and the doubts last. */
public final class WaysWords {
    private static final double CHANCE = 0.05;

    private WaysWords() {}

    /** One after another; never empty. */
    public static List<String> of(WaysCompared compared) {
        List<String> words = new ArrayList<>(answer(compared));
        words.addAll(doubts(compared.doubts()));
        return words;
    }

    /** What to say beside comparisons, one sentence for each doubt. */
    public static List<String> doubts(Set<Doubt> doubts) {
        return Arrays.stream(Doubt.values())
                .filter(doubts::contains)
                .map(WaysWords::word)
                .toList();
    }

    /**
     * The answer of one comparison of two ways among several, without doubts: what speeds and shares came to is told only where chance
     * is unlikely to have made it.
     *
     * @param speedChance of so large a difference of speed, raised for the number of comparisons
     * @param shareChance the same of shares
     */
    public static List<String> ofSeveral(WaysCompared compared, double speedChance, double shareChance) {
        WayFound first = compared.ways().get(0);
        WayFound second = compared.ways().get(1);
        List<String> words = new ArrayList<>();
        boolean speedsTold = speedChance < CHANCE || compared.speeds().isEmpty();
        words.add(speedsTold ? ofSpeeds(first, second, compared.speeds()) : SAY.severalSpeedsAlike());
        compared.shares()
                .ifPresent(shares -> words.add(
                        shareChance < CHANCE
                                ? ofShares(first, second, shares)
                                : SAY.sharesAlike(first.name(), second.name(), hundred(first), hundred(second))));
        words.add(SAY.severalChances(chance(speedChance), chance(shareChance)));
        return words;
    }

    /** The answer of a comparison that stands alone, without doubts; never empty. */
    public static List<String> answer(WaysCompared compared) {
        List<String> words = new ArrayList<>();
        if (compared.logRank().isEmpty()) {
            words.add(nothing(compared.ways()));
        } else if (compared.ways().size() == 2) {
            WayFound first = compared.ways().get(0);
            WayFound second = compared.ways().get(1);
            words.add(ofSpeeds(first, second, compared.speeds()));
            compared.shares().ifPresent(shares -> words.add(ofShares(first, second, shares)));
        }
        if (compared.logRank().isPresent()) {
            words.add(together(compared, compared.chance()));
        }
        return words;
    }

    private static String nothing(List<WayFound> ways) {
        if (ways.size() == 1) {
            return SAY.oneWayOnly(ways.get(0).name(), hundred(ways.get(0)));
        }
        return ways.stream()
                .filter(way -> way.sprouted().of() == 1)
                .findFirst()
                .map(way -> SAY.oneSeedOnly(way.name()))
                .orElseGet(SAY::nothingSprouted);
    }

    /** What to say where two ways may be one under two names; empty where none are. */
    static Optional<String> oneName(WaysCompared compared) {
        Map<String, String> seen = new HashMap<>();
        for (WayFound way : compared.ways()) {
            String other =
                    seen.putIfAbsent(way.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", ""), way.name());
            if (other != null) {
                return Optional.of(SAY.oneName(other, way.name()));
            }
        }
        return Optional.empty();
    }

    private static String ofSpeeds(WayFound first, WayFound second, Optional<SpeedDifference> speeds) {
        if (speeds.isEmpty()) {
            return SAY.speedsUnknown(SpeedDifference.FEWEST);
        }
        double later = speeds.get().days();
        ConfidenceInterval days = speeds.get().interval();
        return switch (larger(days)) {
            case SECOND -> faster(first, second, -later, -days.high(), -days.low());
            case FIRST -> faster(second, first, later, days.low(), days.high());
            case NEITHER -> SAY.speedsAlike(first.name(), second.name(), tenths(-days.low()), tenths(days.high()));
        };
    }

    private static String faster(WayFound way, WayFound other, double days, double low, double high) {
        String about = days < 1.5
                ? tenths(days) + (tenths(days).equals("1") ? " day" : " days")
                : Counted.days(Math.round(days));
        return SAY.faster(way.name(), other.name(), about, tenths(low), tenths(high));
    }

    private static String ofShares(WayFound first, WayFound second, ConfidenceInterval difference) {
        return switch (larger(difference)) {
            case FIRST -> moreCame(first, second, difference.low(), difference.high());
            case SECOND -> moreCame(second, first, -difference.high(), -difference.low());
            case NEITHER -> SAY.sharesAlike(first.name(), second.name(), hundred(first), hundred(second));
        };
    }

    private static String moreCame(WayFound more, WayFound fewer, double low, double high) {
        return SAY.moreCame(
                more.name(),
                fewer.name(),
                hundred(more),
                hundred(fewer),
                String.valueOf(Math.round(100 * low)),
                String.valueOf(Math.round(100 * high)));
    }

    private static String together(WaysCompared compared, double chance) {
        String worded = chance(chance);
        if (chance < CHANCE) {
            return SAY.waysDiffer(worded);
        }
        Larger later = larger(compared.speeds().map(SpeedDifference::interval).orElse(null));
        Larger more = larger(compared.shares().orElse(null));
        if (later == Larger.NEITHER) {
            return SAY.waysAlike(worded);
        }
        return later == more ? SAY.fasterAndFewer(worded) : SAY.waysAlikeWithAll(worded);
    }

    /** A chance as it is written beside a test, for example '0.013', '0.24' or 'below 0.001'. */
    public static String chance(double chance) {
        return chance < 0.001 ? "below 0.001" : String.format(Locale.ROOT, chance < 0.1 ? "%.3f" : "%.2f", chance);
    }

    private enum Larger {
        FIRST,
        SECOND,
        NEITHER
    }

    /** Which way has more of something beyond chance, by the interval of the first less the second. */
    private static Larger larger(@Nullable ConfidenceInterval difference) {
        if (difference == null || difference.holds(0)) {
            return Larger.NEITHER;
        }
        return difference.low() > 0 ? Larger.FIRST : Larger.SECOND;
    }

    private static String word(Doubt doubt) {
        return switch (doubt) {
            case WEEKS_BETWEEN -> SAY.weeksBetween();
            case FEW_SEEDS -> SAY.fewSeeds();
            case ONE_TRAY_A_WAY -> SAY.oneTrayAWay();
            case LOOKS_DIFFER -> SAY.looksDiffer();
            case BAG_COUNTED_LATE -> SAY.bagCountedLate();
            case SOWN_APART -> SAY.sownApart();
            case WARMTH_DIFFERED -> SAY.warmthDiffered();
            case NOT_PLANNED -> SAY.notPlanned();
        };
    }

    private static String hundred(WayFound way) {
        return "%d of %d (%d %%)"
                .formatted(
                        way.sprouted().came(),
                        way.sprouted().of(),
                        Math.round(100 * way.sprouted().value()));
    }

    private static String tenths(double days) {
        return Numbers.oneDecimalAtMost(Math.abs(days) < 0.05 ? 0 : days);
    }
}
