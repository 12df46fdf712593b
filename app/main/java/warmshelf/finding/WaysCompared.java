package warmshelf.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.ConfidenceInterval;
import warmshelf.finding.statistics.LogRank;
import warmshelf.finding.statistics.Permutations;
import warmshelf.finding.statistics.SpeedDifference;
import warmshelf.finding.statistics.SproutingTime;
import warmshelf.finding.statistics.TestOutcome;

/**
 * Ways to sprout seed beside each other.
 *
 * @param ways each with what came of it, in the order given
 * @param logRank of speed and share together; empty where nothing could have differed, or a way had a single seed
 * @param dealtOut the same chance without approximation, for two ways with few seeds
 * @param shares for two ways: the 95 % interval of the first way's share less the second's
 * @param speeds for two ways: how much later the first way's seeds came
 * @param speedChance the chance of so large a difference of speed among the seeds that sprouted, if the ways made none: seeds that
 *     never sprout outweigh late ones in {@code logRank}, which so misses a way that is only slower
 * @param shareChance the same for the shares, block by block (Mantel and Haenszel 1959, J. Natl. Cancer Inst. 22, 719-748)
 * @param doubts what to say beside it
 */
public record WaysCompared(
        List<WayFound> ways,
        Optional<TestOutcome> logRank,
        OptionalDouble dealtOut,
        Optional<ConfidenceInterval> shares,
        Optional<SpeedDifference> speeds,
        OptionalDouble speedChance,
        OptionalDouble shareChance,
        Set<Doubt> doubts) {

    /** With more seeds in the smallest way the approximation does. */
    private static final int MANY_SEEDS = 50;

    private static final int FEW_SEEDS = 10;

    /** A single seed tells nothing of a way. */
    private static final int FEWEST_SEEDS = 2;

    private static final int WEEKS_BETWEEN_DAYS = 14;

    public WaysCompared {
        ways = List.copyOf(ways);
        doubts = Set.copyOf(doubts);
    }

    /**
     * Compares what was seen between looks, each block within itself.
     *
     * @param known what is to be said of how the seeds were laid out
     */
    public static WaysCompared ofLooks(List<List<Arm>> blocks, Set<Doubt> known) {
        Map<String, List<Arm>> ways = ways(blocks);
        return compared(
                blocks,
                ways,
                LogRank.ofTimesBetweenLooks(blocks),
                fewest(ways) < MANY_SEEDS ? Permutations.ofTwoWays(blocks) : OptionalDouble.empty(),
                doubts(blocks, ways, known));
    }

    /** The same for times that are known exactly. */
    public static WaysCompared ofExactTimes(List<Arm> arms) {
        List<List<Arm>> blocks = List.of(arms);
        Map<String, List<Arm>> ways = ways(blocks);
        return compared(
                blocks, ways, LogRank.ofExactTimes(blocks), OptionalDouble.empty(), doubts(blocks, ways, Set.of()));
    }

    /** The chance of so large a difference if the ways made none: without approximation where that was reckoned; 1 where none could show. */
    public double chance() {
        return dealtOut.orElse(logRank.map(TestOutcome::p).orElse(1.0));
    }

    /** The same with other doubts. */
    public WaysCompared doubting(Set<Doubt> others) {
        return new WaysCompared(ways, logRank, dealtOut, shares, speeds, speedChance, shareChance, others);
    }

    private static WaysCompared compared(
            List<List<Arm>> blocks,
            Map<String, List<Arm>> ways,
            Optional<TestOutcome> logRank,
            OptionalDouble dealtOut,
            Set<Doubt> doubts) {
        List<WayFound> found = ways.values().stream().map(WayFound::of).toList();
        if (found.size() < 2 || fewest(ways) < FEWEST_SEEDS) {
            return withheld(found, doubts);
        }
        boolean two = found.size() == 2;
        List<List<Arm>> arms = List.copyOf(ways.values());
        return new WaysCompared(
                found,
                logRank,
                dealtOut,
                two ? Optional.of(found.get(0).sprouted().less(found.get(1).sprouted())) : Optional.empty(),
                two ? SpeedDifference.between(arms.get(0), arms.get(1)) : Optional.empty(),
                chance(LogRank.ofTimesBetweenLooks(thatSprouted(blocks))),
                chance(LogRank.ofExactTimes(sproutedOrNot(blocks))),
                doubts);
    }

    private static WaysCompared withheld(List<WayFound> found, Set<Doubt> doubts) {
        Set<Doubt> others = new TreeSet<>(doubts);
        others.remove(Doubt.FEW_SEEDS);
        return new WaysCompared(
                found,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                others);
    }

    private static OptionalDouble chance(Optional<TestOutcome> outcome) {
        return outcome.isPresent() ? OptionalDouble.of(outcome.get().p()) : OptionalDouble.empty();
    }

    private static List<List<Arm>> thatSprouted(List<List<Arm>> blocks) {
        return blocks.stream()
                .map(block -> block.stream()
                        .filter(arm -> arm.sprouted().came() > 0)
                        .map(arm -> new Arm(
                                arm.name(),
                                arm.times().stream()
                                        .filter(SproutingTime::sprouted)
                                        .toList()))
                        .toList())
                .filter(block -> !block.isEmpty())
                .toList();
    }

    /** As if all that sprouted had done so at one moment: then the log-rank test is that of Mantel and Haenszel. */
    private static List<List<Arm>> sproutedOrNot(List<List<Arm>> blocks) {
        return blocks.stream()
                .map(block -> block.stream()
                        .map(arm -> new Arm(
                                arm.name(),
                                arm.times().stream()
                                        .map(time -> time.sprouted() ? SproutingTime.at(1) : SproutingTime.notBy(1))
                                        .toList()))
                        .toList())
                .toList();
    }

    private static Map<String, List<Arm>> ways(List<List<Arm>> blocks) {
        Map<String, List<Arm>> ways = new LinkedHashMap<>();
        blocks.forEach(block -> block.forEach(arm ->
                ways.computeIfAbsent(arm.name(), name -> new ArrayList<>()).add(arm)));
        return ways;
    }

    private static int fewest(Map<String, List<Arm>> ways) {
        return ways.values().stream()
                .mapToInt(arms ->
                        arms.stream().mapToInt(arm -> arm.times().size()).sum())
                .min()
                .orElse(0);
    }

    private static Set<Doubt> doubts(List<List<Arm>> blocks, Map<String, List<Arm>> ways, Set<Doubt> known) {
        Set<Doubt> doubts = new TreeSet<>(known);
        if (fewest(ways) < FEW_SEEDS) {
            doubts.add(Doubt.FEW_SEEDS);
        }
        if (blocks.stream().flatMap(List::stream).anyMatch(WaysCompared::weeksBetween)) {
            doubts.add(Doubt.WEEKS_BETWEEN);
        }
        if (blocks.stream().anyMatch(WaysCompared::looksDiffer)) {
            doubts.add(Doubt.LOOKS_DIFFER);
        }
        return doubts;
    }

    private static boolean weeksBetween(Arm arm) {
        return arm.times().stream().anyMatch(time -> time.sprouted() && time.by() - time.after() >= WEEKS_BETWEEN_DAYS);
    }

    /** Whether one arm's seeds were bounded by days on which another's demonstrably were not looked at. */
    private static boolean looksDiffer(List<Arm> block) {
        return block.stream()
                .flatMap(arm -> arm.times().stream())
                .filter(time -> time.sprouted() && time.after() < time.by())
                .anyMatch(time -> block.stream().anyMatch(other -> lookedAtWithin(other, time)));
    }

    private static boolean lookedAtWithin(Arm arm, SproutingTime longer) {
        return arm.times().stream().anyMatch(time -> within(time.after(), longer) || within(time.by(), longer));
    }

    private static boolean within(double day, SproutingTime longer) {
        return longer.after() < day && day < longer.by();
    }
}
