package warmshelf.crop;

import java.util.List;

/**
 * A cell of the trials' table that reprints print differently.
 *
 * @param celsius the soil temperature of the cell
 * @param printed what each prints, in its order
 */
public record EmergenceDisagreement(double celsius, List<Print> printed) {
    public EmergenceDisagreement {
        printed = List.copyOf(printed);
    }

    /** What this program takes: the first, but a counted share before a print that says nothing came up or was tested. */
    public Print used() {
        Print first = printed.get(0);
        return first.outcome() == Outcome.DAYS
                ? first
                : printed.stream()
                        .filter(print -> print.outcome() == Outcome.SHARE && print.number() > nextToNothing(first))
                        .findFirst()
                        .orElse(first);
    }

    private static double nextToNothing(Print first) {
        return first.outcome() == Outcome.UNTESTED ? 0 : 100 * EmergenceTable.NEXT_TO_NOTHING;
    }

    /** Whether each of them prints days. */
    public boolean allDays() {
        return printed.stream().allMatch(print -> print.outcome() == Outcome.DAYS);
    }

    /** What a print can say of a cell. */
    public enum Outcome {
        /** So many days. */
        DAYS,
        /** Nothing came up. */
        NONE,
        UNTESTED,
        /** So many per cent came up, in days not given. */
        SHARE
    }

    /**
     * What one print says.
     *
     * @param number the days, or per cent; 0 where the outcome has none
     */
    public record Print(Outcome outcome, int number) {}
}
