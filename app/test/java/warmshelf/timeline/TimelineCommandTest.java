package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.CommandRun;

class TimelineCommandTest {
    private static final String PEPPER =
            "--crop pepper --last-frost 2027-05-24 --first-frost 2027-09-20 --season 2027 --today 2027-01-10";

    @Test
    void it_prints_the_documented_fields() {
        JsonNode answer = timeline(PEPPER).json();

        assertThat(answer.fieldNames())
                .toIterable()
                .containsExactly(
                        "crop",
                        "method",
                        "part",
                        "verdict",
                        "frost",
                        "harvest",
                        "quickest",
                        "steps",
                        "sowOutside",
                        "warmDays",
                        "parts",
                        "again",
                        "standsUntil",
                        "life",
                        "bolting",
                        "notes");
        assertThat(answer.get("harvest").fieldNames())
                .toIterable()
                .containsExactly("first", "half", "chanceFirst", "chanceHalf");
        assertThat(answer.at("/harvest/first").asText()).isEqualTo("2027-08-09");
        assertThat(answer.at("/harvest/chanceFirst").isNull())
                .as("one date tells no chance")
                .isTrue();
        assertThat(answer.at("/steps/0").fieldNames())
                .toIterable()
                .startsWith("step", "earliest", "ideal", "latest", "why");
        assertThat(answer.get("verdict").asText()).isEqualTo("in time");
        assertThat(words(answer))
                .containsExactly(
                        "soak",
                        "sow",
                        "first-look",
                        "off-heat",
                        "light",
                        "first-feed",
                        "pot-on",
                        "harden-off",
                        "plant-out",
                        "ripe");
    }

    // Minnesota 4-6 weeks, Penn State 8-9; Purdue two to three weeks before the frost, Penn State four
    // (crop-sources.csv).
    @Test
    void where_extension_services_differ_the_reasons_give_their_range() {
        String broccoli = timeline("--crop broccoli --last-frost 2027-05-24 --season 2027 --today 2026-12-01")
                .out();

        assertThat(broccoli)
                .contains("(sources differ: 4 to 9 weeks)")
                .contains("Sources differ: from 28 days before the average last frost to 14 days before it.");
        assertThat(timeline("--crop strawflower --last-frost 2027-05-24 --season 2027 --today 2026-12-01")
                        .out())
                .doesNotContainIgnoringCase("sources differ");
    }

    @Test
    void a_last_frost_date_alone_says_that_its_risk_is_not_known() {
        JsonNode frost = timeline(PEPPER).json().get("frost");

        assertThat(frost.get("lastFrost").asText()).isEqualTo("2027-05-24");
        assertThat(frost.get("laterFrostChance").isNull()).isTrue();
        assertThat(frost.get("words").asText())
                .startsWith("What risk 24 May carries is not known.")
                .contains("every other spring");
    }

    // The command frost gives the days after which 50, 30 and 10 of 100 springs still have a frost.
    @ParameterizedTest
    @CsvSource({"p50,0.5", "p30,0.3", "p10,0.1"})
    void beside_a_postcode_a_last_frost_date_says_the_risk_it_carries(String of, double chance) {
        String day = CommandRun.of("frost", "55811", "--season", "2027")
                .json()
                .at("/spring/" + of)
                .asText();

        JsonNode frost = timeline("--crop pepper --season 2027 --postcode 55811 --last-frost " + day)
                .json()
                .get("frost");

        assertThat(frost.get("laterFrostChance").asDouble()).isCloseTo(chance, within(0.03));
        assertThat(frost.get("words").asText()).contains("of 100 springs at Duluth");
    }

    @Test
    void a_postcode_says_the_risk_that_is_accepted() {
        JsonNode frost = timeline("--crop pepper --season 2027 --postcode 55811 --risk 0.2")
                .json()
                .get("frost");

        assertThat(frost.get("laterFrostChance").asDouble()).isEqualTo(0.2);
        assertThat(frost.get("words").asText()).contains("20 of 100 springs");
    }

    @Test
    void a_crop_that_bears_no_moving_says_where_it_is_usually_sown() {
        String order = " --season 2027 --last-frost 2027-05-24 --today 2027-02-01";

        JsonNode corn = timeline("--crop sweet-corn" + order).json();

        assertThat(corn.at("/sowOutside/usually").asText()).isEqualTo("where-it-grows");
        assertThat(corn.at("/sowOutside/from").asText()).isEqualTo("2027-05-13");
        assertThat(corn.at("/sowOutside/soilC").asDouble()).isEqualTo(15.6);
        assertThat(words(corn)).contains("sow", "plant-out").doesNotContain("pot-on");
        assertThat(timeline("--crop winter-squash" + order)
                        .json()
                        .at("/sowOutside/usually")
                        .asText())
                .isEqualTo("pot-that-rots");
        assertThat(timeline(PEPPER).json().get("sowOutside").isNull()).isTrue();
    }

    @Test
    void a_bag_is_moved_into_cells() {
        assertThat(words(timeline(PEPPER + " --method bag").json())).contains("move-to-cells");
    }

    // Common practice: peppers at least eight weeks before the last frost; here the day of the accepted risk.
    @ParameterizedTest
    @CsvSource({"55811", "55804", "97201", "30303"})
    void a_postcode_gives_the_frost_dates(String postcode) {
        JsonNode frost = CommandRun.of("frost", postcode, "--season", "2027").json();
        JsonNode answer = timeline("--crop pepper --season 2027 --today 2026-11-01 --postcode " + postcode)
                .json();

        LocalDate planned = LocalDate.parse(frost.at("/spring/p10").asText());
        assertThat(date(answer, "plant-out")).isAfterOrEqualTo(planned);
        assertThat(date(answer, "sow")).isBeforeOrEqualTo(planned.minusWeeks(8));
    }

    @Test
    void accepting_more_risk_plants_out_earlier() {
        String place = "--crop tomato --season 2027 --today 2026-11-01 --postcode 55811 --risk ";

        assertThat(date(timeline(place + "0.5").json(), "plant-out"))
                .isBefore(date(timeline(place + "0.1").json(), "plant-out"));
    }

    @Test
    void a_postcode_gives_the_chance_that_the_harvest_comes_before_the_frost() {
        String order = " --season 2027 --today 2026-11-01 --postcode ";

        JsonNode north = timeline("--crop pepper-very-hot" + order + "56649").json();
        JsonNode south = timeline("--crop pepper-very-hot" + order + "30303").json();

        assertThat(north.get("verdict").asText()).isEqualTo("tight");
        assertThat(north.at("/harvest/chanceFirst").asDouble()).isBetween(0.5, 0.9);
        assertThat(north.at("/harvest/chanceHalf").asDouble()).isLessThan(0.5);
        assertThat(south.get("verdict").asText()).isEqualTo("in time");
        assertThat(south.at("/harvest/chanceHalf").asDouble()).isGreaterThan(0.95);
    }

    @Test
    void flowers_have_no_harvest_to_weigh() {
        JsonNode answer = timeline("--crop marigold --season 2027 --today 2026-11-01 --postcode 55811")
                .json();

        assertThat(answer.get("harvest").isNull()).isTrue();
        assertThat(answer.get("verdict").asText()).isEqualTo("in time");
    }

    @Test
    void too_late_is_said_with_what_to_do_instead() {
        JsonNode answer = timeline(PEPPER.replace("2027-01-10", "2027-06-20")).json();

        assertThat(answer.get("verdict").asText()).isEqualTo("too late");
        assertThat(answer.at("/notes/0").asText()).contains("Buy plants");
    }

    @Test
    void the_part_of_the_year_is_the_first_in_time_unless_it_is_named() {
        String kale = "--crop kale --last-frost 2027-05-24 --first-frost 2027-10-01 --season 2027 --today 2027-07-20";

        JsonNode next = timeline(kale).json();
        JsonNode spring = timeline(kale + " --part spring").json();

        assertThat(next.get("part").asText()).isEqualTo("autumn");
        assertThat(next.get("verdict").asText()).isNotEqualTo("too late");
        assertThat(next.at("/parts/0/verdict").asText()).isEqualTo("too late");
        assertThat(next.at("/parts/1/sow/latest").asText()).isGreaterThan("2027-07-20");
        assertThat(next.at("/life/life").asText()).isEqualTo("biennial");
        assertThat(next.get("standsUntil").asText()).isGreaterThan("2027-10-15");
        assertThat(spring.get("part").asText()).isEqualTo("spring");
        assertThat(spring.get("verdict").asText()).isEqualTo("too late");
    }

    @Test
    void the_quickest_kinds_and_the_bolting_limit_have_fields_of_their_own() {
        JsonNode tomato = timeline(
                        "--crop tomato --last-frost 2027-06-01 --first-frost 2027-08-09 --season 2027 --today 2027-01-10")
                .json();
        JsonNode celery = timeline("--crop celery --last-frost 2027-06-01 --season 2027 --today 2027-01-10")
                .json();

        assertThat(tomato.get("verdict").asText()).isEqualTo("tight");
        assertThat(tomato.at("/quickest/daysMin").asInt()).isEqualTo(45);
        assertThat(tomato.at("/quickest/alone").asBoolean()).isTrue();
        assertThat(tomato.at("/harvest/first").asText()).isEqualTo("2027-08-10");
        assertThat(celery.at("/bolting/belowC").asDouble()).isEqualTo(12.8);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--crop tomato --last-frost 2027-05-24 --season 2027 --part autumn | for tomato there, spring is accepted",
                "--crop peper --last-frost 2027-05-24 --season 2027 | There is no crop 'peper'; did you mean pepper",
                "--crop hot --last-frost 2027-05-24 --season 2027 | pepper-very-hot",
                "--crop pepper --season 2027 --postcode 00000 | There is no postcode '00000'",
                "--crop pepper --season 2027 | --postcode 55811, or --last-frost 2027-05-24",
                "--crop pepper --season 2027 --postcode 55811 --first-frost 2027-09-20 | --first-frost goes with"
                        + " --last-frost",
                "--crop pepper --season 2027 --last-frost 2027-02-30 | --last-frost was '2027-02-30'; a date such as",
                "--crop pepper --season 2027 --last-frost tomorrow | --last-frost was 'tomorrow'",
                "--crop pepper --season 2027 --last-frost 2026-05-24 | is not in the season 2027",
                "--crop pepper --season 2027 --last-frost 2027-05-24 --first-frost 2027-05-01 | a date after the last"
                        + " frost, 2027-05-24",
                "--crop pepper --season 1999 --last-frost 2027-05-24 | --season was '1999'; a whole number from 2,000"
                        + " to 2,100",
                "--crop pepper --season 2027 --last-frost 2027-05-24 --risk 0 | --risk was '0'; a number from 0.01 to"
                        + " 0.9",
                "--crop pepper --season 2027 --last-frost 2027-05-24 --risk 0.95 | --risk was '0.95'",
                "--crop pepper --season 2027 --last-frost 2027-05-24 --mat-c 60 | --mat-c was '60'; a number from 5 to"
                        + " 45",
                "--crop pepper --season 2027 --last-frost 2027-05-24 --method pot | --method was 'pot'; cells or bag",
                "--crop pepper --season 2027 --last-frost 2027-05-24 --today now | --today was 'now'"
            })
    void bad_input_is_answered_with_a_sentence_and_status_2(String arguments, String sentence) {
        CommandRun run = timeline(arguments);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(sentence);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void a_postcode_close_to_the_one_typed_is_offered() {
        assertThat(timeline("--crop pepper --season 2027 --postcode 5581").err())
                .contains("Duluth");
    }

    private static CommandRun timeline(String arguments) {
        return CommandRun.of(("timeline " + arguments).split(" "));
    }

    private static List<String> words(JsonNode answer) {
        List<String> words = new ArrayList<>();
        answer.get("steps").forEach(step -> words.add(step.get("step").asText()));
        return words;
    }

    private static LocalDate date(JsonNode answer, String word) {
        for (JsonNode step : answer.get("steps")) {
            if (step.get("step").asText().equals(word)) {
                return LocalDate.parse(step.get("ideal").asText());
            }
        }
        throw new AssertionError("no step " + word + " in " + answer);
    }
}
