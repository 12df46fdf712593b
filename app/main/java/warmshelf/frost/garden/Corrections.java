package warmshelf.frost.garden;

import java.time.MonthDay;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.garden.FrostCorrection.Area;

/** Which correction holds for a garden, and how the days of corrections compare. */
public final class Corrections {
    private static final int LEAP_YEAR = 2024;
    private static final int DAYS = 366;

    private Corrections() {}

    /**
     * The one that holds: the garden's own, or else that of the area whose beginning fits most of the postcode.
     *
     * @param memberId whose garden it is; null: nobody's
     */
    public static Optional<FrostCorrection> holding(
            Collection<FrostCorrection> corrections, @Nullable UUID memberId, String country, String postcode) {
        Optional<FrostCorrection> own = corrections.stream()
                .filter(each -> each.area() instanceof Area.Garden garden
                        && garden.memberId().equals(memberId))
                .findFirst();
        return own.isPresent() ? own : ofArea(corrections, country, postcode);
    }

    private static Optional<FrostCorrection> ofArea(
            Collection<FrostCorrection> corrections, String country, String postcode) {
        String land = country.strip().toUpperCase(Locale.ROOT);
        String code = plain(postcode);
        return corrections.stream()
                .filter(each -> each.area() instanceof Area.Postcodes area
                        && area.country().equals(land)
                        && code.startsWith(area.start()))
                .max(Comparator.comparingInt(
                        each -> ((Area.Postcodes) each.area()).start().length()));
    }

    /** A postcode, or the beginning of one, in capitals and without spaces and hyphens. */
    public static String plain(String postcode) {
        return postcode.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }

    /** Days from one day of the year to another the short way round, negative when the other comes first; -183 to 182. */
    static int daysBetween(MonthDay first, MonthDay second) {
        int days = second.atYear(LEAP_YEAR).getDayOfYear()
                - first.atYear(LEAP_YEAR).getDayOfYear();
        return Math.floorMod(days + DAYS / 2, DAYS) - DAYS / 2;
    }
}
