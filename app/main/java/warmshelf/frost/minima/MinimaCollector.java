package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import warmshelf.Given;

/** What has been read of a file so far, with what is wrong in it. */
final class MinimaCollector {
    private static final int COLDEST_C = -90;
    private static final int WARMEST_C = 50;
    private static final int FIRST_YEAR = 1700;
    private static final int LAST_YEAR = 2200;
    private static final int MOST_PROBLEMS = 5;

    final DailyMinima minima = new DailyMinima();
    private final List<String> problems = new ArrayList<>();
    private @Nullable String station;
    private @Nullable StationPoint point;
    private int doubted;

    /** Takes a day's minimum; the words are those of the file, for the sentence that refuses it. */
    void minimum(int line, LocalDate day, double celsius, String words) {
        if (!(celsius >= COLDEST_C && celsius <= WARMEST_C)) {
            problem(line, SAY.noNightOnEarth(words, COLDEST_C, WARMEST_C));
        } else if (!minima.add(day, celsius)) {
            problem(line, SAY.dayTwice(day.toString()));
        }
    }

    /** Takes the station that a line names; a file of several stations would mix their nights. */
    void station(int line, String id) {
        if (station == null) {
            station = id;
        } else if (!station.equals(id)) {
            problem(line, SAY.otherStation(Given.shown(id), station));
        }
    }

    void point(StationPoint stated) {
        if (point == null) {
            point = stated;
        }
    }

    /** Counts a minimum that the service itself marks as doubtful and that is therefore passed over. */
    void doubted() {
        doubted++;
    }

    /** A day of a year that thermometers can tell of. */
    @Nullable
    LocalDate day(int line, int year, int month, int dayOfMonth) {
        try {
            if (year >= FIRST_YEAR && year <= LAST_YEAR) {
                return LocalDate.of(year, month, dayOfMonth);
            }
        } catch (DateTimeException notInTheCalendar) {
            // falls through to the sentence below, which covers both cases
        }
        problem(
                line,
                SAY.noSuchDay(
                        String.format(Locale.ROOT, "%04d-%02d-%02d", year, month, dayOfMonth), FIRST_YEAR, LAST_YEAR));
        return null;
    }

    void problem(int line, String words) {
        problems.add(SAY.lineProblem(line, words));
    }

    boolean isHopeless() {
        return problems.size() >= MOST_PROBLEMS;
    }

    List<String> problems() {
        return problems;
    }

    StationMinima done(String file) {
        return new StationMinima(station == null ? file : station, point, minima, doubted);
    }
}
