package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.regex.Pattern;
import warmshelf.Given;

/**
 * GHCN-Daily's {@code .dly}: a line for each month and element. Columns 1-11 station, 12-15 year, 16-17 month, 18-21 element,
 * then for each of 31 days eight columns: value in tenths of a degree (5), measurement, quality and source flag.
 */
final class GhcnFixedWidth implements MinimaLines {
    private static final Pattern START = Pattern.compile("[A-Z]{2}[A-Za-z0-9_\\-]{9}\\d{6}[A-Z0-9]{4}");
    private static final int HEAD = 21;
    private static final int DAY_WIDTH = 8;
    private static final int VALUE_WIDTH = 5;
    private static final int QUALITY = 6;

    private final MinimaCollector gathering;

    GhcnFixedWidth(MinimaCollector gathering) {
        this.gathering = gathering;
    }

    static boolean isLine(String line) {
        return line.length() > HEAD && START.matcher(line.substring(0, HEAD)).matches();
    }

    @Override
    public void read(int number, String line) {
        if (!isLine(line)) {
            gathering.problem(number, SAY.noStart(Given.shown(line)));
            return;
        }
        gathering.station(number, line.substring(0, 11));
        if (line.startsWith("TMIN", 17)) {
            month(number, line);
        }
    }

    private void month(int number, String line) {
        int year = Integer.parseInt(line.substring(11, 15));
        int month = Integer.parseInt(line.substring(15, 17));
        LocalDate first = gathering.day(number, year, month, 1);
        if (first == null) {
            return;
        }
        int days = YearMonth.of(year, month).lengthOfMonth();
        for (int day = 1; day <= days; day++) {
            int from = HEAD + (day - 1) * DAY_WIDTH;
            if (line.length() < from + VALUE_WIDTH) {
                gathering.problem(number, SAY.endsBefore(day, "%d-%02d".formatted(year, month)));
                return;
            }
            String value = line.substring(from, from + VALUE_WIDTH).strip();
            // the last line's blank flags may have been cut off with the spaces at its end
            String quality = line.length() > from + QUALITY ? line.substring(from + QUALITY, from + QUALITY + 1) : "";
            GhcnRows.tenths(gathering, number, first.withDayOfMonth(day), value, quality);
        }
    }
}
