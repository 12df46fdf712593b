package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
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
            if (shift.springDays() != 0) {
                parts.add(SAY.lastOfSpring(moved(shift.springDays())));
            }
            if (shift.autumnDays() != 0) {
                parts.add(SAY.firstOfAutumn(moved(shift.autumnDays())));
            }
        } else if (change instanceof Change.Dates dates) {
            addDate(parts, SAY::springAverageIs, dates.springAverage());
            addDate(parts, SAY::springOneInTenIs, dates.springOneInTen());
            addDate(parts, SAY::autumnAverageIs, dates.autumnAverage());
            addDate(parts, SAY::autumnOneInTenIs, dates.autumnOneInTen());
        }
        return String.join(", ", parts);
    }

    /** For example 'postcodes that begin with 558 (United States)'. */
    public static String of(Area area) {
        return area instanceof Area.Postcodes postcodes
                ? SAY.postcodesOf(postcodes.start(), land(postcodes.country()))
                : SAY.oneGarden();
    }

    /** Who corrected what, and why, in a sentence. */
    public static String sentence(FrostCorrection correction) {
        String change = counted(correction.change());
        String on = DayWords.inFull(correction.on());
        return correction.area() instanceof Area.Postcodes area
                ? SAY.correctedPostcodes(area.start(), change, correction.by(), on, correction.reason())
                : SAY.correctedGarden(change, correction.by(), on, correction.reason());
    }

    /** For example 'spring frost counted 5 days later, autumn frost as it is'. */
    private static String counted(Change change) {
        if (change instanceof Change.Shift shift) {
            return SAY.countedShift(movedOrNot(shift.springDays()), movedOrNot(shift.autumnDays()));
        }
        List<String> parts = new ArrayList<>();
        if (change instanceof Change.Dates dates) {
            addDate(parts, SAY::countedSpringAverage, dates.springAverage());
            addDate(parts, SAY::countedSpringOneInTen, dates.springOneInTen());
            addDate(parts, SAY::countedAutumnAverage, dates.autumnAverage());
            addDate(parts, SAY::countedAutumnOneInTen, dates.autumnOneInTen());
        }
        return String.join(", ", parts);
    }

    private static String movedOrNot(int days) {
        return days == 0 ? SAY.countedAsItIs() : moved(days);
    }

    private static String land(String country) {
        return Countries.byName().stream()
                .filter(choice -> choice.value().equals(country))
                .findFirst()
                .map(choice -> choice.words())
                .orElse(country);
    }

    private static String moved(int days) {
        String words = Counted.days(Math.abs(days));
        return days > 0 ? SAY.daysLater(words) : SAY.daysEarlier(words);
    }

    private static void addDate(List<String> parts, UnaryOperator<String> words, @Nullable MonthDay day) {
        if (day != null) {
            parts.add(words.apply(DayWords.dayOfMonth(day)));
        }
    }
}
