package warmshelf.finding.prediction;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

class PredictionPagesTest {
    private Cellar cellar;
    private Browser member;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        member = cellar.member();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void before_anything_happened_each_part_says_what_it_waits_for() {
        assertThat(member.get("/findings/predictions").text())
                .contains("A sowing counts once it lay on a mat")
                .contains("A sowing counts once it has gone out")
                .contains("A sowing counts once its plants have gone out")
                .contains("A thermometer’s spring counts once");
    }

    @Test
    void what_went_out_is_held_against_the_plants_and_the_day_that_were_told() throws IOException {
        String sowing = plantedOutEarly();

        assertThat(member.get("/findings/predictions").text())
                .containsPattern("1 sowing that ended: [0-9]+ plants told together, 5 seen")
                .contains("too few to judge by")
                .contains("0 of 1 sowings went out on one of the days planned");
        CSVRecord plants = rows("plants").get(0);
        assertThat(plants.get("sowing")).isEqualTo(sowing);
        assertThat(plants.get("plants_seen")).isEqualTo("5");
        assertThat(Double.parseDouble(plants.get("plants_told")))
                .isBetween(Double.parseDouble(plants.get("low_90")), Double.parseDouble(plants.get("high_90")));
        CSVRecord out = rows("planting-out").get(0);
        assertThat(out.get("planted_out_on")).isEqualTo("2027-03-21");
        assertThat(out.get("planned")).isGreaterThan("2027-04-30");
    }

    private String plantedOutEarly() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.tick(sowing, Map.of("step", "sown"));
        cellar.group().clock().advance(Duration.ofDays(20));
        cellar.tick(sowing, Map.of("step", "look", "sprouted", "6"));
        for (String step : List.of("under-light", "planted-out")) {
            cellar.tick(sowing, Map.of("step", step, "lost", "1", "lightPlace", "home"));
        }
        return sowing;
    }

    @ParameterizedTest
    @ValueSource(strings = {"emergence", "plants", "planting-out", "frost"})
    void each_table_has_a_heading_also_when_it_is_empty(String table) throws IOException {
        assertThat(rows(table)).isEmpty();
        assertThat(member.get("/findings/predictions/" + table + ".csv").body()).contains(",");
    }

    private List<CSVRecord> rows(String table) throws IOException {
        Answer file = member.get("/findings/predictions/" + table + ".csv");
        assertThat(file.status()).isEqualTo(200);
        assertThat(file.header("Content-Type")).startsWith("text/csv");
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(file.body()))
                .getRecords();
    }
}
