package warmshelf.group;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;

import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.InsertSetMoreStep;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.words.Units;

/** The one row that is the group's profile. */
public final class GroupStore {
    private static final int THE_ONE = 1;

    private final Database database;
    private final Audit audit;

    public GroupStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** A profile with the version to hand back when changing it. */
    public record Versioned(GroupProfile profile, int version) {}

    public boolean opened() {
        return find().isPresent();
    }

    public Optional<Versioned> find() {
        return database.sql()
                .selectFrom(GROUP_PROFILE)
                .fetchOptional(row -> new Versioned(
                        new GroupProfile(
                                row.getName(),
                                ZoneId.of(row.getTimeZone()),
                                Units.of(row.getTemperatureUnit(), row.getLengthUnit()),
                                row.getCountry(),
                                row.getHomePostcode(),
                                row.getSeason()),
                        row.getVersion()));
    }

    /**
     * Opens the group within the caller's transaction.
     *
     * @throws Declined when it has been opened already; the transaction is to end then
     */
    public void open(DSLContext sql, GroupProfile profile, UUID by) {
        InsertSetMoreStep<?> row = sql.insertInto(GROUP_PROFILE)
                .set(GROUP_PROFILE.ID, THE_ONE)
                .set(GROUP_PROFILE.NAME, profile.name())
                .set(GROUP_PROFILE.TIME_ZONE, profile.zone().getId())
                .set(
                        GROUP_PROFILE.TEMPERATURE_UNIT,
                        profile.units().temperature().letter())
                .set(GROUP_PROFILE.LENGTH_UNIT, profile.units().length().word())
                .set(GROUP_PROFILE.COUNTRY, profile.country())
                .set(GROUP_PROFILE.HOME_POSTCODE, profile.homePostcode())
                .set(GROUP_PROFILE.SEASON, profile.season())
                .set(GROUP_PROFILE.VERSION, 1);
        try {
            row.execute();
        } catch (IntegrityConstraintViolationException openedMeanwhile) {
            throw Declined.gone(new GroupRefusal.OpenedAlready());
        }
        audit.write(sql, by, "open group", "group_profile", THE_ONE, profile.name());
    }

    /** Changes the profile, all but its season, if it is still the version that was read. */
    public Decision<GroupProfile> change(int version, GroupProfile profile, UUID by) {
        return Decision.of(() -> database.sql().transactionResult(inside -> {
            int changed = inside.dsl()
                    .update(GROUP_PROFILE)
                    .set(GROUP_PROFILE.NAME, profile.name())
                    .set(GROUP_PROFILE.TIME_ZONE, profile.zone().getId())
                    .set(
                            GROUP_PROFILE.TEMPERATURE_UNIT,
                            profile.units().temperature().letter())
                    .set(GROUP_PROFILE.LENGTH_UNIT, profile.units().length().word())
                    .set(GROUP_PROFILE.COUNTRY, profile.country())
                    .set(GROUP_PROFILE.HOME_POSTCODE, profile.homePostcode())
                    .set(GROUP_PROFILE.VERSION, version + 1)
                    .where(GROUP_PROFILE.VERSION.eq(version))
                    .execute();
            if (changed == 0) {
                throw Declined.overtaken(new GroupRefusal.SettingsChanged());
            }
            audit.write(inside.dsl(), by, "change group", "group_profile", THE_ONE, profile.toString());
            return profile;
        }));
    }
}
