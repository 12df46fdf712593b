package warmshelf.crop;

import java.util.Optional;

/** Whether a crop's seed needs a heat mat to come up well. */
public enum HeatNeed {
    /** It is kept off mats: above a lived-in room's warmth it falls asleep, or less of it comes up. */
    NO_MAT,
    /** A lived-in room is warm enough for a crop of the cool season, or for seed that comes up cool. */
    ROOM_IS_ENOUGH,
    MAT;

    /** What a sowing without bottom heat is reckoned at, in degrees Celsius: a lived-in room, common practice. */
    public static final int ROOM_C = 20;

    /** So many days sooner at its best a mat is still not worth it to a crop of the cool season: our judgement. */
    private static final double FEW_DAYS = 3;

    private static final double GOOD_SHARE = 0.9;

    /**
     * Where a mat stands for crops of the cool season, in whole degrees Celsius: 65 to 75 °F, at which Iowa State University
     * Extension (2017, Seed Germination Guide) has cabbage, kale, onion and parsley come up.
     */
    private static final int COOL_MAT_LOW_C = 18;

    private static final int COOL_MAT_HIGH_C = 23;

    public static HeatNeed of(Crop crop, TemperatureResponse response) {
        if (isKeptOffMats(crop)) {
            return NO_MAT;
        }
        boolean cool = !crop.hardiness().frostKills() || crop.treatment().has(SeedTrait.Kind.COMES_UP_AT);
        return cool && isGood(response, ROOM_C) ? ROOM_IS_ENOUGH : MAT;
    }

    /**
     * The temperatures at which a crop's seed is laid on a mat: where it comes up best, but crops of the cool season no warmer than
     * they need, unless the group itself says what suits a crop of its own.
     */
    public static CelsiusRange onMat(Crop crop, TemperatureResponse response) {
        if (response.isSaidByTheGroup() || of(crop, response) != ROOM_IS_ENOUGH) {
            return response.comfortable();
        }
        int low = ROOM_C;
        int high = ROOM_C;
        while (low > COOL_MAT_LOW_C && isGood(response, low - 1)) {
            low--;
        }
        while (high < COOL_MAT_HIGH_C && isGood(response, high + 1)) {
            high++;
        }
        return new CelsiusRange(low, high);
    }

    /** Whether its seed bears no mat. */
    public static boolean isKeptOffMats(Crop crop) {
        SeedTreatment treatment = crop.treatment();
        return treatment.has(SeedTrait.Kind.SLEEPS_ABOVE) || treatment.has(SeedTrait.Kind.FEWER_ABOVE);
    }

    private static boolean isGood(TemperatureResponse response, double celsius) {
        Optional<Emergence> there = response.at(celsius);
        Optional<Emergence> best = response.at(response.bestC());
        if (there.isEmpty() || best.isEmpty()) {
            return false;
        }
        boolean soon = there.get().days() - best.get().days() <= FEW_DAYS;
        double share = there.get().normalShare().orElse(1);
        double bestShare = best.get().normalShare().orElse(share);
        return soon && share >= GOOD_SHARE * bestShare;
    }
}
