package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.GARDEN_POINT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.frost.evidence.VersionStore;

/** Where the members' gardens lie, and what people who know better say of their frost. */
public final class GardenStore {
    private static final String SUBJECT = "garden point";
    private static final int NONE = 0;

    private final Database database;
    private final Audit audit;

    public GardenStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** A point with the version to hand back when changing it. */
    public record Versioned(GardenPoint point, int version) {}

    public Optional<GardenPoint> point(UUID memberId) {
        return versioned(memberId).map(Versioned::point);
    }

    /** Every correction that holds, of gardens and of areas, with its maker's name. */
    public List<FrostCorrection> corrections() {
        return new CorrectionStore(database, audit).holding();
    }

    Optional<Versioned> versioned(UUID memberId) {
        return database.sql()
                .selectFrom(GARDEN_POINT)
                .where(GARDEN_POINT.MEMBER_ID.eq(memberId))
                .fetchOptional(row -> new Versioned(
                        new GardenPoint(row.getLatitude(), row.getLongitude(), row.getElevationM()), row.getVersion()));
    }

    /**
     * Sets a garden's point, unless somebody changed it since.
     *
     * @param version its version when it was shown; 0 when there was none
     * @return the version that it has now
     */
    public Decision<Integer> setPoint(UUID memberId, GardenPoint point, int version, UUID by) {
        return database.sql().transactionResult(work -> {
            // taken from the count of all changes, so that a point set anew never has the version of one that was
            // cleared
            VersionStore.grow(work.dsl());
            int newVersion = Math.toIntExact(VersionStore.now(work.dsl()));
            if (version(work.dsl(), memberId) != version) {
                return new Decision.Overtaken<>(new PointChanged());
            }
            delete(work.dsl(), memberId);
            work.dsl()
                    .insertInto(GARDEN_POINT)
                    .set(GARDEN_POINT.MEMBER_ID, memberId)
                    .set(GARDEN_POINT.LATITUDE, point.latitude())
                    .set(GARDEN_POINT.LONGITUDE, point.longitude())
                    .set(GARDEN_POINT.ELEVATION_M, point.elevationM())
                    .set(GARDEN_POINT.SET_BY, by)
                    .set(GARDEN_POINT.SET_AT, audit.now())
                    .set(GARDEN_POINT.VERSION, newVersion)
                    .execute();
            String detail = String.format(
                    Locale.ROOT, "%.5f, %.5f, %.0f m", point.latitude(), point.longitude(), point.elevationM());
            audit.write(work.dsl(), by, "set", SUBJECT, memberId, detail);
            return new Decision.Done<>(newVersion);
        });
    }

    /**
     * Forgets a garden's point, unless somebody changed it since.
     *
     * @return the version of the point that was forgotten
     */
    Decision<Integer> clearPoint(UUID memberId, int version, UUID by) {
        return database.sql().transactionResult(work -> {
            VersionStore.grow(work.dsl());
            if (version == NONE || version(work.dsl(), memberId) != version) {
                return new Decision.Overtaken<>(new PointChanged());
            }
            delete(work.dsl(), memberId);
            audit.write(work.dsl(), by, "clear", SUBJECT, memberId, "");
            return new Decision.Done<>(version);
        });
    }

    private static int version(DSLContext within, UUID memberId) {
        return within.select(GARDEN_POINT.VERSION)
                .from(GARDEN_POINT)
                .where(GARDEN_POINT.MEMBER_ID.eq(memberId))
                .fetchOptional(GARDEN_POINT.VERSION)
                .orElse(NONE);
    }

    private static void delete(DSLContext within, UUID memberId) {
        within.deleteFrom(GARDEN_POINT)
                .where(GARDEN_POINT.MEMBER_ID.eq(memberId))
                .execute();
    }
}
