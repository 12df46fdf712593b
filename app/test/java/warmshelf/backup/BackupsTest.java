package warmshelf.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.Upkeep;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.SessionStore;
import warmshelf.testing.Browser;
import warmshelf.testing.CommandRun;
import warmshelf.testing.MutableClock;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/** Backups of a real folder: by themselves, by command while a server runs and without one, brought back, and found broken. */
class BackupsTest {
    private static final Upkeep AT_THREE = new Upkeep(null, LocalTime.of(3, 0), 0, Upkeep.SLOW_QUERY);

    @TempDir
    private static Path lived;

    private static List<Person> cast;

    @TempDir
    private Path place;

    private final MutableClock clock = new MutableClock(TestGroup.MORNING);
    private Path data;
    private Database database;

    @BeforeAll
    static void live() {
        try (Database first = Settings.onFreePort(lived).openDatabase()) {
            cast = TestGroup.moveIn(first, new Audit(new MutableClock(TestGroup.MORNING)));
        }
    }

    @BeforeEach
    void open() throws IOException {
        data = Files.createDirectory(place.resolve("data"));
        for (String name : List.of(Database.FILE, Database.MARK)) {
            Files.copy(lived.resolve(name), data.resolve(name));
        }
        database = Settings.onFreePort(data).openDatabase();
    }

    @AfterEach
    void stop() {
        database.close();
    }

    @Test
    void one_is_made_at_its_hour_and_shown_to_coordinators() throws IOException {
        BackupWork work = work(data.resolve("backups"));
        work.makeIfDue();
        work.makeIfDue();
        assertThat(backups()).containsExactly("warmshelf-2027-03-01T150000Z.zip");

        clock.advance(Duration.ofHours(18)); // 03:00 in Duluth
        work.makeIfDue();

        assertThat(backups()).containsExactly("warmshelf-2027-03-01T150000Z.zip", "warmshelf-2027-03-02T090000Z.zip");
        try (Server server = server(AT_THREE)) {
            clock.advance(Duration.ofHours(5));
            Browser ilse = signedIn(server, cast.get(0));

            assertThat(ilse.get("/settings/group").text())
                    .contains("The newest was made 5 hours ago, on 2 Mar 2027 at 03:00", "2 backups are kept");
            assertThat(ilse.get("/today").text()).doesNotContain("backup");
            assertThat(ilse.get("/health").body())
                    .contains("\"backup\":{\"state\":\"fresh\",\"ageHours\":5}", "\"problems\":[]");

            clock.advance(Duration.ofHours(44));
            assertThat(signedIn(server, cast.get(0)).get("/today").text())
                    .contains("The newest backup is old. The newest was made 2 days ago. Backups");
            assertThat(signedIn(server, cast.get(1)).get("/today").text()).doesNotContain("backup");
            assertThat(ilse.get("/health").body()).contains("\"code\":\"backup-old\"", "\"ready\":true");
        }
    }

    @Test
    void one_that_failed_is_told_and_tried_again() throws IOException {
        Files.writeString(place.resolve("file"), "in the way");
        BackupWork work = work(place.resolve("file"));
        work.makeIfDue();

        assertThat(work.state().kind()).isEqualTo(BackupState.Kind.FAILED);
        assertThat(work.state().trouble()).isEqualTo(BackupTrouble.Reason.UNWRITABLE);

        Files.delete(place.resolve("file"));
        work.makeIfDue();
        assertThat(work.state().kind()).as("not at once").isEqualTo(BackupState.Kind.FAILED);
        clock.advance(Duration.ofMinutes(15));
        work.makeIfDue();
        assertThat(work.state().kind()).isEqualTo(BackupState.Kind.FRESH);
    }

    @Test
    void a_copy_made_while_others_write_is_whole_and_comes_back() throws Exception {
        Audit audit = new Audit(clock);
        Thread writer = new Thread(() -> {
            for (int i = 0; i < 400; i++) {
                audit.write(database.sql(), null, "write", "thing", i, "");
            }
        });
        writer.start();
        BackupMade made = new BackupMaker(new OpenData(database), new BackupFolder(place.resolve("b")), clock).make();
        writer.join(30_000);
        long changes = made.manifest().changes();

        CommandRun restored = CommandRun.of(
                "restore",
                made.file().toString(),
                "--data",
                place.resolve("new").toString());

        assertThat(restored.status()).as(restored.err()).isZero();
        assertThat(restored.json().get("changes").asLong()).isEqualTo(changes);
        assertThat(restored.json().get("setAside").isNull()).isTrue();
        try (Database again = Settings.onFreePort(place.resolve("new")).openDatabase()) {
            assertThat(again.rows().get("audit_line")).isEqualTo(changes);
            assertThat(again.rows().get("member")).isEqualTo(3);
        }
    }

    @Test
    void a_command_makes_one_through_the_server_that_has_the_folder() throws IOException {
        Path out = place.resolve("mine.zip");
        try (Server server = server(Upkeep.NONE)) {
            assertThat(server.port()).isPositive();
            CommandRun run = CommandRun.of("backup", "--data", data.toString(), "--out", out.toString());

            assertThat(run.status()).as(run.err()).isZero();
            assertThat(run.json().at("/rows/member").asInt()).isEqualTo(3);
            assertThat(run.json().get("group").asText()).isEqualTo(TestGroup.NAME);
            assertThat(run.json().get("bytes").asLong()).isEqualTo(Files.size(out));
            assertRefused("has the data in '" + data + "' open", "check", "--data", data.toString());
        }
        try (Stream<Path> left = Files.list(data)) {
            assertThat(left.map(file -> file.getFileName().toString()))
                    .doesNotContainSequence("backup-")
                    .contains("backups");
        }
        CommandRun check = CommandRun.of("check", out.toString());
        assertThat(check.status()).as(check.out()).isZero();
        assertThat(check.json().get("whole").asBoolean()).isTrue();
        assertThat(check.json().get("entries").asInt()).isZero();
    }

    @Test
    void without_a_server_nothing_of_the_folder_is_changed_and_an_older_state_comes_back_over_a_newer()
            throws IOException {
        database.close();
        byte[] before = Files.readAllBytes(data.resolve("warmshelf.mv.db"));
        CommandRun backup = CommandRun.of("backup", "--data", data.toString());
        assertThat(backup.status()).as(backup.err()).isZero();
        assertThat(Files.readAllBytes(data.resolve("warmshelf.mv.db"))).isEqualTo(before);
        String file = backup.json().get("file").asText();
        CommandRun check = CommandRun.of("check", "--data", data.toString());
        assertThat(check.status()).as(check.out()).isZero();
        assertThat(check.json().get("knownChanges")).isEqualTo(check.json().get("changes"));

        try (Database later = Settings.onFreePort(data).openDatabase()) {
            new Audit(clock).write(later.sql(), null, "later", "thing", 1, "");
        }
        assertRefused("There are data of a group", "restore", file, "--data", data.toString());
        CommandRun restored = CommandRun.of("restore", file, "--data", data.toString(), "--replace");

        assertThat(restored.status()).as(restored.err()).isZero();
        assertThat(Path.of(restored.json().get("setAside").asText()).resolve("warmshelf.mv.db"))
                .exists();
        try (Database back = Settings.onFreePort(data).openDatabase()) {
            assertThat(back.rows().get("audit_line"))
                    .isEqualTo(backup.json().get("changes").asLong());
        }
    }

    @Test
    void what_is_not_whole_is_found() throws IOException {
        database.close();
        CommandRun backup = CommandRun.of("backup", "--data", data.toString(), "--out", place.toString());
        Path file = Path.of(backup.json().get("file").asText());
        byte[] whole = Files.readAllBytes(file);
        Path cut = Files.write(place.resolve("cut.zip"), Arrays.copyOf(whole, whole.length / 2));
        byte[] flipped = whole.clone();
        flipped[whole.length / 2] ^= 1;
        Path changed = Files.write(place.resolve("changed.zip"), flipped);
        Path other = Files.writeString(place.resolve("other.zip"), "no zip");
        try (FileChannel channel = FileChannel.open(data.resolve("warmshelf.mv.db"), StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.allocate((int) channel.size() / 2), channel.size() / 4);
        }

        CommandRun check = CommandRun.of("check", "--data", data.toString());

        assertThat(check.status()).as(check.out()).isEqualTo(1);
        assertThat(check.json().get("whole").asBoolean()).isFalse();
        assertThat(check.json().get("problems")).isNotEmpty();
        for (Path bad : List.of(cut, changed, other)) {
            assertRefused("cut short or changed", "check", bad.toString());
            assertRefused(
                    "cut short or changed",
                    "restore",
                    bad.toString(),
                    "--data",
                    place.resolve("new").toString());
        }
        assertRefused("There is no file", "check", place.resolve("none.zip").toString());
        assertRefused("Either --data with a folder or the file", "check");
        assertRefused("pg_dump", "backup", "--jdbc-url", "jdbc:postgresql://127.0.0.1:9/none");
        assertRefused(
                "There are no data",
                "backup",
                "--data",
                place.resolve("nothing").toString());
        assertThat(place.resolve("new").resolve("warmshelf.mv.db")).doesNotExist();
        CommandRun restored = CommandRun.of("restore", file.toString(), "--data", data.toString(), "--replace");
        assertThat(restored.status())
                .as("over the damaged ones: " + restored.err())
                .isZero();
    }

    private BackupWork work(Path folder) {
        BackupFolder backups = new BackupFolder(folder);
        return new BackupWork(
                new BackupMaker(new OpenData(database), backups, clock),
                backups,
                AT_THREE.backupAt(),
                () -> Optional.of(ZoneId.of("America/Chicago")),
                clock);
    }

    private List<String> backups() {
        return new BackupFolder(data.resolve("backups"))
                .all().values().stream()
                        .map(file -> file.getFileName().toString())
                        .toList();
    }

    private Server server(Upkeep upkeep) {
        return Server.start(
                new Settings(
                        "127.0.0.1", 0, null, data, null, null, null, Set.of(), ZoneId.of("UTC"), null, null, upkeep),
                database,
                clock);
    }

    private Browser signedIn(Server server, Person person) {
        Browser browser = Browser.at("http://127.0.0.1:" + server.port());
        browser.setCookie("warmshelf", new SessionStore(database, clock).open(person.id()));
        return browser;
    }

    private static void assertRefused(String sentence, String... words) {
        CommandRun run = CommandRun.of(words);
        assertThat(run.status())
                .as(String.join(" ", words) + run.out() + run.err())
                .isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains(sentence);
    }
}
