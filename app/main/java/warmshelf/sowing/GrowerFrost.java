package warmshelf.sowing;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.FrostClimates;
import warmshelf.frost.Postcodes;
import warmshelf.timeline.FrostDates;

/** The frost dates of a member's garden, by postcode. Each postcode is worked out once. */
public final class GrowerFrost {
    private static final double AVERAGE = 0.5;

    private final Map<String, Optional<FrostClimate>> byPostcode = new ConcurrentHashMap<>();

    /** The climate at a postcode; empty where the bundled tables have nothing. */
    public Optional<FrostClimate> climate(String country, String postcode) {
        return byPostcode.computeIfAbsent(
                country + " " + postcode,
                key -> Postcodes.bundled().find(country, postcode).flatMap(FrostClimates::find));
    }

    /** The dates around one growing season at the risk accepted; empty where nothing is known. */
    public Optional<FrostDates> dates(String country, String postcode, double risk, int season) {
        return climate(country, postcode)
                .map(climate -> new FrostDates(
                        climate.lastSpringFrost(AVERAGE, season).orElse(null),
                        climate.lastSpringFrost(risk, season).orElse(null),
                        climate.firstAutumnFrost(risk, season).orElse(null)));
    }
}
