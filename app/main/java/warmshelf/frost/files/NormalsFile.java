package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.frost.Threshold;
import warmshelf.frost.minima.CsvLine;
import warmshelf.frost.station.CalendarDay;
import warmshelf.frost.station.Side;
import warmshelf.words.TemperatureUnit;

/**
 * Reads the annual and seasonal U.S. Climate Normals by station, 1981-2010 and 1991-2020, in which each row is a station.
 * Its dates hold for the years with a freeze; how many those are it does not tell. Codes in place of a date: -6666 reached
 * in fewer than one year in ten, -4444 may come on any day of the year, -9999 and -7777 missing (NCEI's readme of the by-station
 * files).
 */
final class NormalsFile implements RowReader {
    private static final Pattern DATE = Pattern.compile("(\\d{2})[/-]?(\\d{2})");
    private static final Pattern CODE = Pattern.compile("(-\\d{4})(?:\\.0*)?");
    private static final String RARE = "-6666";
    private static final String ANY_DAY = "-4444";

    private final ImportedRows findings;
    private final StationCodes codes = new StationCodes();
    private @Nullable NormalsHeading heading;

    NormalsFile(ImportedRows findings) {
        this.findings = findings;
    }

    @Override
    public boolean hasHeading() {
        return true;
    }

    @Override
    public void begin(long line, String text) {
        heading = NormalsHeading.of(CsvLine.of(text))
                .orElseThrow(() -> new BadInput(SAY.noNormals(line, Given.shown(text), ImportKind.NORMALS.accepted())));
    }

    @Override
    public void row(long line, String text) {
        List<String> cells = CsvLine.of(text);
        // files that were joined bring their headings along, and these may differ
        Optional<NormalsHeading> again = NormalsHeading.of(cells);
        if (again.isPresent()) {
            heading = again.get();
            return;
        }
        NormalsHeading columns = heading;
        if (columns == null || cells.size() != columns.size()) {
            throw new BadInput(SAY.columns(cells.size(), columns == null ? 0 : columns.size()));
        }
        station(line, columns, cells);
    }

    private void station(long line, NormalsHeading columns, List<String> row) {
        String code = columns.cell(row, "STATION");
        if (code.isEmpty()) {
            throw new BadInput(SAY.noCode());
        }
        double latitude = Given.decimal("LATITUDE", columns.cell(row, "LATITUDE"), -90, 90);
        double longitude = Given.decimal("LONGITUDE", columns.cell(row, "LONGITUDE"), -180, 180);
        double elevation = Given.decimal(SAY.elevationInMetres(), columns.cell(row, "ELEVATION"), -430, 6500);
        String name = columns.cell(row, "NAME");
        List<String> anyDay = new ArrayList<>();
        List<FrostDay> days = days(columns, row, latitude < 0, anyDay);
        if (days.isEmpty() && anyDay.isEmpty()) {
            throw new BadInput(SAY.noFrostDate(Given.shown(code)));
        }
        codes.see(code, name, latitude, longitude);
        if (!anyDay.isEmpty()) {
            findings.problem(line, SAY.anyDay(Given.shown(code), String.join(", ", anyDay)));
        }
        findings.station(new StationReading(
                StationCodes.shortened(code, PublishedStations.LONGEST_CODE),
                StationCodes.shortened(name.isEmpty() ? code : name, PublishedStations.LONGEST_NAME),
                latitude,
                longitude,
                elevation,
                days,
                List.of()));
    }

    private static List<FrostDay> days(NormalsHeading columns, List<String> row, boolean south, List<String> anyDay) {
        List<FrostDay> days = new ArrayList<>();
        for (Threshold threshold : Threshold.values()) {
            for (Side side : Side.values()) {
                Map<Integer, String> texts = columns.dates(row, threshold, side);
                String name = name(threshold, side);
                FrostDay day = day(threshold, side, name, texts, south);
                if (day != null) {
                    days.add(day);
                } else if (texts.values().stream().anyMatch(text -> ANY_DAY.equals(code(text)))) {
                    anyDay.add(name);
                }
            }
        }
        return days;
    }

    private static @Nullable FrostDay day(
            Threshold threshold, Side side, String name, Map<Integer, String> texts, boolean south) {
        Map<Integer, Integer> dayByPercent = new TreeMap<>();
        texts.forEach((percent, text) -> {
            if (!text.isEmpty() && code(text) == null) {
                dayByPercent.put(percent, day(SAY.atPercent(name, percent), text, side, south));
            }
        });
        if (dayByPercent.isEmpty()) {
            boolean rare = texts.values().stream().anyMatch(text -> RARE.equals(code(text)));
            return rare ? FrostDay.rare(threshold, side) : null;
        }
        LevelFit fit = LevelFit.of(side, dayByPercent);
        if (fit == null) {
            return null;
        }
        Double sd = fit.sdDays();
        if (sd != null && sd < 0) {
            throw new BadInput(SAY.wrongWay(name));
        }
        return new FrostDay(threshold, side, null, fit.medianDay(), sd == null || sd == 0 ? null : sd, null);
    }

    private static String name(Threshold threshold, Side side) {
        long fahrenheit = Math.round(TemperatureUnit.FAHRENHEIT.fromCelsius(threshold.celsius()));
        return side == Side.SPRING ? SAY.lastAt(fahrenheit) : SAY.firstAt(fahrenheit);
    }

    /** The code that stands in place of a date, or null. */
    private static @Nullable String code(String text) {
        Matcher code = CODE.matcher(text);
        return code.matches() ? code.group(1) : null;
    }

    private static int day(String name, String text, Side side, boolean south) {
        Matcher date = DATE.matcher(text);
        try {
            if (date.matches()) {
                MonthDay day = MonthDay.of(Integer.parseInt(date.group(1)), Integer.parseInt(date.group(2)));
                return side == Side.SPRING ? CalendarDay.spring(day, south) : CalendarDay.autumn(day, south);
            }
        } catch (DateTimeException notInTheCalendar) {
            // falls through to the sentence below, which covers both cases
        }
        throw new BadInput(SAY.noDay(name, Given.shown(text)));
    }
}
