package warmshelf.finding.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.finding.Doubt;
import warmshelf.finding.WayFound;
import warmshelf.finding.WaysCompared;
import warmshelf.finding.statistics.Arm;
import warmshelf.finding.statistics.ManyComparisons;
import warmshelf.sowing.History;
import warmshelf.words.Units;

/**
 * A trial with what was seen of its sowings by a day.
 *
 * @param blocks each with its ways, in the order of their letters
 */
record TrialReading(Trial trial, List<List<WayOfBlock>> blocks, LocalDate today, Units units) {
    private static final double SAME_WARMTH_C = 1;

    TrialReading {
        blocks = List.copyOf(blocks);
    }

    /**
     * @param histories of its sowings, by their ids
     * @param lastDay days after sowing by which nearly all of a sowing should show
     */
    static TrialReading of(
            Trial trial, Map<UUID, History> histories, ToIntFunction<History> lastDay, LocalDate today, Units units) {
        boolean roots = trial.ways().stream().allMatch(way -> way.method() == Method.BAG);
        List<List<WayOfBlock>> blocks = new ArrayList<>();
        for (Trial.Block block : trial.blocks()) {
            List<WayOfBlock> ways = new ArrayList<>();
            for (TrialWay way : trial.ways()) {
                History history = histories.get(block.sowings().get(way.letter()));
                if (history != null) {
                    boolean lot = history.sowing().lotId().equals(trial.lot().id());
                    ways.add(new WayOfBlock(way, history, lastDay.applyAsInt(history), roots, lot));
                }
            }
            blocks.add(List.copyOf(ways));
        }
        return new TrialReading(trial, blocks, today, units);
    }

    TrialState state() {
        List<WayOfBlock> all = blocks.stream().flatMap(List::stream).toList();
        List<WayOfBlock> live = all.stream().filter(way -> !way.isWithdrawn()).toList();
        if (all.isEmpty()) {
            return TrialState.NOBODY;
        }
        if (live.isEmpty()) {
            return TrialState.CALLED_OFF;
        }
        if (live.stream().allMatch(way -> way.sownOn() == null)) {
            return TrialState.PLANNED;
        }
        return live.stream().allMatch(way -> way.hasEnded(today)) ? TrialState.FINISHED : TrialState.UNDER_WAY;
    }

    /** Why a member cannot carry a block of it; empty where they can. */
    Optional<TrialRefusal> refusalToJoin(UUID member, int season) {
        TrialState state = state();
        if (trial.season() != season) {
            return Optional.of(new TrialRefusal.SeasonOver(trial.number(), trial.season()));
        }
        if (state == TrialState.FINISHED || state == TrialState.CALLED_OFF) {
            return Optional.of(new TrialRefusal.Over(trial.number(), state));
        }
        return trial.isCarriedBy(member)
                ? Optional.of(new TrialRefusal.CarriedAlready(trial.number()))
                : Optional.empty();
    }

    /** The day since the first of it was sown; only of one under way. */
    long day() {
        return today.toEpochDay()
                - blocks.stream()
                        .flatMap(List::stream)
                        .map(WayOfBlock::sownOn)
                        .filter(Objects::nonNull)
                        .mapToLong(LocalDate::toEpochDay)
                        .min()
                        .orElse(today.toEpochDay());
    }

    /** The day by which nearly all of its slowest way should show. */
    int lastDay() {
        return blocks.stream()
                .flatMap(List::stream)
                .mapToInt(WayOfBlock::lastDay)
                .max()
                .orElse(0);
    }

    /** What each way came to so far over all blocks, also where it cannot be compared yet. */
    List<WayFound> soFar() {
        Map<String, List<Arm>> counted = new LinkedHashMap<>();
        trial.ways().forEach(way -> counted.put(name(way), new ArrayList<>()));
        blocks.stream()
                .flatMap(block -> arms(block).stream())
                .forEach(arm -> Objects.requireNonNull(counted.get(arm.name())).add(arm));
        return counted.values().stream()
                .filter(arms -> !arms.isEmpty())
                .map(WayFound::of)
                .toList();
    }

    /** The comparison of all ways; empty where no block has two of them. */
    Optional<WaysCompared> comparison() {
        return comparison(trial.ways());
    }

    /**
     * Two of the ways against each other.
     *
     * @param speedChance of so large a difference of speed by chance alone, raised for the number of comparisons; 1 where none could
     *     show
     * @param shareChance the same of shares
     */
    record Pair(String first, String second, WaysCompared comparison, double speedChance, double shareChance) {}

    /** Each two of three ways; none where there are two ways only. */
    List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        List<TrialWay> ways = trial.ways();
        for (int first = 0; ways.size() > 2 && first < ways.size(); first++) {
            for (int second = first + 1; second < ways.size(); second++) {
                TrialWay one = ways.get(first);
                TrialWay other = ways.get(second);
                comparison(List.of(one, other))
                        .ifPresent(compared -> pairs.add(new Pair(name(one), name(other), compared, 1, 1)));
            }
        }
        return adjusted(pairs);
    }

    /** The chances of speeds and of shares count as so many comparisons together. */
    private static List<Pair> adjusted(List<Pair> pairs) {
        double[] adjusted = ManyComparisons.adjusted(pairs.stream()
                .flatMap(pair -> Stream.of(
                        pair.comparison().speedChance(), pair.comparison().shareChance()))
                .mapToDouble(chance -> chance.orElse(1))
                .toArray());
        List<Pair> raised = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            Pair pair = pairs.get(i);
            raised.add(new Pair(pair.first(), pair.second(), pair.comparison(), adjusted[2 * i], adjusted[2 * i + 1]));
        }
        return raised;
    }

    private Optional<WaysCompared> comparison(List<TrialWay> ways) {
        List<List<WayOfBlock>> used = blocks.stream()
                .map(block -> block.stream()
                        .filter(way -> ways.contains(way.way()) && way.leftOut().isEmpty())
                        .toList())
                .filter(block -> block.size() > 1)
                .toList();
        if (used.isEmpty()) {
            return Optional.empty();
        }
        WaysCompared compared =
                WaysCompared.ofLooks(used.stream().map(this::arms).toList(), doubts(used));
        boolean alike = used.stream().allMatch(TrialReading::lookedAtAlike);
        return Optional.of(
                alike && compared.doubts().contains(Doubt.LOOKS_DIFFER)
                        ? compared.doubting(countedLate(compared))
                        : compared);
    }

    /** Between moving the first and the last out of a bag its seedlings are not counted, however often somebody looks. */
    private static Set<Doubt> countedLate(WaysCompared compared) {
        Set<Doubt> doubts = EnumSet.copyOf(compared.doubts());
        doubts.remove(Doubt.LOOKS_DIFFER);
        doubts.add(Doubt.BAG_COUNTED_LATE);
        return doubts;
    }

    /** Whether somebody was at all ways of a block on the same days, until there was nothing to look at any more at one. */
    private static boolean lookedAtAlike(List<WayOfBlock> block) {
        LocalDate last = block.stream()
                .map(way -> way.lookedOn().last())
                .min(LocalDate::compareTo)
                .orElseThrow();
        return block.stream()
                        .map(way -> way.lookedOn().headSet(last))
                        .distinct()
                        .count()
                == 1;
    }

    private Set<Doubt> doubts(List<List<WayOfBlock>> used) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        if (used.size() == 1) {
            doubts.add(Doubt.ONE_TRAY_A_WAY);
        }
        if (used.stream()
                .anyMatch(block ->
                        block.stream().map(WayOfBlock::sownOn).distinct().count() > 1)) {
            doubts.add(Doubt.SOWN_APART);
        }
        boolean asked = trial.kind() == TrialKind.HEAT || trial.kind() == TrialKind.WARMTH;
        if (!asked && used.stream().anyMatch(TrialReading::warmthDiffers)) {
            doubts.add(Doubt.WARMTH_DIFFERED);
        }
        return doubts;
    }

    private static boolean warmthDiffers(List<WayOfBlock> block) {
        List<Double> setPoints = new ArrayList<>();
        for (WayOfBlock way : block) {
            @Nullable Double setPoint = way.history().setPointC();
            if (setPoint != null) {
                setPoints.add(setPoint);
            }
        }
        double low = setPoints.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = setPoints.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return high - low >= SAME_WARMTH_C;
    }

    private List<Arm> arms(List<WayOfBlock> block) {
        return block.stream()
                .filter(way -> way.leftOut().isEmpty())
                .map(way -> new Arm(name(way.way()), way.seeds().times()))
                .toList();
    }

    /** How many roots showed in the bags of a way, over all blocks. */
    int roots(TrialWay way) {
        return blocks.stream()
                .flatMap(List::stream)
                .filter(each -> each.way().equals(way) && each.way().method() == Method.BAG)
                .mapToInt(each -> each.progress().sprouted())
                .sum();
    }

    /** What a way is called in sentences. */
    String name(TrialWay way) {
        return way.name(trial.kind(), units);
    }
}
