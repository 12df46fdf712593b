package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class ReadingPagesTest {
    private Cellar cellar;
    private UUID mat;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        mat = cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M1"))
                .fetchSingle(MAT.ID);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    // By definition of the scales: 80 °F is 26.67 °C, 32 °F is 0 °C, 78.8 °F is 26 °C.
    @ParameterizedTest
    @CsvSource({"80, 26.7", "32, 0.0", "78.8, 26.0", "'78,8', 26.0", "14, -10.0", "140, 60.0"})
    void a_reading_in_fahrenheit_is_kept_in_celsius(String typed, BigDecimal celsius) {
        assertThat(read(typed).status()).isEqualTo(303);

        assertThat(kept()).containsExactly(celsius);
    }

    @ParameterizedTest
    @CsvSource({"warm", "''", "141", "13", "NaN", "1e3"})
    void what_is_no_temperature_is_refused_and_stays_in_the_form(String typed) {
        Answer answer = read(typed);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text())
                .contains("The temperature in °F was '" + typed + "'; a number from 14 to 140 is accepted.");
        assertThat(answer.typed("celsius")).isEqualTo(typed);
        assertThat(kept()).isEmpty();
    }

    @Test
    void a_reading_sent_twice_is_kept_once() {
        Map<String, String> fields = Map.of("page", UUID.randomUUID().toString(), "celsius", "80");

        cellar.member().post("/mats/" + mat + "/readings", fields);
        cellar.member().post("/mats/" + mat + "/readings", fields);

        assertThat(kept()).hasSize(1);
    }

    /** The group is in Duluth: its 2 March begins at 06:00 UTC (IANA time zone database). */
    @ParameterizedTest
    @CsvSource({
        "2027-03-01T15:00:00Z, 2027-03-02T15:00:00Z, 2",
        "2027-03-01T15:00:00Z, 2027-03-02T06:00:30Z, 2",
        "2027-03-02T05:59:30Z, 2027-03-02T06:00:30Z, 1",
        "2027-03-02T05:30:00Z, 2027-03-02T05:59:59Z, 1"
    })
    void a_form_left_open_overnight_reads_the_mat_of_another_day(Instant first, Instant second, int readings) {
        Map<String, String> fields = Map.of("page", UUID.randomUUID().toString(), "celsius", "80");
        cellar.group().clock().set(first);
        cellar.member().post("/mats/" + mat + "/readings", fields);

        cellar.group().clock().set(second);
        cellar.member().post("/mats/" + mat + "/readings", fields);

        assertThat(kept()).hasSize(readings);
    }

    @Test
    void a_mat_that_is_not_there_is_not_found_and_strangers_read_nothing() {
        Map<String, String> fields = new HashMap<>(Map.of("celsius", "80"));

        assertThat(cellar.member().post("/mats/nonsense/readings", fields).status())
                .isEqualTo(404);
        assertThat(cellar.member()
                        .post("/mats/" + new UUID(0, 7) + "/readings", fields)
                        .status())
                .isEqualTo(404);
        assertThat(cellar.group()
                        .stranger()
                        .postAsIs("/mats/" + mat + "/readings", fields)
                        .status())
                .isEqualTo(401);
        fields.put("csrf", "made-up");
        assertThat(cellar.member()
                        .postAsIs("/mats/" + mat + "/readings", fields)
                        .status())
                .isEqualTo(403);
        assertThat(kept()).isEmpty();
    }

    private Answer read(String typed) {
        return cellar.member().post("/mats/" + mat + "/readings", Map.of("celsius", typed));
    }

    private List<BigDecimal> kept() {
        return cellar.group()
                .database()
                .sql()
                .select(ENTRY.CELSIUS)
                .from(ENTRY)
                .where(ENTRY.MAT_ID.eq(mat))
                .fetch(ENTRY.CELSIUS);
    }
}
