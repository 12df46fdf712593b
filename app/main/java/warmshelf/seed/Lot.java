package warmshelf.seed;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;

/**
 * A packet or jar of seed.
 *
 * @param seedYear the year the packet was packed for, or the seed was saved
 * @param seedsLeft null: nobody has counted
 * @param ownerId null: the group's own seed
 * @param ownerName the owner's name; null for the group's own seed
 * @param treated whether the seed carries a pesticide
 * @param source where the seed came from
 * @param storage how it is kept
 * @param offered how many seeds of it anybody may take
 * @param version grows with every change of the lot's own figures
 */
public record Lot(
        UUID id,
        String cropId,
        String variety,
        int seedYear,
        @Nullable Integer seedsLeft,
        @Nullable UUID ownerId,
        @Nullable String ownerName,
        boolean treated,
        String note,
        SeedSource source,
        Storage storage,
        int offered,
        int version) {

    private static final int FIRST_OF_MARCH = 60;

    /** Years since the seed's year, at least 0, in the year of sowing. */
    public int ageIn(int season) {
        return Math.max(0, season - seedYear);
    }

    /** Whether this person may change the lot: its owner, or a coordinator. */
    public boolean mayBeChangedBy(UUID memberId, boolean coordinator) {
        return coordinator || memberId.equals(ownerId);
    }

    /**
     * What may be expected of the lot in the season of sowing: its crop and source first, then one test after the other, aged
     * from each to the next as it is kept. So an old test still tells something, with more doubt the older it is. What came of
     * sowings of this lot counts like a test.
     */
    public GerminationShare.Uncertain share(Crop crop, List<GerminationTest> tests, int season) {
        return aged(crop, tests, season).share();
    }

    /** The same, with what was known of it when it was last tested or sown, or was fresh. */
    public SeedExpectation expectation(Crop crop, List<GerminationTest> tests, int season) {
        Aged aged = aged(crop, tests, season);
        return new SeedExpectation(aged.share(), aged.lastKnown());
    }

    private record Aged(GerminationShare.Uncertain share, GerminationShare.Uncertain lastKnown) {}

    private Aged aged(Crop crop, List<GerminationTest> tests, int season) {
        SeedAgeing ageing = new SeedAgeing(crop, storage);
        GerminationShare.Uncertain share = FreshSeed.of(crop, source);
        double age = 0;
        List<GerminationTest> oldestFirst = tests.stream()
                .sorted(Comparator.comparing(GerminationTest::testedOn))
                .toList();
        for (GerminationTest test : oldestFirst) {
            double then = Math.max(age, ageOn(test.testedOn()));
            share = ageing.aged(share, age, then).afterTest(test.germinated(), test.seeds());
            age = then;
        }
        return new Aged(ageing.aged(share, age, Math.max(age, ageIn(season))), share);
    }

    /** Seed's year is counted from the first of March, when most of it is sown. */
    private double ageOn(LocalDate day) {
        return day.getYear() - seedYear + (day.getDayOfYear() - FIRST_OF_MARCH) / 365.0;
    }
}
