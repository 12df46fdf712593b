package warmshelf.frost.files;

import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.FROST_STATION_SEASON;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.SelectJoinStep;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.evidence.VersionStore;
import warmshelf.frost.minima.FrostSide;
import warmshelf.frost.minima.SeasonFrost;
import warmshelf.frost.station.Side;

/** The stations and postcodes that were brought in, and the stations that are typed in one by one. */
final class StationStore {
    static final int PER_PAGE = 50;
    private static final int ANY_COMMON_YEAR = 2001;
    private static final String SUBJECT = "frost station";
    private static final Field<Double> SPRING = median(Side.SPRING).as("spring_day");
    private static final Field<Double> AUTUMN = median(Side.AUTUMN).as("autumn_day");

    private final Database database;
    private final Audit audit;

    StationStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** A country's postcodes in an import. */
    record CountryCount(String country, int codes) {}

    /** The stations that count whose name or code holds the text, by name; one more than a page holds where there are more. */
    List<StationLine> list(String text, int page) {
        return stations()
                .where(counts(), holds(text))
                .orderBy(DSL.lower(FROST_STATION.NAME), FROST_STATION.ID)
                .limit(PER_PAGE + 1)
                .offset(page * PER_PAGE)
                .fetch(StationStore::line);
    }

    int count() {
        return database.sql()
                .selectCount()
                .from(FROST_STATION)
                .leftJoin(FROST_IMPORT)
                .on(FROST_IMPORT.ID.eq(FROST_STATION.IMPORT_ID))
                .where(counts())
                .fetchSingle()
                .value1();
    }

    /** The first stations of an import by name, whether it counts or not. */
    List<StationLine> of(UUID importId, int most) {
        return stations()
                .where(FROST_STATION.IMPORT_ID.eq(importId))
                .orderBy(DSL.lower(FROST_STATION.NAME), FROST_STATION.ID)
                .limit(most)
                .fetch(StationStore::line);
    }

    /** The seasons of a station at one threshold. */
    FrostSide seasons(UUID station, Threshold threshold, Side side) {
        List<SeasonFrost> seasons = database.sql()
                .selectFrom(FROST_STATION_SEASON)
                .where(
                        FROST_STATION_SEASON.STATION_ID.eq(station),
                        FROST_STATION_SEASON.THRESHOLD_C.eq(StationWriteStore.celsius(threshold)),
                        FROST_STATION_SEASON.SIDE.eq(StationWriteStore.word(side)))
                .orderBy(FROST_STATION_SEASON.SEASON_YEAR)
                .fetch(row -> new SeasonFrost(row.getSeasonYear(), row.getFrostOn()));
        return new FrostSide(side == Side.SPRING, seasons, 0);
    }

    /** How many postcodes of each country an import holds. */
    List<CountryCount> countries(UUID importId) {
        return database.sql()
                .select(POSTCODE_PLACE.COUNTRY, DSL.count())
                .from(POSTCODE_PLACE)
                .where(POSTCODE_PLACE.IMPORT_ID.eq(importId))
                .groupBy(POSTCODE_PLACE.COUNTRY)
                .orderBy(POSTCODE_PLACE.COUNTRY)
                .fetch(row -> new CountryCount(row.value1(), row.value2()));
    }

    /** The first postcodes of an import. */
    List<PostcodeRow> places(UUID importId, int most) {
        return database.sql()
                .selectFrom(POSTCODE_PLACE)
                .where(POSTCODE_PLACE.IMPORT_ID.eq(importId))
                .orderBy(POSTCODE_PLACE.COUNTRY, POSTCODE_PLACE.CODE)
                .limit(most)
                .fetch(row -> new PostcodeRow(
                        row.getCountry(),
                        row.getCode(),
                        row.getPlace(),
                        row.getRegion(),
                        row.getLatitude(),
                        row.getLongitude()));
    }

    /** Adds a station told from twelve monthly means; it counts at once. */
    UUID addMonthly(StationReading station, String source, UUID by) {
        return database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            UUID id = StationWriteStore.write(sql, List.of(station), "monthly", null, source, by, audit.now())
                    .get(0);
            VersionStore.grow(sql);
            audit.write(sql, by, "add", SUBJECT, id, station.name());
            return id;
        });
    }

    /** Ends a station that was typed in; it stays as history. False when there is none, or it was removed before. */
    boolean removeTyped(UUID id, UUID by) {
        return database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            int changed = sql.update(FROST_STATION)
                    .set(FROST_STATION.REMOVED_BY, by)
                    .set(FROST_STATION.REMOVED_AT, audit.now())
                    .where(FROST_STATION.ID.eq(id), FROST_STATION.IMPORT_ID.isNull(), FROST_STATION.REMOVED_AT.isNull())
                    .execute();
            if (changed == 1) {
                VersionStore.grow(sql);
                audit.write(sql, by, "remove", SUBJECT, id, "");
            }
            return changed == 1;
        });
    }

    private SelectJoinStep<? extends Record> stations() {
        List<Field<?>> fields = new ArrayList<>(List.of(FROST_STATION.fields()));
        fields.add(SPRING);
        fields.add(AUTUMN);
        return database.sql()
                .select(fields)
                .from(FROST_STATION.leftJoin(FROST_IMPORT).on(FROST_IMPORT.ID.eq(FROST_STATION.IMPORT_ID)));
    }

    private static Field<Double> median(Side side) {
        return DSL.field(DSL.select(FROST_STATION_DATE.MEDIAN_DAY)
                .from(FROST_STATION_DATE)
                .where(
                        FROST_STATION_DATE.STATION_ID.eq(FROST_STATION.ID),
                        FROST_STATION_DATE.SIDE.eq(StationWriteStore.word(side)),
                        FROST_STATION_DATE.THRESHOLD_C.eq(StationWriteStore.celsius(Threshold.FROST))));
    }

    private static Condition counts() {
        return FROST_STATION
                .REMOVED_AT
                .isNull()
                .and(FROST_IMPORT.ID.isNull().or(FROST_IMPORT.STATE.eq(ImportState.TAKEN.word())));
    }

    private static Condition holds(String text) {
        String wanted = text.toLowerCase(Locale.ROOT);
        return wanted.isEmpty()
                ? DSL.noCondition()
                : DSL.lower(FROST_STATION.NAME)
                        .contains(wanted)
                        .or(DSL.lower(FROST_STATION.CODE).contains(wanted));
    }

    private static StationLine line(Record row) {
        return new StationLine(
                row.get(FROST_STATION.ID),
                row.get(FROST_STATION.IMPORT_ID),
                row.get(FROST_STATION.KIND),
                row.get(FROST_STATION.CODE),
                row.get(FROST_STATION.NAME),
                row.get(FROST_STATION.LATITUDE),
                row.get(FROST_STATION.LONGITUDE),
                row.get(FROST_STATION.ELEVATION_M),
                row.get(FROST_STATION.SOURCE),
                date(row.get(SPRING)),
                date(row.get(AUTUMN)));
    }

    private static @Nullable LocalDate date(@Nullable Double day) {
        return day == null ? null : YearDay.in(ANY_COMMON_YEAR, day);
    }
}
