package warmshelf.frost.garden;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Which correction holds for a garden: its own, or else that of the longest beginning of its postcode. */
public final class Corrections {
    private Corrections() {}

    /** The one that holds; empty where none does. */
    public static Optional<FrostCorrection> holding(
            List<FrostCorrection> corrections, @Nullable UUID memberId, String country, String postcode) {
        String code = postcode.toUpperCase(Locale.ROOT).replaceAll("[ -]", "");
        Optional<FrostCorrection> own = corrections.stream()
                .filter(one -> one.area() instanceof FrostCorrection.Area.Garden garden
                        && garden.memberId().equals(memberId))
                .findFirst();
        return own.isPresent()
                ? own
                : corrections.stream()
                        .filter(one -> start(one, country, code) > 0)
                        .max(Comparator.comparingInt(one -> start(one, country, code)));
    }

    /** How many characters of the postcode a correction names; 0 where it speaks of others. */
    private static int start(FrostCorrection correction, String country, String code) {
        return correction.area() instanceof FrostCorrection.Area.Postcodes area
                        && area.country().equals(country)
                        && code.startsWith(area.start())
                ? area.start().length()
                : 0;
    }
}
