package warmshelf.frost.evidence;

import java.time.MonthDay;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.garden.FrostCorrection.Change;
import warmshelf.frost.station.CalendarDay;
import warmshelf.frost.station.Side;

/** Applies what a person knows better to what the evidence tells. */
final class CorrectedFrost {
    private static final double ONE_IN_TEN = 1.2816;
    /** Where nothing but the average is known. */
    private static final double USUAL_SD_DAYS = 12;

    private static final double LEAST_SD_DAYS = 1;

    private final Change change;
    private final boolean south;

    CorrectedFrost(Change change, double latitude) {
        this.change = change;
        south = latitude < 0;
    }

    /** The season as corrected; empty where the evidence tells nothing and the correction names no date either. */
    Optional<FrostSeason> season(Side side, Optional<FrostSeason> told) {
        if (change instanceof Change.Shift shift) {
            return told.map(season -> season.movedBy(side == Side.SPRING ? shift.springDays() : shift.autumnDays()));
        }
        Change.Dates dates = (Change.Dates) change;
        return side == Side.SPRING
                ? dated(side, told, dates.springAverage(), dates.springOneInTen())
                : dated(side, told, dates.autumnAverage(), dates.autumnOneInTen());
    }

    private Optional<FrostSeason> dated(
            Side side, Optional<FrostSeason> told, @Nullable MonthDay average, @Nullable MonthDay oneInTen) {
        if (average == null && oneInTen == null) {
            return told;
        }
        double sd = told.map(FrostSeason::sdDays).orElse(USUAL_SD_DAYS);
        if (average != null && oneInTen != null) {
            sd = Math.max(LEAST_SD_DAYS, Math.abs(number(side, oneInTen) - number(side, average)) / ONE_IN_TEN);
        }
        double median = average != null
                ? number(side, average)
                : number(side, java.util.Objects.requireNonNull(oneInTen)) - side.sign() * ONE_IN_TEN * sd;
        double slope = told.map(FrostSeason::daysPer100M).orElse(0.0);
        return Optional.of(new FrostSeason(1, median, 0, slope, sd, 0, 0));
    }

    private double number(Side side, MonthDay day) {
        return side == Side.SPRING ? CalendarDay.spring(day, south) : CalendarDay.autumn(day, south);
    }
}
