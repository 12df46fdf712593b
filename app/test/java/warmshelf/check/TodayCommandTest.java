package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.CommandRun;
import warmshelf.testing.GrowRoom;

/** The round on the command line. */
class TodayCommandTest {
    @TempDir
    Path folder;

    @Test
    void an_empty_group_has_nothing_to_look_at() {
        Database.inFolder(folder).close();

        CommandRun run = CommandRun.of("today", "--data", folder.toString(), "--date", "2027-03-01");

        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.json().get("date").asText()).isEqualTo("2027-03-01");
        assertThat(run.json().get("checks")).isEmpty();
    }

    @Test
    void a_folder_without_a_group_is_named_and_left_alone() {
        CommandRun run = CommandRun.of("today", "--data", folder.resolve("none").toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("holds no group's data");
        assertThat(run.out()).isEmpty();
        assertThat(Files.exists(folder.resolve("none"))).isFalse();
    }

    @Test
    void a_date_that_is_none_is_refused() {
        Database.inFolder(folder).close();

        CommandRun run = CommandRun.of("today", "--data", folder.toString(), "--date", "1 March");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--date was '1 March'; a date such as 2027-03-01 is accepted.");
    }

    @Test
    void what_is_to_be_sown_today_comes_after_the_thermometer_of_its_mat() {
        LocalDate day = LocalDate.of(2027, 3, 1);
        Audit audit = new Audit(Clock.fixed(Instant.parse("2027-03-01T15:00:00Z"), ZoneOffset.UTC));
        try (Database database = Database.inFolder(folder)) {
            GrowRoom room = new GrowRoom(database, audit);
            SowingStores stores = SowingStores.over(database, audit, FrostSource.bundledOnly());
            PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), new Slot(1, 2), day, day.plusDays(14));
            database.sql()
                    .transaction(inside -> stores.stays()
                            .layOnMat(inside.dsl(), room.tomsPeppers(), spot, 26, new Band(24, 30), room.priya()));
        }

        CommandRun run = CommandRun.of("today", "--data", folder.toString(), "--date", day.toString());

        assertThat(run.status()).as(run.err()).isZero();
        JsonNode checks = run.json().get("checks");
        assertThat(checks).hasSize(2);
        assertThat(checks.get(0).get("look").asText()).contains("read the thermometer", "26 °C");
        JsonNode sow = checks.get(1);
        assertThat(sow.get("crop").asText()).isEqualTo("pepper");
        assertThat(sow.get("kind").asText()).isEqualTo("sown");
        assertThat(sow.get("place").asInt()).isEqualTo(1);
        assertThat(sow.get("day").asInt()).isZero();
        assertThat(sow.get("ifSeen").asText()).contains("label");
    }
}
