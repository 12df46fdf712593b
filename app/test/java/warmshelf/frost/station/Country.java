package warmshelf.frost.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** A made-up country for the tests whose dates follow Hopkins' rule, but for what each station adds of its own. */
final class Country {
    private Country() {}

    static List<StationFrost> of(int stations, double siteSd, long seed, boolean south) {
        Random random = new Random(seed);
        List<StationFrost> all = new ArrayList<>();
        for (int i = 0; i < stations; i++) {
            double latitude = (south ? -1 : 1) * (40 + 5 * random.nextDouble());
            double longitude = 5 * random.nextDouble();
            double elevation = 800 * random.nextDouble();
            double own = siteSd * random.nextGaussian();
            double spring = springDay(latitude, elevation) + own;
            double autumn = 400 - springDay(latitude, elevation) - own;
            int half = south ? 181 : 0;
            all.add(new StationFrost(
                    "S" + i,
                    "Station " + i,
                    latitude,
                    longitude,
                    elevation,
                    Optional.of(new StationFrost.Dates(
                            new SeasonDays(spring + half, OptionalDouble.of(spring + half - 12)),
                            new SeasonDays(autumn + half, OptionalDouble.of(autumn + half + 12))))));
        }
        return all;
    }

    static double springDay(double latitude, double elevationM) {
        return 110 + 4 * (Math.abs(latitude) - 42) + 4 * elevationM / 121.92;
    }
}
