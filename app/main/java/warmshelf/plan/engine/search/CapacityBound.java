package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A proven upper bound on how many requests any plan can place, from the room alone: on each day the quarters taken on mats
 * of one kind (same thermostat, same circuit, light or none) cannot exceed those that there are.
 *
 * <p>Lagrangian relaxation: with any price per quarter and day, no plan places more than the price of all room plus, for each
 * request, what is left of 1 after paying for its cheapest stay. Subgradient steps look for good prices (Held, Wolfe and
 * Crowder 1974); each step's figure is a valid bound, so stopping early costs tightness only.
 */
final class CapacityBound {
    private static final double SLACK = 1e-6;
    private static final int MOST_STEPS = 6_000;
    private static final long MOST_LOOKS = 600_000_000;

    private final IndexedQuestion ground;
    /** Lowest of all figures so far. */
    private double bound;

    private final int kinds;
    private final int[][] room;
    private final List<int[][]> chances = new ArrayList<>();
    private final double[][] price;
    private final double[][] sum;
    private final int[][] used;
    private double pace = 1;
    private int sinceBetter;

    /**
     * @param empty a layout with the fixed stays alone
     * @param counted the requests to bound, each of which could lie somewhere by itself
     */
    CapacityBound(Layout empty, boolean[] counted) {
        ground = empty.ground;
        Map<String, List<Integer>> byKind = new HashMap<>();
        for (int mat = 0; mat < ground.mats; mat++) {
            byKind.computeIfAbsent(kind(mat), none -> new ArrayList<>()).add(mat);
        }
        List<List<Integer>> groups = new ArrayList<>(byKind.values());
        groups.sort(Comparator.comparing(group -> group.get(0)));
        kinds = groups.size();
        room = new int[kinds][];
        for (int kind = 0; kind < kinds; kind++) {
            room[kind] = room(empty, groups.get(kind));
        }
        for (IndexedRequest ask : ground.asks) {
            if (counted[ask.index()]) {
                chances.add(chances(empty, ask, groups));
            }
        }
        bound = chances.size();
        price = new double[kinds][ground.days];
        sum = new double[kinds][ground.days + 1];
        used = new int[kinds][ground.days];
    }

    /** No plan places more than this many. */
    int bound() {
        return (int) Math.floor(bound + SLACK);
    }

    /** How many steps are worth their time: fewer when there is much to look at in each. */
    int worthwhileSteps() {
        long stays = chances.stream().mapToLong(chance -> chance.length).sum();
        return (int) Math.max(100, Math.min(MOST_STEPS, MOST_LOOKS / Math.max(1, stays)));
    }

    /** Takes some more steps towards good prices; {@code placed} is how many a known plan places. */
    void improve(int steps, int placed) {
        for (int step = 0; step < steps && bound() > placed; step++) {
            double figure = figure();
            if (figure < bound - 1e-4) {
                bound = figure;
                sinceBetter = 0;
            } else if (++sinceBetter > 20) {
                pace *= 0.7;
                sinceBetter = 0;
            }
            follow(figure, placed);
        }
    }

    private double figure() {
        double figure = 0;
        for (int kind = 0; kind < kinds; kind++) {
            Arrays.fill(used[kind], 0);
            for (int day = 0; day < ground.days; day++) {
                sum[kind][day + 1] = sum[kind][day] + price[kind][day];
                figure += price[kind][day] * room[kind][day];
            }
        }
        for (int[][] stays : chances) {
            figure += leftAfterPaying(stays);
        }
        return figure;
    }

    /** Each stay is kind, from, to, quarters. */
    private double leftAfterPaying(int[][] stays) {
        double least = Double.MAX_VALUE;
        int[] cheapest = stays[0];
        for (int[] stay : stays) {
            double cost = stay[3] * (sum[stay[0]][stay[2]] - sum[stay[0]][stay[1]]);
            if (cost < least) {
                least = cost;
                cheapest = stay;
            }
        }
        if (least >= 1) {
            return 0;
        }
        for (int day = cheapest[1]; day < cheapest[2]; day++) {
            used[cheapest[0]][day] += cheapest[3];
        }
        return 1 - least;
    }

    private void follow(double figure, int placed) {
        double norm = 0;
        for (int kind = 0; kind < kinds; kind++) {
            for (int day = 0; day < ground.days; day++) {
                double over = used[kind][day] - room[kind][day];
                if (over > 0 || price[kind][day] > 0) {
                    norm += over * over;
                }
            }
        }
        if (norm == 0) {
            return;
        }
        double stride = pace * Math.max(0.05, figure - placed) / norm;
        for (int kind = 0; kind < kinds; kind++) {
            for (int day = 0; day < ground.days; day++) {
                double over = used[kind][day] - room[kind][day];
                price[kind][day] = Math.max(0, price[kind][day] + stride * over);
            }
        }
    }

    private String kind(int mat) {
        long held = 0;
        for (long degrees : ground.thermostat[mat]) {
            held |= degrees;
        }
        return held + "|" + ground.circuit[mat] + "|" + ground.dark[mat];
    }

    /** Free quarters by day; where the circuit cannot warm all mats of the kind, what the roomiest it can warm hold. */
    private int[] room(Layout empty, List<Integer> group) {
        int[] free = new int[ground.days];
        for (int day = 0; day < ground.days; day++) {
            int[] quarters = new int[group.size()];
            for (int i = 0; i < quarters.length; i++) {
                quarters[i] = freeQuarters(empty, group.get(i), day);
            }
            free[day] = CircuitRoom.most(ground, empty, group, quarters, day);
        }
        return free;
    }

    private int freeQuarters(Layout empty, int mat, int day) {
        if (empty.common(mat, day) == 0) {
            return 0;
        }
        int quarters = 0;
        for (int place = 0; place < ground.places[mat]; place++) {
            quarters += 4 - Integer.bitCount(empty.occupancy.busy(mat, place, day, day + 1));
        }
        return quarters;
    }

    private int[][] chances(Layout empty, IndexedRequest ask, List<List<Integer>> groups) {
        List<int[]> stays = new ArrayList<>();
        for (int kind = 0; kind < groups.size(); kind++) {
            if (!ground.sees(ask, groups.get(kind).get(0))) {
                continue;
            }
            for (StayOption way : ask.ways()) {
                int last = Math.min(ask.latest(), ground.days - way.days());
                for (int from = ask.earliest(); from <= last; from++) {
                    if (someMatBears(empty, groups.get(kind), way, from)) {
                        stays.add(new int[] {kind, from, from + way.days(), ask.quarters()});
                    }
                }
            }
        }
        return stays.toArray(new int[0][]);
    }

    private static boolean someMatBears(Layout empty, List<Integer> group, StayOption way, int from) {
        return group.stream().anyMatch(mat -> {
            for (int day = from; day < from + way.days(); day++) {
                if (!empty.bears(mat, day, way.degrees())) {
                    return false;
                }
            }
            return true;
        });
    }
}
