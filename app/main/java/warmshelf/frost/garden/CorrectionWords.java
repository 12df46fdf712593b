package warmshelf.frost.garden;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.words.Counted;
import warmshelf.words.Countries;
import warmshelf.words.DayWords;

/** Says in words what a correction does, and where. */
public final class CorrectionWords {
    private CorrectionWords() {}

    /** For example 'last spring frost 5 days later, first autumn frost 3 days earlier'. */
    public static String of(Change change) {
        List<String> parts = new ArrayList<>();
        if (change instanceof Change.Shift shift) {
            addShift(parts, "last spring frost", shift.springDays());
            addShift(parts, "first autumn frost", shift.autumnDays());
        } else if (change instanceof Change.Dates dates) {
            addDate(parts, "last spring frost on average", dates.springAverage());
            addDate(parts, "after this day in one spring of ten", dates.springOneInTen());
            addDate(parts, "first autumn frost on average", dates.autumnAverage());
            addDate(parts, "before this day in one autumn of ten", dates.autumnOneInTen());
        }
        return String.join(", ", parts);
    }

    /** For example 'postcodes that begin with 558 (United States)'. */
    public static String of(Area area) {
        return area instanceof Area.Postcodes postcodes
                ? "postcodes that begin with %s (%s)".formatted(postcodes.start(), land(postcodes.country()))
                : "one garden";
    }

    private static String land(String country) {
        return Countries.byName().stream()
                .filter(choice -> choice.value().equals(country))
                .findFirst()
                .map(choice -> choice.words())
                .orElse(country);
    }

    private static void addShift(List<String> parts, String what, int days) {
        if (days != 0) {
            parts.add(what + " " + Counted.daysMoved(days, "later", "earlier"));
        }
    }

    private static void addDate(List<String> parts, String what, @Nullable MonthDay day) {
        if (day != null) {
            parts.add("%s: %s".formatted(what, DayWords.dayOfMonth(day)));
        }
    }
}
