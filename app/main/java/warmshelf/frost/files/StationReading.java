package warmshelf.frost.files;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

/**
 * A station as it was read from a file or typed in.
 *
 * @param code the service's, or empty
 * @param elevationM metres above the sea
 * @param days at most one for each threshold and side
 * @param seasons the years behind them, where they are known
 */
public record StationReading(
        String code,
        String name,
        double latitude,
        double longitude,
        double elevationM,
        List<FrostDay> days,
        List<Season> seasons) {

    /**
     * One year's frost.
     *
     * @param frostOn null: that season had none
     */
    public record Season(
            Threshold threshold,
            Side side,
            int year,
            @Nullable LocalDate frostOn) {}
}
