package warmshelf.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.shelf.Lamp;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;

/**
 * A sowing as the round sees it on a day.
 *
 * @param stay where it lies, or is next to lie; null: nowhere of the group's
 * @param lamp the lights over where it lies
 * @param timeline re-dated from what was seen; null where no frost dates are known
 * @param nearlyAllBy days after sowing by which all but a twentieth of the seed is expected to show; empty where unknown
 * @param moreToCome the chance, 0 to 1, that more will come of seed that is late; empty while it is not late, or where unknown
 */
public record Subject(
        Sowing sowing,
        Progress progress,
        @Nullable Stay stay,
        Lamp lamp,
        @Nullable Timeline timeline,
        OptionalInt nearlyAllBy,
        OptionalDouble moreToCome) {

    /** A sowing of whose lights nothing is known. */
    public Subject(
            Sowing sowing,
            Progress progress,
            @Nullable Stay stay,
            @Nullable Timeline timeline,
            OptionalInt nearlyAllBy,
            OptionalDouble moreToCome) {
        this(sowing, progress, stay, Lamp.NOT_KNOWN, timeline, nearlyAllBy, moreToCome);
    }

    /** The same at a place with those addresses around it. */
    Subject among(Map<UUID, PlaceAddress> addresses) {
        PlaceAddress address = stay == null || stay.isOnMat() ? null : addresses.get(stay.placeId());
        return address == null
                ? this
                : new Subject(sowing, progress, stay, address.lamp(), timeline, nearlyAllBy, moreToCome);
    }

    public Optional<TimelineStep> step(Step step) {
        return timeline == null ? Optional.empty() : timeline.step(step);
    }

    /** Whether giving it up is offered: none of it shows, and by now nearly all should. */
    public boolean mayBeGivenUp() {
        return moreToCome.isPresent() && progress.sprouted() == 0 && progress.up() == 0;
    }

    /** How many seedlings there are beyond the plants that its grower wanted; 0 where nobody counted. */
    public int beyondWanted() {
        return progress.beyond(sowing.plantsWanted());
    }

    /** Days since it was sown; the day of sowing is day 0. Before sowing 0 too. */
    public int dayCount(LocalDate today) {
        LocalDate sown = progress.seen().sown();
        return sown == null ? 0 : (int) Math.max(0, ChronoUnit.DAYS.between(sown, today));
    }
}
