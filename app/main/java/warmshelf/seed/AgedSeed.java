package warmshelf.seed;

import warmshelf.crop.Crop;

/** What may be expected of seed that nobody has tested, from its crop, source, age and storage: a band, not a promise. */
public final class AgedSeed {
    private AgedSeed() {}

    /**
     * The expected share of a bought packet of which nobody knows how it was kept.
     *
     * @param ageYears season of sowing minus the year on the packet; 0 or more
     */
    public static GerminationShare.Uncertain of(Crop crop, int ageYears) {
        return of(crop, SeedSource.PACKET, Storage.UNKNOWN, ageYears);
    }

    /** The expected share of any lot; see {@link FreshSeed} and {@link SeedAgeing} for what it rests on. */
    public static GerminationShare.Uncertain of(Crop crop, SeedSource source, Storage storage, double ageYears) {
        if (ageYears < 0) {
            throw new IllegalArgumentException("seed is at least 0 years old, was " + ageYears);
        }
        return new SeedAgeing(crop, storage).aged(FreshSeed.of(crop, source), 0, ageYears);
    }

    /** The same, with what was to be expected when it was fresh. */
    public static SeedExpectation expectation(Crop crop, SeedSource source, Storage storage, double ageYears) {
        return new SeedExpectation(of(crop, source, storage, ageYears), FreshSeed.of(crop, source));
    }
}
