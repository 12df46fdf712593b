package warmshelf.seed;

/**
 * What may be expected of seed today, and what was known before it aged.
 *
 * @param share that may be expected to come up
 * @param unaged what was known when the seed was last tested or sown, or was fresh: the same where it has not aged since
 */
public record SeedExpectation(GerminationShare share, GerminationShare unaged) {
    /** Of seed of which the share is known today. */
    public static SeedExpectation known(GerminationShare share) {
        return new SeedExpectation(share, share);
    }
}
