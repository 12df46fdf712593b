package warmshelf.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.Browser;
import warmshelf.words.Units;

class DemoCommandTest {
    private static final Instant THEN = Instant.parse("2027-05-08T15:00:00Z");

    @TempDir
    private Path folder;

    @Test
    void the_demo_prints_links_that_sign_in_and_leaves_nothing_behind_when_it_stops() throws Exception {
        Process demo = demo("--port", "0");
        try (BufferedReader out = demo.inputReader()) {
            List<String> lines = until(out, "Stop the demo");

            List<URI> links = lines.stream()
                    .map(String::strip)
                    .filter(line -> line.startsWith("http://localhost:") && line.contains("/in/"))
                    .map(URI::create)
                    .toList();
            assertThat(links).hasSize(3);
            for (URI link : links) {
                Browser browser = Browser.at("http://" + link.getAuthority());
                browser.get(link.getPath());
                assertThat(browser.post(link.getPath()).status()).isEqualTo(303);
                assertThat(browser.get("/today").status()).isEqualTo(200);
            }
            assertThat(lines).anyMatch(line -> line.contains("on duty today"));
            assertThat(inside(folder))
                    .as("the demo's temporary folder, beside that of uploads")
                    .filteredOn(path -> path.getFileName().toString().startsWith("warmshelf-demo"))
                    .hasSize(1);
        } finally {
            demo.destroy();
        }
        assertThat(demo.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(inside(folder)).isEmpty();
    }

    @Test
    void a_named_folder_is_opened_again_as_it_was() throws Exception {
        Path named = folder.resolve("named");
        int sowings;
        try (Database database = Settings.onFreePort(named).openDatabase()) {
            database.together(() -> DemoGroup.fill(database, THEN));
            sowings = database.sql().fetchCount(SOWING);
        }

        Process demo = demo("--port", "0", "--data", named.toString());
        try (BufferedReader out = demo.inputReader()) {
            until(out, "Stop the demo");
        } finally {
            demo.destroy();
        }

        assertThat(demo.waitFor(30, TimeUnit.SECONDS)).isTrue();
        try (Database database = Settings.onFreePort(named).openDatabase()) {
            assertThat(database.sql().fetchCount(SOWING)).isEqualTo(sowings);
        }
    }

    @Test
    void a_folder_of_another_group_is_left_alone() throws Exception {
        Path named = folder.resolve("ours");
        try (Database database = Settings.onFreePort(named).openDatabase()) {
            open(database);
        }

        Process demo = demo("--port", "0", "--data", named.toString());

        String error = new String(demo.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(demo.waitFor()).isEqualTo(2);
        assertThat(error).contains("belong to another group").contains("--data");
        try (Database database = Settings.onFreePort(named).openDatabase()) {
            assertThat(database.sql().fetchCount(MEMBER)).isEqualTo(1);
        }
    }

    private static void open(Database database) {
        Audit audit = new Audit(Clock.fixed(THEN, ZoneOffset.UTC));
        NewMember ilse = new NewMember("Ilse Brandt", "US", "55804", "no passphrase fits this");
        var id = new MemberStore(database, audit).add(database.sql(), ilse, true, "for a test");
        GroupProfile profile = new GroupProfile(
                "Chester Bowl Seed Starters", ZoneId.of("America/Chicago"), Units.METRIC, "US", "55806", 2027);
        new GroupStore(database, audit).open(database.sql(), profile, id);
    }

    private static List<String> until(BufferedReader out, String last) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = out.readLine();
        while (line != null) {
            lines.add(line);
            if (line.contains(last)) {
                return lines;
            }
            line = out.readLine();
        }
        throw new AssertionError("the demo ended after printing " + lines);
    }

    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.toList();
        }
    }

    private Process demo(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + folder,
                // quick to start rather than quick in the long run
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "warmshelf.App",
                "demo"));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).start();
    }
}
