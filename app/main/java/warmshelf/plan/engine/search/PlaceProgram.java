package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.solver.IntegerProgram;
import warmshelf.plan.engine.solver.IntegerProgram.Sum;

/**
 * A few mats of a plan laid anew: all that lies on them, and what waits, may lie there at any place and day at which it can,
 * while their set-points and all other mats stay as they are. Each place is a room of four quarters; a stay is a stretch of
 * days. The aims are members by rank of choice and then number; days of shift are left to {@link StartDayPolish}.
 */
final class PlaceProgram {
    /** Ranks above this weigh alike, so that the weights stay whole numbers of moderate size. */
    private static final int MOST_RANKS = 3;

    private final Layout known;
    private final Layout rest;
    private final IndexedQuestion ground;
    private final List<IndexedRequest> asks = new ArrayList<>();
    private final List<Choice> choices = new ArrayList<>();
    private final IntegerProgram program = new IntegerProgram();
    private final Map<Integer, Sum> pairs = new LinkedHashMap<>();
    private final Sum all = new Sum();

    /** A number that is 1 when a request lies at a place in a way, from the day in another number. */
    private record Choice(int present, int first, IndexedRequest ask, StayOption way, int mat, int place) {}

    /** {@code waiting}: requests that lie nowhere and may be laid on these mats. */
    PlaceProgram(Layout known, int[] mats, List<IndexedRequest> waiting) {
        this.known = known;
        ground = known.ground;
        rest = new Layout(ground);
        rest.restore(known.snapshot());
        for (int mat : mats) {
            Layout.StayList stays = known.onMat(mat);
            for (int i = 0; i < stays.size(); i++) {
                asks.add(ground.asks.get(stays.get(i)));
            }
        }
        asks.sort(Comparator.comparingInt(IndexedRequest::index));
        asks.forEach(rest::lift);
        asks.addAll(waiting);
        build(mats);
    }

    IntegerProgram program() {
        return program;
    }

    private void build(int[] mats) {
        Map<IndexedRequest, Integer> firsts = new LinkedHashMap<>();
        Map<IndexedRequest, Sum> once = new LinkedHashMap<>();
        for (IndexedRequest ask : asks) {
            TrialPlacement at = known.spot(ask.index());
            firsts.put(ask, program.number(ask.latest(), 0, at == null ? Math.max(0, ask.ideal()) : at.from()));
            once.put(ask, new Sum());
        }
        int room = 0;
        for (int mat : mats) {
            long[] warmth = KeptWarmth.of(known, mat);
            for (int place = 0; place < ground.places[mat]; place++) {
                room += 4;
                place(mat, place, warmth, firsts, once);
            }
        }
        once.forEach((ask, sum) -> once(ask, sum, firsts.getOrDefault(ask, 0)));
        pairs.forEach(this::pair);
        program.room(room, all);
    }

    private void place(
            int mat, int place, long[] warmth, Map<IndexedRequest, Integer> firsts, Map<IndexedRequest, Sum> once) {
        Sum sizes = new Sum();
        firsts.forEach((ask, first) -> {
            if (!ground.sees(ask, mat)) {
                return;
            }
            TrialPlacement at = known.spot(ask.index());
            for (StayOption way : ask.ways()) {
                List<Integer> days = days(ask, way, mat, place, warmth);
                if (!days.isEmpty()) {
                    boolean hint =
                            at != null && at.mat() == mat && at.place() == place && at.to() - at.from() == way.days();
                    int present = program.number(1, 0, hint ? 1 : 0);
                    choices.add(new Choice(present, first, ask, way, mat, place));
                    sizes.add(program.stretch(first, present, way.days(), days), ask.quarters());
                    once.getOrDefault(ask, new Sum()).add(present, 1);
                }
            }
        });
        program.room(4, sizes);
    }

    /** The days on which a request can begin in a way at a place, were only the fixed stays and the other mats there. */
    private List<Integer> days(IndexedRequest ask, StayOption way, int mat, int place, long[] warmth) {
        List<Integer> days = new ArrayList<>();
        int last = Math.min(ask.latest(), ground.days - way.days());
        int lastBad = ask.earliest() - 1;
        for (int day = ask.earliest(); day < last + way.days(); day++) {
            if (!bears(way, mat, place, day, warmth)) {
                lastBad = day;
            }
            int from = day - way.days() + 1;
            if (from > lastBad && from >= ask.earliest()) {
                days.add(from);
            }
        }
        return days;
    }

    /** Where current is short, the mat must be warm in the known plan too, so that two mats never count on the same. */
    private boolean bears(StayOption way, int mat, int place, int day, long[] warmth) {
        return (way.degrees() & warmth[day]) != 0
                && rest.bears(mat, day, warmth[day])
                && rest.occupancy.busy(mat, place, day, day + 1) == 0
                && (ground.circuit[mat] < 0 || known.isWarm(mat, day));
    }

    private void once(IndexedRequest ask, Sum sum, int first) {
        int placed = program.number(1, 1, known.spot(ask.index()) == null ? 0 : 1);
        program.exactly(0, sum.add(placed, -1));
        program.atMost(-ask.earliest(), new Sum().add(first, -1));
        all.add(program.stretch(first, placed, ask.ways()[0].days(), window(ask)), ask.quarters());
        if (rest.isFirstOfPair(ask)) {
            pairs.computeIfAbsent(ask.member(), none -> new Sum()).add(placed, 1);
        }
    }

    private static List<Integer> window(IndexedRequest ask) {
        List<Integer> days = new ArrayList<>();
        for (int day = ask.earliest(); day <= ask.latest(); day++) {
            days.add(day);
        }
        return days;
    }

    private void pair(int member, Sum placed) {
        int rank = asks.stream()
                .filter(ask -> ask.member() == member)
                .mapToInt(IndexedRequest::rank)
                .findFirst()
                .orElse(0);
        long hint = asks.stream()
                .filter(ask -> ask.member() == member && known.spot(ask.index()) != null)
                .count();
        int weight = (int) Math.pow(asks.size() + 1, Math.min(MOST_RANKS, ground.ranks - rank));
        int some = program.number(1, weight, hint > 0 ? 1 : 0);
        Sum sum = new Sum().add(some, 1);
        sum.addAll(placed, -1);
        program.atMost(0, sum);
    }

    /** The plan that the solver's numbers tell, as far as the exact rules allow, with what is left laid wherever it fits. */
    Layout lay(int[] values) {
        Layout plan = new Layout(ground);
        plan.restore(rest.snapshot());
        PlacementFinder finder = new PlacementFinder(plan, new Random(0));
        List<Choice> chosen = new ArrayList<>(choices.stream()
                .filter(choice -> choice.present() < values.length && values[choice.present()] == 1)
                .toList());
        chosen.sort(Comparator.comparingInt((Choice choice) -> -choice.ask().quarters())
                .thenComparingInt(choice -> values[choice.first()]));
        for (Choice choice : chosen) {
            put(
                    plan,
                    choice.ask(),
                    finder.find(
                            choice.ask().only(choice.way(), values[choice.first()]),
                            PlacementFinder.Taste.NEAR,
                            choice.mat(),
                            choice.place()));
        }
        for (IndexedRequest ask : asks) {
            if (plan.spot(ask.index()) == null) {
                put(plan, ask, finder.find(ask, PlacementFinder.Taste.NEAR));
            }
        }
        return plan;
    }

    private static void put(Layout plan, IndexedRequest ask, @Nullable TrialPlacement spot) {
        if (spot != null) {
            plan.put(ask, spot);
        }
    }
}
