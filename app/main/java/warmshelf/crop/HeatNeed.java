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

    public static HeatNeed of(Crop crop, TemperatureResponse response) {
        if (isKeptOffMats(crop)) {
            return NO_MAT;
        }
        boolean cool = !crop.hardiness().frostKills() || crop.treatment().has(SeedTrait.Kind.COMES_UP_AT);
        return cool && isWarmEnough(response) ? ROOM_IS_ENOUGH : MAT;
    }

    /** Whether its seed bears no mat. */
    public static boolean isKeptOffMats(Crop crop) {
        SeedTreatment treatment = crop.treatment();
        return treatment.has(SeedTrait.Kind.SLEEPS_ABOVE) || treatment.has(SeedTrait.Kind.FEWER_ABOVE);
    }

    private static boolean isWarmEnough(TemperatureResponse response) {
        Optional<Emergence> room = response.at(ROOM_C);
        Optional<Emergence> best = response.at(response.bestC());
        if (room.isEmpty() || best.isEmpty()) {
            return false;
        }
        boolean soon = room.get().days() - best.get().days() <= FEW_DAYS;
        double here = room.get().normalShare().orElse(1);
        double there = best.get().normalShare().orElse(here);
        return soon && here >= GOOD_SHARE * there;
    }
}
