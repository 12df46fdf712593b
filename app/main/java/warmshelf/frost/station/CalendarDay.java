package warmshelf.frost.station;

import java.time.MonthDay;

/**
 * Turns a day of the calendar into the number that the frost tables count by. Last frosts are looked for in the twelve
 * months up to midsummer (the end of July, in the south of January), first frosts in the twelve after it.
 */
public final class CalendarDay {
    private static final int COMMON_YEAR = 2001;
    private static final int DAYS = 365;
    private static final int FIRST_OF_AUGUST = 213;
    private static final int FIRST_OF_FEBRUARY = 32;

    private CalendarDay() {}

    /** The number of a last spring frost: at or below 0 in the year before, above 365 in the year after. */
    public static int spring(MonthDay day, boolean south) {
        int number = number(day);
        if (south) {
            return number < FIRST_OF_FEBRUARY ? number + DAYS : number;
        }
        return number >= FIRST_OF_AUGUST ? number - DAYS : number;
    }

    /** The number of the first autumn frost after it; in the south that lies in the next year. */
    public static int autumn(MonthDay day, boolean south) {
        return spring(day, south) + DAYS;
    }

    private static int number(MonthDay day) {
        // 29 February has no number of its own
        return day.atYear(COMMON_YEAR).getDayOfYear();
    }
}
