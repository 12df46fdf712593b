package warmshelf.frost.files;

import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.FROST_STATION_SEASON;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.db.generated.tables.records.FrostStationDateRecord;
import warmshelf.db.generated.tables.records.FrostStationRecord;
import warmshelf.db.generated.tables.records.FrostStationSeasonRecord;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

/** Writes stations with their dates and seasons within the caller's transaction. */
final class StationWriteStore {
    private StationWriteStore() {}

    /**
     * Writes them.
     *
     * @param kind 'published', 'nights' or 'monthly'
     * @param importId null: typed in
     * @return their new ids
     */
    static List<UUID> write(
            DSLContext sql,
            List<StationReading> stations,
            String kind,
            @Nullable UUID importId,
            String source,
            UUID by,
            OffsetDateTime now) {
        List<UUID> ids = new ArrayList<>();
        List<FrostStationRecord> rows = new ArrayList<>();
        List<FrostStationDateRecord> dates = new ArrayList<>();
        List<FrostStationSeasonRecord> seasons = new ArrayList<>();
        for (StationReading station : stations) {
            UUID id = UUID.randomUUID();
            ids.add(id);
            rows.add(row(id, station, kind, importId, source, by, now));
            station.days().forEach(day -> dates.add(date(id, day)));
            station.seasons().forEach(season -> seasons.add(season(id, season)));
        }
        sql.batchInsert(rows).execute();
        sql.batchInsert(dates).execute();
        sql.batchInsert(seasons).execute();
        return ids;
    }

    private static FrostStationRecord row(
            UUID id,
            StationReading station,
            String kind,
            @Nullable UUID importId,
            String source,
            UUID by,
            OffsetDateTime now) {
        FrostStationRecord row = new FrostStationRecord();
        row.set(FROST_STATION.ID, id);
        row.set(FROST_STATION.IMPORT_ID, importId);
        row.set(FROST_STATION.KIND, kind);
        row.set(FROST_STATION.CODE, station.code());
        row.set(FROST_STATION.NAME, station.name());
        row.set(FROST_STATION.LATITUDE, station.latitude());
        row.set(FROST_STATION.LONGITUDE, station.longitude());
        row.set(FROST_STATION.ELEVATION_M, station.elevationM());
        row.set(FROST_STATION.SOURCE, source);
        row.set(FROST_STATION.ADDED_BY, by);
        row.set(FROST_STATION.ADDED_AT, now);
        return row;
    }

    private static FrostStationDateRecord date(UUID id, FrostDay day) {
        FrostStationDateRecord row = new FrostStationDateRecord();
        row.set(FROST_STATION_DATE.STATION_ID, id);
        row.set(FROST_STATION_DATE.THRESHOLD_C, celsius(day.threshold()));
        row.set(FROST_STATION_DATE.SIDE, word(day.side()));
        row.set(FROST_STATION_DATE.ANY_FROST, day.anyFrost());
        row.set(FROST_STATION_DATE.MEDIAN_DAY, day.medianDay());
        row.set(FROST_STATION_DATE.YEAR_SD_DAYS, day.yearSdDays());
        row.set(FROST_STATION_DATE.SEASONS, day.seasons());
        return row;
    }

    private static FrostStationSeasonRecord season(UUID id, StationReading.Season season) {
        FrostStationSeasonRecord row = new FrostStationSeasonRecord();
        row.set(FROST_STATION_SEASON.STATION_ID, id);
        row.set(FROST_STATION_SEASON.THRESHOLD_C, celsius(season.threshold()));
        row.set(FROST_STATION_SEASON.SIDE, word(season.side()));
        row.set(FROST_STATION_SEASON.SEASON_YEAR, season.year());
        row.set(FROST_STATION_SEASON.FROST_ON, season.frostOn());
        return row;
    }

    static BigDecimal celsius(Threshold threshold) {
        return BigDecimal.valueOf(threshold.celsius()).setScale(1);
    }

    static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }
}
