package warmshelf.words;

import static warmshelf.words.WordsSentences.SAY;

import java.util.List;
import java.util.Locale;

/** Things counted and listed in sentences. */
public final class Counted {
    private Counted() {}

    /** A count with the word for one of it or for several, for example '1 seed', '1,200 seeds' or '2 things to do'. */
    public static String of(long count, String one, String several) {
        return String.format(Locale.ROOT, "%,d %s", count, count == 1 ? one : several);
    }

    /** For example '1 day' or '9 days'. */
    public static String days(long count) {
        return of(count, "day", "days");
    }

    /** For example '9 to 11 weeks' or '8 weeks'. */
    public static String weeks(int least, int most) {
        return least == most ? SAY.weeks(least) : SAY.weeksRange(least, most);
    }

    /** How far a day has moved, for example '1 day later'; negative days have moved the other way, for which the last word is. */
    public static String daysMoved(long days, String later, String earlier) {
        return days(Math.abs(days)) + " " + (days > 0 ? later : earlier);
    }

    /** Things one after another, for example 'a, b and c'. */
    public static String all(List<String> things) {
        int last = things.size() - 1;
        return last < 1
                ? String.join("", things)
                : SAY.and(String.join(", ", things.subList(0, last)), things.get(last));
    }
}
