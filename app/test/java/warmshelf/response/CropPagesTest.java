package warmshelf.response;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.TestGroup;

class CropPagesTest {
    private TestGroup group;
    private SeenSowings sowings;
    private Browser member;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        sowings = new SeenSowings(group.database(), group.audit(), GrowRoom.of(group));
        member = group.signedIn(group.onDuty());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void without_sowings_a_crop_shows_the_published_curve_and_says_that_nothing_was_seen() {
        Answer page = member.get("/crops/pepper");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).contains("<polyline").doesNotContain("response__dot");
        assertThat(page.text())
                .contains("Nothing has been seen here yet, so dates go by the table.")
                .contains("Harrington");
    }

    @Test
    void each_sowing_is_a_dot_with_its_figures_and_a_row_with_the_same_ones() {
        UUID sowing = sowings.upOnDay(12, sowings.lot());
        sowings.upOnDay(13, sowings.lot());

        Answer page = member.get("/crops/pepper");

        assertThat(page.body())
                .contains("<title>11.5 days at 79 °F</title>")
                .contains("<title>12.5 days at 79 °F</title>")
                .contains("href=\"/sowings/" + sowing + "\"");
        assertThat(page.text())
                .contains("From 2 sowings here: ")
                .contains("11.5 days, found between day 11 and day 12");
        assertThat(member.get("/crops").text()).contains("Pepper, sweet and mild hot");
    }

    @Test
    void a_sowings_page_says_what_was_learned_and_leads_to_the_curve() {
        UUID sowing = sowings.upOnDay(12, sowings.lot());
        sowings.upOnDay(13, sowings.lot());
        member.get("/crops/pepper");

        Answer page = member.get("/sowings/" + sowing);

        assertThat(page.body()).contains("href=\"/crops/pepper\"");
        assertThat(page.text()).contains("From 2 sowings here: ");
    }

    @Test
    void degrees_are_those_the_person_reads() {
        assertThat(member.get("/crops/pepper").text())
                .contains("by temperature in °F")
                .contains("82 °F");

        member.post(
                "/settings",
                Map.of(
                        "name",
                        "Priya Nair",
                        "country",
                        "US",
                        "postcode",
                        "55811",
                        "temperature",
                        "C",
                        "length",
                        "cm",
                        "version",
                        "1"));

        assertThat(member.get("/crops/pepper").text())
                .contains("by temperature in °C")
                .contains("28 °C");
    }

    @Test
    void every_crop_has_a_page() {
        CropCatalogue.bundled()
                .all()
                .forEach(crop -> assertThat(member.get("/crops/" + crop.id()).status())
                        .as(crop.id())
                        .isEqualTo(200));
    }

    @Test
    void what_is_no_crop_is_not_found_and_strangers_sign_in_first() {
        assertThat(member.get("/crops/moonflower-of-nowhere").status()).isEqualTo(404);
        assertThat(group.stranger().get("/crops/pepper").location()).startsWith("/sign-in");
    }

    @Test
    void the_numbers_page_leads_there() {
        assertThat(member.get("/numbers").body()).contains("href=\"/crops\"");
    }
}
