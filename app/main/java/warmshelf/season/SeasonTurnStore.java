package warmshelf.season;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SEASON_CLOSING;
import static warmshelf.db.generated.Tables.SOWING;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.SeasonClosingRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.sowing.SeasonGateStore;
import warmshelf.sowing.SowingStore;

/** Reads seasons that were closed, opens the next one, and takes both back while nothing hangs on them. */
final class SeasonTurnStore {
    private final DSLContext sql;
    private final Audit audit;

    SeasonTurnStore(Database database, Audit audit) {
        this.sql = database.sql();
        this.audit = audit;
    }

    /** The closings that stand, the latest season first. */
    List<SeasonClosing> closings() {
        return sql.select(SEASON_CLOSING.asterisk(), MEMBER.CALLED)
                .from(SEASON_CLOSING)
                .join(MEMBER)
                .on(MEMBER.ID.eq(SEASON_CLOSING.CLOSED_BY))
                .where(SEASON_CLOSING.STANDING.isNotNull())
                .orderBy(SEASON_CLOSING.SEASON.desc())
                .fetch(SeasonTurnStore::closing);
    }

    /** The closing of a season that stands. */
    Optional<SeasonClosing> closing(int season) {
        return closings().stream().filter(each -> each.season() == season).findFirst();
    }

    /** Opens a season after the one that the group works towards, which must be closed. */
    Decision<Integer> open(int after, int next, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int now = SeasonGateStore.hold(tx);
            if (now != after) {
                throw Declined.overtaken(new SeasonRefusal.OpenedAlready(now));
            }
            SeasonClosingRecord closing =
                    standing(tx, after).orElseThrow(() -> Declined.overtaken(new SeasonRefusal.NotClosed(after)));
            closing.setNextSeason(next);
            closing.setOpenedBy(by);
            closing.setOpenedAt(audit.now());
            closing.update();
            turnTo(tx, next, by, "open season");
            return next;
        }));
    }

    /** Takes the opening of a season back, as long as nothing was asked for in it: the one before it is closed as it was. */
    Decision<Integer> takeOpeningBack(int season, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            requireUnused(tx, season);
            SeasonClosingRecord before = tx.selectFrom(SEASON_CLOSING)
                    .where(SEASON_CLOSING.NEXT_SEASON.eq(season), SEASON_CLOSING.STANDING.isNotNull())
                    .fetchOptional()
                    .orElseThrow(() -> Declined.overtaken(new SeasonRefusal.NothingToTakeBack(season)));
            before.setNextSeason(null);
            before.setOpenedBy(null);
            before.setOpenedAt(null);
            before.update();
            turnTo(tx, before.getSeason(), by, "take opening of season back");
            return before.getSeason();
        }));
    }

    /** Takes a closing back, as long as the next season is not open. */
    Decision<Integer> takeClosingBack(int season, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            int now = SeasonGateStore.hold(tx);
            SeasonClosingRecord closing = standing(tx, season)
                    .filter(each -> now == season)
                    .orElseThrow(() -> Declined.overtaken(new SeasonRefusal.NothingToTakeBack(season)));
            closing.setStanding(null);
            closing.setTakenBackBy(by);
            closing.setTakenBackAt(audit.now());
            closing.update();
            audit.write(tx, by, "take closing of season back", "season_closing", closing.getId(), year(season));
            return season;
        }));
    }

    /** Names the season that the group works towards otherwise, as long as nothing was asked for in it and none was closed before. */
    Decision<Integer> rename(int season, int other, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            requireUnused(tx, season);
            Integer latest = tx.select(SEASON_CLOSING.SEASON)
                    .from(SEASON_CLOSING)
                    .where(SEASON_CLOSING.STANDING.isNotNull())
                    .orderBy(SEASON_CLOSING.SEASON.desc())
                    .limit(1)
                    .fetchOne(SEASON_CLOSING.SEASON);
            if (latest != null && latest >= other) {
                throw Declined.refused(new SeasonRefusal.ClosedAlready(latest));
            }
            tx.update(SEASON_CLOSING)
                    .set(SEASON_CLOSING.NEXT_SEASON, other)
                    .where(SEASON_CLOSING.NEXT_SEASON.eq(season), SEASON_CLOSING.STANDING.isNotNull())
                    .execute();
            turnTo(tx, other, by, "rename season");
            return other;
        }));
    }

    private static void requireUnused(DSLContext tx, int season) {
        int now = SeasonGateStore.hold(tx);
        if (now != season) {
            throw Declined.overtaken(new SeasonRefusal.OpenedAlready(now));
        }
        if (standing(tx, season).isPresent()) {
            throw Declined.overtaken(new SeasonRefusal.ClosedAlready(season));
        }
        int sowings = tx.fetchCount(SOWING, SowingStore.ofSeason(season));
        if (sowings > 0) {
            throw Declined.refused(new SeasonRefusal.InUse(season, sowings));
        }
    }

    private static Optional<SeasonClosingRecord> standing(DSLContext tx, int season) {
        return tx.selectFrom(SEASON_CLOSING)
                .where(SEASON_CLOSING.STANDING.eq(season))
                .fetchOptional();
    }

    private void turnTo(DSLContext tx, int season, UUID by, String action) {
        tx.update(GROUP_PROFILE)
                .set(GROUP_PROFILE.SEASON, season)
                .set(GROUP_PROFILE.VERSION, GROUP_PROFILE.VERSION.plus(1))
                .execute();
        audit.write(tx, by, action, "group_profile", 1, year(season));
    }

    private static String year(int season) {
        return Integer.toString(season);
    }

    private static SeasonClosing closing(Record row) {
        SeasonClosingRecord kept = row.into(SEASON_CLOSING);
        return new SeasonClosing(
                kept.getId(),
                kept.getSeason(),
                row.get(MEMBER.CALLED),
                kept.getClosedAt(),
                kept.getNextSeason(),
                new SeasonClosing.ClosedFigures(
                        kept.getAsked(),
                        kept.getMembers(),
                        kept.getSown(),
                        kept.getWithdrawn(),
                        kept.getGoingOn(),
                        kept.getSeeds(),
                        kept.getCounted(),
                        kept.getCame(),
                        kept.getPlantsOut(),
                        kept.getPlantsGiven(),
                        kept.getSeedlingsLost(),
                        kept.getGivenUp(),
                        kept.getNotRecorded()));
    }
}
