package warmshelf.sowing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;

/**
 * What a sowing taught of its seed and its seedlings.
 *
 * @param sownOn null: nobody noted it
 * @param cameUp how many of its seeds came up; null: it is not over, nobody counted, or it was given up after a problem, which
 *     tells of the problem and not of the seed
 * @param up seedlings that were up, once it is known how many lived; null before, and where none was
 * @param lived of those; of what was given up none did
 * @param half when half of what came had come; null: not known
 * @param plantedOutOn the day its plants went out; null: they have not
 * @param over whether its seed is up or was given up; before that more may still come
 */
record SowingResult(
        @Nullable LocalDate sownOn,
        @Nullable Integer cameUp,
        @Nullable Integer up,
        @Nullable Integer lived,
        @Nullable HalfCame half,
        @Nullable LocalDate plantedOutOn,
        boolean over) {

    /** Reads it off a sowing's entries; empty while it has taught nothing. */
    static Optional<SowingResult> of(Method method, int seeds, List<Entry> entries) {
        Progress progress = Progress.of(method, seeds, entries);
        boolean over = progress.stage().isPastEmergence();
        HalfCame half = HalfCame.of(method, seeds, entries).orElse(null);
        if (!over && half == null) {
            return Optional.empty();
        }
        boolean plantsCounted = progress.stage().arePlantsCounted() && progress.up() > 0;
        return Optional.of(new SowingResult(
                progress.seen().sown(),
                over ? cameUp(progress, seeds) : null,
                plantsCounted ? Integer.valueOf(progress.up()) : null,
                plantsCounted ? Integer.valueOf(lived(progress)) : null,
                half,
                progress.seen().plantedOut(),
                over));
    }

    private static @Nullable Integer cameUp(Progress progress, int seeds) {
        int up = Math.min(seeds, Math.max(progress.sprouted(), progress.up()));
        boolean givenUp = progress.stage() == SowingStage.GIVEN_UP;
        boolean nobodyCounted = up == 0 && !givenUp;
        boolean accident = givenUp && progress.lastProblem() != null;
        return progress.seen().sown() == null || nobodyCounted || accident ? null : Integer.valueOf(up);
    }

    private static int lived(Progress progress) {
        return progress.stage() == SowingStage.GIVEN_UP ? 0 : Math.min(progress.up(), progress.alive());
    }
}
