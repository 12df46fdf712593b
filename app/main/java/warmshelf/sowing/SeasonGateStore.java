package warmshelf.sowing;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.SEASON_CLOSING;

import java.util.Optional;
import org.jooq.DSLContext;
import warmshelf.db.Database;
import warmshelf.decision.Declined;

/** Whether a season takes anything that is asked for: it is the one that the group works towards, and not closed. */
public final class SeasonGateStore {
    private final DSLContext sql;

    SeasonGateStore(Database database) {
        this.sql = database.sql();
    }

    /** Why nothing can be asked for in a season now; empty: it can. */
    Optional<SowingRefusal> whyClosed(int season) {
        return whyClosed(sql, season);
    }

    /** The season that the group works towards, held until the transaction ends, so that it is neither closed nor turned meanwhile. */
    public static int hold(DSLContext tx) {
        return held(tx).orElseThrow();
    }

    private static Optional<Integer> held(DSLContext tx) {
        return tx.select(GROUP_PROFILE.SEASON).from(GROUP_PROFILE).forUpdate().fetchOptional(GROUP_PROFILE.SEASON);
    }

    private static Optional<SowingRefusal> whyClosed(DSLContext sql, int season) {
        boolean closed = sql.fetchExists(SEASON_CLOSING, SEASON_CLOSING.STANDING.eq(season));
        return closed ? Optional.of(new SowingRefusal.SeasonClosed(season)) : Optional.empty();
    }

    /**
     * Lets a sowing of a season in, held until the transaction ends.
     *
     * @throws Declined when the group works towards another by now, or has closed it; the transaction is to end then
     */
    public static void enter(DSLContext tx, int season) {
        // Where no group has been opened, no season has been turned either.
        held(tx).filter(now -> now != season).ifPresent(now -> {
            throw Declined.overtaken(new SowingRefusal.SeasonTurned(season, now));
        });
        whyClosed(tx, season).ifPresent(reason -> {
            throw Declined.overtaken(reason);
        });
    }
}
