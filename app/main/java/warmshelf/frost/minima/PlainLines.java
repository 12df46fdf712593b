package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import warmshelf.Given;
import warmshelf.words.Numbers;
import warmshelf.words.TemperatureUnit;

/**
 * Our own layout: a heading with {@code date} and {@code tmin} (degrees Celsius) or {@code tmin_f} (degrees Fahrenheit), in
 * any order and beside other columns; an empty minimum is a missing day.
 */
final class PlainLines implements MinimaLines {
    private static final Pattern ISO_DAY = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,4}(\\.\\d{1,6})?");

    private final MinimaCollector gathering;
    private final int dateColumn;
    private final int minimumColumn;
    private final boolean fahrenheit;
    private final int columns;

    PlainLines(MinimaCollector gathering, List<String> heading) {
        this.gathering = gathering;
        dateColumn = heading.indexOf("date");
        fahrenheit = !heading.contains("tmin");
        minimumColumn = heading.indexOf(fahrenheit ? "tmin_f" : "tmin");
        columns = heading.size();
    }

    /** Whether a heading, in small letters, is one of this layout. */
    static boolean isHeading(List<String> heading) {
        return heading.contains("date") && heading.contains("tmin") != heading.contains("tmin_f");
    }

    @Override
    public void read(int number, String line) {
        List<String> cells = CsvLine.of(line);
        if (cells.size() != columns) {
            gathering.problem(number, SAY.columns(cells.size(), columns, Given.shown(line)));
            return;
        }
        Matcher day = ISO_DAY.matcher(cells.get(dateColumn));
        if (!day.matches()) {
            gathering.problem(number, SAY.noDateWithYear(Given.shown(cells.get(dateColumn))));
            return;
        }
        LocalDate date = gathering.day(number, whole(day, 1), whole(day, 2), whole(day, 3));
        if (date != null) {
            minimum(number, date, cells.get(minimumColumn));
        }
    }

    private void minimum(int number, LocalDate date, String words) {
        if (words.isEmpty()) {
            return;
        }
        if (!NUMBER.matcher(words).matches()) {
            gathering.problem(number, SAY.noNumber(Given.shown(words)));
            return;
        }
        double value = Double.parseDouble(words);
        // to a tenth, as the services turn Fahrenheit into Celsius: so that 28 F is -2.2 C and 36 F is 2.2 C
        double celsius = fahrenheit ? Numbers.tenths(TemperatureUnit.FAHRENHEIT.toCelsius(value)) : value;
        gathering.minimum(number, date, celsius, words + (fahrenheit ? " °F" : " °C"));
    }

    private static int whole(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
