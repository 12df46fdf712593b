package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.frost.evidence.Garden;
import warmshelf.frost.evidence.Gardens;
import warmshelf.words.Units;

class FrostFormTest {
    private static final Gardens GARDENS = new Gardens(FrostSource.bundledOnly());
    private static final Garden.Postcode HOME = new Garden.Postcode("US", "55811");

    @Test
    void with_nothing_typed_it_is_the_members_own_postcode() {
        FrostForm form = form(Map.of());

        assertThat(form.garden()).get().extracting(Garden::name).isEqualTo("Duluth, MN 55811");
        assertThat(form.typed()).containsEntry("postcode", "55811").containsKeys("country", "latitude", "elevation");
        assertThat(form.problems()).isEmpty();
    }

    @Test
    void a_typed_postcode_is_looked_up_instead() {
        FrostForm form = form(Map.of("postcode", "55802-1234", "country", "us"));

        assertThat(form.garden()).get().extracting(Garden::name).isEqualTo("Duluth, MN 55802");
    }

    @Test
    void a_typed_point_wins_over_the_postcode() {
        FrostForm form =
                form(Map.of("postcode", "55802", "latitude", "46.75", "longitude", "-92.25", "elevation", "238"));

        assertThat(form.garden())
                .get()
                .extracting(garden -> garden.elevationM().orElseThrow())
                .isEqualTo(238.0);
    }

    @Test
    void an_unknown_postcode_is_said_to_be_that_similar_ones_are_offered_and_what_was_typed_is_kept() {
        FrostForm form = form(Map.of("postcode", "5581"));

        assertThat(form.garden()).isEmpty();
        assertThat(form.problems()).containsOnlyKeys("postcode");
        assertThat(form.problems().get("postcode")).contains("'5581'", "latitude");
        assertThat(form.similar()).extracting(PostcodePlace::code).contains("55811");
        assertThat(form.typed()).containsEntry("postcode", "5581");
    }

    @ParameterizedTest
    @CsvSource({
        "country, CA, postcode, Postcode is empty",
        "latitude, north, latitude, 'north'",
        "latitude, 46.8, longitude, Longitude is empty",
        "elevation, 99999, elevation, -430 to 6500"
    })
    void what_cannot_be_used_is_refused_beside_its_field(String field, String text, String at, String words) {
        assertThat(form(Map.of(field, text)).problems().get(at)).contains(words);
    }

    @Test
    void a_place_of_which_nothing_is_known_is_refused_with_the_reason_and_what_was_typed_stays() {
        FrostForm form = form(Map.of("latitude", "-33.9", "longitude", "151.2", "elevation", "5"));

        form.refuseUnknown(form.garden().orElseThrow());

        assertThat(form.problems().get("latitude")).contains("mainland of the United States", "brought in");
        assertThat(form.typed()).containsEntry("elevation", "5");
    }

    @Test
    void a_very_long_postcode_is_refused_shortly() {
        FrostForm form = form(Map.of("postcode", "5".repeat(100_000)));

        assertThat(form.problems().get("postcode")).hasSizeLessThan(200);
    }

    private static FrostForm form(Map<String, String> typed) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        typed.forEach((name, text) -> query.put(name, List.of(text)));
        return FrostForm.of(query, GARDENS, HOME, null, Units.METRIC);
    }
}
