package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import warmshelf.Given;

/**
 * GHCN-Daily by station, one line a day and element: station, yyyymmdd, element, value in tenths of a degree, measurement
 * flag, quality flag, source flag, time of observation. Any quality flag says that the service doubts the value.
 */
final class GhcnRows implements MinimaLines {
    private static final Pattern DAY = Pattern.compile("\\d{8}");
    private static final Pattern TENTHS = Pattern.compile("-?\\d{1,5}");
    private static final int LEAST_CELLS = 7;
    private static final int MOST_CELLS = 8;
    private static final int QUALITY = 5;
    static final int MISSING = -9999;

    private final MinimaCollector gathering;

    GhcnRows(MinimaCollector gathering) {
        this.gathering = gathering;
    }

    @Override
    public void read(int number, String line) {
        List<String> cells = CsvLine.of(line);
        if (cells.size() < LEAST_CELLS || cells.size() > MOST_CELLS) {
            gathering.problem(number, SAY.columnsOfLayout(cells.size(), MOST_CELLS, Given.shown(line)));
            return;
        }
        if (!DAY.matcher(cells.get(1)).matches()) {
            gathering.problem(number, SAY.noDateInDigits(Given.shown(cells.get(1))));
            return;
        }
        gathering.station(number, cells.get(0));
        if (cells.get(2).equals("TMIN")) {
            int day = Integer.parseInt(cells.get(1));
            LocalDate date = gathering.day(number, day / 10_000, day / 100 % 100, day % 100);
            if (date != null) {
                tenths(gathering, number, date, cells.get(3), cells.get(QUALITY));
            }
        }
    }

    /** Takes a value in whole tenths of a degree with its quality flag. */
    static void tenths(MinimaCollector gathering, int number, LocalDate date, String words, String quality) {
        if (!TENTHS.matcher(words).matches()) {
            gathering.problem(number, SAY.noTenths(Given.shown(words)));
            return;
        }
        int value = Integer.parseInt(words);
        if (value == MISSING) {
            return;
        }
        if (!quality.isBlank()) {
            gathering.doubted();
            return;
        }
        gathering.minimum(number, date, value / 10.0, SAY.tenths(words));
    }
}
