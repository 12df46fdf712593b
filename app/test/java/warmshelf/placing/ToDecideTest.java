package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.db.generated.Tables;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

/** One list of all that waits for a coordinator, and its count in the navigation of every page. */
class ToDecideTest {
    private static final Pattern COUNT = Pattern.compile("To decide<span class=\"count\">(\\d+)");

    private Cellar cellar;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private String list() {
        Answer answer = cellar.coordinator().get("/requests");
        assertThat(answer.status()).isEqualTo(200);
        return answer.text();
    }

    /** What the navigation counts on a page that lists none of it. */
    private int count() {
        Matcher found = COUNT.matcher(cellar.coordinator().get("/help").body());
        return found.find() ? Integer.parseInt(found.group(1)) : 0;
    }

    @Test
    void where_nothing_waits_the_list_says_so_and_nothing_is_counted() {
        assertThat(list()).contains("Nothing waits for a decision.");
        assertThat(count()).isZero();
    }

    @Test
    void requests_are_accepted_from_the_list_by_one_press_each() {
        for (int i = 0; i < 2; i++) {
            cellar.ask(Cellar.peppers());
        }
        assertThat(count()).isEqualTo(2);

        for (int left = 1; left >= 0; left--) {
            String body = cellar.coordinator().get("/requests").body();
            String action = Cellar.first(body, "action=\"(/requests/[0-9a-f-]{36}/placement)\"");
            Answer pressed = cellar.coordinator().post(action, Cellar.hiddenFields(body, action));

            assertThat(pressed.status()).as(pressed.text()).isEqualTo(303);
            assertThat(pressed.location()).isEqualTo("/requests");
            assertThat(count()).isEqualTo(left);
        }
        assertThat(list()).contains("Nothing waits for a decision.", "Decided, not sown yet: 2");
    }

    @Test
    void a_mat_that_is_too_hot_comes_first_and_leads_to_the_mat() {
        cellar.placeAsSuggested(cellar.ask(Cellar.peppers()));
        // three weeks on, on the first day of its stay, the mat has a set-point
        cellar.group().clock().advance(Duration.ofDays(23));
        String mat = Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
        assertThat(cellar.coordinator()
                        .post("/mats/" + mat + "/readings", Map.of("celsius", "95"))
                        .status())
                .isEqualTo(303);

        assertThat(list()).contains("First Mat M1 is too hot: 95 °F, set to");
        assertThat(cellar.coordinator().get("/requests").body()).contains("href=\"/mats/" + mat + "\"");
        assertThat(count()).isEqualTo(1);
    }

    @Test
    void a_mat_out_of_service_waits_while_something_lies_there() {
        cellar.placeAsSuggested(cellar.ask(Cellar.peppers()));
        String mat = Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
        String first = TestGroup.TODAY.plusDays(1).toString();
        String last = TestGroup.TODAY.plusDays(60).toString();
        Answer out = cellar.coordinator()
                .post("/plans/out-of-service", Map.of("mat", mat, "first", first, "last", last, "reason", "Cable"));
        assertThat(out.status()).as(out.text()).isEqualTo(303);

        assertThat(list()).contains("Mat M1 is out of service Tue 2 Mar to Fri 30 Apr; one stay lies there");
        assertThat(count()).isEqualTo(1);
    }

    @Test
    void empty_days_are_told_where_somebody_usually_looks_and_nowhere_else() {
        assertThat(list()).doesNotContain("nobody is down to look");
        Object site = cellar.group().database().sql().fetchValue(Tables.SITE.ID);
        cellar.coordinator()
                .post(
                        "/duty",
                        Map.of(
                                "duty/" + site + "/" + TestGroup.TODAY,
                                cellar.group().member().id().toString()));

        assertThat(list()).contains("Hall cellar: nobody is down to look on 6 of the next 7 days");
        assertThat(count()).isEqualTo(1);

        cellar.group().clock().advance(Duration.ofDays(15));
        assertThat(list()).doesNotContain("nobody is down to look");
    }

    @Test
    void members_are_shown_neither_the_list_nor_its_count() {
        cellar.ask(Cellar.peppers());

        assertThat(cellar.member().get("/requests").status()).isEqualTo(403);
        assertThat(cellar.member().get("/help").body()).doesNotContain("To decide");
    }
}
