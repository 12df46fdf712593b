package warmshelf.seed;

import java.time.LocalDate;

/** A germination test of a lot: so many of so many seeds came up. */
public record GerminationTest(LocalDate testedOn, int germinated, int seeds) {
    public static final int MOST_SEEDS = 10_000;

    public GerminationTest {
        if (germinated < 0 || seeds < 1 || germinated > seeds) {
            throw new IllegalArgumentException(germinated + " of " + seeds + " cannot have come up");
        }
    }
}
