package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class FrostPagesTest {
    private static TestGroup group;

    @BeforeAll
    static void open() {
        group = TestGroup.open();
    }

    @AfterAll
    static void close() {
        group.close();
    }

    @Test
    void a_member_sees_in_one_sentence_when_the_risk_has_fallen_and_how_sure_that_is() {
        Answer page = member().get("/frost");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body())
                .containsPattern("After \\d+ (May|June) only one spring in ten still had a frost here\\.")
                .contains("How sure:", "nine chances in ten");
    }

    @Test
    void the_page_draws_the_chances_and_names_what_they_rest_on() {
        String body = member().get("/frost").body();

        assertThat(body).contains("Chance of another frost after each day of spring", "The bundled grid", "100 %");
        assertThat(body).contains("50 % after", "30 % after", "10 % after");
        assertThat(body).contains("Killing frost", "Light frost", "/numbers#frost");
    }

    @Test
    void each_class_of_plants_stands_with_its_usual_risk() {
        assertThat(member().get("/frost").body()).contains("Very tender", "pepper, eggplant, cucumber", "(as usual)");
    }

    @Test
    void another_countrys_postcode_is_refused_with_the_way_on_and_what_was_typed_stays() {
        Answer page = member().get("/frost?country=CA&postcode=K1A%200B1");

        assertThat(page.status()).isEqualTo(422);
        assertThat(page.body())
                .contains(
                        "of &#39;CA&#39; is not known here",
                        "bring in",
                        "latitude, longitude and elevation",
                        "K1A 0B1");
    }

    @Test
    void a_german_postcode_is_no_mistyped_one_of_california() {
        assertThat(member().get("/frost?country=DE&postcode=90211").text()).doesNotContain("Did you mean");
    }

    @Test
    void a_member_is_told_whom_to_ask_and_a_coordinator_how_to_bring_dates_in() {
        String unknown = "/frost?country=NO&postcode=0150";

        assertThat(group.signedIn(group.coordinator()).get(unknown).text()).contains("Bring in what is known");
        assertThat(member().get(unknown).text()).doesNotContain("Bring in what is known");

        group.database()
                .sql()
                .update(MEMBER)
                .set(MEMBER.COUNTRY, "NO")
                .set(MEMBER.POSTCODE, "0150")
                .where(MEMBER.ID.eq(group.member().id()))
                .execute();
        try {
            assertThat(group.signedIn(group.member()).get("/frost").text())
                    .contains("ask a coordinator")
                    .contains("Ilse can bring in stations and the postcodes of Norway");
        } finally {
            group.database()
                    .sql()
                    .update(MEMBER)
                    .set(MEMBER.COUNTRY, "US")
                    .set(MEMBER.POSTCODE, "55811")
                    .where(MEMBER.ID.eq(group.member().id()))
                    .execute();
        }
    }

    @Test
    void a_point_at_sea_is_refused_in_words_rather_than_told_something() {
        Answer page = member().get("/frost?latitude=30&longitude=-45&elevation=0");

        assertThat(page.status()).isEqualTo(422);
        assertThat(page.body())
                .contains("No frost dates are known", "Stations brought in")
                .doesNotContain("How sure");
    }

    @Test
    void strangers_are_asked_to_sign_in() {
        assertThat(group.stranger().get("/frost").status()).isEqualTo(303);
    }

    private static Browser member() {
        return group.signedIn(group.member());
    }
}
