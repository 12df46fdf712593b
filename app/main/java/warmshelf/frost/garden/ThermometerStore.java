package warmshelf.frost.garden;

import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.THERMOMETER;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.VersionStore;
import warmshelf.frost.minima.DailyMinima;

/** The thermometers that hang outdoors; {@link NightStore} keeps what they showed. */
public final class ThermometerStore {
    private static final String SUBJECT = "thermometer";
    private static final int DAYS_OF_A_WEEK = 7;

    private final Database database;
    private final Audit audit;

    public ThermometerStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    public UUID add(NewThermometer thermometer, UUID by) {
        return database.sql().transactionResult(work -> {
            VersionStore.grow(work.dsl());
            UUID id = UUID.randomUUID();
            GardenPoint point = thermometer.point();
            work.dsl()
                    .insertInto(THERMOMETER)
                    .set(THERMOMETER.ID, id)
                    .set(THERMOMETER.NAME, thermometer.name())
                    .set(THERMOMETER.MEMBER_ID, thermometer.memberId())
                    .set(THERMOMETER.LATITUDE, point.latitude())
                    .set(THERMOMETER.LONGITUDE, point.longitude())
                    .set(THERMOMETER.ELEVATION_M, point.elevationM())
                    .set(THERMOMETER.ADDED_BY, by)
                    .set(THERMOMETER.ADDED_AT, audit.now())
                    .execute();
            audit.write(work.dsl(), by, "add", SUBJECT, id, thermometer.name());
            return id;
        });
    }

    public Optional<Thermometer> find(UUID id) {
        return thermometers().where(THERMOMETER.ID.eq(id)).fetchOptional(ThermometerStore::thermometer);
    }

    /** Those that a person may see; the ones still read come first, then by name. */
    List<Thermometer> seenBy(UUID visitor, boolean coordinator) {
        return thermometers()
                .orderBy(THERMOMETER.RETIRED_AT.isNotNull(), DSL.lower(THERMOMETER.NAME), THERMOMETER.ID)
                .fetch(ThermometerStore::thermometer)
                .stream()
                .filter(each -> each.mayBeSeenBy(visitor, coordinator))
                .toList();
    }

    /** Those of which a person may note nights. */
    public List<Thermometer> readableBy(UUID visitor, boolean coordinator) {
        return seenBy(visitor, coordinator).stream()
                .filter(each -> !each.retired())
                .toList();
    }

    /** How much was noted of each; one without a night is missing. */
    Map<UUID, NotedNights> noted(LocalDate today) {
        Field<BigDecimal> coldest = DSL.min(THERMOMETER_NIGHT.CELSIUS)
                .filterWhere(THERMOMETER_NIGHT.ON_DAY.gt(today.minusDays(DAYS_OF_A_WEEK)));
        return database.sql()
                .select(THERMOMETER_NIGHT.THERMOMETER_ID, DSL.count(), coldest, DSL.max(THERMOMETER_NIGHT.ON_DAY))
                .from(THERMOMETER_NIGHT)
                .groupBy(THERMOMETER_NIGHT.THERMOMETER_ID)
                .fetchMap(
                        THERMOMETER_NIGHT.THERMOMETER_ID,
                        row -> new NotedNights(
                                row.value2(),
                                row.value3() == null
                                        ? null
                                        : (Double) row.value3().doubleValue(),
                                row.value4()));
    }

    /** Takes a thermometer down: what it showed is kept, nothing is added. False when that was done before. */
    boolean retire(UUID id, UUID by) {
        return database.sql().transactionResult(work -> {
            VersionStore.grow(work.dsl());
            int changed = work.dsl()
                    .update(THERMOMETER)
                    .set(THERMOMETER.RETIRED_BY, by)
                    .set(THERMOMETER.RETIRED_AT, audit.now())
                    .where(THERMOMETER.ID.eq(id).and(THERMOMETER.RETIRED_AT.isNull()))
                    .execute();
            if (changed == 1) {
                audit.write(work.dsl(), by, "retire", SUBJECT, id, "");
            }
            return changed == 1;
        });
    }

    /** All that every thermometer showed, retired ones too; by name. One without a night has an empty record. */
    public List<ThermometerRecord> allRecords() {
        Map<UUID, DailyMinima> minima = new HashMap<>();
        database.sql()
                .select(THERMOMETER_NIGHT.THERMOMETER_ID, THERMOMETER_NIGHT.ON_DAY, THERMOMETER_NIGHT.CELSIUS)
                .from(THERMOMETER_NIGHT)
                .forEach(row -> minima.computeIfAbsent(row.value1(), unused -> new DailyMinima())
                        .add(row.value2(), row.value3().doubleValue()));
        return thermometers()
                .orderBy(DSL.lower(THERMOMETER.NAME), THERMOMETER.ID)
                .fetch(ThermometerStore::thermometer)
                .stream()
                .map(each -> record(each, minima.getOrDefault(each.id(), new DailyMinima())))
                .toList();
    }

    /** All that one thermometer showed. */
    ThermometerRecord recordOf(Thermometer thermometer) {
        DailyMinima minima = new DailyMinima();
        database.sql()
                .select(THERMOMETER_NIGHT.ON_DAY, THERMOMETER_NIGHT.CELSIUS)
                .from(THERMOMETER_NIGHT)
                .where(THERMOMETER_NIGHT.THERMOMETER_ID.eq(thermometer.id()))
                .forEach(row -> minima.add(row.value1(), row.value2().doubleValue()));
        return record(thermometer, minima);
    }

    private static ThermometerRecord record(Thermometer thermometer, DailyMinima minima) {
        return new ThermometerRecord(
                thermometer.id(), thermometer.name(), thermometer.memberId(), thermometer.point(), minima);
    }

    private SelectOnConditionStep<Record> thermometers() {
        return database.sql()
                .select(THERMOMETER.asterisk(), MEMBER.CALLED)
                .from(THERMOMETER)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(THERMOMETER.MEMBER_ID));
    }

    private static Thermometer thermometer(Record row) {
        return new Thermometer(
                row.get(THERMOMETER.ID),
                row.get(THERMOMETER.NAME),
                row.get(THERMOMETER.MEMBER_ID),
                row.get(MEMBER.CALLED),
                new GardenPoint(
                        row.get(THERMOMETER.LATITUDE),
                        row.get(THERMOMETER.LONGITUDE),
                        row.get(THERMOMETER.ELEVATION_M)),
                row.get(THERMOMETER.RETIRED_AT) != null);
    }
}
