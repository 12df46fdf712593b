package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

class DecidedByTest {
    private Cellar cellar;
    private Browser ilse;
    private Browser priya;
    private String sowing;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        ilse = cellar.coordinator();
        ilse.post("/people/" + cellar.group().onDuty().id() + "/role", Map.of("role", "coordinator"));
        priya = cellar.group().signedIn(cellar.group().onDuty());
        sowing = cellar.ask(Cellar.peppers());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void who_decided_is_told_to_the_grower_and_to_other_coordinators() {
        assertThat(ilse.get("/requests/" + sowing).text()).contains("of Tom · the sowing");

        cellar.placeAsSuggested(sowing);

        assertThat(priya.get("/requests/" + sowing).text()).contains("of Tom, by Ilse, Mon 1 Mar · the sowing");
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("Its place placed by Ilse, Mon 1 Mar");
    }

    @Test
    void of_two_coordinators_who_decide_at_once_the_second_is_told_and_nothing_is_lost() {
        String page = ilse.get("/requests/" + sowing).body();
        assertThat(priya.post("/requests/" + sowing + "/refusal", Map.of("reason", "The cellar is full."))
                        .status())
                .isEqualTo(303);

        Answer late = ilse.post(
                "/requests/" + sowing + "/placement", Cellar.hiddenFields(page, "/requests/" + sowing + "/placement"));

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("decided");
        assertThat(ilse.get("/requests/" + sowing).text())
                .contains("refused of Tom, by Priya")
                .contains("The cellar is full.");
    }
}
