package warmshelf.seed;

import java.util.Optional;

/**
 * How many seeds to sow of seed that may have aged.
 *
 * <p>Doubt about age asks for more seed, but only so far: beyond {@value #MOST_TIMES} times what the same seed would have needed
 * before it aged, ten seeds on damp paper tell more than any number sown.
 *
 * @param sow what to sow; where a test is due, what to sow meanwhile, with the chance it has
 * @param testFirst whether more than that would be needed, so that a test is the answer
 */
public record SeedNeed(SeedCount sow, boolean testFirst) {
    public static final int MOST_TIMES = 4;

    /**
     * The need; empty where so little comes up, as a test or a sowing showed, that no number of seeds would do.
     *
     * @param question its share is not used: the expectation's are
     */
    public static Optional<SeedNeed> of(SeedQuestion question, SeedExpectation expectation) {
        return of(question, expectation, Integer.MAX_VALUE);
    }

    /**
     * The same where only so many cells can be filled meanwhile: never fewer than the seed needed before it aged.
     *
     * @param room cells that there are, or that the seeds left fill
     */
    public static Optional<SeedNeed> of(SeedQuestion question, SeedExpectation expectation, int room) {
        Optional<SeedCount> unaged = SeedCount.of(question.with(expectation.unaged()));
        SeedQuestion now = question.with(expectation.share());
        return unaged.flatMap(before -> {
            int most = MOST_TIMES * before.cells();
            if (SeedCount.inCells(now, most).probability() >= now.confidence()) {
                return SeedCount.of(now).map(count -> new SeedNeed(count, false));
            }
            int meanwhile = Math.max(before.cells(), Math.min(most, room));
            return Optional.of(new SeedNeed(SeedCount.inCells(now, meanwhile), true));
        });
    }
}
