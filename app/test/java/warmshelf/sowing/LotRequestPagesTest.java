package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SOWING;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/** Priya plans on Tom's peppers: she asks, he answers, and nobody promises the same seed twice. */
class LotRequestPagesTest {
    private TestGroup group;
    private LotStore lots;
    private UUID tomsLot;
    private Browser tom;
    private Browser priya;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        lots = new LotStore(group.database(), group.audit());
        tomsLot = lot(34, group.member());
        tom = group.signedIn(group.member());
        priya = group.signedIn(group.onDuty());
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void another_members_seed_is_asked_for_answered_on_today_and_the_answer_is_seen() {
        Answer plan = priya.get("/ask/plan?" + query(peppers(tomsLot)));
        assertThat(plan.text()).contains("Tom is asked for").contains("and may say no");

        Answer sent = priya.post("/sowings", peppers(tomsLot));

        String sowing = id(sent);
        assertThat(priya.get(sent.location()).text())
                .contains("Tom is asked for the seed")
                .contains("Waiting for Tom’s answer: 13 seeds are asked for.");
        assertThat(priya.get("/sowings").text()).contains("Waiting for Tom’s answer");
        assertThat(tom.get("/today").text())
                .contains("Priya asks for 13 seeds of Lantern Row", "Of your Lantern Row 2026 . Left: 34.");
        assertThat(priya.get("/today").text()).as("asks nobody else").doesNotContain("asks for 13 seeds");
        assertThat(tom.get("/seeds/" + tomsLot).text())
                .contains("34, of which 13 are spoken for")
                .contains("13 for Priya’s sowing , asked for: answer");

        Answer answered = answer(tom, sowing, "yes", "13");

        assertThat(answered.location()).isEqualTo("/today");
        assertThat(tom.get("/today").text())
                .contains("13 seeds are Priya’s now.")
                .doesNotContain("asks for");
        assertThat(priya.get("/sowings/" + sowing).text()).contains("Tom gives the 13 seeds.");
        assertThat(answer(tom, sowing, "no", "").status()).as("answered once").isEqualTo(409);
    }

    @Test
    void a_no_says_so_keeps_the_sowing_and_leads_to_another_lot() {
        String sowing = id(priya.post("/sowings", peppers(tomsLot)));
        UUID groups = lot(40, null);

        tom.post(
                "/sowings/" + sowing + "/seed", Map.of("answer", "no", "seeds", "13", "reason", "For the school bed."));

        for (String page : new String[] {"/sowings", "/sowings/" + sowing, "/today"}) {
            assertThat(priya.get(page).text())
                    .as(page)
                    .contains("Tom keeps it")
                    .contains("For the school bed.")
                    .contains("Choose another lot");
        }
        assertThat(tom.get("/seeds/" + tomsLot).text()).doesNotContain("spoken for");
        Answer choice = priya.get("/sowings/" + sowing + "/lot");
        assertThat(choice.text())
                .contains("Lantern Row 2026 (the group’s: 40 free)")
                .doesNotContain("Tom’s");

        Answer chosen = priya.post("/sowings/" + sowing + "/lot", Map.of("lot", groups.toString()));

        assertThat(chosen.location()).isEqualTo("/sowings/" + sowing);
        assertThat(priya.get("/sowings").text()).doesNotContain("Tom keeps it");
        assertThat(priya.get("/seeds/" + groups).text()).contains("40, of which 13 are spoken for");
    }

    @Test
    void fewer_are_given_with_a_reason_and_fewer_are_sown() {
        String sowing = id(priya.post("/sowings", peppers(tomsLot)));

        answer(tom, sowing, "yes", "6");

        assertThat(priya.get("/sowings/" + sowing).text())
                .contains("Tom gives 6 of the 13 seeds asked for. “As agreed”")
                .contains("6 seeds in 6 cells");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "yes | 14 | Seeds you give was '14'; a whole number from 1 to 13 is accepted.",
                "yes | 0 | Seeds you give was '0'; a whole number from 1 to 13 is accepted.",
                "yes | some | Seeds you give was 'some'",
                "yes | 12 | Seeds you give was 12. The lot has 34 seeds; 24 are kept back, so at most 10 can be given;",
                "perhaps | 5 | The answer was 'perhaps'; accepted are: yes, no."
            })
    void an_answer_that_cannot_be_is_said_and_nothing_typed_is_lost(String answer, String seeds, String sentence) {
        String sowing = id(priya.post("/sowings", peppers(tomsLot)));
        share(tom, "ask", "24");

        Answer refused = answer(tom, sowing, answer, seeds);

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains(sentence);
        assertThat(refused.typed("seeds")).isEqualTo(seeds);
        assertThat(refused.body()).contains("As agreed");
        assertThat(priya.get("/sowings/" + sowing).text()).contains("Waiting for Tom’s answer");
    }

    @Test
    void whoever_is_not_the_owner_does_not_answer() {
        String sowing = id(priya.post("/sowings", peppers(tomsLot)));

        assertThat(answer(priya, sowing, "yes", "13").status()).isEqualTo(403);
        assertThat(priya.get("/sowings/" + sowing + "/seed").status()).isEqualTo(403);
        assertThat(answer(ilse, sowing, "yes", "13").status())
                .as("a coordinator may, as with everything of a lot")
                .isEqualTo(303);
        assertThat(tom.get("/sowings/" + UUID.randomUUID() + "/seed").status()).isEqualTo(404);
    }

    @Test
    void a_withdrawn_sowing_needs_no_answer_any_more_and_frees_its_seed() {
        String sowing = id(priya.post("/sowings", peppers(tomsLot)));

        priya.post("/sowings/" + sowing + "/withdrawal", Map.of());

        assertThat(tom.get("/today").text()).doesNotContain("asks for 13 seeds");
        assertThat(answer(tom, sowing, "yes", "13").status()).isEqualTo(409);
        assertThat(tom.get("/seeds/" + tomsLot).text()).doesNotContain("spoken for");
    }

    @Test
    void where_others_take_what_they_need_nobody_is_asked_and_what_is_kept_back_stays() {
        share(tom, "free", "10");

        Answer sent = priya.post("/sowings", peppers(tomsLot));

        assertThat(priya.get(sent.location()).text()).doesNotContain("asked for");
        assertThat(tom.get("/today").text()).doesNotContain("asks for");
        Answer second = priya.post("/sowings", peppers(tomsLot));
        assertThat(second.status()).isEqualTo(422);
        assertThat(second.text())
                .contains("This lot has 34 seeds; 13 are spoken for and 10 are kept back, so 11 are free for you,"
                        + " and 13 are needed");
        assertThat(second.typed("plants")).isEqualTo("10");
    }

    @Test
    void the_same_seed_is_not_promised_twice_and_a_list_offers_only_what_is_free() {
        UUID groups = lot(20, null);
        Map<String, String> asked = peppers(groups);
        assertThat(tom.post("/sowings", asked).status()).isEqualTo(303);

        Answer second = priya.post("/sowings", asked);

        assertThat(second.status()).isEqualTo(422);
        assertThat(second.text())
                .contains("This lot has 20 seeds; 13 are spoken for, so 7 are free for you, and 13 are needed");
        assertThat(group.database().sql().fetchCount(SOWING)).isEqualTo(1);
        assertThat(priya.get("/ask").text()).contains("the group’s: 7 free").contains("Tom’s: 34 free, ask first");
        asked.put("acceptFewer", "yes");
        assertThat(priya.post("/sowings", asked).status()).isEqualTo(303);
        assertThat(ilse.get("/ask").text()).as("nothing is free").doesNotContain("the group’s: ");
        assertThat(ilse.get("/seeds").text()).contains("20, of which 20 are spoken for");
    }

    @Test
    void a_count_below_what_is_promised_says_whose_plan_falls_short() {
        UUID groups = lot(40, null);
        String first = id(tom.post("/sowings", peppers(groups)));
        String second = id(priya.post("/sowings", peppers(groups)));

        Answer counted = ilse.post(
                "/seeds/" + groups + "/count",
                Map.of("seeds", "20", "version", "1", "note", "", "source", "packet", "storage", "unknown"));

        String short_ = ilse.get(counted.location()).text();
        assertThat(short_).contains("too few are left for").contains("20, but 26 are spoken for");
        assertThat(tom.get("/sowings/" + first).text()
                        + priya.get("/sowings/" + second).text())
                .containsOnlyOnce("Too little seed: its lot has 7 of the 13 seeds for it.");
    }

    @Test
    void more_than_is_free_cannot_be_offered() {
        tom.post("/sowings", peppers(tomsLot));

        Answer answer = tom.post("/seeds/" + tomsLot + "/offer", Map.of("seeds", "26"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text())
                .contains(
                        "Seeds offered was 26. The lot has 34 seeds; 13 are spoken for, so at most 21 can be offered.");
        assertThat(answer.typed("seeds")).isEqualTo("26");
        assertThat(tom.post("/seeds/" + tomsLot + "/offer", Map.of("seeds", "20"))
                        .status())
                .isEqualTo(303);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ask | 35 | Seeds kept back was '35'; a whole number from 0 to 34 is accepted.",
                "ask | -1 | Seeds kept back was '-1'",
                "sometimes | 3 | When others want some was 'sometimes'; accepted are: ask, free."
            })
    void terms_that_cannot_be_are_said(String terms, String kept, String sentence) {
        Answer answer = share(tom, terms, kept);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("kept")).isEqualTo(kept);
        assertThat(share(priya, "ask", "3").status()).isEqualTo(403);
    }

    @Test
    void seed_nobody_counted_is_planned_and_says_how_much_is_spoken_for() {
        UUID uncounted = lot(null, null);
        tom.post("/sowings", peppers(uncounted));

        assertThat(priya.get("/ask/plan?" + query(peppers(uncounted))).text())
                .contains("the group’s; left: not counted; 13 are spoken for");
        assertThat(priya.post("/sowings", peppers(uncounted)).status()).isEqualTo(303);
        assertThat(priya.get("/seeds/" + uncounted).text()).contains("Not counted; 26 are spoken for");
    }

    @Test
    void a_lot_that_does_not_do_is_refused_with_the_reason() {
        String sowing = id(priya.post("/sowings", peppers(tomsLot)));
        UUID small = lot(3, null);

        Answer few = priya.post("/sowings/" + sowing + "/lot", Map.of("lot", small.toString()));
        Answer none = priya.post("/sowings/" + sowing + "/lot", Map.of());

        assertThat(few.status()).isEqualTo(422);
        assertThat(few.text()).contains("This lot has 3 seeds, and 13 are needed");
        assertThat(few.body()).contains("value=\"" + small + "\"");
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.text()).contains("No lot is chosen; choose one from the list.");
        assertThat(tom.post("/sowings/" + sowing + "/lot", Map.of("lot", small.toString()))
                        .status())
                .isEqualTo(403);
    }

    private UUID lot(@Nullable Integer seeds, @Nullable Person owner) {
        UUID by = group.member().id();
        UUID id = lots.add(
                new NewLot("pepper", "Lantern Row", 2026, seeds, owner == null ? null : owner.id(), false, ""), by);
        // Tested well, so that ten plants want thirteen of them.
        lots.recordTest(id, new warmshelf.seed.GerminationTest(TestGroup.TODAY, 194, 200), by);
        return id;
    }

    private static Map<String, String> peppers(UUID lot) {
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.put("lot", lot.toString());
        return asked;
    }

    private static Answer answer(Browser who, String sowing, String answer, String seeds) {
        return who.post(
                "/sowings/" + sowing + "/seed", Map.of("answer", answer, "seeds", seeds, "reason", "As agreed"));
    }

    private Answer share(Browser who, String terms, String kept) {
        return who.post("/seeds/" + tomsLot + "/sharing", Map.of("terms", terms, "kept", kept));
    }

    private static String id(Answer sent) {
        assertThat(sent.status()).as(sent.text()).isEqualTo(303);
        return sent.location().substring("/sowings/".length());
    }

    private static String query(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
