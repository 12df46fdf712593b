package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** An empty group, set up as its list on Today says. */
class FirstEveningTest {
    private int loads;
    private int fields;

    private String follow(Browser browser, String address) {
        loads++;
        return browser.get(address).body();
    }

    private void send(Browser browser, String address, Map<String, String> typed, int filledIn) {
        fields += filledIn;
        Answer answer = browser.post(address, typed);
        assertThat(answer.status()).as(answer.text()).isIn(200, 303);
        loads++;
    }

    @Test
    void two_racks_with_six_mats_and_ten_people_take_twelve_pages_and_forty_fields_at_most() {
        try (TestGroup group = TestGroup.unopened()) {
            Browser ilse = group.stranger();
            String opening = group.openingPath().orElseThrow();
            follow(ilse, opening);
            Map<String, String> opened = new HashMap<>(Map.of("groupName", "Seed Starters", "name", "Ilse Brandt"));
            opened.putAll(Map.of("groupZone", "America/Chicago", "groupTemperature", "F", "groupLength", "in"));
            opened.putAll(Map.of("groupCountry", "US", "groupPostcode", "55811", "groupSeason", "2027"));
            opened.putAll(Map.of("postcode", "55803", "passphrase", "green lamp on a shelf"));
            send(ilse, opening, opened, opened.size());
            assertThat(ilse.get("/today").text()).contains("First evening: 0 of 5 done");

            follow(ilse, "/sites/new");
            send(ilse, "/sites", Map.of("name", "Cellar", "walkOrder", "1", "amps", "15", "volts", "120"), 3);
            String racks = Cellar.first(ilse.get("/sites").body(), "href=\"(/sites/[0-9a-f-]{36}/racks/)new\"")
                    .replaceAll("/$", "");
            Map<String, String> north = new HashMap<>(Map.of("name", "North", "walkOrder", "1"));
            north.putAll(Map.of("places", "2", "watts", "45", "low", "68", "high", "95", "usual", "79"));
            north.putAll(Map.of("litPlaces", "4", "lightWatts", "80", "then", "another"));
            north.putAll(Map.of("shelf-1", "light", "shelf-2", "mats-2", "shelf-3", "mats-1"));
            follow(ilse, racks + "/new");
            send(ilse, racks, north, 11);
            Map<String, String> south = new HashMap<>(north);
            south.put("name", "South");
            south.remove("then");
            send(ilse, racks, south, 1);
            assertThat(ilse.get("/today").text()).contains("First evening: 2 of 5 done");

            follow(ilse, "/people/invites");
            String ten =
                    IntStream.rangeClosed(1, 10).mapToObj(n -> "Person " + n).collect(Collectors.joining("\n"));
            send(ilse, "/people/invites", Map.of("names", ten), 1);

            assertThat(ilse.get("/today").text()).contains("First evening: 3 of 5 done");
            assertThat(ilse.get("/sites").text()).contains("Rack South", "Mat M6");
            assertThat(loads).isLessThanOrEqualTo(12);
            assertThat(fields).isLessThanOrEqualTo(40);
        }
    }

    @Test
    void the_list_goes_once_all_is_done_and_members_never_see_it() {
        try (Cellar cellar = Cellar.open()) {
            assertThat(cellar.coordinator().get("/today").text()).contains("First evening", "Ask for space yourself");
            assertThat(cellar.member().get("/today").text()).doesNotContain("First evening");
            cellar.ask(Cellar.peppers());
            Object site = cellar.group().database().sql().fetchValue(warmshelf.db.generated.Tables.SITE.ID);
            cellar.coordinator()
                    .post(
                            "/duty",
                            Map.of(
                                    "duty/" + site + "/" + TestGroup.TODAY,
                                    cellar.group().member().id().toString()));

            assertThat(cellar.coordinator().get("/today").text()).doesNotContain("First evening");
        }
    }
}
