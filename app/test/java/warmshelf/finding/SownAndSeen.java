package warmshelf.finding;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Progress;

/** Entries of one sowing, by days since it was sown. */
final class SownAndSeen {
    static final LocalDate SOWN = LocalDate.of(2027, 3, 1);

    private final List<Entry> entries = new ArrayList<>();

    SownAndSeen() {
        enter(0, EntryStep.SOWN, null, null, false);
    }

    SownAndSeen look(int day, @Nullable Integer soFar) {
        return enter(day, EntryStep.LOOK, soFar, null, false);
    }

    SownAndSeen moved(int day, int moved, boolean finished) {
        return enter(day, EntryStep.MOVED_TO_CELLS, null, moved, finished);
    }

    private SownAndSeen enter(
            int day, EntryStep step, @Nullable Integer soFar, @Nullable Integer moved, boolean finished) {
        LocalDate on = SOWN.plusDays(day);
        entries.add(new Entry(
                UUID.randomUUID(),
                new UUID(3, 3),
                step,
                on,
                on.atTime(18, entries.size()).atOffset(ZoneOffset.UTC),
                soFar,
                moved,
                null,
                finished,
                null,
                "",
                null,
                new UUID(4, 4),
                "Tom"));
        return this;
    }

    Progress progress(Method method, int seeds) {
        return Progress.of(method, seeds, entries);
    }
}
