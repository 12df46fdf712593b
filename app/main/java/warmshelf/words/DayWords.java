package warmshelf.words;

import static warmshelf.words.WordsSentences.SAY;

import java.time.Duration;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/**
 * Days as sentences say them, in every way in which they are written. A stay is kept over days [from, afterLast); people are told
 * its last day ('to Sat 5 Dec'), on which it still lies there, or the day it leaves ('leaves Sun 6 Dec'), which is the day after.
 */
public final class DayWords {
    private static final DateTimeFormatter DAY = pattern("EEE d MMM");
    private static final DateTimeFormatter DATE = pattern("d MMM");
    private static final DateTimeFormatter WEEKDAY = pattern("EEE d");
    private static final DateTimeFormatter DATE_AND_YEAR = pattern("d MMM uuuu");
    private static final DateTimeFormatter DAY_OF_MONTH = pattern("d MMMM");
    private static final DateTimeFormatter IN_FULL = pattern("d MMMM uuuu");
    private static final DateTimeFormatter WITH_WEEKDAY_IN_FULL = pattern("EEEE, d MMMM uuuu");

    private DayWords() {}

    private static DateTimeFormatter pattern(String letters) {
        return DateTimeFormatter.ofPattern(letters, Locale.ENGLISH);
    }

    /** For example 'Tue 24 May'. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** For example '24 Nov'. */
    public static String date(LocalDate day) {
        return DATE.format(day);
    }

    /** Where the month stands beside it: for example 'Tue 24'. */
    public static String weekday(LocalDate day) {
        return WEEKDAY.format(day);
    }

    /** For example '24 Nov 2027'. */
    public static String dateAndYear(LocalDate day) {
        return DATE_AND_YEAR.format(day);
    }

    /** For example '24 November', of a day in any year or in one. */
    public static String dayOfMonth(TemporalAccessor day) {
        return DAY_OF_MONTH.format(day);
    }

    /** For example '24 November 2027'. */
    public static String inFull(LocalDate day) {
        return IN_FULL.format(day);
    }

    /** For example 'Wednesday, 24 November 2027'. */
    public static String withWeekdayInFull(LocalDate day) {
        return WITH_WEEKDAY_IN_FULL.format(day);
    }

    /** The days of a stay, its last one included: for example 'Tue 24 May to Sat 4 Jun'; 'Tue 24 May' where that is the only one. */
    public static String span(LocalDate from, LocalDate afterLast) {
        return from.plusDays(1).isBefore(afterLast) ? SAY.span(day(from), lastDay(afterLast)) : day(from);
    }

    /** The last day on which it lies there: for example 'Sat 4 Jun'. */
    public static String lastDay(LocalDate afterLast) {
        return day(afterLast.minusDays(1));
    }

    /** The day on which it is there no more: for example 'leaves Sun 5 Jun'. */
    public static String leaves(LocalDate afterLast) {
        return SAY.leaves(day(afterLast));
    }

    /** How long ago something was: for example 'a moment ago', '5 minutes ago', 'a day ago'. */
    public static String ago(Duration since) {
        long minutes = since.toMinutes();
        if (minutes < 1) {
            return SAY.momentAgo();
        }
        if (minutes < 60) {
            return SAY.minutesAgo(minutes);
        }
        long hours = minutes / 60;
        if (hours < 24) {
            return SAY.hoursAgo(hours);
        }
        return SAY.daysAgo(hours / 24);
    }
}
