package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.CommandRun;

class SowCommandTest {
    @Test
    void it_prints_the_documented_fields() {
        JsonNode answer = sow("--want 12 --share 0.8").json();

        assertThat(answer.fieldNames()).toIterable().startsWith("seeds", "cells", "probability", "share", "perCell");
        assertThat(answer.get("share").fieldNames()).toIterable().startsWith("mean", "low", "high");
        assertThat(answer.get("perCell").fieldNames()).toIterable().startsWith("k", "atLeastOne");
        assertThat(answer.get("seeds").asInt()).isEqualTo(18); // exact binomial table, statistics.md part e
        assertThat(answer.get("cells").asInt()).isEqualTo(18);
        assertThat(answer.get("probability").asDouble()).isGreaterThanOrEqualTo(0.9);
    }

    @Test
    void a_higher_confidence_asks_for_more() {
        assertThat(sow("--want 12 --share 0.8 --confidence 0.95")
                        .json()
                        .get("seeds")
                        .asInt())
                .isEqualTo(19); // the same table, 95 %
    }

    @Test
    void two_seeds_to_a_cell_at_80_percent_fill_96_of_a_hundred() {
        JsonNode answer = sow("--want 12 --share 0.8 --per-cell 2").json();

        assertThat(answer.at("/perCell/atLeastOne").asDouble()).isEqualTo(0.96);
        assertThat(answer.get("seeds").asInt())
                .isEqualTo(2 * answer.get("cells").asInt());
    }

    @Test
    void a_tested_share_comes_with_its_doubt() {
        JsonNode share = sow("--want 12 --tested 17/20").json().get("share");

        assertThat(share.get("mean").asDouble()).isEqualTo(0.833333);
        assertThat(share.get("low").asDouble()).isBetween(0.6, 0.75);
        assertThat(share.get("high").asDouble()).isBetween(0.9, 0.97);
    }

    @Test
    void untested_old_seed_needs_more_than_fresh() {
        int fresh = sow("--want 6 --crop pepper --year 2027 --season 2027")
                .json()
                .get("seeds")
                .asInt();
        int old = sow("--want 6 --crop pepper --year 2022 --season 2027")
                .json()
                .get("seeds")
                .asInt();

        assertThat(old).isGreaterThan(fresh);
    }

    @Test
    void a_test_tells_more_where_the_crop_is_known() {
        JsonNode alone = sow("--want 6 --tested 10/10").json();
        JsonNode pepper = sow("--want 6 --tested 10/10 --crop pepper").json();

        assertThat(pepper.at("/share/mean").asDouble())
                .isLessThan(alone.at("/share/mean").asDouble());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--want 0 --share 0.8 | --want was '0'; a whole number from 1 to 5,000",
                "--want -3 --share 0.8 | --want was '-3'",
                "--want 10000 --share 0.8 | --want was '10000'; a whole number from 1 to 5,000",
                "--want many --share 0.8 | --want was 'many'",
                "--want 5 --tested 11/10 | The seeds up in --tested was '11'; a whole number from 0 to 10",
                "--want 5 --tested 0/0 | The seeds tried in --tested was '0'",
                "--want 5 --tested 17 | --tested was '17'; seeds up of seeds tried, such as 17/20",
                "--want 5 --tested -1/10 | The seeds up in --tested was '-1'",
                "--want 5 --share 0 | --share was '0'; a number from 0.001 to 1",
                "--want 5 --share 1.2 | --share was '1.2'",
                "--want 5 --share NaN | --share was 'NaN'",
                "--want 5 --share 0.8 --survival 0 | --survival was '0'",
                "--want 5 --share 0.8 --per-cell 0 | --per-cell was '0'; a whole number from 1 to 10",
                "--want 5 --share 0.8 --confidence 1 | --confidence was '1'",
                "--want 5 | Nothing is said of the seed; give --tested 17/20",
                "--want 5 --share 0.8 --tested 8/10 | --share takes the share as known",
                "--want 5 --crop peper --year 2026 --season 2027 | There is no crop 'peper'",
                "--want 5 --crop pepper --season 2027 | --crop needs --year",
                "--want 5 --crop pepper --year 2030 --season 2027 | --year was 2030, later than the season 2027; give --season 2030",
                "--want 5000 --tested 0/1000 --confidence 0.99 | Not even 1,000,000 seeds"
            })
    void bad_input_is_answered_with_a_sentence_and_status_2(String arguments, String sentence) {
        CommandRun run = sow(arguments);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(sentence);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void an_unknown_option_is_refused() {
        assertThat(sow("--want 5 --share 0.8 --colour red").status()).isEqualTo(2);
    }

    private static CommandRun sow(String arguments) {
        return CommandRun.of(("sow " + arguments).split(" "));
    }
}
