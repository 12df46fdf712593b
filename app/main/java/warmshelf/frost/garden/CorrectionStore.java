package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.FROST_CORRECTION;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.MEMBER;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Result;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.Member;
import warmshelf.db.generated.tables.records.FrostCorrectionRecord;
import warmshelf.frost.evidence.VersionStore;
import warmshelf.frost.garden.FrostCorrection.Area;
import warmshelf.frost.garden.FrostCorrection.Change;

/** Keeps corrections: nothing is edited, what no longer holds is ended. */
public final class CorrectionStore {
    private static final String SUBJECT = "frost correction";
    private static final Member MAKER = MEMBER.as("maker");
    private static final Member ENDER = MEMBER.as("ender");

    private final Database database;
    private final Audit audit;

    public CorrectionStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** Every one that holds, of gardens and of areas; areas by country and beginning. */
    List<FrostCorrection> holding() {
        return found(FROST_CORRECTION.ENDED_AT.isNull()).stream()
                .map(EndedCorrection::correction)
                .toList();
    }

    /** Those of one garden or area that no longer hold, the last ended first. */
    List<EndedCorrection> ended(Area area) {
        return found(FROST_CORRECTION.ENDED_AT.isNotNull().and(CorrectionColumnsStore.of(area)));
    }

    /** Those of all areas that no longer hold, the last ended first. */
    List<EndedCorrection> endedOfAreas() {
        return found(FROST_CORRECTION.ENDED_AT.isNotNull().and(FROST_CORRECTION.MEMBER_ID.isNull()));
    }

    /** Makes a correction; the one that held for the same garden or area is ended by it. */
    public UUID correct(Area area, Change change, String reason, UUID by) {
        return database.sql().transactionResult(work -> {
            DSLContext tx = work.dsl();
            // first, so that of two made at once the second ends the first
            VersionStore.grow(tx);
            UUID id = UUID.randomUUID();
            end(tx, FROST_CORRECTION.ENDED_AT.isNull().and(CorrectionColumnsStore.of(area)), by);
            FrostCorrectionRecord row = tx.newRecord(FROST_CORRECTION);
            row.setId(id);
            CorrectionColumnsStore.put(row, area, change);
            row.setReason(reason);
            row.setMadeBy(by);
            row.setMadeAt(audit.now());
            row.insert();
            String detail = "%s: %s".formatted(CorrectionWords.of(area), CorrectionWords.of(change));
            audit.write(tx, by, "correct", SUBJECT, id, detail);
            return id;
        });
    }

    /** Ends a garden's own correction; false when that garden has no such one that holds. */
    boolean endOfGarden(UUID id, UUID memberId, UUID by) {
        return end(FROST_CORRECTION.ID.eq(id).and(FROST_CORRECTION.MEMBER_ID.eq(memberId)), by);
    }

    /** Ends an area's correction; false when no area has such one that holds. */
    boolean endOfArea(UUID id, UUID by) {
        return end(FROST_CORRECTION.ID.eq(id).and(FROST_CORRECTION.MEMBER_ID.isNull()), by);
    }

    private boolean end(Condition which, UUID by) {
        return database.sql().transactionResult(work -> {
            VersionStore.grow(work.dsl());
            return end(work.dsl(), FROST_CORRECTION.ENDED_AT.isNull().and(which), by) > 0;
        });
    }

    private int end(DSLContext within, Condition which, UUID by) {
        List<UUID> ids = within.select(FROST_CORRECTION.ID)
                .from(FROST_CORRECTION)
                .where(which)
                .fetch(FROST_CORRECTION.ID);
        for (UUID id : ids) {
            within.update(FROST_CORRECTION)
                    .set(FROST_CORRECTION.ENDED_BY, by)
                    .set(FROST_CORRECTION.ENDED_AT, audit.now())
                    .where(FROST_CORRECTION.ID.eq(id))
                    .execute();
            audit.write(within, by, "end", SUBJECT, id, "");
        }
        return ids.size();
    }

    /** Corrections with who ended them; where they hold, that part is a stand-in. */
    private List<EndedCorrection> found(Condition which) {
        ZoneId zone = zone();
        Result<Record> rows = database.sql()
                .select(FROST_CORRECTION.asterisk(), MAKER.CALLED, ENDER.CALLED)
                .from(FROST_CORRECTION)
                .join(MAKER)
                .on(MAKER.ID.eq(FROST_CORRECTION.MADE_BY))
                .leftJoin(ENDER)
                .on(ENDER.ID.eq(FROST_CORRECTION.ENDED_BY))
                .where(which)
                .orderBy(
                        FROST_CORRECTION.ENDED_AT.desc(),
                        FROST_CORRECTION.COUNTRY,
                        FROST_CORRECTION.POSTCODE_START,
                        FROST_CORRECTION.MADE_AT)
                .fetch();
        return rows.map(row -> ended(row, zone));
    }

    private static EndedCorrection ended(Record row, ZoneId zone) {
        FrostCorrectionRecord stored = row.into(FROST_CORRECTION);
        OffsetDateTime made = stored.getMadeAt();
        FrostCorrection correction = new FrostCorrection(
                stored.getId(),
                CorrectionColumnsStore.area(stored),
                CorrectionColumnsStore.change(stored),
                stored.getReason(),
                row.get(MAKER.CALLED),
                made.atZoneSameInstant(zone).toLocalDate());
        OffsetDateTime ended = stored.getEndedAt();
        return ended == null
                ? new EndedCorrection(correction, correction.by(), correction.on())
                : new EndedCorrection(
                        correction,
                        row.get(ENDER.CALLED),
                        ended.atZoneSameInstant(zone).toLocalDate());
    }

    /** The zone in which a moment's day is told: the group's. */
    private ZoneId zone() {
        return database.sql()
                .select(GROUP_PROFILE.TIME_ZONE)
                .from(GROUP_PROFILE)
                .fetchOptional(GROUP_PROFILE.TIME_ZONE)
                .map(ZoneId::of)
                .orElse(ZoneOffset.UTC);
    }
}
