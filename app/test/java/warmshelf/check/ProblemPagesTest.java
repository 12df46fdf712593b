package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PROBLEM_ANSWER;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.photo.Pictures;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.Upload;

/** Priya is on duty and notes a problem at Tom's peppers; Tom or a coordinator answers. */
class ProblemPagesTest {
    private static final String WHAT_TO_DO = "What to do Water from below with tepid water";

    private Cellar cellar;
    private Browser onDuty;
    private String sowing;

    @BeforeEach
    void sow() {
        cellar = Cellar.open();
        onDuty = cellar.group().signedIn(cellar.group().onDuty());
        sowing = cellar.ask(Cellar.peppers());
        cellar.tick(sowing, Map.of("step", "sown", "seenOn", "2027-02-20"));
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void a_problem_stands_on_top_of_the_growers_today_and_of_the_sowing_with_photo_and_what_to_do() {
        Answer noted = note("dry");
        assertThat(onDuty.get(noted.location()).text()).contains("Tom is told of it.");
        new Upload()
                .field("entry", notedEntry())
                .field("id", UUID.randomUUID().toString())
                .file("a.jpg", Pictures.jpeg(90, 60))
                .post(onDuty, "/photos");

        for (String page : new String[] {"/today", "/today?show=all", "/sowings/" + sowing}) {
            Answer shown = cellar.member().get(page);
            assertThat(shown.text())
                    .as(page)
                    .contains("Too dry", "Noted by Priya, Mon 1 Mar: “dry at the rim”", WHAT_TO_DO);
            assertThat(shown.body()).as(page).containsPattern("<img src=\"/photos/[0-9a-f-]{36}\"");
            assertThat(shown.body()).as(page).contains("href=\"/how-to/watering\"");
            assertThat(shown.body().indexOf("Noted by")).isLessThan(order(page, shown.body()));
        }
        assertThat(onDuty.get("/today").text()).doesNotContain(WHAT_TO_DO);
    }

    /** Where that begins before which the problem is to stand. */
    private static int order(String page, String body) {
        return body.indexOf(page.startsWith("/today") ? "id=\"round\"" : "class=\"summary\"");
    }

    /** The newest, so listed first. */
    private String notedEntry() {
        return Cellar.all(onDuty.get("/sowings/" + sowing).body(), "/photos/new\\?entry=([0-9a-f-]{36})")
                .get(0);
    }

    @Test
    void once_seen_it_leaves_today_and_stands_on_the_sowing_until_it_is_done_and_whoever_noted_it_is_told() {
        note("dry");
        String answers = Cellar.first(cellar.member().get("/today").body(), "action=\"(/sowings/[^\"]*/answers)\"");

        Answer seen = cellar.member().post(answers, Map.of("answer", "seen", "then", "/today"));

        assertThat(seen.location()).isEqualTo("/today");
        Answer today = cellar.member().get("/today");
        assertThat(today.text()).contains("seen. Priya is told so.").doesNotContain(WHAT_TO_DO);
        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("Seen by Tom, Mon 1 Mar; not dealt with yet.", WHAT_TO_DO);
        assertThat(onDuty.get("/today").text()).contains("Seen: too dry you noted it; Tom, Mon 1 Mar");

        cellar.member().post(answers, Map.of("answer", "done"));
        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("Dealt with by Tom, Mon 1 Mar.")
                .doesNotContain(WHAT_TO_DO);
        String told = onDuty.get("/today").body();
        assertThat(told).contains("Dealt with").doesNotContain(">Seen: ");
        onDuty.post(Cellar.first(told, "action=\"(/problems/[^\"]*/dismissal)\""), Map.of("then", "/today"));
        assertThat(onDuty.get("/today").text()).doesNotContain("you noted it");
    }

    @Test
    void only_the_grower_and_coordinators_answer_and_the_same_answer_counts_once() {
        note("dry");
        assertThat(onDuty.get("/sowings/" + sowing).body()).doesNotContain("/answers\"");
        Answer coordinators = cellar.coordinator().get("/today");
        assertThat(coordinators.text())
                .contains("1 problem at another member’s sowing waits for an answer", "of Tom, noted by Priya");
        String answers = Cellar.first(
                cellar.coordinator().get("/sowings/" + sowing).body(), "action=\"(/sowings/[^\"]*/answers)\"");

        assertThat(onDuty.post(answers, Map.of("answer", "done")).text())
                .contains("Only Tom or a coordinator can answer this.");
        assertThat(cellar.coordinator()
                        .post(answers, Map.of("answer", "perhaps"))
                        .status())
                .isEqualTo(422);
        assertThat(answered()).isZero();
        assertThat(cellar.coordinator().post(answers, Map.of("answer", "done")).location())
                .isEqualTo("/sowings/" + sowing);
        assertThat(cellar.member().post(answers, Map.of("answer", "done")).status())
                .isEqualTo(303);

        assertThat(answered()).isEqualTo(1);
        assertThat(cellar.member().get("/today").text()).doesNotContain(WHAT_TO_DO);
        assertThat(cellar.member()
                        .post(
                                answers.replaceAll("problems/[^/]*", "problems/" + UUID.randomUUID()),
                                Map.of("answer", "done"))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void a_problem_is_noted_before_sowing_too_and_counts_are_not_asked_for_then() {
        String waiting = cellar.ask(Cellar.peppers());
        Answer form = onDuty.get("/sowings/" + waiting + "/entry");
        assertThat(form.body())
                .contains("value=\"seed-missing\"", "value=\"torn\"", "value=\"too-cold\"")
                .doesNotContain("value=\"damping-off\"", "name=\"sprouted\"", "name=\"lightPlace\"");
        assertThat(onDuty.get("/sowings/" + sowing + "/entry").body()).doesNotContain("value=\"seed-missing\"");

        Answer noted =
                onDuty.post("/sowings/" + waiting + "/entries", Map.of("step", "look", "problem", "seed-missing"));
        Answer counted = onDuty.post("/sowings/" + waiting + "/entries", Map.of("step", "look", "sprouted", "2"));

        assertThat(noted.status()).isEqualTo(303);
        assertThat(counted.status()).isEqualTo(409);
        assertThat(counted.text()).contains("is not sown yet, so nothing can be up, moved or lost");
        assertThat(cellar.member().get("/today").text())
                .contains("Seed missing", "Nothing is sown until it is found.")
                .doesNotContain("Looked at today by Priya");
        assertThat(cellar.member().get("/sowings/" + waiting).text()).contains("planned", "Seed missing");
    }

    private Answer note(String problem) {
        Answer noted = onDuty.post(
                "/sowings/" + sowing + "/entries",
                Map.of("step", "look", "problem", problem, "note", "dry at the rim"));
        assertThat(noted.status()).isEqualTo(303);
        return noted;
    }

    private int answered() {
        return cellar.group().database().sql().fetchCount(PROBLEM_ANSWER);
    }
}
