package warmshelf.frost.minima;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Tells in plain sentences what a record of daily minima can and cannot say. */
public final class RecordNotes {
    private static final int FEW_SEASONS = 20;
    private static final int MOST_YEARS_NAMED = 12;
    /** Less than this would be written as nothing, in days each ten years. */
    private static final double LEAST_TOLD = 0.05;

    private RecordNotes() {}

    /**
     * The notes to a record.
     *
     * @param hemisphereTold whether the latitude was known, rather than guessed by the warmer months
     */
    public static List<String> of(StationMinima station, FrostRecord record, boolean hemisphereTold) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "A frost here is a daily minimum of %s °C or less in a thermometer shelter; on a clear, still night the ground is colder."
                        .formatted(plain(record.thresholdC())));
        if (!hemisphereTold) {
            notes.add("No latitude was given; by its warmer months the station lies in the %s half of the world."
                    .formatted(record.hemisphere() == Hemisphere.NORTH ? "northern" : "southern"));
        }
        if (record.hemisphere() == Hemisphere.SOUTH) {
            notes.add("In the southern half the autumn is the one after the spring, so it lies in the next year.");
        }
        few(record.spring(), "springs", notes);
        few(record.autumn(), "autumns", notes);
        leftOut(record.spring(), "springs", notes);
        leftOut(record.autumn(), "autumns", notes);
        if (!record.yearsWithoutReading().isEmpty()) {
            notes.add("Without any minimum, and so not counted: %s.".formatted(years(record.yearsWithoutReading())));
        }
        if (station.doubted() > 0) {
            notes.add(
                    "%,d minima that the service itself marks as doubtful were left out.".formatted(station.doubted()));
        }
        return List.copyOf(notes);
    }

    private static void few(FrostSide side, String seasons, List<String> notes) {
        if (side.withFrost() == 0) {
            notes.add(
                    side.seasons().isEmpty()
                            ? "Not one of the %s has enough readings to tell.".formatted(seasons)
                            : "None of %d %s had a frost."
                                    .formatted(side.seasons().size(), seasons));
            return;
        }
        OptionalDouble within = side.halfWidthAt(0.1);
        if (side.withFrost() < FEW_SEASONS) {
            notes.add(
                    within.isPresent()
                            ? String.format(
                                    Locale.ROOT,
                                    "Only %d %s had a frost on record: the one-in-ten day may be off by %.0f days either way (nine chances in ten).",
                                    side.withFrost(),
                                    seasons,
                                    within.getAsDouble())
                            : "Only %d of the %s had a frost on record, too few to say how far the days spread."
                                    .formatted(side.withFrost(), seasons));
        }
    }

    private static void leftOut(FrostSide side, String seasons, List<String> notes) {
        if (side.leftOut() > 0) {
            notes.add(
                    "%d %s were left out because ten or more days are missing where frost could have changed the date."
                            .formatted(side.leftOut(), seasons));
        }
    }

    private static String years(List<Integer> years) {
        String named =
                years.stream().limit(MOST_YEARS_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        return years.size() > MOST_YEARS_NAMED
                ? "%s and %d more years".formatted(named, years.size() - MOST_YEARS_NAMED)
                : named;
    }

    /** What a trend means for the one-in-ten day, in a sentence. */
    public static String words(Trend trend, FrostSide side) {
        String which = side.spring() ? "last spring frost" : "first autumn frost";
        if (Math.abs(trend.daysPerDecade()) < LEAST_TOLD) {
            return "From %d to %d the %s came neither earlier nor later."
                    .formatted(trend.firstYear(), trend.lastYear(), which);
        }
        String moved = String.format(
                Locale.ROOT,
                "From %d to %d the %s came %.1f days %s each ten years",
                trend.firstYear(),
                trend.lastYear(),
                which,
                Math.abs(trend.daysPerDecade()),
                trend.daysPerDecade() > 0 ? "later" : "earlier");
        if (!trend.isClear()) {
            return moved + ", no more than chance could do in such a record.";
        }
        OptionalDouble now = trend.atItsEnd(side).dayAt(0.1);
        OptionalDouble whole = side.dayAt(0.1);
        if (now.isEmpty() || whole.isEmpty()) {
            return moved + ".";
        }
        double change = now.getAsDouble() - whole.getAsDouble();
        return String.format(
                Locale.ROOT,
                "%s, more than chance: counted for %d, the one-in-ten day is %.0f days %s than over the whole record.",
                moved,
                trend.lastYear(),
                Math.abs(change),
                change > 0 ? "later" : "earlier");
    }

    private static String plain(double celsius) {
        return String.format(Locale.ROOT, celsius == Math.rint(celsius) ? "%.0f" : "%.1f", celsius);
    }
}
