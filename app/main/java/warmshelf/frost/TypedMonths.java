package warmshelf.frost;

import static warmshelf.frost.FrostSentences.SAY;

import java.util.Arrays;
import warmshelf.BadInput;
import warmshelf.Given;

/** Twelve monthly means typed in. */
final class TypedMonths {
    private static final int MONTHS = 12;
    private static final double COLDEST_C = -70;
    private static final double WARMEST_C = 40;

    private TypedMonths() {}

    /** Reads {@code T1,...,T12}, mean daily minimum of January to December in degrees Celsius. */
    static double[] of(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != MONTHS) {
            throw new BadInput(SAY.monthsCounted(parts.length));
        }
        return Arrays.stream(parts)
                .mapToDouble(part -> Given.decimal(SAY.meanOfMonthly(), part, COLDEST_C, WARMEST_C))
                .toArray();
    }
}
