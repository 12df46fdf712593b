package warmshelf.duty;

import java.util.Comparator;

/**
 * How good a way of giving out days is; the lesser is the better. First as few days as possible stay empty, then as few as
 * possible follow on another day of the same person, then the counts are as even as possible.
 *
 * @param empty turns that nobody has
 * @param inARow pairs of days, one after the other, on which the same person looks
 * @param squares sum of the squares of everyone's counts, which is least when they are most even
 */
record RotaScore(int empty, int inARow, long squares) implements Comparable<RotaScore> {
    private static final Comparator<RotaScore> ORDER = Comparator.comparingInt(RotaScore::empty)
            .thenComparingInt(RotaScore::inARow)
            .thenComparingLong(RotaScore::squares);

    @Override
    public int compareTo(RotaScore other) {
        return ORDER.compare(this, other);
    }

    boolean isBetterThan(RotaScore other) {
        return compareTo(other) < 0;
    }
}
