package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import warmshelf.frost.FrostClimate;
import warmshelf.group.GroupProfile;
import warmshelf.sowing.GrowerFrost;
import warmshelf.words.DayWords;

/** The frosts where the group's racks stand. */
final class GroupFrost {
    // One frost in ten years later than the day that is told.
    private static final double RISK = 0.1;
    // Nobody's garden: the group's own postcode has no point and no correction of a member.
    private static final UUID NOBODY = new UUID(0, 0);

    private final Supplier<GroupProfile> group;
    private final GrowerFrost frost;

    GroupFrost(Supplier<GroupProfile> group, GrowerFrost frost) {
        this.group = group;
        this.frost = frost;
    }

    /** Whether the racks stand south of the equator; no where nothing is known of them. */
    boolean isSouth() {
        return climate().filter(climate -> climate.latitude() < 0).isPresent();
    }

    /** A sentence on the last frost of a season; empty where nothing is known of it. */
    Optional<String> lastFrost(int season) {
        return climate()
                .flatMap(climate -> climate.lastSpringFrost(RISK, season))
                .map(day -> SAY.lastFrost(DayWords.dayOfMonth(day), season, (int) Math.round(100 * (1 - RISK))));
    }

    /** Whether tender plants would not be out yet on a day; no where nothing is known of the frosts. */
    boolean isBeforeLastFrost(int season, LocalDate today) {
        return climate()
                .flatMap(climate -> climate.lastSpringFrost(RISK, season))
                .filter(today::isBefore)
                .isPresent();
    }

    private Optional<FrostClimate> climate() {
        GroupProfile profile = group.get();
        return frost.climate(NOBODY, profile.country(), profile.homePostcode());
    }
}
