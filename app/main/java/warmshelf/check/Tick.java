package warmshelf.check;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;

/**
 * One tick of the round, as the phone sends it.
 *
 * @param id made by the phone or the page; the same id sent twice is kept once
 * @param finished the bag is done with
 * @param lightPlace where the tray goes under a light; null: home, to the place that is booked for it, or not asked
 * @param supersedes the entry this one corrects
 * @param goesHome the grower takes it home when it leaves the heat
 */
public record Tick(
        UUID id,
        EntryStep step,
        LocalDate seenOn,
        @Nullable Integer sprouted,
        @Nullable Integer moved,
        @Nullable Integer lost,
        boolean finished,
        @Nullable Problem problem,
        String note,
        @Nullable LightPlace lightPlace,
        @Nullable UUID supersedes,
        boolean goesHome) {

    public Tick(
            UUID id,
            EntryStep step,
            LocalDate seenOn,
            @Nullable Integer sprouted,
            @Nullable Integer moved,
            @Nullable Integer lost,
            boolean finished,
            @Nullable Problem problem,
            String note,
            @Nullable LightPlace lightPlace,
            @Nullable UUID supersedes) {
        this(id, step, seenOn, sprouted, moved, lost, finished, problem, note, lightPlace, supersedes, false);
    }

    /** Quarters of a place under a light. */
    public record LightPlace(UUID placeId, Slot slot) {}
}
