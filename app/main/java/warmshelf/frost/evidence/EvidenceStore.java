package warmshelf.frost.evidence;

import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.GARDEN_POINT;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.Threshold;
import warmshelf.frost.garden.FrostCorrection;
import warmshelf.frost.garden.GardenPoint;
import warmshelf.frost.garden.GardenStore;
import warmshelf.frost.garden.ThermometerRecord;
import warmshelf.frost.garden.ThermometerStore;
import warmshelf.frost.station.Side;

/**
 * Reads what the group knows of frost, and keeps it until something of it changes: every change adds one to the version of
 * the evidence. The version is asked for when this process has written anything, and where other processes share the
 * database after two seconds as well.
 */
public final class EvidenceStore implements FrostSource {
    private static final long KEPT_NANOS = Duration.ofSeconds(2).toNanos();

    private final Database database;
    private final Supplier<List<FrostCorrection>> corrections;
    private final Supplier<List<ThermometerRecord>> thermometers;
    private volatile @Nullable Kept kept;

    /** Over a group's database. */
    public static EvidenceStore over(Database database, Audit audit) {
        return new EvidenceStore(
                database,
                new GardenStore(database, audit)::corrections,
                new ThermometerStore(database, audit)::allRecords);
    }

    EvidenceStore(
            Database database,
            Supplier<List<FrostCorrection>> corrections,
            Supplier<List<ThermometerRecord>> thermometers) {
        this.database = database;
        this.corrections = corrections;
        this.thermometers = thermometers;
    }

    @Override
    public GroupEvidence evidence() {
        Kept last = kept;
        return last != null && isFresh(last) ? last.evidence() : readOnce();
    }

    private boolean isFresh(Kept last) {
        return last.writes() == database.writesBesideLooks()
                && (!database.isShared() || System.nanoTime() - last.sinceNanos() < KEPT_NANOS);
    }

    private synchronized GroupEvidence readOnce() {
        Kept last = kept;
        if (last != null && isFresh(last)) {
            return last.evidence();
        }
        // Counted before reading: what is written meanwhile makes this stale at once.
        long writes = database.writesBesideLooks();
        long version = VersionStore.now(database.sql());
        GroupEvidence read = last != null && last.version() == version ? last.evidence() : read();
        kept = new Kept(read, version, writes, System.nanoTime());
        return read;
    }

    private GroupEvidence read() {
        List<LocalStation> stations = new ArrayList<>(stations(database.sql()));
        thermometers.get().forEach(record -> stations.add(ThermometerStation.of(record)));
        return new GroupEvidence(List.copyOf(stations), List.copyOf(corrections.get()), gardens(database.sql()));
    }

    private static List<LocalStation> stations(DSLContext sql) {
        Map<UUID, Map<Threshold, Map<Side, SideDates>>> dates = dates(sql);
        return sql.select(FROST_STATION.asterisk())
                .from(FROST_STATION)
                .leftJoin(FROST_IMPORT)
                .on(FROST_STATION.IMPORT_ID.eq(FROST_IMPORT.ID))
                .where(FROST_STATION.REMOVED_AT.isNull())
                .and(FROST_IMPORT.ID.isNull().or(FROST_IMPORT.STATE.eq("taken")))
                .orderBy(FROST_STATION.ID)
                .fetch(row -> station(row, dates.getOrDefault(row.get(FROST_STATION.ID), Map.of())));
    }

    private static LocalStation station(Record row, Map<Threshold, Map<Side, SideDates>> dates) {
        return new LocalStation(
                row.get(FROST_STATION.ID),
                LocalStation.Kind.valueOf(row.get(FROST_STATION.KIND).toUpperCase(Locale.ROOT)),
                row.get(FROST_STATION.NAME),
                row.get(FROST_STATION.LATITUDE),
                row.get(FROST_STATION.LONGITUDE),
                row.get(FROST_STATION.ELEVATION_M),
                row.get(FROST_STATION.SOURCE),
                null,
                dates);
    }

    private static Map<UUID, Map<Threshold, Map<Side, SideDates>>> dates(DSLContext sql) {
        Map<UUID, Map<Threshold, Map<Side, SideDates>>> dates = new HashMap<>();
        sql.selectFrom(FROST_STATION_DATE)
                .forEach(row -> threshold(row.getThresholdC().doubleValue())
                        .ifPresent(threshold -> dates.computeIfAbsent(
                                        row.getStationId(), id -> new EnumMap<>(Threshold.class))
                                .computeIfAbsent(threshold, one -> new EnumMap<>(Side.class))
                                .put(
                                        Side.valueOf(row.getSide().toUpperCase(Locale.ROOT)),
                                        new SideDates(
                                                optional(row.getAnyFrost()),
                                                optional(row.getMedianDay()),
                                                optional(row.getYearSdDays()),
                                                optional(row.getSeasons())))));
        return dates;
    }

    private static Optional<Threshold> threshold(double celsius) {
        for (Threshold threshold : Threshold.values()) {
            if (Math.abs(threshold.celsius() - celsius) < 0.05) {
                return Optional.of(threshold);
            }
        }
        return Optional.empty();
    }

    private static OptionalDouble optional(@Nullable Number value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value.doubleValue());
    }

    private static Map<UUID, GardenPoint> gardens(DSLContext sql) {
        return sql.selectFrom(GARDEN_POINT)
                .fetchMap(
                        GARDEN_POINT.MEMBER_ID,
                        row -> new GardenPoint(row.getLatitude(), row.getLongitude(), row.getElevationM()));
    }

    @Override
    public Optional<ImportedPlace> imported(String country, String code) {
        return database.sql()
                .select(POSTCODE_PLACE.asterisk())
                .from(POSTCODE_PLACE)
                .join(FROST_IMPORT)
                .on(POSTCODE_PLACE.IMPORT_ID.eq(FROST_IMPORT.ID))
                .where(POSTCODE_PLACE.COUNTRY.eq(country))
                .and(POSTCODE_PLACE.CODE.eq(code))
                .and(FROST_IMPORT.STATE.eq("taken"))
                .orderBy(FROST_IMPORT.DECIDED_AT.desc())
                .limit(1)
                .fetchOptional(row -> new ImportedPlace(
                        country,
                        code,
                        row.get(POSTCODE_PLACE.PLACE),
                        row.get(POSTCODE_PLACE.LATITUDE),
                        row.get(POSTCODE_PLACE.LONGITUDE)));
    }

    private record Kept(GroupEvidence evidence, long version, long writes, long sinceNanos) {}
}
