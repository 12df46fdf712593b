package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Degrees;
import warmshelf.words.Units;

/** Reads a line such as '2027-03-01,-2.5': a date, then a temperature in a person's units, with a point or a comma. */
final class NightLine {
    private static final Pattern LINE =
            Pattern.compile("\\s*([^\\s,;]+)\\s*[\\s,;]\\s*([+-]?\\d{1,3}(?:[.,]\\d{1,3})?)\\s*");
    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 1, 1);
    private static final int SHOWN = 40;

    private final LocalDate today;
    private final Units units;

    NightLine(LocalDate today, Units units) {
        this.today = today;
        this.units = units;
    }

    /** A night, or why there is none: a clause without a full stop. */
    record Read(LocalDate day, double celsius, @Nullable String problem) {}

    Read read(String line) {
        Matcher parts = LINE.matcher(line.replace('−', '-').replace('–', '-'));
        if (!parts.matches()) {
            return problem(SAY.noLine(shown(line.strip()), Degrees.typed(-2, units)));
        }
        LocalDate day;
        try {
            day = LocalDate.parse(parts.group(1));
        } catch (DateTimeParseException notADate) {
            return problem(SAY.noDateOfLine(shown(parts.group(1))));
        }
        if (day.isAfter(today)) {
            return problem(SAY.dayToCome(day.toString(), today.toString()));
        }
        if (day.isBefore(FIRST_DAY)) {
            return problem(SAY.dayTooEarly(day.toString(), FIRST_DAY.toString()));
        }
        return night(day, Double.parseDouble(parts.group(2).replace(',', '.')));
    }

    private Read night(LocalDate day, double figure) {
        double least = Degrees.figure(Degrees.LOWEST_C, units);
        double most = Degrees.figure(Degrees.HIGHEST_C, units);
        if (figure < least || figure > most) {
            return problem(
                    SAY.outside(String.valueOf(figure), units.temperature().scale(), whole(least), whole(most)));
        }
        return new Read(day, Degrees.celsius(figure, units), null);
    }

    private static Read problem(String clause) {
        return new Read(LocalDate.EPOCH, 0, clause);
    }

    private static String whole(double degrees) {
        return String.format(Locale.ROOT, "%.0f", degrees);
    }

    private static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
