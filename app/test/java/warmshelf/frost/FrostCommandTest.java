package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.CommandRun;

class FrostCommandTest {
    @Test
    void it_prints_the_documented_fields() {
        JsonNode answer = CommandRun.of("frost", "55811", "--season", "2027").json();

        assertThat(answer.fieldNames())
                .toIterable()
                .contains(
                        "evidence",
                        "place",
                        "latitude",
                        "longitude",
                        "elevationM",
                        "spring",
                        "autumn",
                        "stations",
                        "notes");
        assertThat(answer.get("evidence").asText()).isEqualTo("surface");
        assertThat(answer.get("place").asText()).isEqualTo("Duluth, MN 55811");
        for (String season : new String[] {"spring", "autumn"}) {
            assertThat(answer.get(season).fieldNames())
                    .toIterable()
                    .startsWith(
                            "seasons",
                            "seasonsWithFrost",
                            "anyFrost",
                            "p50",
                            "p30",
                            "p10",
                            "p90",
                            "sdDays",
                            "latest",
                            "earliest");
            assertThat(answer.get(season).get("seasons").isNull()).isTrue();
        }
        assertThat(answer.get("spring").get("p10").asText())
                .isGreaterThan(answer.get("spring").get("p50").asText());
        assertThat(answer.get("autumn").get("p10").asText())
                .isLessThan(answer.get("autumn").get("p50").asText());
    }

    @Test
    void what_only_another_kind_of_evidence_can_tell_is_left_out() {
        JsonNode ofSurface = CommandRun.of("frost", "55811").json();
        JsonNode ofMonths = CommandRun.of(
                        "frost", "--monthly", "-14,-11,-5,0,5,10,13,13,8,3,-4,-11", "--at", "46.8,-92.1,180")
                .json();

        assertThat(ofSurface.get("spring").fieldNames())
                .toIterable()
                .endsWith(
                        "earliest",
                        "yearSdDays",
                        "stationScatterDays",
                        "elevationSdDays",
                        "adjustmentDays",
                        "daysPer100M");
        assertThat(ofSurface.has("surface")).isTrue();
        assertThat(ofSurface.has("thresholdC")).isFalse();
        assertThat(ofMonths.get("spring").fieldNames()).toIterable().endsWith("latest", "earliest");
        assertThat(ofMonths.has("surface")).isFalse();
    }

    @Test
    void a_point_of_its_own_is_accepted() {
        JsonNode answer = CommandRun.of("frost", "--at", "46.75,-92.25,238", "--season", "2027")
                .json();

        assertThat(answer.get("spring").get("p50").asText()).isEqualTo("2027-05-18");
        assertThat(answer.get("elevationM").asDouble()).isEqualTo(238);
    }

    @Test
    void where_frost_is_rare_a_date_that_cannot_be_given_is_null() {
        JsonNode answer = CommandRun.of("frost", "--at", "26.75,-82.25,3", "--season", "2027")
                .json();

        assertThat(answer.get("spring").get("p50").isNull()).isTrue();
        assertThat(answer.get("spring").get("p10").isNull()).isFalse();
    }

    @Test
    void an_unknown_postcode_is_answered_with_similar_ones() {
        CommandRun run = CommandRun.of("frost", "5581");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("'5581'", "Duluth, MN 55811");
    }

    @Test
    void another_country_is_answered_with_the_way_that_works() {
        assertThat(CommandRun.of("frost", "N4X", "--country", "CA").err()).contains("'CA'", "latitude");
    }

    @ParameterizedTest
    @CsvSource({"2026-11-25,2027", "2027-01-01,2027", "2027-06-30,2027", "2027-07-01,2028", "2028-02-29,2028"})
    void the_season_is_the_next_spring(LocalDate today, int season) {
        assertThat(PlannedSeason.after(today)).isEqualTo(season);
    }
}
