package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.Database;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

class OpeningTheDatabaseTest {
    @TempDir
    private Path folder;

    @Test
    void what_was_written_is_there_after_closing_and_opening_again() {
        warmshelf.db.Audit audit = new warmshelf.db.Audit(new MutableClock(TestGroup.MORNING));
        try (Database database = settings(folder).openDatabase()) {
            UUID ilse = new MemberStore(database, audit)
                    .add(database.sql(), new NewMember("Ilse Brandt", "US", "55803", "hash"), true, "");
            new GroupStore(database, audit)
                    .open(
                            database.sql(),
                            new GroupProfile(
                                    "Hillside", ZoneId.of("America/Chicago"), Units.METRIC, "US", "55811", 2027),
                            ilse);
        }

        try (Database database = settings(folder).openDatabase()) {
            assertThat(new GroupStore(database, audit)
                            .find()
                            .orElseThrow()
                            .profile()
                            .name())
                    .isEqualTo("Hillside");
        }
    }

    @Test
    void a_missing_folder_is_made() {
        Path deeper = folder.resolve("groups/duluth");

        settings(deeper).openDatabase().close();

        assertThat(deeper.resolve("warmshelf.mv.db")).exists();
    }

    @Test
    void a_folder_that_is_in_use_is_refused_with_a_sentence() {
        try (Database first = settings(folder).openDatabase()) {
            assertThat(first.answers()).isTrue();
            // Within one process H2 shares the open file, so another process has to try.
            assertThat(tryFromAnotherProcess()).contains("is in use by another Warmshelf");
        }
    }

    @Test
    void a_file_in_place_of_the_folder_is_refused_with_a_sentence() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "not a folder");

        assertThatThrownBy(() -> settings(file).openDatabase())
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("The data folder '" + file + "' cannot be used");
    }

    @Test
    void data_of_a_newer_program_is_not_touched() {
        try (Database database = settings(folder).openDatabase()) {
            database.sql().execute("""
                            insert into "flyway_schema_history"
                              ("installed_rank", "version", "description", "type", "script", "installed_by",
                               "execution_time", "success")
                            values (99, '29990101000000', 'from the future', 'SQL', 'V29990101000000__x.sql', 'x', 1, true)
                            """);
        }

        assertThatThrownBy(() -> settings(folder).openDatabase())
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("written by a newer Warmshelf");
    }

    @Test
    void a_server_that_is_not_there_is_told_in_a_sentence() {
        Settings settings = new Settings(
                "127.0.0.1",
                0,
                null,
                folder,
                "jdbc:postgresql://127.0.0.1:9/none?connectTimeout=2",
                "nobody",
                "nothing",
                Set.of(),
                ZoneId.of("UTC"),
                null,
                null);

        assertThatThrownBy(settings::openDatabase)
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("The database of --jdbc-url does not let Warmshelf in");
    }

    private String tryFromAnotherProcess() {
        try {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            "warmshelf.App",
                            "serve",
                            "--port",
                            "0",
                            "--data",
                            folder.toString())
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            assertThat(process.waitFor()).isEqualTo(2);
            return said;
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    private static Settings settings(Path folder) {
        return Settings.onFreePort(folder);
    }
}
