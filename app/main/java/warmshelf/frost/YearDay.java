package warmshelf.frost;

import java.time.LocalDate;

/**
 * Day numbers of a year of 365 days, as the frost tables count them: 1 is 1 January, 60 is 1 March in every year, 29
 * February has no number of its own. A number below 1 lies in the year before, one above 365 in the year after.
 */
public final class YearDay {
    private static final int DAYS = 365;
    private static final int COMMON_YEAR = 2001;

    private YearDay() {}

    /** The date nearest to a day number; fractions are rounded to the whole day. */
    public static LocalDate in(int year, double day) {
        long whole = Math.round(day) - 1;
        int otherYear = year + (int) Math.floorDiv(whole, DAYS);
        LocalDate common = LocalDate.ofYearDay(COMMON_YEAR, Math.floorMod(whole, DAYS) + 1);
        return LocalDate.of(otherYear, common.getMonthValue(), common.getDayOfMonth());
    }

    /** A date's day number, counted from the year given; 29 February lies half-way between its neighbours. */
    public static double number(LocalDate day, int year) {
        double ofYear = day.isLeapYear() && day.getMonthValue() > 2 ? day.getDayOfYear() - 1 : day.getDayOfYear();
        boolean leapDay = day.getMonthValue() == 2 && day.getDayOfMonth() == 29;
        return DAYS * (day.getYear() - year) + (leapDay ? ofYear - 0.5 : ofYear);
    }
}
