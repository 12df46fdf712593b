package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.LitPlace;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceStore;
import warmshelf.decision.Reach;
import warmshelf.sowing.Asking;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.words.DayWords;

/** Finds a place under a light for the day on which something comes off the heat, so that it has somewhere to go. */
public final class LightAfterHeat {
    private final SowingPlanner planner;
    private final SpaceStore space;

    public LightAfterHeat(SowingPlanner planner, SpaceStore space) {
        this.planner = planner;
        this.space = space;
    }

    /**
     * What can be booked.
     *
     * @param spot null: nothing, because nothing is asked or nothing is free
     * @param words a sentence for whoever places it; empty when nothing is asked
     */
    public record Found(@Nullable PlaceAndDays spot, String words) {}

    /**
     * A place from the day on which the stay on the mat ends until hardening off begins.
     *
     * @param reach of whoever books it: no place is taken on which they may not decide
     */
    public Found after(Sowing sowing, SpaceRequest request, LocalDate offHeat, LocalDate today, Reach reach) {
        if (!request.underLight()) {
            return new Found(null, "");
        }
        LocalDate to = offHeat.plusDays(planner.lightDays(Asking.of(sowing), today));
        Optional<LitPlace> place = space.litPlaceFor(offHeat, to, sowing.quartersUnderLight(), reach);
        return place.map(found -> new Found(
                        new PlaceAndDays(found.placeId(), found.slot(), offHeat, to),
                        SAY.lightAfterwards(
                                DayWords.day(offHeat),
                                found.where(),
                                found.slot().words())))
                .orElseGet(() -> new Found(null, SAY.noLightFree(DayWords.span(offHeat, to))));
    }
}
