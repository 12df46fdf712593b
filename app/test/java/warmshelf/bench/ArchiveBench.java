package warmshelf.bench;

import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT_DAY;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Table;
import warmshelf.db.Database;

/**
 * Five seasons of 200 members with 2,000 photos, written into one file and taken in again, each by a process with a heap of 128
 * MiB. Prints how long that takes and what the heap came to.
 */
public final class ArchiveBench {
    private static final LocalDate TODAY = LocalDate.of(2027, 4, 10);
    private static final int SEASONS = 5;
    private static final int PHOTOS = 2_000;
    private static final int PHOTO_BYTES = 120_000;
    private static final Pattern HEAP = Pattern.compile("(\\d+)M->(\\d+)M\\((\\d+)M\\)");

    private ArchiveBench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("archive-bench");
        BenchGroup.moveInto(Files.createDirectory(folder.resolve("group")), TODAY);
        try (Database database = Database.inFolder(folder.resolve("group"))) {
            database.together(() -> fill(database.sql()));
            System.out.printf(
                    Locale.ROOT,
                    "%,d sowings, %,d entries, %,d quarters and days, %,d lines of who did what, %,d photos%n",
                    database.sql().fetchCount(SOWING),
                    database.sql().fetchCount(ENTRY),
                    database.sql().fetchCount(QUARTER_DAY),
                    database.sql().fetchCount(AUDIT_LINE),
                    database.sql().fetchCount(PHOTO));
        }
        Path file = folder.resolve("group.zip");
        run(folder, "export", "--data", folder.resolve("group").toString(), "--out", file.toString());
        System.out.printf(Locale.ROOT, "the file: %,d MB%n", Files.size(file) / 1_000_000);
        run(folder, "import", file.toString(), "--data", folder.resolve("again").toString());
        System.out.println("left in " + folder);
    }

    /** The season that is there, four times more, each a year earlier; then the photos. */
    private static void fill(DSLContext sql) {
        for (int years = 1; years < SEASONS; years++) {
            String days = " - " + 365 * years;
            sql.execute("drop table if exists again_sowing");
            sql.execute("drop table if exists again_stay");
            sql.execute("create table again_sowing as select id old_id, random_uuid() new_id from sowing"
                    + " where season = (select max(season) from sowing)");
            sql.execute("create table again_stay as select stay.id old_id, random_uuid() new_id from stay"
                    + " join again_sowing on again_sowing.old_id = stay.sowing_id");
            String ofSowing = " join again_sowing m on m.old_id = t.";
            String ofStay = " join again_stay s on s.old_id = t.";
            again(sql, SOWING, ofSowing + "id", Map.of("id", "m.new_id", "season", "t.season - " + years));
            again(sql, SPACE_REQUEST, ofSowing + "sowing_id", shifted(days, "m", "earliest", "ideal", "latest"));
            Map<String, String> stays = shifted(days, "m", "from_day", "to_day");
            stays.put("id", "s.new_id");
            again(sql, STAY, ofStay + "id" + ofSowing + "sowing_id", stays);
            again(
                    sql,
                    MAT_DAY,
                    " where not exists (select 1 from mat_day d where d.mat_id = t.mat_id and d.on_day = t.on_day"
                            + days + ")",
                    Map.of("on_day", "t.on_day" + days));
            again(sql, QUARTER_DAY, ofStay + "stay_id", Map.of("stay_id", "s.new_id", "on_day", "t.on_day" + days));
            Map<String, String> entries = shifted(days, "m", "seen_on");
            entries.put("id", "random_uuid()");
            again(sql, ENTRY, ofSowing + "sowing_id", entries);
        }
        sql.execute("drop table again_sowing");
        sql.execute("drop table again_stay");
        for (int times = 0; times < 2; times++) {
            again(sql, AUDIT_LINE, "", Map.of("id", "random_uuid()"));
        }
        addPhotos(sql);
    }

    private static Map<String, String> shifted(String days, String sowing, String... columns) {
        Map<String, String> changed =
                Arrays.stream(columns).collect(Collectors.toMap(column -> column, column -> "t." + column + days));
        changed.put("sowing_id", sowing + ".new_id");
        return changed;
    }

    private static void again(DSLContext sql, Table<?> table, String from, Map<String, String> changed) {
        List<String> columns = new ArrayList<>();
        table.fieldStream()
                .filter(field -> !field.getDataType().identity())
                .forEach(field -> columns.add(field.getName()));
        sql.execute("insert into %s (%s) select %s from %s t%s"
                .formatted(
                        table.getName(),
                        String.join(", ", columns),
                        columns.stream()
                                .map(column -> changed.getOrDefault(column, "t." + column))
                                .collect(Collectors.joining(", ")),
                        table.getName(),
                        from));
    }

    /** Bytes that do not pack, as pictures do not. */
    private static void addPhotos(DSLContext sql) {
        Random random = new Random(20270410);
        sql.select(ENTRY.ID, ENTRY.MADE_BY)
                .from(ENTRY)
                .where(ENTRY.SOWING_ID.isNotNull())
                .orderBy(ENTRY.KEPT_ORDER)
                .limit(PHOTOS)
                .forEach(entry -> {
                    byte[] jpeg = new byte[PHOTO_BYTES];
                    random.nextBytes(jpeg);
                    jpeg[0] = (byte) 0xff;
                    jpeg[1] = (byte) 0xd8;
                    jpeg[2] = (byte) 0xff;
                    sql.insertInto(PHOTO)
                            .set(PHOTO.ID, UUID.randomUUID())
                            .set(PHOTO.ENTRY_ID, entry.value1())
                            .set(PHOTO.WIDTH, 1200)
                            .set(PHOTO.HEIGHT, 900)
                            .set(PHOTO.JPEG, jpeg)
                            .set(PHOTO.ADDED_BY, entry.value2())
                            .set(PHOTO.ADDED_AT, TODAY.atStartOfDay().atOffset(ZoneOffset.UTC))
                            .execute();
                });
    }

    private static void run(Path folder, String... words) throws IOException, InterruptedException {
        Path log = folder.resolve(words[0] + ".log");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx128m",
                "-Xlog:gc:file=" + log,
                "-cp",
                System.getProperty("java.class.path"),
                "warmshelf.App"));
        command.addAll(List.of(words));
        long begun = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.INHERIT)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int status = process.waitFor();
        double seconds = (System.nanoTime() - begun) / 1e9;
        int before = 0;
        int after = 0;
        for (String line : Files.readAllLines(log)) {
            Matcher heap = HEAP.matcher(line);
            if (heap.find()) {
                before = Math.max(before, Integer.parseInt(heap.group(1)));
                after = Math.max(after, Integer.parseInt(heap.group(2)));
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s: status %d, %.1f s, heap at most %d MiB, %d MiB after a collection%n",
                words[0],
                status,
                seconds,
                before,
                after);
    }
}
