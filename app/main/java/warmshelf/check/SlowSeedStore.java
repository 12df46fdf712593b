package warmshelf.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.decision.Declined;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;

/** Slow seed keeps its place a few days at a time, for as long as nobody else has been promised it. */
final class SlowSeedStore {
    /** How much longer a tray may lie when seed is slow and nobody waits for the place. */
    private static final int EXTENSION_DAYS = 3;

    private final SowingStore sowings;
    private final EntryStore entries;
    private final StayStore stays;

    SlowSeedStore(SowingStore sowings, EntryStore entries, StayStore stays) {
        this.sowings = sowings;
        this.entries = entries;
        this.stays = stays;
    }

    /**
     * Lets what is slow keep its place, where it is about to run out or has.
     *
     * @return what the person who looked should know of it; empty where there is nothing to tell
     */
    Optional<PlaceRemark> extend(DSLContext sql, UUID sowingId, SowingStage stage, LocalDate day, UUID by) {
        return stage.isWaitingForSeed() || stage == SowingStage.EMERGED
                ? endingOrLapsed(sql, sowingId, day).map(stay -> extend(sql, stay, day, by))
                : Optional.empty();
    }

    private PlaceRemark extend(DSLContext sql, Stay stay, LocalDate day, UUID by) {
        LocalDate freeSince = stay.covers(day) ? null : stay.to();
        LocalDate to = day.plusDays(1 + EXTENSION_DAYS);
        try {
            sql.transaction(inside -> stays.extend(inside.dsl(), stay, to, by));
            return new PlaceRemark.Kept(freeSince, to);
        } catch (Declined declined) {
            return new PlaceRemark.Promised(freeSince, declined.reason());
        }
    }

    /** The stay that ends with the day, or one on a mat that ran out while nobody looked and the seed still lies there. */
    private Optional<Stay> endingOrLapsed(DSLContext sql, UUID sowingId, LocalDate day) {
        List<Stay> begun = StayBookStore.ofSowing(sql, sowingId).stream()
                .filter(stay -> stay.isBegunBy(day))
                .toList();
        return begun.stream()
                .filter(stay -> stay.covers(day) && !stay.to().isAfter(day.plusDays(1)))
                .findFirst()
                .or(() -> begun.stream()
                        .filter(Stay::isOnMat)
                        .reduce((earlier, later) -> later)
                        .filter(last -> !last.covers(day) && isWhereItWasSown(sql, sowingId)));
    }

    private boolean isWhereItWasSown(DSLContext sql, UUID sowingId) {
        Sowing sowing = sowings.find(sql, sowingId).orElseThrow();
        return Progress.of(sowing.method(), sowing.seeds(), entries.ofSowing(sql, sowingId))
                .isWhereItWasSown(sowing.method());
    }
}
