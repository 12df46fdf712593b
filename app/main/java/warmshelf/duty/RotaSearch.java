package warmshelf.duty;

import java.util.Arrays;

/**
 * Looks through every way of giving out the turns, in the order of rank, leaving out what cannot become better than the best
 * so far. Of plans that are equally good it keeps the first it comes to, in which earlier turns go to people of lower rank. It
 * stops after so many looks; on small rotas it comes to the end, and what it found is the best there is.
 */
final class RotaSearch {
    private static final int MOST_LOOKS = 60_000;

    private final RotaTask task;
    private final int[] plan;
    private final int[] counts;
    private final int[][] turnsOn;
    private int[] best;
    private RotaScore bestScore;
    private boolean found;
    private int looks;

    private RotaSearch(RotaTask task, int[] start) {
        this.task = task;
        this.plan = new int[start.length];
        Arrays.fill(plan, RotaTask.NOBODY);
        this.counts = task.served();
        this.turnsOn = new int[task.people().size()][];
        for (int person = 0; person < turnsOn.length; person++) {
            boolean[] taken = task.onDuty()[person];
            turnsOn[person] = new int[taken.length];
            for (int day = 0; day < taken.length; day++) {
                turnsOn[person][day] = taken[day] ? 1 : 0;
            }
        }
        this.best = start;
        this.bestScore = task.score(start);
    }

    /** The best plan that was found, at least as good as the one to start from. */
    static int[] best(RotaTask task, int[] start) {
        RotaSearch search = new RotaSearch(task, start);
        int[] nothing = new int[start.length];
        Arrays.fill(nothing, RotaTask.NOBODY);
        search.from(0, 0, task.score(nothing).inARow());
        return search.best;
    }

    private void from(int turn, int empty, int inARow) {
        if (looks++ > MOST_LOOKS || !isPromising(turn, empty, inARow)) {
            return;
        }
        if (turn == plan.length) {
            best = plan.clone();
            bestScore = new RotaScore(empty, inARow, RotaTask.squares(counts));
            found = true;
            return;
        }
        for (int person : task.able(turn)) {
            if (task.fits(plan, turn, person)) {
                give(turn, person, empty, inARow);
            }
        }
        from(turn + 1, empty + 1, inARow);
    }

    private void give(int turn, int person, int empty, int inARow) {
        int[] days = turnsOn[person];
        int day = task.day(turn);
        int more = days[day] > 0 ? 0 : (days[day - 1] > 0 ? 1 : 0) + (days[day + 1] > 0 ? 1 : 0);
        plan[turn] = person;
        counts[person]++;
        days[day]++;
        from(turn + 1, empty, inARow + more);
        days[day]--;
        counts[person]--;
        plan[turn] = RotaTask.NOBODY;
    }

    /** The least that can come of it: every turn that somebody can take is taken, none in a row, by the least served. */
    private boolean isPromising(int turn, int empty, int inARow) {
        int willBeEmpty = empty;
        int toGive = 0;
        for (int next = turn; next < plan.length; next++) {
            if (task.able(next).length == 0) {
                willBeEmpty++;
            } else {
                toGive++;
            }
        }
        RotaScore least = new RotaScore(willBeEmpty, inARow, leastSquares(toGive));
        int order = least.compareTo(bestScore);
        return order < 0 || (order == 0 && !found);
    }

    private long leastSquares(int toGive) {
        int[] even = counts.clone();
        for (int given = 0; given < toGive && even.length > 0; given++) {
            int least = 0;
            for (int person = 1; person < even.length; person++) {
                least = even[person] < even[least] ? person : least;
            }
            even[least]++;
        }
        return RotaTask.squares(even);
    }
}
