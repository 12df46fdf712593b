package warmshelf.sowing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;

/**
 * When half of what came up of a sowing had come: between two looks, in days since it was sown. Told only once no more is
 * waited for, because until then nobody knows what half of it is.
 *
 * @param afterDays the last look at which fewer had come, or the sowing itself: 0
 * @param byDays the first look at which half had
 */
record HalfCame(int afterDays, int byDays) {
    /**
     * Reads it off a sowing's entries: roots in the bag, or seedlings up in cells. Empty while more is waited for, and where
     * nothing came or nobody counted.
     */
    static Optional<HalfCame> of(Method method, int seeds, List<Entry> entries) {
        List<Entry> valid = Entry.standing(entries);
        LocalDate sown = valid.stream()
                .filter(entry -> entry.step() == EntryStep.SOWN)
                .map(Entry::seenOn)
                .findFirst()
                .orElse(null);
        if (sown == null) {
            return Optional.empty();
        }
        List<Entry> whereSown = method == Method.BAG ? inTheBag(valid) : valid;
        boolean settled = valid.stream().anyMatch(entry -> endsTheWait(method, entry));
        return half(sown, seeds, settled, whereSown);
    }

    private static boolean endsTheWait(Method method, Entry entry) {
        return entry.step().endsTheWait() || (method == Method.BAG && finishes(entry));
    }

    private static boolean finishes(Entry entry) {
        return entry.step() == EntryStep.MOVED_TO_CELLS && entry.finished();
    }

    /** Later counts are of seedlings in cells. */
    private static List<Entry> inTheBag(List<Entry> valid) {
        int end = 0;
        while (end < valid.size() && !finishes(valid.get(end))) {
            end++;
        }
        return valid.subList(0, Math.min(end + 1, valid.size()));
    }

    private static Optional<HalfCame> half(LocalDate sown, int seeds, boolean settled, List<Entry> looks) {
        int came = looks.stream().mapToInt(HalfCame::count).max().orElse(0);
        if (came == 0 || !(settled || came >= seeds)) {
            return Optional.empty();
        }
        LocalDate before = sown;
        for (Entry look : looks) {
            if (2 * count(look) >= came) {
                return between(sown, before, look.seenOn());
            }
            if (look.sprouted() != null && look.seenOn().isAfter(sown)) {
                before = look.seenOn();
            }
        }
        return Optional.empty();
    }

    private static int count(Entry entry) {
        @Nullable Integer sprouted = entry.sprouted();
        return sprouted == null ? 0 : sprouted;
    }

    /** Two looks on one day tell no more than that day: the one before it counts as the morning's. */
    private static Optional<HalfCame> between(LocalDate sown, LocalDate before, LocalDate by) {
        int byDays = (int) ChronoUnit.DAYS.between(sown, by);
        int afterDays = (int) ChronoUnit.DAYS.between(sown, before);
        return byDays < 1 ? Optional.empty() : Optional.of(new HalfCame(Math.min(afterDays, byDays - 1), byDays));
    }
}
