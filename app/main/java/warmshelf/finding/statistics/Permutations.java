package warmshelf.finding.statistics;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;

/**
 * The same comparison of two ways as {@link LogRank#ofTimesBetweenLooks}, without the approximation that needs many seeds: by all the
 * ways in which the seeds of each block could have been dealt out.
 */
public final class Permutations {
    private static final int MOST_SUMS = 20_000;
    private static final int DRAWS = 9_999;
    // fixed, so that the same entries give the same figure whenever the page is opened
    private static final long START = 20_270_301;
    private static final double SAME = 1e-9;

    private Permutations() {}

    /**
     * The chance of so large a difference if the way made none; empty unless two ways are compared. Exact where that is at most
     * {@value #MOST_SUMS} different sums, else from {@value #DRAWS} draws.
     */
    public static OptionalDouble ofTwoWays(List<List<Arm>> blocks) {
        if (LogRank.arms(blocks).size() != 2) {
            return OptionalDouble.empty();
        }
        String first = blocks.get(0).get(0).name();
        Map<Long, Double> sums = new HashMap<>(Map.of(0L, 1.0));
        double seen = 0;
        for (List<Arm> block : blocks) {
            RankScores scores = RankScores.of(block);
            Dealt dealt = Dealt.of(block, first, scores);
            seen += dealt.sum;
            Map<Long, Double> ofBlock = dealt.allSums();
            if (ofBlock.isEmpty() || (long) ofBlock.size() * sums.size() > MOST_SUMS) {
                return OptionalDouble.of(drawn(blocks, first));
            }
            sums = combined(sums, ofBlock);
        }
        return OptionalDouble.of(share(sums, seen));
    }

    private static double share(Map<Long, Double> sums, double seen) {
        double all = 0;
        double asLarge = 0;
        for (Map.Entry<Long, Double> each : sums.entrySet()) {
            all += each.getValue();
            asLarge += Math.abs(each.getKey() * SAME) >= Math.abs(seen) - 100 * SAME ? each.getValue() : 0;
        }
        return asLarge / all;
    }

    private static Map<Long, Double> combined(Map<Long, Double> some, Map<Long, Double> others) {
        Map<Long, Double> both = new HashMap<>();
        some.forEach((sum, ways) -> others.forEach((other, more) -> both.merge(sum + other, ways * more, Double::sum)));
        return both;
    }

    private static double drawn(List<List<Arm>> blocks, String first) {
        List<Dealt> dealt = blocks.stream()
                .map(block -> Dealt.of(block, first, RankScores.of(block)))
                .toList();
        double seen = dealt.stream().mapToDouble(each -> each.sum).sum();
        Random random = new Random(START);
        int asLarge = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double sum = dealt.stream().mapToDouble(each -> each.drawn(random)).sum();
            asLarge += Math.abs(sum) >= Math.abs(seen) - SAME ? 1 : 0;
        }
        // what was seen is one of the ways too
        return (asLarge + 1.0) / (DRAWS + 1.0);
    }

    /** The scores of a block and how many of its seeds the first way had. */
    private static final class Dealt {
        private final double[] scores;
        private final int ofFirst;
        private final double sum;

        private Dealt(double[] scores, int ofFirst, double sum) {
            this.scores = scores;
            this.ofFirst = ofFirst;
            this.sum = sum;
        }

        static Dealt of(List<Arm> block, String first, RankScores scores) {
            double[] all = new double[scores.seeds()];
            int filled = 0;
            int ofFirst = 0;
            double sum = 0;
            for (int arm = 0; arm < block.size(); arm++) {
                double[] own = scores.of(arm);
                System.arraycopy(own, 0, all, filled, own.length);
                filled += own.length;
                if (block.get(arm).name().equals(first)) {
                    ofFirst += own.length;
                    sum += scores.sum(arm);
                }
            }
            return new Dealt(all, ofFirst, sum);
        }

        /** How many ways give each sum, the sum in units of {@value #SAME}; nothing where that would be too many sums. */
        Map<Long, Double> allSums() {
            Map<Long, Integer> alike = new TreeMap<>();
            for (double score : scores) {
                alike.merge(Math.round(score / SAME), 1, Integer::sum);
            }
            // by how many were dealt to the first way so far
            Map<Integer, Map<Long, Double>> soFar = new HashMap<>();
            soFar.put(0, Map.of(0L, 1.0));
            for (Map.Entry<Long, Integer> group : alike.entrySet()) {
                soFar = withGroup(soFar, group.getKey(), group.getValue());
                if (soFar.values().stream().mapToInt(Map::size).sum() > MOST_SUMS) {
                    return Map.of();
                }
            }
            return soFar.getOrDefault(ofFirst, Map.of());
        }

        private Map<Integer, Map<Long, Double>> withGroup(
                Map<Integer, Map<Long, Double>> soFar, long score, int seeds) {
            Map<Integer, Map<Long, Double>> next = new HashMap<>();
            soFar.forEach((dealt, sums) -> {
                double ways = 1;
                for (int more = 0; more <= seeds && dealt + more <= ofFirst; more++) {
                    Map<Long, Double> into = next.computeIfAbsent(dealt + more, count -> new HashMap<>());
                    for (Map.Entry<Long, Double> sum : sums.entrySet()) {
                        into.merge(sum.getKey() + more * score, sum.getValue() * ways, Double::sum);
                    }
                    ways = ways * (seeds - more) / (more + 1);
                }
            });
            return next;
        }

        double drawn(Random random) {
            // Fisher and Yates, only as far as the first way's seeds
            double sum = 0;
            for (int i = 0; i < ofFirst; i++) {
                int other = i + random.nextInt(scores.length - i);
                double kept = scores[i];
                scores[i] = scores[other];
                scores[other] = kept;
                sum += scores[i];
            }
            return sum;
        }
    }
}
