package warmshelf.finding;

import static warmshelf.finding.FindingSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import warmshelf.finding.statistics.ConfidenceInterval;
import warmshelf.finding.statistics.SpeedDifference;
import warmshelf.finding.statistics.TestOutcome;
import warmshelf.words.Counted;
import warmshelf.words.Numbers;

/** A comparison in sentences, the answer first and the doubts last. */
public final class WaysWords {
    private static final double CHANCE = 0.05;

    private WaysWords() {}

    /** One after another; never empty. */
    public static List<String> of(WaysCompared comparison) {
        List<String> words = new ArrayList<>();
        Optional<TestOutcome> logRank = comparison.logRank();
        if (logRank.isEmpty()) {
            words.add(SAY.nothingToCompare());
        } else if (comparison.ways().size() == 2) {
            WayFound first = comparison.ways().get(0);
            WayFound second = comparison.ways().get(1);
            words.add(comparison
                    .speeds()
                    .map(speeds -> ofSpeeds(first, second, speeds))
                    .orElseGet(() -> SAY.speedsUnknown(SpeedDifference.FEWEST)));
            comparison.shares().ifPresent(shares -> words.add(ofShares(first, second, shares)));
        }
        logRank.ifPresent(outcome -> words.add(together(comparison.dealtOut().orElse(outcome.p()))));
        for (Doubt doubt : Doubt.values()) {
            if (comparison.doubts().contains(doubt)) {
                words.add(word(doubt));
            }
        }
        return words;
    }

    private static String ofSpeeds(WayFound first, WayFound second, SpeedDifference later) {
        ConfidenceInterval days = later.interval();
        if (days.high() < 0) {
            return faster(first, -later.days(), -days.high(), -days.low());
        }
        if (days.low() > 0) {
            return faster(second, later.days(), days.low(), days.high());
        }
        return SAY.speedsAlike(first.name(), second.name(), tenths(-days.low()), tenths(days.high()));
    }

    private static String faster(WayFound way, double days, double low, double high) {
        String about = days < 1.5
                ? tenths(days) + (tenths(days).equals("1") ? " day" : " days")
                : Counted.days(Math.round(days));
        return SAY.faster(sentenceCase(way.name()), about, tenths(low), tenths(high));
    }

    private static String ofShares(WayFound first, WayFound second, ConfidenceInterval difference) {
        if (difference.low() > 0) {
            return moreCame(first, second, difference.low(), difference.high());
        }
        if (difference.high() < 0) {
            return moreCame(second, first, -difference.high(), -difference.low());
        }
        return SAY.sharesAlike(first.name(), second.name(), hundred(first), hundred(second));
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

    private static String together(double chance) {
        String worded =
                chance < 0.001 ? "0.001 or less" : String.format(Locale.ROOT, chance < 0.1 ? "%.3f" : "%.2f", chance);
        return chance < CHANCE ? SAY.waysDiffer(worded) : SAY.waysAlike(worded);
    }

    private static String word(Doubt doubt) {
        return switch (doubt) {
            case FEW_SEEDS -> SAY.fewSeeds();
            case ONE_TRAY_A_WAY -> SAY.oneTrayAWay();
            case LOOKS_DIFFER -> SAY.looksDiffer();
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

    private static String sentenceCase(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
