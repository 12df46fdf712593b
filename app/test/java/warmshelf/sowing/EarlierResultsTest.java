package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.Database;

/** What an earlier program kept of sowings learns the day on which their plants went out. */
class EarlierResultsTest {
    private static final String BEFORE_DAYS_OUT = "20261201044100";

    @TempDir
    private Path folder;

    @Test
    void the_day_out_is_the_first_that_still_counts() {
        UUID out = UUID.randomUUID();
        UUID growing = UUID.randomUUID();
        try (Database earlier = Database.inFolder(folder, BEFORE_DAYS_OUT)) {
            DSLContext sql = earlier.sql();
            sql.execute("alter table sowing_result drop constraint sowing_result_sowing_fk");
            sql.execute("alter table entry drop constraint entry_sowing_fk");
            sql.execute("alter table entry drop constraint entry_made_by_fk");
            result(sql, out);
            result(sql, growing);
            UUID mistaken = entry(sql, out, "planted-out", "2027-05-01", null);
            entry(sql, out, "undone", "2027-05-01", mistaken);
            entry(sql, out, "planted-out", "2027-05-20", null);
            entry(sql, out, "planted-out", "2027-05-24", null);
            entry(sql, growing, "hardening-off", "2027-05-20", null);
        }

        try (Database now = Database.inFolder(folder)) {
            String day = "select cast(planted_out_on as varchar) from sowing_result where sowing_id = ?";
            assertThat(now.sql().fetchValue(day, out)).isEqualTo("2027-05-20");
            assertThat(now.sql().fetchValue(day, growing)).isNull();
        }
    }

    private static void result(DSLContext sql, UUID sowing) {
        sql.execute(
                "insert into sowing_result (sowing_id, crop_id, lot_id, season, method, seeds, warmth_open)"
                        + " values (?, 'pepper', ?, 2027, 'cells', 12, false)",
                sowing,
                UUID.randomUUID());
    }

    private static UUID entry(DSLContext sql, UUID sowing, String step, String day, @Nullable UUID supersedes) {
        UUID id = UUID.randomUUID();
        sql.execute(
                "insert into entry (id, sowing_id, step, seen_on, seen_at, finished, note, supersedes, made_by, made_at)"
                        + " values (?, ?, ?, cast(? as date), timestamp with time zone '2027-05-01 12:00:00+00', false,"
                        + " '', cast(? as uuid), ?, timestamp with time zone '2027-05-01 12:00:00+00')",
                id,
                sowing,
                step,
                day,
                supersedes,
                UUID.randomUUID());
        return id;
    }
}
