package warmshelf.sowing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;

/**
 * A tray that goes home with its grower after the heat, because no place under the group's lights is booked for it.
 *
 * @param by the last day on which its place on the mat is kept
 * @param done the day on which it was taken; null: it still lies there
 */
record HomeWithIt(LocalDate by, @Nullable LocalDate done) {

    /** Empty where it lies on no mat, goes under a light of the group, or grows on already. */
    static Optional<HomeWithIt> of(History history) {
        List<Entry> standing = Entry.standing(history.entries());
        Optional<LocalDate> taken = standing.stream()
                .filter(entry -> entry.step() == EntryStep.TAKEN_HOME)
                .map(Entry::seenOn)
                .findFirst();
        if (taken.isPresent()) {
            return taken.map(day -> new HomeWithIt(day, day));
        }
        Progress progress = history.progress();
        boolean growsOn = progress.stage().compareTo(SowingStage.UNDER_LIGHT) >= 0;
        return growsOn || history.stays().stream().anyMatch(stay -> !stay.isOnMat())
                ? Optional.empty()
                : lastDayOnMat(history)
                        .map(day -> new HomeWithIt(later(day, progress.seen().offHeat()), null));
    }

    private static Optional<LocalDate> lastDayOnMat(History history) {
        return history.stays().stream()
                .filter(Stay::isOnMat)
                .map(Stay::to)
                .max(Comparator.naturalOrder())
                .map(to -> to.minusDays(1));
    }

    private static LocalDate later(LocalDate day, @Nullable LocalDate other) {
        return other != null && other.isAfter(day) ? other : day;
    }
}
