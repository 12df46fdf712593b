package warmshelf.sowing;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropHazard;
import warmshelf.crop.Method;
import warmshelf.seed.Lot;
import warmshelf.timeline.SeasonPart;

/**
 * One member's intent for one season: a lot, the plants wanted and how; then what happened is in its entries.
 *
 * @param season the one that the group worked towards when it was asked for, named by the year in which the group plants out.
 *     It stays when the group moves on, and no date of the sowing's own changes it: what goes out under cover in December or
 *     January belongs to the season for which it was asked
 * @param part for which part of that season: planted out from spring on, for autumn, or to stand over winter
 * @param seeds how many are sown
 * @param risk the chance of a later frost the member accepts, 0..1
 * @param underCoverOn the day the plants go out under cover; null: outdoors, by the member's frost dates
 * @param trial what it is of a side-by-side trial; null: of none
 */
public record Sowing(
        UUID id,
        Grower grower,
        int season,
        SeasonPart part,
        Crop crop,
        UUID lotId,
        String variety,
        boolean treatedSeed,
        int plantsWanted,
        Method method,
        boolean warm,
        Container container,
        int seeds,
        int seedsPerCell,
        int cells,
        double risk,
        @Nullable LocalDate underCoverOn,
        SowingStage stage,
        String note,
        int version,
        @Nullable TrialPart trial) {

    /**
     * Whose sowing it is, and where their garden lies.
     *
     * @param name what others call them
     */
    public record Grower(UUID memberId, String name, String country, String postcode) {}

    /** What can hurt whoever handles it. */
    public Set<CropHazard> hazards() {
        return crop.hazardsOf(treatedSeed);
    }

    /** Whether it belongs to a season. */
    public boolean isOf(int year) {
        return season == year;
    }

    /** Whether it was asked for in a season that the group has left behind. */
    public boolean isBefore(int year) {
        return season < year;
    }

    /** What it takes under a light: what was sown in a bag lies in half a tray of cells from then on. */
    public int quartersUnderLight() {
        return Math.max(2, container.quarters());
    }

    /** The same with so many seeds in so many cells. */
    Sowing with(int seeds, int cells) {
        return with(lotId, variety, treatedSeed, seeds, cells);
    }

    /** The same sown from another lot of its crop, with so many seeds in so many cells. */
    Sowing sownFrom(Lot lot, int seeds, int cells) {
        return with(lot.id(), lot.variety(), lot.treated(), seeds, cells);
    }

    private Sowing with(UUID lotId, String variety, boolean treatedSeed, int seeds, int cells) {
        return new Sowing(
                id,
                grower,
                season,
                part,
                crop,
                lotId,
                variety,
                treatedSeed,
                plantsWanted,
                method,
                warm,
                container,
                seeds,
                seedsPerCell,
                cells,
                risk,
                underCoverOn,
                stage,
                note,
                version,
                trial);
    }

    /** For example 'Pepper, sweet and mild hot · Lantern Row', with ' · trial 3 way B' after it where it is of a trial. */
    public String title() {
        String title = variety.isEmpty() ? crop.name() : crop.name() + " · " + variety;
        return trial == null ? title : title + " · " + trial.words();
    }
}
