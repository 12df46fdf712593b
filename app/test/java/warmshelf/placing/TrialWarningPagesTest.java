package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

/** Who lays the second way of a trial on a warmer mat, or turns the mat under it, is told so first and may do it all the same. */
class TrialWarningPagesTest {
    private static final String TOLD = "Trial 1: way ";

    private Cellar cellar;
    private String dry;
    private UUID warmer;

    @BeforeEach
    void lay_one_way_and_set_up_a_warmer_mat() {
        cellar = Cellar.open();
        cellar.group()
                .database()
                .sql()
                .update(MEMBER)
                .set(MEMBER.TEMPERATURE_UNIT, "C")
                .execute();
        declare();
        assertThat(cellar.placeAsSuggested(sowing("A")).status()).isEqualTo(303);
        dry = sowing("B");
        String shelf =
                Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/shelves/([0-9a-f-]{36})/mats/new");
        Map<String, String> mat = new HashMap<>(Map.of("name", "M3", "walkOrder", "3", "places", "1", "watts", "45"));
        mat.putAll(Map.of("low", "20", "high", "32", "usual", "29"));
        assertThat(cellar.coordinator()
                        .post("/sites/shelves/" + shelf + "/mats", mat)
                        .status())
                .isEqualTo(303);
        warmer = cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq("M3"))
                .fetchSingle(MAT.ID);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void a_warmer_place_is_told_first_and_given_to_whoever_was_told() {
        Map<String, String> typed = new HashMap<>(Map.of("place", place(), "quarter", "1", "celsius", "29"));
        typed.put("from", TestGroup.TODAY.plusDays(1).toString());

        Answer told = cellar.coordinator().post("/requests/" + dry + "/placement", typed);

        assertThat(told.status()).isEqualTo(422);
        assertThat(told.text()).contains(TOLD + "B would lie at 29 °C", "It is not placed yet", "all the same");
        assertThat(last(told.body(), "/placement")).contains("name=\"celsius\"", "value=\"29\"");
        typed.put("warned", Cellar.first(last(told.body(), "/placement"), "name=\"warned\" value=\"([^\"]+)\""));
        assertThat(cellar.coordinator()
                        .post("/requests/" + dry + "/placement", typed)
                        .status())
                .isEqualTo(303);
    }

    @Test
    void an_offer_and_the_list_tell_it_beside_the_button_that_takes_it() {
        String page = cellar.coordinator().get("/requests/" + dry).body();
        String offer = page.substring(page.indexOf("Put it on M3") - 900, page.indexOf("Put it on M3"));

        assertThat(offer).contains("name=\"warned\" value=\"1BA-");
        assertThat(cellar.coordinator().get("/requests/" + dry).text()).contains(TOLD + "B would lie at 29 °C");
    }

    @Test
    void a_mat_is_turned_under_one_way_only_by_whoever_was_told() {
        String address = "/mats/" + mat("M1");
        Map<String, String> typed = new HashMap<>(Map.of("celsius", "28"));
        typed.put("first", TestGroup.TODAY.plusDays(3).toString());
        typed.put("last", TestGroup.TODAY.plusDays(4).toString());
        assertThat(cellar.placeAsSuggested(dry).status()).isEqualTo(303);

        assertThat(cellar.coordinator().post(address + "/set-points", typed).status())
                .as("both ways lie on it")
                .isEqualTo(303);

        cellar.coordinator().post("/requests/" + dry + "/return", Map.of());
        Map<String, String> asked = new HashMap<>(Map.of("place", place(), "quarter", "1", "celsius", "26"));
        asked.put("from", TestGroup.TODAY.plusDays(1).toString());
        typed.put("celsius", "26");
        assertThat(cellar.coordinator().post(address + "/set-points", typed).status())
                .isEqualTo(303);
        Answer alike = cellar.coordinator().post("/requests/" + dry + "/placement", asked);
        assertThat(alike.status()).as(alike.text()).isEqualTo(303);
        typed.put("celsius", "28");
        Answer told = cellar.coordinator().post(address + "/set-points", typed);

        assertThat(told.status()).isEqualTo(422);
        assertThat(told.text()).contains(TOLD + "A would lie at 28 °C on Thu 4 Mar and way B at 26 °C", "all the same");
        typed.put("warned", Cellar.first(told.body(), "name=\"warned\" value=\"([^\"]+)\""));
        assertThat(cellar.coordinator().post(address + "/set-points", typed).status())
                .isEqualTo(303);
    }

    @Test
    void a_freed_place_is_taken_only_by_whoever_was_told() {
        Map<String, String> typed = new HashMap<>(Map.of("place", place(), "quarter", "1", "celsius", "29"));
        typed.put("from", TestGroup.TODAY.plusDays(1).toString());
        String another = cellar.ask(Cellar.peppers());
        Answer laid = cellar.coordinator().post("/requests/" + another + "/placement", typed);
        assertThat(laid.status()).as(laid.text()).isEqualTo(303);
        cellar.member().post("/sowings/" + another + "/withdrawal");
        Answer offered = cellar.member().get("/sowings");
        String action = "/sowings/" + dry + "/freed-place";
        Map<String, String> told = Cellar.hiddenFields(offered.body(), action);
        Map<String, String> untold = new HashMap<>(told);
        untold.remove("warned");
        untold.remove("submission");

        Answer refused = cellar.member().post(action, untold);

        assertThat(offered.text()).contains(TOLD + "B would lie at 29 °C");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text()).contains("It is not taken yet");
        assertThat(cellar.member().post(action, told).status()).isEqualTo(303);
    }

    private static String last(String body, String action) {
        return body.substring(body.lastIndexOf(action));
    }

    private void declare() {
        UUID owner = cellar.group().member().id();
        UUID lot = new LotStore(cellar.group().database(), cellar.group().audit())
                .add(new NewLot("pepper", "Lantern Row", 2026, 60, owner, false, ""), owner);
        Map<String, String> typed = new HashMap<>(Map.of("lot", lot.toString(), "kind", "soak", "blocks", "1"));
        typed.put("seedsEach", "12");
        typed.put("sowOn", TestGroup.TODAY.plusDays(1).toString());
        Answer declared = cellar.member().post("/trials", typed);
        assertThat(declared.status()).as(declared.text()).isEqualTo(303);
    }

    private String sowing(String letter) {
        return String.valueOf(cellar.group()
                .database()
                .sql()
                .select(TRIAL_SOWING.SOWING_ID)
                .from(TRIAL_SOWING)
                .where(TRIAL_SOWING.LETTER.eq(letter))
                .fetchSingle(TRIAL_SOWING.SOWING_ID));
    }

    private String place() {
        return String.valueOf(cellar.group()
                .database()
                .sql()
                .select(PLACE.ID)
                .from(PLACE)
                .where(PLACE.MAT_ID.eq(warmer))
                .fetchSingle(PLACE.ID));
    }

    private UUID mat(String name) {
        return cellar.group()
                .database()
                .sql()
                .select(MAT.ID)
                .from(MAT)
                .where(MAT.NAME.eq(name))
                .fetchSingle(MAT.ID);
    }
}
