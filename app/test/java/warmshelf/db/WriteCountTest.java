package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.DUTY_WILLING;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;
import static warmshelf.db.generated.Tables.SITE;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What was read is taken for the newest only until something is written. */
class WriteCountTest {
    private final Database database = Database.inMemory("write-count-" + UUID.randomUUID());

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void it_grows_once_more_when_the_outermost_transaction_is_there_for_others() {
        long[] inside = new long[1];

        database.sql().transaction(outer -> {
            outer.dsl().transaction(inner -> write(inner.dsl(), "Barn"));
            inside[0] = database.writes();
        });

        assertThat(inside[0]).isPositive();
        assertThat(database.writes()).isGreaterThan(inside[0]);
    }

    @Test
    void what_was_rolled_back_inside_does_not_end_the_one_around_it() {
        long[] inside = new long[1];

        database.sql().transaction(outer -> {
            write(outer.dsl(), "Barn");
            try {
                outer.dsl().transaction(inner -> {
                    throw new IllegalStateException("refused");
                });
            } catch (IllegalStateException refused) {
                inside[0] = database.writes();
            }
        });

        assertThat(database.writes()).isGreaterThan(inside[0]);
    }

    @Test
    void each_table_has_its_own() {
        long others = database.writesBeside(List.of(SITE));

        write(database.sql(), "Barn");

        assertThat(database.writesTo(List.of(SITE))).isEqualTo(1);
        assertThat(database.writesTo(List.of(DUTY_WILLING, POSTCODE_PLACE))).isZero();
        assertThat(database.writesBeside(List.of(SITE))).isEqualTo(others);
        assertThat(database.writesBeside(List.of(DUTY_WILLING))).isEqualTo(others + 1);
    }

    @Test
    void many_rows_at_once_count_too() {
        var barn = database.sql().newRecord(SITE);
        barn.setId(UUID.randomUUID());
        barn.setName("Barn");
        barn.setWalkOrder(1);
        barn.setCircuitAmps(BigDecimal.valueOf(20));
        barn.setCircuitVolts(120);
        barn.setNote("");
        barn.setVersion(1);

        database.sql().batchInsert(List.of(barn)).execute();

        assertThat(database.writesTo(List.of(SITE))).isPositive();
    }

    private static void write(DSLContext sql, String name) {
        sql.update(SITE).set(SITE.NAME, name).execute();
    }
}
