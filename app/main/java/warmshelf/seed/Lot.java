package warmshelf.seed;

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
        int version) {

    /** Years since the seed's year, at least 0, in the year of sowing. */
    public int ageIn(int season) {
        return Math.max(0, season - seedYear);
    }

    /** Whether this person may change the lot: its owner, or a coordinator. */
    public boolean mayBeChangedBy(UUID memberId, boolean coordinator) {
        return coordinator || memberId.equals(ownerId);
    }

    /**
     * What may be expected of the lot: its crop and age first, then its tests. Tests from before the year that precedes the
     * season are left out, because the seed has aged since.
     */
    public GerminationShare.Uncertain share(Crop crop, List<GerminationTest> tests, int season) {
        GerminationShare.Uncertain share = AgedSeed.of(crop, ageIn(season));
        for (GerminationTest test : tests) {
            if (test.testedOn().getYear() >= season - 1) {
                share = share.afterTest(test.germinated(), test.seeds());
            }
        }
        return share;
    }
}
