package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

/** What a germination test can say, and what it cannot: a small one leaves much open. */
public final class TestWords {
    private static final double SURE = 0.95;
    private static final int[] LARGER = {50, 200};

    private TestWords() {}

    /**
     * For example '8 of 10: between about 5 and 9½ in ten of this seed come up. The same share of 50 seeds would narrow it to 7
     * to 9.' The ends are those of the interval of Jeffreys that holds the true share nineteen times in twenty.
     */
    static String of(GerminationTest test) {
        return of(test.germinated(), test.seeds());
    }

    /** The same for any test of so many seeds, of which so many came up. */
    public static String of(int germinated, int seeds) {
        String says = SAY.testSays(germinated, seeds, inTen(germinated, seeds, " and "));
        for (int more : LARGER) {
            if (seeds < more) {
                int share = (int) Math.round((double) germinated * more / seeds);
                String narrower = SAY.testNarrower(more, inTen(share, more, " to "));
                return says + " " + narrower;
            }
        }
        return says;
    }

    private static String inTen(int germinated, int seeds, String between) {
        ShareInterval range = GerminationShare.tested(germinated, seeds).interval(SURE);
        return halves(range.low()) + between + halves(range.high());
    }

    /** A share as so many in ten, to the nearest half. */
    private static String halves(double share) {
        long halves = Math.round(20 * share);
        if (halves == 1) {
            return "½";
        }
        return halves / 2 + (halves % 2 == 1 ? "½" : "");
    }
}
