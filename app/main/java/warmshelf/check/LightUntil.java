package warmshelf.check;

import java.time.LocalDate;
import java.util.function.Supplier;
import warmshelf.allocation.LitPlace;
import warmshelf.allocation.SpaceStore;
import warmshelf.sowing.History;
import warmshelf.timeline.Step;
import warmshelf.timeline.TimelineStep;

/** How long a tray keeps its place under the light: until it begins to harden off, or the next one needs the place. */
final class LightUntil {
    static final int DAYS_AHEAD = 120;
    /** How long a place is held where the timeline says nothing of hardening off. */
    private static final int USUAL_DAYS = 42;

    private final RoundReader reader;
    private final SpaceStore space;

    LightUntil(RoundReader reader, SpaceStore space) {
        this.reader = reader;
        this.space = space;
    }

    /**
     * The day until which a tick's place is wanted; where it names none, the day itself.
     *
     * @param history asked for only where a place is named: most ticks need none of it
     */
    LocalDate of(Supplier<History> history, Tick tick, LocalDate today) {
        Tick.LightPlace light = tick.lightPlace();
        if (light == null) {
            return today;
        }
        LocalDate wanted = reader.subject(history.get(), today)
                .step(Step.HARDEN_OFF)
                .map(TimelineStep::ideal)
                .filter(day -> day.isAfter(today))
                .orElse(today.plusDays(USUAL_DAYS));
        LocalDate free = space
                .allLitPlaces(today, today.plusDays(DAYS_AHEAD), light.slot().quarters())
                .stream()
                .filter(place ->
                        place.placeId().equals(light.placeId()) && place.slot().equals(light.slot()))
                .map(LitPlace::freeUntil)
                .findFirst()
                .orElse(wanted);
        return free.isBefore(wanted) ? free : wanted;
    }
}
