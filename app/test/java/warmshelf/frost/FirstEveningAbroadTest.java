package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** What a new group outside the United States meets on its first evening. */
class FirstEveningAbroadTest {
    private static final String ASK =
            "/ask/plan?lot=new&crop=pepper&variety=Dawn&plants=6&method=cells&heat=warm&after=light"
                    + "&container=half-tray&where=outdoors&cellsInATray=72&risk=&source=packet&storage=unknown";

    @ParameterizedTest
    @CsvSource({
        "NO, 0150, Norway, Europe/Oslo, 59.91, 10.75, 20 May, 28 September",
        "DE, 90210, Germany, Europe/Berlin, 49.45, 11.08, 5 May, 12 October",
        "NZ, 9016, New Zealand, Pacific/Auckland, -45.87, 170.5, 20 October, 25 April"
    })
    void frost_leads_on_and_a_point_and_two_dates_are_enough_for_a_plan(
            String code,
            String postcode,
            String country,
            String zone,
            String latitude,
            String longitude,
            String spring,
            String autumn) {
        try (TestGroup group = TestGroup.unopened()) {
            Browser coordinator = opened(group, code, postcode, zone);

            Answer first = coordinator.get("/frost");
            assertThat(first.status()).isEqualTo(200);
            assertThat(first.text())
                    .contains(postcode + " in " + country)
                    .contains("Send a file")
                    .contains("Type in twelve monthly mean minima")
                    .contains("Write the dates that people here know")
                    .contains("Give its point")
                    .doesNotContain("look at this again")
                    .doesNotContain("Did you mean")
                    .doesNotContain("CA, US");
            assertThat(coordinator.get("/ask").text()).contains("No frost dates are known for your garden yet");
            assertThat(coordinator.get("/frost/months").text())
                    .contains("was fitted and measured in the United States, not here")
                    .doesNotContain("3 days");

            coordinator.post(
                    "/frost/garden/point",
                    Map.of("latitude", latitude, "longitude", longitude, "elevation", "60", "version", "0"));
            assertThat(coordinator.get("/frost").text()).contains("no station within 300 km");
            coordinator.post(
                    "/frost/garden/corrections",
                    Map.of(
                            "how",
                            "dates",
                            "springAverage",
                            spring,
                            "autumnAverage",
                            autumn,
                            "reason",
                            "forty years here"));

            assertThat(coordinator.get("/frost").text())
                    .contains("only one spring in ten still had a frost here")
                    .doesNotContain("were right within 4 days");
            assertThat(coordinator.get(ASK).status()).isEqualTo(200);
            assertThat(coordinator.get("/ask").text()).doesNotContain("No frost dates are known");
        }
    }

    private static Browser opened(TestGroup group, String country, String postcode, String zone) {
        Browser coordinator = group.stranger();
        Map<String, String> form = new HashMap<>(Map.of(
                "groupName", "Hillside Seed Starters",
                "groupZone", zone,
                "groupTemperature", "C",
                "groupLength", "cm",
                "groupCountry", country,
                "groupPostcode", postcode,
                "groupSeason", "2027",
                "name", "Ilse Brandt",
                "passphrase", "green lamp on a shelf",
                "postcode", postcode));
        assertThat(coordinator.postAsIs(group.openingPath().orElseThrow(), form).status())
                .isEqualTo(303);
        return coordinator;
    }
}
