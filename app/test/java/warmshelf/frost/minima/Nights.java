package warmshelf.frost.minima;

import java.time.LocalDate;
import java.util.function.ToDoubleFunction;

/** Made-up records for the tests: a minimum for every day, with exceptions. */
final class Nights {
    private final DailyMinima minima = new DailyMinima();

    private Nights() {}

    /** Every day from the first of one year to the last of another. */
    static DailyMinima of(int fromYear, int toYear, ToDoubleFunction<LocalDate> celsius) {
        return between(LocalDate.of(fromYear, 1, 1), LocalDate.of(toYear, 12, 31), celsius);
    }

    /** Every day from one to another for which the function gives a number. */
    static DailyMinima between(LocalDate from, LocalDate to, ToDoubleFunction<LocalDate> celsius) {
        Nights nights = new Nights();
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            double minimum = celsius.applyAsDouble(day);
            if (!Double.isNaN(minimum)) {
                nights.minima.add(day, minimum);
            }
        }
        return nights.minima;
    }

    /** A northern year: -10 at its coldest in January, 20 at its warmest in July. */
    static double north(LocalDate day) {
        return 5 - 15 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.25);
    }
}
