package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import warmshelf.allocation.Band;
import warmshelf.shelf.Circuit;

/** Questions made from a starting number, the same on every machine. */
public final class PlanInstances {
    public static final LocalDate START = LocalDate.of(2027, 2, 1);
    private static final int SEASON = 120;
    private static final int RUSH = 6 * 7;

    /** Bands and days at 24 and 27 °C as of peppers, tomatoes (twice as many of both), eggplant, onions and basil. */
    private static final int[][] CROPS = {
        {24, 30, 14, 10},
        {24, 30, 14, 10},
        {21, 28, 9, 7},
        {21, 28, 9, 7},
        {24, 31, 13, 9},
        {18, 25, 8, 8},
        {20, 27, 8, 6}
    };

    private PlanInstances() {}

    /**
     * A season with more wanted than fits: requests for {@code share} of the room that the mats have in the six weeks in
     * which most want to begin. Members ask for three things each.
     */
    public static PlanQuestion crowded(int requests, double share, long startingNumber) {
        Random random = new Random(startingNumber);
        List<Request> asked = new ArrayList<>();
        long quarterDays = 0;
        for (int i = 0; i < requests; i++) {
            Request request = request(random, i);
            asked.add(request);
            quarterDays += (long) request.quarters()
                    * request.daysAt(request.band().highC()).orElseThrow();
        }
        int places = (int) Math.max(4, Math.round(quarterDays / share / 4 / (RUSH + 14)));
        Collections.shuffle(asked, random);
        return question(SEASON, mats(places, random), asked);
    }

    private static List<PlannedMat> mats(int places, Random random) {
        List<PlannedMat> mats = new ArrayList<>();
        for (int left = places; left > 0; left -= 4) {
            int low = 16 + random.nextInt(4);
            mats.add(new PlannedMat(
                    "m" + (mats.size() + 1),
                    Math.min(4, left),
                    new Band(low, 32),
                    107,
                    "c" + (mats.size() / 12),
                    List.of()));
        }
        return mats;
    }

    private static Request request(Random random, int number) {
        int[] crop = CROPS[random.nextInt(CROPS.length)];
        int quarters = new int[] {4, 4, 4, 2, 1}[random.nextInt(5)];
        LocalDate ideal = START.plusDays(14 + random.nextInt(RUSH));
        SortedMap<Integer, Integer> daysAtC = new TreeMap<>();
        for (int celsius = crop[0]; celsius <= crop[1]; celsius++) {
            int days = (int) Math.round(crop[2] + (crop[3] - crop[2]) * Math.min(1, Math.max(0, (celsius - 24) / 3.0)));
            daysAtC.put(celsius, days + (quarters == 1 ? 0 : 3));
        }
        return new Request(
                "r" + (number + 1),
                "member" + number / 3,
                1 + number % 3,
                quarters,
                null,
                daysAtC,
                ideal.minusDays(3 + random.nextInt(8)),
                ideal,
                ideal.plusDays(3 + random.nextInt(10)),
                new Band(crop[0], crop[1]),
                null);
    }

    /** The same with every request as its own member's first choice: then fairness asks for nothing but number. */
    public static PlanQuestion alike(PlanQuestion question) {
        List<Request> asked = question.requests().stream()
                .map(request -> new Request(
                        request.id(),
                        request.id(),
                        1,
                        request.quarters(),
                        request.days(),
                        request.daysAtC(),
                        request.earliest(),
                        request.ideal(),
                        request.latest(),
                        request.band(),
                        request.light()))
                .toList();
        return question(question.days().length(), question.mats(), asked);
    }

    /** Mats cut into stays without a gap, so that all of them can be placed: the cutting is forgotten. */
    public static PlanQuestion planted(int mats, int days, long startingNumber) {
        Random random = new Random(startingNumber);
        List<Request> asked = new ArrayList<>();
        List<PlannedMat> warm = new ArrayList<>();
        for (int mat = 0; mat < mats; mat++) {
            warm.add(new PlannedMat("m" + (mat + 1), 4, new Band(18, 32), 107, null, List.of()));
            int[] degrees = new int[days];
            for (int day = 0; day < days; day++) {
                degrees[day] = day % 28 == 0 ? 21 + random.nextInt(7) : degrees[day - 1];
            }
            for (int place = 0; place < 4; place++) {
                cut(asked, degrees, 4, 0, days, random);
            }
        }
        Collections.shuffle(asked, random);
        return question(days, warm, asked);
    }

    private static void cut(List<Request> asked, int[] degrees, int quarters, int from, int to, Random random) {
        int day = from;
        while (day < to) {
            int length = Math.min(to - day, 6 + random.nextInt(13));
            if (to - day - length < 6) {
                length = to - day;
            }
            if (quarters > 1 && random.nextInt(3) == 0) {
                cut(asked, degrees, quarters / 2, day, day + length, random);
                cut(asked, degrees, quarters / 2, day, day + length, random);
            } else {
                asked.add(planted(asked.size(), degrees, quarters, day, day + length, random));
            }
            day += length;
        }
    }

    private static Request planted(int number, int[] degrees, int quarters, int from, int to, Random random) {
        int low = 40;
        int high = 0;
        for (int day = from; day < to; day++) {
            low = Math.min(low, degrees[day]);
            high = Math.max(high, degrees[day]);
        }
        LocalDate ideal = START.plusDays(from);
        return new Request(
                "r" + (number + 1),
                "member" + number / 3,
                1 + number % 3,
                quarters,
                to - from,
                new TreeMap<>(),
                ideal.minusDays(random.nextInt(6)),
                ideal,
                ideal.plusDays(random.nextInt(6)),
                new Band(Math.max(16, low - random.nextInt(3)), Math.min(32, high + random.nextInt(3))),
                null);
    }

    static PlanQuestion question(int days, List<PlannedMat> mats, List<Request> asked) {
        List<CircuitFeed> circuits = mats.stream()
                .map(PlannedMat::circuit)
                .filter(circuit -> circuit != null)
                .distinct()
                .map(circuit -> new CircuitFeed(circuit, new Circuit(15, 120)))
                .toList();
        return new PlanQuestion(new DayRange(START, START.plusDays(days)), circuits, mats, null, List.of(), asked);
    }
}
