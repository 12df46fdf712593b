package warmshelf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.THERMOMETER_NIGHT;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;

/** The nights of a thermometer, brought in as a table. */
class IncomingNightsTest {
    private TestGroup group;
    private Browser tom;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        tom = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void nights_are_noted_with_dates_as_a_spreadsheet_wrote_them() {
        UUID thermometer = thermometer();
        String address = Waiting.sent(tom, nights(thermometer, """
                day;celsius;thermometer
                2/27/2027;-2,5;
                2/3/2027;1,0;Back fence
                2/4/2027;1,0;Elsewhere
                2/3/2027;1,0;
                """));

        assertThat(tom.get(address).text())
                .contains("Dates are read as month, day, year, because ‘2/27/2027’")
                .contains("2 rows good")
                .contains("2 rows left out")
                .contains("It is of another thermometer, ‘Elsewhere’.");
        Waiting.take(tom, address);
        assertThat(group.database()
                        .sql()
                        .select(THERMOMETER_NIGHT.ON_DAY, THERMOMETER_NIGHT.CELSIUS)
                        .from(THERMOMETER_NIGHT)
                        .orderBy(THERMOMETER_NIGHT.ON_DAY)
                        .fetch(row -> row.value1() + " " + row.value2()))
                .containsExactly("2027-02-03 1.0", "2027-02-27 -2.5");

        String again = Waiting.sent(tom, nights(thermometer, "date,fahrenheit\n2027-02-03,33.8\n2027-02-27,28\n"));
        assertThat(tom.get(again).text())
                .contains("This night is noted already")
                .contains("instead of");
    }

    @Test
    void a_day_that_could_be_two_is_not_guessed() {
        String address =
                Waiting.sent(tom, nights(thermometer(), "day,celsius\n1/2/2027,1\n2027-02-30,1\n2027-03-02,1\n"));

        assertThat(tom.get(address).text())
                .contains("day was ‘1/2/2027’, which could be two days")
                .contains("The morning was '2027-02-30'")
                .contains("still to come")
                .contains("3 rows that cannot be taken in");
    }

    @Test
    void doubtful_nights_are_asked_back_once() {
        String address = Waiting.sent(tom, nights(thermometer(), "day,celsius\n2027-02-01,31\n"));
        assertThat(tom.get(address).text()).contains("warm for the lowest of a night");

        Answer asked = tom.post(address + "/taking");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.text()).contains("Some figures are doubtful");
        assertThat(group.database().sql().fetchCount(THERMOMETER_NIGHT)).isZero();

        assertThat(tom.post(address + "/taking", Map.of("sure", "yes")).status())
                .isEqualTo(303);
        assertThat(group.database().sql().fetchCount(THERMOMETER_NIGHT)).isEqualTo(1);
    }

    private Upload nights(UUID thermometer, String text) {
        return new Upload()
                .field("kind", "nights")
                .field("thermometer", thermometer.toString())
                .file("nights.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private UUID thermometer() {
        tom.post(
                "/frost/thermometers",
                Map.of(
                        "name", "Back fence",
                        "whose", "mine",
                        "latitude", "46.8",
                        "longitude", "-92.1",
                        "elevation", "700"));
        Matcher id = Pattern.compile("/frost/thermometers/([0-9a-f-]{36})")
                .matcher(tom.get("/frost/thermometers").body());
        assertThat(id.find()).isTrue();
        return UUID.fromString(id.group(1));
    }
}
