package warmshelf.frost.minima;

import java.time.LocalDate;
import java.time.Month;

/**
 * The two halves of the world, whose frost seasons lie half a year apart. A year's spring is counted over the twelve months
 * up to midsummer and its autumn over the twelve months after it, as the United States' climate normals do (August to July);
 * so a winter that straddles New Year stays whole.
 */
public enum Hemisphere {
    /** Spring 2027 is August 2026 to July 2027, autumn 2027 the twelve months from August 2027. */
    NORTH(Month.AUGUST, -1),
    /** Spring 2027 is February 2027 to January 2028, autumn the twelve months from February 2028. */
    SOUTH(Month.FEBRUARY, 0);

    private final Month turn;
    private final int years;

    Hemisphere(Month turn, int years) {
        this.turn = turn;
        this.years = years;
    }

    /** The half in which a latitude lies, in degrees, south negative. */
    public static Hemisphere of(double latitude) {
        return latitude < 0 ? SOUTH : NORTH;
    }

    /** The half that a record tells by its warmer months; the north where it does not tell. */
    static Hemisphere of(DailyMinima minima) {
        double summer = mean(minima, Month.JULY);
        double winter = mean(minima, Month.JANUARY);
        return winter > summer ? SOUTH : NORTH;
    }

    private static double mean(DailyMinima minima, Month month) {
        double sum = 0;
        int days = 0;
        for (int year : minima.years()) {
            LocalDate first = LocalDate.of(year, month, 1);
            for (int i = 0; i < month.minLength(); i++) {
                LocalDate day = first.plusDays(i);
                if (minima.isKnown(day)) {
                    sum += minima.on(day).orElseThrow();
                    days++;
                }
            }
        }
        return sum / days;
    }

    /** First day of the twelve months in which the last frost of a year's spring is looked for. */
    LocalDate springFrom(int year) {
        return LocalDate.of(year + years, turn, 1);
    }

    /** First day of the twelve months in which the first frost of a year's autumn is looked for. */
    public LocalDate autumnFrom(int year) {
        return springFrom(year + 1);
    }

    /** First month of the three coldest. */
    LocalDate coldestFrom(LocalDate seasonFrom) {
        return seasonFrom.plusMonths(4);
    }
}
