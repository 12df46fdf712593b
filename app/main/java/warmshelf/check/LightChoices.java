package warmshelf.check;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import warmshelf.allocation.LitPlace;
import warmshelf.allocation.RackHolds;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.Stay;

/**
 * Where trays of a round could go under a light. The first few places are the same for all; what lies on a held rack has its own.
 *
 * @param half for half a tray
 * @param whole for a whole one
 * @param all every free place for half a tray, quarantine shelves included, and {@code wholeOfAll} for a whole one; read only
 *     where a rack is held
 */
public record LightChoices(
        List<LitPlace> half, List<LitPlace> whole, List<LitPlace> all, List<LitPlace> wholeOfAll, RackHolds holds) {
    private static final int DAYS_AHEAD = 120;
    private static final int FEW = 8;
    private static final int HALF = 2;
    private static final int WHOLE = 4;

    /** None, where nothing asks for a light. */
    static final LightChoices NONE = new LightChoices(List.of(), List.of(), List.of(), List.of(), RackHolds.NONE);

    static LightChoices on(LocalDate day, SpaceStore space) {
        RackHolds holds = space.holds();
        boolean held = !holds.byRack().isEmpty();
        LocalDate to = day.plusDays(DAYS_AHEAD);
        return new LightChoices(
                few(space.litPlaces(day, to, HALF)),
                few(space.litPlaces(day, to, WHOLE)),
                held ? space.allLitPlaces(day, to, HALF) : List.of(),
                held ? space.allLitPlaces(day, to, WHOLE) : List.of(),
                holds);
    }

    /** Every tray's choice repeats them, and the sowing's own entry form offers all. */
    private static List<LitPlace> few(List<LitPlace> places) {
        return places.stream().limit(FEW).toList();
    }

    /** Where half of a tray, or what was moved out of a bag, could go. */
    public List<LitPlace> halfFor(Round.Item item) {
        return allowed(item, half, all);
    }

    /** Where a sowing could go in its own container. */
    public List<LitPlace> placesFor(Round.Item item) {
        boolean isWhole = item.subject().sowing().container().quarters() == WHOLE;
        return isWhole ? allowed(item, whole, wholeOfAll) : halfFor(item);
    }

    private List<LitPlace> allowed(Round.Item item, List<LitPlace> usual, List<LitPlace> every) {
        Stay stay = item.subject().stay();
        if (item.hold() == null || stay == null) {
            return usual;
        }
        UUID lies = stay.placeId();
        return few(every.stream()
                .filter(place -> holds.inTheWay(lies, place.placeId()).isEmpty())
                .toList());
    }
}
