package warmshelf.sowing;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.Threshold;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.frost.evidence.GardenFrost;
import warmshelf.frost.evidence.Gardens;
import warmshelf.frost.evidence.GroupEvidence;
import warmshelf.timeline.FrostDates;

/** The frost dates of a member's garden, from the best evidence at hand. Each is worked out once, until the evidence changes. */
public final class GrowerFrost {
    private static final double AVERAGE = 0.5;

    private final FrostSource source;
    private final Gardens gardens;
    private volatile Known known;

    public GrowerFrost(FrostSource source) {
        this.source = source;
        gardens = new Gardens(source);
        known = new Known(source.evidence(), new ConcurrentHashMap<>());
    }

    /** The climate of a member's garden; empty where nothing is known of it. */
    public Optional<FrostClimate> climate(UUID memberId, String country, String postcode) {
        GroupEvidence now = source.evidence();
        Known before = known;
        if (before.evidence() != now) {
            before = new Known(now, new ConcurrentHashMap<>());
            known = before;
        }
        return before.climates()
                .computeIfAbsent(
                        new Key(memberId, country, postcode),
                        key -> gardens.ofMember(memberId, country, postcode)
                                .flatMap(garden -> GardenFrost.of(garden, now, Threshold.FROST)));
    }

    /** The dates around one growing season at the risk accepted; empty where nothing is known. */
    public Optional<FrostDates> dates(Sowing.Grower grower, double risk, int season) {
        return climate(grower.memberId(), grower.country(), grower.postcode())
                .map(climate -> new FrostDates(
                        climate.lastSpringFrost(AVERAGE, season).orElse(null),
                        climate.lastSpringFrost(risk, season).orElse(null),
                        climate.firstAutumnFrost(risk, season).orElse(null)));
    }

    private record Key(UUID memberId, String country, String postcode) {}

    private record Known(GroupEvidence evidence, Map<Key, Optional<FrostClimate>> climates) {}
}
