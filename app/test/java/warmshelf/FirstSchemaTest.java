package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.MEMBER;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.Migrations;
import warmshelf.group.GroupStore;
import warmshelf.testing.CommandRun;

/** A folder that the very first program filled, with the first six steps of its tables, is opened by today's. */
class FirstSchemaTest {
    private static final String FIRST = "20261125090000";

    @TempDir
    private Path folder;

    @Test
    void what_the_first_program_kept_is_there_today() throws IOException {
        try (Database first = Database.inFolder(folder, FIRST)) {
            fill(first);
        }

        try (Database today = Settings.onFreePort(folder).openDatabase()) {
            List<String> versions = Migrations.versions();
            assertThat(versions).hasSizeGreaterThan(30).contains(FIRST);
            assertThat(new GroupStore(today, new Audit(Clock.systemUTC()))
                            .find()
                            .orElseThrow()
                            .profile()
                            .name())
                    .isEqualTo("Cellar Growers");
            assertThat(today.sql().select(MEMBER.NAME).from(MEMBER).fetchSingle(MEMBER.NAME))
                    .isEqualTo("Ilse Brandt");
            assertThat(today.sql().select(MEMBER.CALLED).from(MEMBER).fetchSingle(MEMBER.CALLED))
                    .isEqualTo("Ilse");
            assertThat(today.rows()).containsEntry("sowing", 1L).containsEntry("entry", 1L);
            assertThat(today.sql().fetchCount(AUDIT_LINE)).isEqualTo(1);
        }
        CommandRun check = CommandRun.of("check", "--data", folder.toString());
        assertThat(check.status()).as(check.out()).isZero();
        assertThat(check.json().get("entries").asInt()).isEqualTo(1);
        assertThat(check.json().get("lastEntryAt").asText()).isEqualTo("2027-03-02T15:00:00Z");
    }

    private static void fill(Database first) throws IOException {
        try (InputStream rows = Objects.requireNonNull(FirstSchemaTest.class.getResourceAsStream("/first-group.sql"))) {
            for (String row : new String(rows.readAllBytes(), StandardCharsets.UTF_8)
                    .strip()
                    .split(";\n", -1)) {
                first.sql().execute(row);
            }
        }
    }
}
