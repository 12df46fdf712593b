package warmshelf.frost.garden;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What somebody who knows better says of frost in one garden or one postcode area, and why.
 *
 * @param by the name of who said so
 */
public record FrostCorrection(UUID id, Area area, Change change, String reason, String by, LocalDate on) {

    /** What it holds for. */
    public sealed interface Area {
        /** One member's garden. */
        record Garden(UUID memberId) implements Area {}

        /** All postcodes of a country that begin so, in capitals without spaces or hyphens; the longest that fits counts. */
        record Postcodes(String country, String start) implements Area {}
    }

    /** What it does to the dates. */
    public sealed interface Change {
        /** Days later than the evidence tells, negative for earlier. */
        record Shift(int springDays, int autumnDays) implements Change {}

        /**
         * The dates themselves.
         *
         * @param springAverage half of the springs have a frost after it; null: as the evidence tells
         * @param springOneInTen one spring in ten has; null: as far from the average as the evidence tells
         * @param autumnAverage half of the autumns had a frost before it
         * @param autumnOneInTen one autumn in ten had
         */
        record Dates(
                @Nullable MonthDay springAverage,
                @Nullable MonthDay springOneInTen,
                @Nullable MonthDay autumnAverage,
                @Nullable MonthDay autumnOneInTen)
                implements Change {}
    }
}
