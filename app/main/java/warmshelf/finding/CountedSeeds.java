package warmshelf.finding;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.finding.statistics.SproutingTime;
import warmshelf.sowing.Progress;

/**
 * The seeds of one sowing, each with when it sprouted as far as the counts tell.
 *
 * @param times one for each seed sown; none where something withholds them
 * @param troubles what is wrong with the counts
 */
public record CountedSeeds(List<SproutingTime> times, Set<CountTrouble> troubles) {
    private static final int WEEKS_BETWEEN_DAYS = 14;

    public CountedSeeds {
        times = List.copyOf(times);
        troubles = Set.copyOf(troubles);
    }

    /** When each seed came up as a seedling. What was sown in a bag cannot be up before the first was moved into cells. */
    public static CountedSeeds up(Method method, int seeds, Progress progress) {
        LocalDate from = method == Method.BAG
                ? progress.seen().movedToCells()
                : progress.seen().sown();
        return of(seeds, progress, from, false);
    }

    /** When each seed showed its root in a bag. */
    public static CountedSeeds roots(int seeds, Progress progress) {
        return of(seeds, progress, progress.seen().sown(), true);
    }

    /** What was counted where it was sown: roots in a bag, seedlings in cells. */
    public static CountedSeeds whereSown(Method method, int seeds, Progress progress) {
        return method == Method.BAG ? roots(seeds, progress) : up(method, seeds, progress);
    }

    private static CountedSeeds of(int seeds, Progress progress, @Nullable LocalDate from, boolean inBag) {
        LocalDate sown = progress.seen().sown();
        List<Progress.Count> counts = progress.counts().stream()
                .filter(count -> count.inBag() == inBag)
                .toList();
        if (sown == null || from == null || counts.isEmpty()) {
            return withheld(CountTrouble.NOT_COUNTED);
        }
        if (counts.stream().anyMatch(count -> count.soFar() > seeds)) {
            return withheld(CountTrouble.MORE_THAN_SOWN);
        }
        if (falls(counts)) {
            return withheld(CountTrouble.FELL);
        }
        return spread(seeds, sown, from, counts);
    }

    private static CountedSeeds withheld(CountTrouble trouble) {
        return new CountedSeeds(List.of(), Set.of(trouble));
    }

    private static boolean falls(List<Progress.Count> counts) {
        for (int i = 1; i < counts.size(); i++) {
            if (counts.get(i).soFar() < counts.get(i - 1).soFar()) {
                return true;
            }
        }
        return false;
    }

    /** Two counts on one day tell no more than that day: the one before it counts as the evening's before. */
    private static CountedSeeds spread(int seeds, LocalDate sown, LocalDate from, List<Progress.Count> counts) {
        List<SproutingTime> times = new ArrayList<>();
        Set<CountTrouble> troubles = new TreeSet<>();
        int before = 0;
        long after = Math.max(0, ChronoUnit.DAYS.between(sown, from));
        for (Progress.Count count : counts) {
            long by = Math.max(1, ChronoUnit.DAYS.between(sown, count.on()));
            int came = count.soFar() - before;
            long earlier = Math.min(after, by - 1);
            if (came > 0) {
                times.addAll(Collections.nCopies(came, SproutingTime.between((double) earlier, (double) by)));
                if (by - earlier >= WEEKS_BETWEEN_DAYS) {
                    troubles.add(CountTrouble.WEEKS_BETWEEN);
                }
            }
            before = count.soFar();
            after = Math.max(after, by);
        }
        times.addAll(Collections.nCopies(seeds - before, SproutingTime.notBy((double) after)));
        return new CountedSeeds(times, troubles);
    }

    /** Whether there are figures to work with. */
    public boolean given() {
        return !times.isEmpty();
    }

    /** How many sprouted. */
    public int came() {
        return (int) times.stream().filter(SproutingTime::sprouted).count();
    }
}
