package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class AskPagesTest {
    private TestGroup group;
    private Browser member;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        member = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void it_starts_with_no_more_plants_than_the_lot_has_seed_for() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("packetSeeds", "24");
        assertThat(member.post("/sowings", asked).status()).isEqualTo(303);
        String lot = Cellar.first(member.get("/ask").body(), "/ask\\?lot=([0-9a-f-]{36})");

        String plants = member.get("/ask?lot=" + lot).typed("plants");

        assertThat(Integer.parseInt(plants)).isBetween(1, 5);
        Map<String, String> again = Cellar.peppers();
        again.put("lot", lot);
        again.put("plants", plants);
        assertThat(member.get("/ask/plan?" + query(again)).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plants | 0 | Plants wanted was '0'; a whole number from 1 to 1,000 is accepted.",
                "plants | -3 | Plants wanted was '-3'",
                "plants | 10000 | Plants wanted was '10000'",
                "plants | 300 | cells are needed, and this tray has 36",
                "plants | 30 | This lot has 40 seeds, and",
                "crop | moonflower | The crop was 'moonflower'; choose one from the list.",
                "variety | '' | The variety is empty; please fill it in.",
                "seedYear | 2031 | The year on the packet was '2031'",
                "germinated | 21 | Sprouted in a test was 21 of 20",
                "method | broadcast | The method was 'broadcast'; accepted are: cells, bag.",
                "lot | 00000000-0000-0000-0000-000000000007 | The lot you chose is not in the seed box any more",
                "coverOn | 2027-02-01 | The day they go out under cover was 2027-02-01; a day from 2027-03-01"
            })
    void a_fault_is_named_and_everything_typed_stays_in_the_form(String field, String typed, String sentence) {
        Map<String, String> asked = Cellar.peppers();
        asked.put("seedsPerCell", "2");
        asked.put(field, typed);
        if (field.equals("coverOn")) {
            asked.put("where", "cover");
        }
        if (typed.equals("300")) {
            asked.put("packetSeeds", "");
        }

        Answer answer = member.get("/ask/plan?" + query(asked));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("variety")).isEqualTo(asked.get("variety"));
        assertThat(answer.typed("seedsPerCell")).isEqualTo("2");
        if (!field.equals("crop") && !field.equals("method") && !field.equals("lot")) {
            assertThat(answer.typed(field)).isEqualTo(typed);
        }
    }

    @Test
    void too_few_pots_are_not_called_cells() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("crop", "snap-bean");
        asked.put("plants", "300");
        asked.put("packetSeeds", "");

        assertThat(member.get("/ask/plan?" + query(asked)).text())
                .contains("pots are needed, and this tray holds 36")
                .doesNotContain("cells are needed");
    }

    @Test
    void what_bears_no_moving_is_sown_in_pots_that_rot_and_thinned_to_one_in_each() {
        Map<String, String> asked = Cellar.peppers();
        asked.putAll(Map.of("crop", "dill", "variety", "Fern Hill", "seedsPerCell", "2", "plants", "6"));

        Answer plan = member.get("/ask/plan?" + query(asked));

        assertThat(plan.status()).as(plan.text()).isEqualTo(200);
        assertThat(plan.text())
                .contains("pots that rot, 2 to a pot", "Thin to one", "2 seeds went into each")
                .doesNotContain("2 to a cell");
    }

    @Test
    void a_tray_larger_than_a_place_is_refused_in_the_groups_inches() {
        Map<String, String> asked = Cellar.peppers();
        asked.putAll(Map.of("container", "own", "trayLong", "23.6", "trayShort", "15.7"));

        Answer answer = member.get("/ask/plan?" + query(asked));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text())
                .contains("A tray of 23.6 in by 15.7 in is larger than a place,"
                        + " which holds one standard tray of 21.0 in by 10.9 in.");
        assertThat(answer.typed("trayLong")).isEqualTo("23.6");
    }

    @Test
    void old_seed_is_answered_with_a_test_first_how_and_what_to_sow_meanwhile() {
        Map<String, String> asked = Cellar.peppers();
        asked.putAll(Map.of(
                "crop",
                "onion",
                "seedYear",
                "2024",
                "storage",
                "shed",
                "packetSeeds",
                "",
                "germinated",
                "",
                "tested",
                "",
                "plants",
                "12"));

        Answer plan = member.get("/ask/plan?" + query(asked));

        assertThat(plan.status()).isEqualTo(200);
        assertThat(plan.text())
                .contains("Test ten first")
                .containsPattern("count for the last time after \\d+ days")
                .containsPattern("sow 36 seeds meanwhile: they give 12 plants \\d\\d % of the time")
                .contains("Meanwhile sow 36 seeds");
    }

    @Test
    void sending_a_fault_keeps_nothing() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("plants", "-3");

        assertThat(member.post("/sowings", asked).status()).isEqualTo(422);
        assertThat(group.database().sql().fetchCount(SOWING)).isZero();
        assertThat(group.database().sql().fetchCount(LOT)).isZero();
    }

    @Test
    void a_variety_of_ten_million_letters_is_refused_and_kept_nowhere() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("variety", "x".repeat(10_000_000));

        Answer answer = member.post("/sowings", asked);

        assertThat(answer.status()).isBetween(400, 499);
        assertThat(answer.body().length()).isLessThan(100_000);
        assertThat(group.database().sql().fetchCount(LOT)).isZero();
    }

    @Test
    void too_late_is_shown_with_what_to_do_instead_but_cannot_be_sent() {
        group.clock().advance(Duration.ofDays(170));
        Map<String, String> asked = Cellar.peppers();
        Browser late = group.signedIn(group.member());

        Answer plan = late.get("/ask/plan?" + query(asked));
        Answer sent = late.post("/sowings", asked);

        assertThat(plan.status()).isEqualTo(200);
        assertThat(plan.text()).contains("too late").doesNotContain("Send the request");
        assertThat(sent.status()).isEqualTo(422);
        assertThat(sent.text()).contains("It is too late to sow this for the season");
        assertThat(group.database().sql().fetchCount(SOWING)).isZero();
    }

    // University of Minnesota Extension M1227: kale can be sown until August for autumn.
    @Test
    void kale_asked_in_july_is_kept_for_autumn_and_can_be_asked_for_by_choice() {
        group.clock().advance(Duration.ofDays(120));
        Browser july = group.signedIn(group.member());
        Map<String, String> kale = kale();

        Answer plan = july.get("/ask/plan?" + query(kale));
        Answer sent = july.post("/sowings", kale);

        assertThat(plan.text()).contains("Planned for autumn", "usual first frost", "Send the request");
        assertThat(sent.status()).isEqualTo(303);
        assertThat(group.database().sql().fetchSingle(SOWING).getSeasonPart()).isEqualTo("autumn");
        assertThat(july.get(sent.location()).text()).contains("outdoors, for autumn");
        assertThat(july.get("/sowings").text()).contains("for autumn");
    }

    @Test
    void a_part_of_the_season_can_be_chosen_where_the_crop_is_sown_for_it() {
        Map<String, String> kale = kale();
        kale.put("part", "autumn");
        Map<String, String> peppers = Cellar.peppers();
        peppers.put("part", "autumn");
        Map<String, String> nonsense = Cellar.peppers();
        nonsense.put("part", "monsoon");

        assertThat(member.get("/ask/plan?" + query(kale)).text()).contains("Planned for autumn", "from spring on");
        Answer refused = member.get("/ask/plan?" + query(peppers));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("is not sown for autumn here");
        assertThat(refused.body()).containsPattern("value=\"autumn\"[^>]*(selected|checked)");
        assertThat(member.get("/ask/plan?" + query(nonsense)).status()).isEqualTo(422);
    }

    @Test
    void what_is_sown_again_and_again_leads_to_the_next_asking_once_it_is_sown() {
        Map<String, String> squash = Cellar.peppers();
        squash.putAll(Map.of("crop", "summer-squash", "variety", "Canal Boat", "heat", "room"));
        group.clock().advance(Duration.ofDays(75));
        Browser may = group.signedIn(group.member());

        assertThat(may.get("/ask/plan?" + query(squash)).text()).contains("sow again every 21 days until");
        String sowing = may.post("/sowings", squash).location();
        assertThat(may.get(sowing).text()).doesNotContain("Sow it again");
        Answer sown = may.post(sowing + "/entries", Map.of("step", "sown"));

        assertThat(sown.status()).as(sown.text()).isEqualTo(303);
        String next = Cellar.first(may.get(sowing).body(), "href=\"(/ask\\?lot=[^\"]+)\">Sow it again");
        Answer asked = may.get(next.replace("&amp;", "&"));
        assertThat(asked.status()).isEqualTo(200);
        assertThat(asked.typed("plants")).isEqualTo("10");
    }

    private static Map<String, String> kale() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("crop", "kale");
        asked.put("variety", "Pier");
        return asked;
    }

    @Test
    void without_any_mat_the_request_waits_and_the_plan_says_why() {
        Map<String, String> asked = Cellar.peppers();

        assertThat(member.get("/ask/plan?" + query(asked)).text()).contains("No mat of the group holds");
        assertThat(member.post("/sowings", asked).status()).isEqualTo(303);
    }

    @Test
    void strangers_and_pages_of_elsewhere_cannot_ask() {
        Map<String, String> asked = new HashMap<>(Cellar.peppers());

        assertThat(group.stranger().get("/ask").location()).startsWith("/sign-in");
        assertThat(group.stranger().postAsIs("/sowings", asked).status()).isEqualTo(401);
        asked.put("csrf", "made-up");
        assertThat(member.postAsIs("/sowings", asked).status()).isEqualTo(403);
        assertThat(group.database().sql().fetchCount(SOWING)).isZero();
    }

    private static String query(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
