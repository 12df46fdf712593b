package warmshelf.sowing;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.Method;
import warmshelf.timeline.SeasonPart;

/**
 * What decides a sowing's dates: whose garden, which crop, how, and at what risk.
 *
 * @param crop with the days of the variety, where they are known
 * @param lotId the lot of which it is sown; null: a packet that is not in the box yet
 * @param season the one that the group works towards when it is asked for
 * @param part for which part of that season
 * @param risk the chance of a later frost the member accepts, 0..1
 * @param underCoverOn the day the plants go out under cover; null: outdoors, by frost
 * @param soaks whether the seed is soaked, where a trial decided that; null: as is advised
 * @param seedsToACell how many are sown into a cell, or a pot of its own
 */
public record Asking(
        Sowing.Grower grower,
        Crop crop,
        @Nullable UUID lotId,
        Method method,
        boolean warm,
        int season,
        SeasonPart part,
        double risk,
        @Nullable LocalDate underCoverOn,
        @Nullable Boolean soaks,
        int seedsToACell) {

    /** One seed to a cell, soaked as is advised. */
    public Asking(
            Sowing.Grower grower,
            Crop crop,
            @Nullable UUID lotId,
            Method method,
            boolean warm,
            int season,
            SeasonPart part,
            double risk,
            @Nullable LocalDate underCoverOn) {
        this(grower, crop, lotId, method, warm, season, part, risk, underCoverOn, null, 1);
    }

    /** The same for another part of the season. */
    Asking in(SeasonPart other) {
        return new Asking(grower, crop, lotId, method, warm, season, other, risk, underCoverOn, soaks, seedsToACell);
    }

    /** What decided the dates of a sowing when it was asked for. */
    public static Asking of(Sowing sowing) {
        return new Asking(
                sowing.grower(),
                sowing.crop(),
                sowing.lotId(),
                sowing.method(),
                sowing.warm(),
                sowing.season(),
                sowing.part(),
                sowing.risk(),
                sowing.underCoverOn(),
                sowing.trial() == null ? null : sowing.trial().soaked(),
                sowing.seedsPerCell());
    }
}
