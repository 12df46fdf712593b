package warmshelf.frost.files;

import static warmshelf.db.generated.Tables.POSTCODE_PLACE;
import static warmshelf.frost.files.FilesSentences.SAY;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jooq.BatchBindStep;
import org.jooq.DSLContext;
import warmshelf.BadInput;

/** Writes what is found in a file within the transaction of its import, some hundred rows at a time. */
final class ImportRowsStore implements ImportedRows {
    private static final int ROWS_AT_ONCE = 500;

    private final DSLContext sql;
    private final UUID importId;
    private final ImportKind kind;
    private final UUID by;
    private final OffsetDateTime now;
    private final String source;
    private final ProblemList problems;
    private final List<String> notes = new ArrayList<>();
    private final List<StationReading> stations = new ArrayList<>();
    private final List<PostcodeRow> places = new ArrayList<>();
    private Runnable written = () -> {};
    private long good;
    private long bytes;
    private long lines;

    ImportRowsStore(
            DSLContext sql,
            UUID importId,
            ImportKind kind,
            UUID by,
            OffsetDateTime now,
            String source,
            ProblemList problems) {
        this.sql = sql;
        this.importId = importId;
        this.kind = kind;
        this.by = by;
        this.now = now;
        this.source = source;
        this.problems = problems;
    }

    void whenWritten(Runnable run) {
        written = run;
    }

    void read(long bytesRead, long linesRead) {
        bytes = bytesRead;
        lines = linesRead;
    }

    long bytes() {
        return bytes;
    }

    long lines() {
        return lines;
    }

    long good() {
        return good;
    }

    @Override
    public void station(StationReading station) {
        good++;
        stations.add(station);
        if (stations.size() >= ROWS_AT_ONCE) {
            writeStations();
        }
    }

    @Override
    public void place(PostcodeRow place) {
        good++;
        places.add(place);
        if (places.size() >= ROWS_AT_ONCE) {
            writePlaces();
        }
    }

    @Override
    public void problem(long line, String sentence) {
        problems.add(line, sentence);
    }

    @Override
    public void note(String sentence) {
        notes.add(sentence);
    }

    /**
     * Writes the rest.
     *
     * @throws BadInput when not one row was good
     */
    void finish() {
        writeStations();
        writePlaces();
        if (good == 0) {
            throw new BadInput(SAY.noRowUsed(problems.words()).strip());
        }
    }

    /** What was found, a sentence a line. */
    String words() {
        List<String> all = new ArrayList<>(notes);
        if (problems.count() > 0) {
            all.add(problems.words());
        }
        return String.join("\n", all);
    }

    private void writeStations() {
        StationWriteStore.write(
                sql, stations, kind == ImportKind.NIGHTS ? "nights" : "published", importId, source, by, now);
        stations.clear();
        written.run();
    }

    private void writePlaces() {
        if (places.isEmpty()) {
            return;
        }
        BatchBindStep batch = sql.batch(sql.insertInto(
                        POSTCODE_PLACE,
                        POSTCODE_PLACE.IMPORT_ID,
                        POSTCODE_PLACE.COUNTRY,
                        POSTCODE_PLACE.CODE,
                        POSTCODE_PLACE.PLACE,
                        POSTCODE_PLACE.REGION,
                        POSTCODE_PLACE.LATITUDE,
                        POSTCODE_PLACE.LONGITUDE)
                .values((UUID) null, null, null, null, null, null, null));
        for (PostcodeRow place : places) {
            batch = batch.bind(
                    importId,
                    place.country(),
                    place.code(),
                    place.place(),
                    place.region(),
                    place.latitude(),
                    place.longitude());
        }
        batch.execute();
        places.clear();
        written.run();
    }
}
