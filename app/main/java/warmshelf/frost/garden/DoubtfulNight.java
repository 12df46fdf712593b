package warmshelf.frost.garden;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Temperatures that are asked back once, because a slip of the finger or of the sign is likelier than such a night. The
 * bounds are ours: they refuse nothing.
 */
public final class DoubtfulNight {
    public static final int DAYS_AROUND = 21;
    private static final int FEWEST_NIGHTS = 3;
    private static final double MUCH_COLDER_C = 10;
    private static final double WARM_C = 25;

    private DoubtfulNight() {}

    /**
     * Why a temperature is doubtful; empty where it is not.
     *
     * @param noted other nights; those more than three weeks away do not count, and fewer than three tell nothing
     */
    public static Optional<NightDoubt> why(LocalDate day, double celsius, Collection<Night> noted) {
        if (celsius > WARM_C) {
            return Optional.of(new NightDoubt.Warm(celsius));
        }
        Collection<Night> around =
                noted.stream().filter(night -> isNear(night.day(), day)).toList();
        OptionalDouble coldest = around.stream().mapToDouble(Night::celsius).min();
        if (around.size() < FEWEST_NIGHTS || celsius >= coldest.orElseThrow() - MUCH_COLDER_C) {
            return Optional.empty();
        }
        return Optional.of(new NightDoubt.MuchColder(celsius, MUCH_COLDER_C, coldest.getAsDouble()));
    }

    private static boolean isNear(LocalDate night, LocalDate day) {
        return !night.equals(day) && Math.abs(ChronoUnit.DAYS.between(night, day)) <= DAYS_AROUND;
    }
}
