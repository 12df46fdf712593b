package warmshelf.finding.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

class SeasonFindingPagesTest {
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
    void before_anything_is_sown_the_page_says_so() {
        assertThat(member.get("/findings").text()).contains("Nothing has been sown in this season.");
    }

    @Test
    void what_was_sown_and_waits_is_still_coming() {
        sown();

        Answer page = member.get("/findings");

        assertThat(page.text()).contains("1 sowing by 1 member:").contains("still coming");
        assertThat(member.get("/findings/2027/crops/pepper").status()).isEqualTo(200);
    }

    private String sown() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.tick(sowing, Map.of("step", "sown"));
        return sowing;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/findings/1999",
                "/findings/2098",
                "/findings/20270",
                "/findings/x",
                "/findings/2027/crops/moonflower",
                "/findings/20/sowings.csv"
            })
    void what_is_not_there_is_not_found(String address) {
        assertThat(member.get(address).status()).isEqualTo(404);
    }

    @Test
    void an_unknown_way_to_put_sowings_together_shows_the_page_all_the_same() {
        assertThat(member.get("/findings/2027/crops/pepper?by=moon").status()).isEqualTo(200);
    }

    @Test
    void a_coordinator_says_what_electricity_costs() {
        sown();
        Browser coordinator = cellar.coordinator();

        assertThat(coordinator
                        .post("/findings/2027/price", Map.of("price", "0.25", "currency", "USD"))
                        .status())
                .isEqualTo(303);

        assertThat(member.get("/findings").text())
                .containsPattern("Mats and lamps drew at most [0-9,]+ kWh, [0-9.]+ USD:");
        assertThat(coordinator.get("/findings/2027/price").body()).contains("0.25");
        assertThat(member.get("/findings/2027/price").status()).isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({
        "0, USD, Price of a kilowatt-hour was '0'",
        "cheap, USD, Price of a kilowatt-hour was 'cheap'",
        "0.2, '', Currency is empty",
        "0.2, US dollars, Currency has 10 characters"
    })
    void a_price_that_is_none_is_refused_and_kept_on_the_page(String price, String currency, String sentence) {
        Answer again = cellar.coordinator().post("/findings/2027/price", Map.of("price", price, "currency", currency));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains(sentence);
        assertThat(again.typed("price")).isEqualTo(price);
    }

    @Test
    void files_can_be_read_by_a_second_parser_and_hold_no_formulas() throws IOException {
        String sowing = sown();
        cellar.tick(sowing, Map.of("step", "look", "note", "=1+1, \"so\"\nsecond line"));

        List<CSVRecord> entries = rows("/findings/2027/entries.csv");
        List<CSVRecord> sowings = rows("/findings/2027/sowings.csv");

        assertThat(entries).extracting(row -> row.get("step")).containsExactly("sown", "look");
        assertThat(entries.get(1).get("note")).startsWith("'=1+1, \"so\"").contains("second line");
        assertThat(sowings).hasSize(1);
        assertThat(sowings.get(0).get("sowing")).isEqualTo(sowing);
        assertThat(sowings.get(0).get("crop")).isEqualTo("pepper");
        assertThat(sowings.get(0).get("no_more_waited_for")).isEqualTo("false");
        assertThat(rows("/findings/2027/weeks.csv")).isNotEmpty();
    }

    private List<CSVRecord> rows(String address) throws IOException {
        Answer file = member.get(address);
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
