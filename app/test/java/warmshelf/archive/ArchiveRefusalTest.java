package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.archive.ArchiveSentences.SAY;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.BadInput;
import warmshelf.DatabasePlace;
import warmshelf.db.Database;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestGroup;

/** A file that is not whole, not ours or not meant for here is refused with a sentence, and nothing is there afterwards. */
class ArchiveRefusalTest {
    /** The version of the tables of the first program that made such files. */
    private static final String FIRST = "20261130180500";

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final MutableClock CLOCK = new MutableClock(TestGroup.MORNING);

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    private static Path whole;
    private static Map<String, String> parts;

    @BeforeAll
    static void make() throws IOException {
        whole = shared.resolve("whole.zip");
        try (TestGroup group = TestGroup.open()) {
            Archives.export(group.database(), CLOCK, whole);
        }
        parts = Archives.parts(whole);
    }

    private DatabasePlace place() {
        return DatabasePlace.inFolder("--data", folder.resolve("data"));
    }

    private void assertRefused(Path file, String sentence) {
        assertThatThrownBy(() -> IntakeStore.takeIn(file, place(), CLOCK))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(sentence);
        assertThat(folder.resolve("data"))
                .satisfiesAnyOf(
                        data -> assertThat(data).doesNotExist(),
                        data -> assertThat(data).isEmptyDirectory());
    }

    private void assertPartsRefused(Map<String, String> spoiled, String sentence) throws IOException {
        assertRefused(Archives.zipWithChecksums(spoiled, folder.resolve("spoiled.zip")), sentence);
    }

    private static Map<String, String> with(String part, String bytes) {
        Map<String, String> all = new LinkedHashMap<>(parts);
        all.put(part, bytes);
        return all;
    }

    private static Map<String, String> without(String part) {
        Map<String, String> all = new LinkedHashMap<>(parts);
        all.remove(part);
        return all;
    }

    private static Map<String, String> changed(String part, String from, String to) {
        String bytes = String.valueOf(parts.get(part));
        assertThat(bytes).contains(from);
        return with(part, bytes.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
    }

    /**
     * The file as the first program wrote it: without the tables and the column that came later, and with those that went since.
     * None of these has rows here.
     */
    private static Map<String, String> asOfFirst() throws IOException {
        Set<String> later = names(SchemaStore.newest());
        later.removeAll(names(SchemaStore.at(FIRST)));
        Set<String> gone = names(SchemaStore.at(FIRST));
        gone.removeAll(names(SchemaStore.newest()));
        Manifest manifest = JSON.readValue(parts.get("manifest.json"), Manifest.class);
        Map<String, Long> rows = new LinkedHashMap<>(manifest.rows());
        rows.keySet().removeAll(later);
        gone.forEach(table -> rows.put(table, 0L));
        Map<String, String> older = with(
                "manifest.json",
                JSON.writeValueAsString(new Manifest(
                        manifest.format(),
                        manifest.formatVersion(),
                        FIRST,
                        manifest.group(),
                        manifest.madeAt(),
                        rows)));
        later.forEach(table -> {
            older.remove(PartName.data(table));
            older.remove("tables/" + table + ".csv");
        });
        gone.forEach(table -> older.put(PartName.data(table), ""));
        older.computeIfPresent(
                "data/member.jsonl",
                (part, members) -> members.replace(",\"erased_at\":null", "").replaceAll(",\"called\":\"[^\"]*\"", ""));
        older.computeIfPresent("data/audit_line.jsonl", (part, lines) -> lines.replace(",\"token_name\":null", ""));
        return older;
    }

    private static Set<String> names(ArchiveSchema schema) {
        return schema.ofTheGroup().stream().map(ArchiveTable::name).collect(Collectors.toCollection(HashSet::new));
    }

    @Test
    void a_whole_file_whose_checksums_were_made_elsewhere_is_taken_in() throws IOException {
        Path again = Archives.zipWithChecksums(parts, folder.resolve("again.zip"));

        TakenIn taken = IntakeStore.takeIn(again, place(), CLOCK);

        assertThat(taken.group()).isEqualTo(TestGroup.NAME);
        assertThat(folder.resolve("data")).isDirectoryContaining("glob:**/warmshelf.mv.db");
        try (var left = Files.list(folder.resolve("data"))) {
            assertThat(left)
                    .extracting(each -> each.getFileName().toString())
                    .containsExactlyInAnyOrder("warmshelf.mv.db", "warmshelf.mark");
        }
    }

    @Test
    void no_file_and_what_is_no_zip() throws IOException {
        assertRefused(folder.resolve("none.zip"), "There is no file");
        assertRefused(Files.writeString(folder.resolve("text.zip"), "no zip"), "is no zip or was cut short");
        assertRefused(Files.write(folder.resolve("empty.zip"), new byte[0]), "is no zip or was cut short");
    }

    @Test
    void a_file_that_was_cut_short_anywhere() throws IOException {
        byte[] bytes = Files.readAllBytes(whole);
        for (int tenths = 1; tenths < 10; tenths++) {
            byte[] cut = Arrays.copyOf(bytes, bytes.length * tenths / 10);

            assertRefused(Files.write(folder.resolve("cut.zip"), cut), "is no zip or was cut short");
        }
        assertRefused(
                Files.write(folder.resolve("cut.zip"), Arrays.copyOf(bytes, bytes.length - 1)),
                "is no zip or was cut short");
    }

    @Test
    void one_changed_byte() throws IOException {
        String rows = String.valueOf(parts.get("data/member.jsonl"));
        char other = rows.charAt(20) == 'a' ? 'b' : 'a';
        Map<String, String> changed = with("data/member.jsonl", rows.substring(0, 20) + other + rows.substring(21));

        assertRefused(Archives.zip(changed, folder.resolve("changed.zip")), SAY.checksumWrong("data/member.jsonl"));
    }

    @Test
    void a_part_that_climbs_out_of_its_folder() throws IOException {
        for (String name : new String[] {"../evil.txt", "/etc/evil", "data/../../evil", "C:\\evil", "..\\evil"}) {
            assertPartsRefused(with(name, "evil"), "would lead out of its folder");
        }
        assertThat(folder.resolve("evil.txt")).doesNotExist();
    }

    @Test
    void a_part_that_no_file_has() throws IOException {
        assertPartsRefused(with("run.sh", "evil"), SAY.partUnknown("run.sh"));
        assertPartsRefused(with("data/", ""), SAY.partUnknown("data/"));
        assertPartsRefused(with("data/member_session.jsonl", ""), "that its version does not have");
        assertPartsRefused(with("photos/" + UUID.randomUUID() + ".jpg", "\u00ff\u00d8\u00ff"), "belongs to no row");
    }

    @Test
    void a_bomb_that_unpacks_to_far_more_than_it_is() throws IOException {
        assertPartsRefused(with("data/member.jsonl", " ".repeat(30_000_000)), "unpack to more than any group");
        assertPartsRefused(with("README.txt", "x".repeat(31_000_000)), "unpack to more than any group");
    }

    @Test
    void a_part_that_is_longer_than_the_zip_says() throws IOException {
        byte[] bytes = Files.readAllBytes(whole);
        int entry = lastIndexOf(bytes, "data/member.jsonl".getBytes(StandardCharsets.US_ASCII));
        // 46 bytes stand before the name in the central directory (PKWARE APPNOTE 4.3.12); the unpacked size begins at
        // 24
        bytes[entry - 46 + 24] = (byte) (bytes[entry - 46 + 24] - 10);

        assertRefused(Files.write(folder.resolve("longer.zip"), bytes), "so nothing was taken in");
    }

    private static int lastIndexOf(byte[] bytes, byte[] name) {
        return new String(bytes, StandardCharsets.ISO_8859_1)
                .lastIndexOf(new String(name, StandardCharsets.ISO_8859_1));
    }

    @Test
    void what_lacks_a_part() throws IOException {
        assertPartsRefused(without("data/mat.jsonl"), SAY.tableMissing("mat"));
        assertPartsRefused(without("manifest.json"), SAY.partMissing("manifest.json"));
        assertRefused(
                Archives.zip(without("checksums.sha256"), folder.resolve("none.zip")),
                SAY.partMissing("checksums.sha256"));
        assertRefused(
                Archives.zip(without("tables/mat.csv"), folder.resolve("less.zip")), SAY.partMissing("tables/mat.csv"));
    }

    @Test
    void checksums_that_say_nothing() throws IOException {
        assertRefused(
                Archives.zip(with("checksums.sha256", "nonsense\n"), folder.resolve("bad.zip")),
                SAY.checksumsUnreadable());
        assertRefused(Archives.zip(with("checksums.sha256", ""), folder.resolve("bad.zip")), "has no checksum");
    }

    @Test
    void another_program_s_file_and_a_newer_one() throws IOException {
        assertPartsRefused(with("manifest.json", "{\"format\":\"other\"}"), SAY.formatUnknown());
        assertPartsRefused(with("manifest.json", "not json"), SAY.manifestUnreadable());
        assertPartsRefused(
                changed("manifest.json", "\"formatVersion\" : 1", "\"formatVersion\" : 2"), SAY.formatNewer());
        String schema = SchemaStore.newest().version();
        assertPartsRefused(changed("manifest.json", schema, "20991231235959"), "was made by a newer Warmshelf");
        assertPartsRefused(changed("manifest.json", schema, "20200101000000"), "does not know");
    }

    @Test
    void rows_that_are_none() throws IOException {
        assertPartsRefused(changed("data/member.jsonl", "\"role\"", "\"rank\""), SAY.columnUnknown("rank"));
        assertPartsRefused(
                changed("data/member.jsonl", "\"version\":1", "\"version\":\"1\""), SAY.valueUnreadable("version"));
        assertPartsRefused(changed("data/member.jsonl", ",\"version\":1", ""), SAY.columnMissing("version"));
        assertPartsRefused(changed("data/member.jsonl", "\"version\":1", "\"version\":"), SAY.noRow());
        assertPartsRefused(with("data/member.jsonl", "[1,2]\n"), SAY.noRow());
        assertPartsRefused(with("data/member.jsonl", ""), "should have 3 rows, but has 0");
    }

    @Test
    void rows_that_the_database_does_not_take_leave_nothing_behind() throws IOException {
        assertPartsRefused(
                changed("data/member.jsonl", "\"role\":\"coordinator\"", "\"role\":\"owner\""), "do not fit");
    }

    @Test
    void a_group_in_the_folder_is_never_replaced() throws IOException {
        IntakeStore.takeIn(whole, place(), CLOCK);
        try (Database there = place().open()) {
            there.sql().update(GROUP_PROFILE).set(GROUP_PROFILE.NAME, "Another").execute();
        }

        assertThatThrownBy(() -> IntakeStore.takeIn(whole, place(), CLOCK))
                .isInstanceOf(BadInput.class)
                .hasMessage(SAY.groupThere("Another"));

        assertThat(place().look().group()).isEqualTo("Another");
    }

    @Test
    void a_folder_in_which_a_server_was_started_but_no_group_opened_takes_it_in() throws IOException {
        Path data = Files.createDirectories(folder.resolve("data"));
        try (Database empty = Database.inFolder(data)) {
            assertThat(empty.answers()).isTrue();
        }
        // how far it had come is not held against the group that moves in
        Files.writeString(data.resolve("warmshelf.mark"), "900\n\na469314f\n");

        assertThat(IntakeStore.takeIn(whole, place(), CLOCK).tally().members()).isEqualTo(3);
        try (Database there = place().open()) {
            assertThat(there.answers()).isTrue();
        }
        assertThat(place().look().group()).isEqualTo(TestGroup.NAME);
    }

    @Test
    void a_file_of_an_older_program_is_taken_in_and_brought_up_to_date() throws IOException {
        Path older = Archives.zipWithChecksums(asOfFirst(), folder.resolve("older.zip"));

        TakenIn taken = IntakeStore.takeIn(older, place(), CLOCK);

        assertThat(taken.tally().members()).isEqualTo(3);
        assertThat(place().look().version()).isEqualTo(SchemaStore.newest().version());
    }

    @Test
    void a_database_with_newer_tables_does_not_take_in_an_older_file() throws IOException {
        String address = "jdbc:h2:mem:newer-" + UUID.randomUUID()
                + ";DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
        DatabasePlace place = DatabasePlace.at("--jdbc-url", address, null, null);
        place.open().close();
        Path file = Archives.zipWithChecksums(asOfFirst(), folder.resolve("older.zip"));

        assertThatThrownBy(() -> IntakeStore.takeIn(file, place, CLOCK))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("Name an empty database");
    }
}
