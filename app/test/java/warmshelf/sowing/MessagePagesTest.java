package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** Somebody on duty writes to a grower about their peppers, and is answered there. */
class MessagePagesTest {
    private Cellar cellar;
    private Browser onDuty;
    private String page;

    @BeforeEach
    void ask() {
        cellar = Cellar.open();
        onDuty = cellar.group().signedIn(cellar.group().onDuty());
        page = "/sowings/" + cellar.ask(Cellar.peppers());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private String grower() {
        return cellar.group().member().id().toString();
    }

    @Test
    void what_is_written_stays_with_the_sowing_and_is_news_to_its_reader_alone() {
        assertThat(onDuty.get(page + "/message").text()).contains("who grows it", "coordinator");

        Answer sent = onDuty.post(page + "/message", Map.of("to", grower(), "words", "Shall I water it?"));

        assertThat(sent.location()).isEqualTo(page);
        assertThat(cellar.member().get("/today").text()).contains("wrote about Pepper");
        assertThat(cellar.coordinator().get("/today").text()).doesNotContain("wrote about");
        assertThat(cellar.member().get(page).text()).contains("Messages Shall I water it?");
        assertThat(cellar.member().get("/today").text()).doesNotContain("wrote about");
    }

    @Test
    void an_empty_message_or_one_to_somebody_else_comes_back_with_what_was_typed() {
        assertThat(onDuty.post(page + "/message", Map.of("to", grower(), "words", " "))
                        .status())
                .isEqualTo(422);
        Answer elsewhere = onDuty.post(
                page + "/message", Map.of("to", cellar.group().onDuty().id().toString(), "words", "Shall I water it?"));

        assertThat(elsewhere.status()).isEqualTo(422);
        assertThat(elsewhere.text()).contains("Whom it goes to", "Shall I water it?");
        assertThat(cellar.member().get(page).text()).doesNotContain("Messages");
    }
}
