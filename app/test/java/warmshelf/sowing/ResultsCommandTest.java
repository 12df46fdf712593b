package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SOWING_RESULT;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.testing.CommandRun;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;

/** What sowings taught, worked out anew on the command line. */
class ResultsCommandTest {
    private static final Audit AUDIT = new Audit(Clock.fixed(Instant.parse("2027-03-01T15:00:00Z"), ZoneOffset.UTC));

    @TempDir
    Path folder;

    @Test
    void it_says_what_was_wrong_and_puts_it_right() {
        try (Database database = Database.inFolder(folder)) {
            SeenSowings sowings = new SeenSowings(database, AUDIT, new GrowRoom(database, AUDIT));
            sowings.upOnDay(9, sowings.lot());
            sowings.upOnDay(11, sowings.lot());
            database.sql()
                    .update(SOWING_RESULT)
                    .set(SOWING_RESULT.SEEDS, 99)
                    .where(SOWING_RESULT.HALF_BY_DAYS.eq(11))
                    .execute();
        }

        CommandRun first = CommandRun.of("results", "--data", folder.toString());
        CommandRun second = CommandRun.of("results", "--data", folder.toString());

        assertThat(first.status()).as(first.err()).isEqualTo(1);
        assertThat(first.json().toString()).isEqualTo("{\"right\":1,\"missing\":0,\"wrong\":1}");
        assertThat(second.status()).isZero();
        assertThat(second.json().toString()).isEqualTo("{\"right\":2,\"missing\":0,\"wrong\":0}");
    }

    @Test
    void a_folder_without_a_group_is_named_and_left_alone() {
        CommandRun run =
                CommandRun.of("results", "--data", folder.resolve("none").toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("holds no group's data");
        assertThat(Files.exists(folder.resolve("none"))).isFalse();
    }
}
