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
        return climate(memberId, country, postcode, Threshold.FROST);
    }

    // The evidence is one object until some of it changes; comparing all of it each time would cost more than it saves.
    @SuppressWarnings("ReferenceEquality")
    private Optional<FrostClimate> climate(UUID memberId, String country, String postcode, Threshold threshold) {
        GroupEvidence now = source.evidence();
        Known before = known;
        if (before.evidence() != now) {
            before = new Known(now, new ConcurrentHashMap<>());
            known = before;
        }
        return before.climates()
                .computeIfAbsent(
                        new Key(memberId, country, postcode, threshold),
                        key -> gardens.ofMember(memberId, country, postcode)
                                .flatMap(garden -> GardenFrost.of(garden, now, threshold)));
    }

    /** The dates around one growing season at the risk accepted; empty where nothing is known. */
    public Optional<FrostDates> dates(Sowing.Grower grower, double risk, int season) {
        Optional<FrostClimate> killing =
                climate(grower.memberId(), grower.country(), grower.postcode(), Threshold.KILLING);
        return climate(grower.memberId(), grower.country(), grower.postcode())
                .map(climate -> FrostDates.of(climate, killing.orElse(climate), risk, season));
    }

    private record Key(UUID memberId, String country, String postcode, Threshold threshold) {}

    private record Known(GroupEvidence evidence, Map<Key, Optional<FrostClimate>> climates) {}
}
