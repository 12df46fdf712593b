package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;

import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Browser;

class MatAlarmsTest {
    private Cellar cellar;
    private UUID mat;

    @BeforeEach
    void sowOnTheMat() {
        cellar = Cellar.open();
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        // the day on which the stay begins
        cellar.group().clock().advance(Duration.ofDays(23));
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

    @Test
    void a_mat_read_too_hot_is_told_to_the_coordinator_and_to_whoever_lies_there() {
        read("95");

        assertThat(today(cellar.coordinator()))
                .contains("Mat M1 is too hot.", "read 95 °F today; it is to stand at")
                .doesNotContain("Something of yours lies there.");
        assertThat(today(cellar.member())).contains("Mat M1 is too hot.", "Something of yours lies there.");
        assertThat(today(cellar.group().signedIn(cellar.group().onDuty()))).doesNotContain("is too hot");
    }

    @Test
    void a_mat_out_of_service_raises_no_alarm_and_nobody_is_to_read_it() {
        read("68");
        assertThat(today(cellar.coordinator())).contains("Thermometer of mat M1", "Mat M1 is too cold.");

        cellar.coordinator()
                .post(
                        "/plans/out-of-service",
                        Map.of(
                                "mat",
                                mat.toString(),
                                "first",
                                "2027-03-24",
                                "last",
                                "2027-03-30",
                                "reason",
                                "The probe broke"));

        assertThat(today(cellar.coordinator()))
                .contains("Mat M1 is out of service")
                .doesNotContain("Thermometer of mat M1", "is too cold");
    }

    @Test
    void a_mat_read_too_cold_says_what_to_look_at() {
        read("68");

        assertThat(today(cellar.member())).contains("Mat M1 is too cold.", "whether it is plugged in");
    }

    @Test
    void the_next_good_reading_ends_the_alarm() {
        read("95");
        cellar.group().clock().advance(Duration.ofHours(1));
        read("80");

        assertThat(today(cellar.coordinator())).doesNotContain("is too hot").contains("Read today: 80 °F");
    }

    @Test
    void an_alarm_of_yesterday_stands_and_one_of_the_day_before_does_not() {
        read("95");
        cellar.group().clock().advance(Duration.ofDays(1));
        assertThat(today(cellar.coordinator())).contains("read 95 °F yesterday");

        cellar.group().clock().advance(Duration.ofDays(1));
        assertThat(today(cellar.coordinator())).doesNotContain("is too hot");
    }

    @Test
    void a_reading_two_degrees_off_is_borne_and_one_further_off_is_not() {
        assertThat(MatAlarm.isOff(28, 26)).isFalse();
        assertThat(MatAlarm.isOff(24, 26)).isFalse();
        assertThat(MatAlarm.isOff(28.1, 26)).isTrue();
        assertThat(MatAlarm.isOff(23.9, 26)).isTrue();
    }

    private void read(String fahrenheit) {
        assertThat(cellar.coordinator()
                        .post("/mats/" + mat + "/readings", Map.of("celsius", fahrenheit))
                        .status())
                .isEqualTo(303);
    }

    private static String today(Browser browser) {
        return browser.get("/today").text();
    }
}
