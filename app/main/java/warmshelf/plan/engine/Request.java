package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.Collections;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;

/**
 * A sowing that asks for warm places.
 *
 * @param member whose it is
 * @param choice 1 for the member's first choice, 2 for the second, and so on
 * @param quarters 4 for a tray, 2 for a half tray, 1 for a bag
 * @param days how long it lies on a mat at a set-point that {@code daysAtC} does not list; null when only those listed will do
 * @param daysAtC how long it lies at the set-points listed
 * @param earliest first day on which it may begin; {@code latest} the last
 * @param needsLight whether it is not to lie on a mat without light: its seed comes up in light only
 * @param light what it needs after the mat; null when nothing is asked
 */
public record Request(
        String id,
        String member,
        int choice,
        int quarters,
        @Nullable Integer days,
        SortedMap<Integer, Integer> daysAtC,
        LocalDate earliest,
        LocalDate ideal,
        LocalDate latest,
        Band band,
        boolean needsLight,
        @Nullable Light light) {

    /** A lit place of that many quarters for that many days, from the day the stay leaves the mat. */
    public record Light(int days, int quarters) {}

    public Request {
        daysAtC = Collections.unmodifiableSortedMap(new TreeMap<>(daysAtC));
    }

    /** A request for seed that comes up in the dark as well. */
    public Request(
            String id,
            String member,
            int choice,
            int quarters,
            @Nullable Integer days,
            SortedMap<Integer, Integer> daysAtC,
            LocalDate earliest,
            LocalDate ideal,
            LocalDate latest,
            Band band,
            @Nullable Light light) {
        this(id, member, choice, quarters, days, daysAtC, earliest, ideal, latest, band, false, light);
    }

    /** Whether a mat is not dark to it. */
    public boolean sees(PlannedMat mat) {
        return !needsLight || !mat.light().isDark();
    }

    /** How long the stay lasts at a set-point; nothing when that set-point does not suit. */
    public OptionalInt daysAt(int celsius) {
        if (!band.contains(celsius)) {
            return OptionalInt.empty();
        }
        Integer listed = daysAtC.get(celsius);
        Integer lasts = listed != null ? listed : days;
        return lasts == null ? OptionalInt.empty() : OptionalInt.of(lasts);
    }
}
