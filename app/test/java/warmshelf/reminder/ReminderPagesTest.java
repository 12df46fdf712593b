package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class ReminderPagesTest {
    private Cellar cellar;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void a_calendars_address_shows_its_members_steps_to_a_program_that_cannot_sign_in() {
        cellar.ask(Cellar.peppers());
        String calendar = calendar();

        Answer feed = cellar.group().stranger().get(calendar);

        assertThat(feed.status()).isEqualTo(200);
        assertThat(feed.header("Content-Type")).isEqualTo("text/calendar; charset=utf-8");
        assertThat(feed.header("Cache-Control")).isEqualTo("private, max-age=900");
        assertThat(feed.body()).contains("BEGIN:VEVENT", "SUMMARY:Sow: Pepper");
    }

    @Test
    void a_new_address_ends_the_old_one_and_a_removed_one_opens_nothing() {
        String first = calendar();
        String second = calendar();

        assertThat(cellar.group().stranger().get(first).status()).isEqualTo(404);
        assertThat(cellar.group().stranger().get(second).status()).isEqualTo(200);
        assertThat(cellar.member().get("/reminders").body())
                .as("the address is not shown again")
                .doesNotContain(".ics");

        cellar.member().post("/reminders/calendar/removal");

        assertThat(cellar.group().stranger().get(second).status()).isEqualTo(404);
    }

    @Test
    void the_calendar_of_who_has_left_opens_nothing() {
        String calendar = calendar();
        cellar.coordinator().post("/people/" + cellar.group().member().id() + "/leaving");

        assertThat(cellar.group().stranger().get(calendar).status()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource({"nonsense", "00000000-0000-0000-0000-000000000001.ics", ".ics"})
    void a_guessed_address_opens_nothing(String token) {
        assertThat(cellar.group().stranger().get("/calendar/" + token).status()).isEqualTo(404);
    }

    @Test
    void without_a_mail_server_the_page_says_so_and_no_wish_is_taken() {
        assertThat(cellar.member().get("/reminders").text()).contains("This installation sends no letters");
        assertThat(cellar.member()
                        .post("/reminders/letters", Map.of("address", "tom@example.org", "morning", "yes"))
                        .status())
                .isEqualTo(409);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | The e-mail address is empty; an address such as ada@example.org is accepted.",
                "tom | The e-mail address was 'tom'; an address such as",
                "tom@@example.org | The e-mail address was 'tom@@example.org'; an address such as",
                "a@b.org,c@d.org | The e-mail address was 'a@b.org,c@d.org'; an address such as",
                "Tom <tom@example.org> | an address such as ada@example.org is accepted."
            })
    void an_address_that_cannot_be_is_refused_with_its_sentence(String address, String sentence) {
        ReminderForm form = new ReminderForm(Map.of("address", List.of(address), "morning", List.of("yes")));

        assertThat(form.wish()).isEmpty();
        assertThat(form.reader().problems().get("address")).contains(sentence);
        assertThat(form.reader().text("address")).isEqualTo(address);
    }

    @Test
    void nothing_ticked_forgets_the_address() {
        ReminderForm form = new ReminderForm(Map.of("address", List.of("tom@example.org")));

        assertThat(form.wish()).contains(MailWish.NONE);
    }

    private String calendar() {
        Answer made = cellar.member().post("/reminders/calendar");
        assertThat(made.status()).isEqualTo(200);
        return Cellar.first(made.body(), "href=\"[^\"]*(/calendar/[A-Za-z0-9_-]{43}\\.ics)\"");
    }
}
