package warmshelf.frost.station;

import static warmshelf.frost.station.StationSentences.SAY;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import warmshelf.BadInput;
import warmshelf.Given;

/**
 * One row of a table of stations with published frost dates: the columns {@code latitude}, {@code longitude}, {@code
 * elevation_m}, {@code spring_p50}, {@code autumn_p50} (month-day, such as 05-14), and if it likes {@code station}, {@code
 * station_id} and the 10 and 90 % dates {@code spring_p10}, {@code spring_p90}, {@code autumn_p10}, {@code autumn_p90}; others
 * are passed over. A station whose two middle dates are empty is one where frost is too rare.
 */
public final class StationRow {
    public static final List<String> NEEDED =
            List.of("latitude", "longitude", "elevation_m", "spring_p50", "autumn_p50");

    private StationRow() {}

    /** The columns that a heading lacks. */
    public static List<String> missing(Collection<String> heading) {
        return NEEDED.stream().filter(column -> !heading.contains(column)).toList();
    }

    /**
     * Reads a row.
     *
     * @param cell the text of a column, empty where there is no such column
     * @throws BadInput when it cannot be used, naming the column
     */
    public static StationFrost read(UnaryOperator<String> cell) {
        double latitude = Given.decimal("latitude", cell.apply("latitude"), -90, 90);
        return new StationFrost(
                cell.apply("station_id"),
                cell.apply("station"),
                latitude,
                Given.decimal("longitude", cell.apply("longitude"), -180, 180),
                Given.decimal("elevation_m", cell.apply("elevation_m"), -430, 6500),
                dates(cell, latitude < 0));
    }

    private static Optional<StationFrost.Dates> dates(UnaryOperator<String> cell, boolean south) {
        if (cell.apply("spring_p50").isEmpty() && cell.apply("autumn_p50").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new StationFrost.Dates(
                days(cell, "spring", Side.SPRING, south), days(cell, "autumn", Side.AUTUMN, south)));
    }

    private static SeasonDays days(UnaryOperator<String> cell, String season, Side side, boolean south) {
        return new SeasonDays(
                day(cell, season + "_p50", side, south),
                optionalDay(cell, season + "_p90", side, south),
                optionalDay(cell, season + "_p10", side, south));
    }

    private static OptionalDouble optionalDay(UnaryOperator<String> cell, String column, Side side, boolean south) {
        return cell.apply(column).isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(day(cell, column, side, south));
    }

    private static int day(UnaryOperator<String> cell, String column, Side side, boolean south) {
        try {
            MonthDay day = MonthDay.parse("--" + cell.apply(column));
            return side == Side.SPRING ? CalendarDay.spring(day, south) : CalendarDay.autumn(day, south);
        } catch (DateTimeException notADay) {
            throw new BadInput(SAY.noDay(column, Given.shown(cell.apply(column))));
        }
    }
}
