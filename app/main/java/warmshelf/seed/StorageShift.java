package warmshelf.seed;

import java.util.Optional;
import warmshelf.seed.StorageKind.Conditions;
import warmshelf.words.TemperatureUnit;

/**
 * How many times as long seed lives where it is kept as in an ordinary room, and how sure that is.
 *
 * <p>The room is that of the open-storage studies: 20.3 °C and 50.5 % humidity, at which vegetable seed settles at about 7.5 %
 * moisture (our figure, between the 6 % of oily and the 9 % of starchy seed). Harrington's rules of thumb say that each 1 % less
 * moisture, and each 10 °F less warmth, doubles the life. Real seed gains less from a good place: a review found half-lives of 5
 * to 10 years in rooms and 40 to 60 in cold and dry stores (Frontiers in Plant Science 2020, 11:1007), some seven times, where
 * the rules promise twenty for a jar in the fridge. So the rules' exponent is taken at {@value #BELIEVED} of itself.
 *
 * @param times as long as in the room
 * @param doubt one standard deviation of its logarithm
 */
record StorageShift(double times, double doubt) {
    static final Conditions ROOM = new Conditions(20.3, 7.5);
    private static final double BELIEVED = 0.65;
    private static final double CELSIUS_THAT_DOUBLE = TemperatureUnit.FAHRENHEIT.differenceToCelsius(10);
    private static final double DAMPEST_OF_THE_RULES = 14;
    // Our assumptions: nobody said where it lies; a place by its name; figures that were measured there.
    private static final double UNSAID = 0.5;
    private static final double NAMED = 0.3;
    private static final double MEASURED = 0.15;
    // The further from the room, the surer it is that the rule is off: so much for each logarithm of the shift.
    private static final double BY_DISTANCE = 0.25;

    static StorageShift of(Storage storage) {
        Optional<Conditions> kept = storage.conditions();
        if (kept.isEmpty()) {
            return new StorageShift(1, UNSAID);
        }
        return of(kept.get(), storage.kind() == StorageKind.OWN ? MEASURED : NAMED);
    }

    /** Of seed whose conditions were measured. */
    static StorageShift of(Conditions kept) {
        return of(kept, MEASURED);
    }

    private static StorageShift of(Conditions kept, double doubt) {
        // The rules are said to hold from 5 to 14 % and from 0 °C; outside, the nearer end counts.
        double drier = ROOM.moisturePercent() - Math.min(DAMPEST_OF_THE_RULES, kept.moisturePercent());
        double cooler = (ROOM.celsius() - Math.max(0, kept.celsius())) / CELSIUS_THAT_DOUBLE;
        double logarithm = BELIEVED * (drier + cooler) * Math.log(2);
        return new StorageShift(Math.exp(logarithm), Math.hypot(doubt, BY_DISTANCE * logarithm));
    }
}
