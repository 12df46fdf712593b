package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class OfferPagesTest {
    private TestGroup group;
    private LotStore lots;
    private UUID lot;
    private Browser owner;
    private Browser other;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        lots = new LotStore(group.database(), group.audit());
        UUID tom = group.member().id();
        lot = lots.add(new NewLot("pepper", "Harbour Light", 2026, 40, tom, true, ""), tom);
        owner = group.signedIn(group.member());
        other = group.signedIn(group.onDuty());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void what_is_offered_is_seen_by_all_and_taken_by_another() {
        assertThat(owner.get("/seeds/" + lot + "/offer").text())
                .contains("Offer seed")
                .contains("treated seed");
        assertThat(post(owner, "offer", "15").location()).isEqualTo("/seeds/" + lot);

        assertThat(other.get("/seeds").text()).contains("15 offered");
        assertThat(other.get("/seeds/" + lot).body()).contains("/seeds/" + lot + "/take");
        assertThat(other.get("/seeds/" + lot + "/take").text()).contains("15 seeds are offered");
        Answer taken = post(other, "take", "6");

        assertThat(taken.status()).isEqualTo(303);
        assertThat(other.get(taken.location()).text()).contains("Caution: treated seed");
        assertThat(lots.find(lot).orElseThrow().seedsLeft()).isEqualTo(34);
        assertThat(lots.find(lot).orElseThrow().offered()).isEqualTo(9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "offer | 41 | Seeds offered was '41'; a whole number from 0 to 40",
                "offer | -1 | Seeds offered was '-1'",
                "offer | '' | Seeds offered is empty",
                "take | 16 | Seeds taken was 16, and 15 are offered; nothing was taken.",
                "take | 0 | Seeds taken was '0'",
                "take | some | Seeds taken was 'some'"
            })
    void what_cannot_be_is_said_and_kept_in_its_field(String action, String seeds, String sentence) {
        post(owner, "offer", "15");

        Answer answer = post(action.equals("offer") ? owner : other, action, seeds);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("seeds")).isEqualTo(seeds);
        assertThat(lots.find(lot).orElseThrow().offered()).isEqualTo(15);
    }

    @Test
    void only_who_may_change_a_lot_offers_it_and_nobody_takes_his_own_or_what_is_not_offered() {
        assertThat(post(other, "offer", "5").status()).isEqualTo(403);
        assertThat(post(other, "take", "5").status()).isEqualTo(409);
        post(owner, "offer", "5");
        assertThat(post(owner, "take", "5").status()).isEqualTo(409);
        assertThat(group.stranger().get("/seeds/" + lot + "/take").location()).startsWith("/sign-in");
        assertThat(other.get("/seeds/" + new UUID(0, 7) + "/take").status()).isEqualTo(404);
    }

    @Test
    void an_offer_is_taken_back_with_none() {
        post(owner, "offer", "5");

        assertThat(post(owner, "offer", "0").status()).isEqualTo(303);
        assertThat(other.get("/seeds/" + lot).body()).doesNotContain("/take");
    }

    private Answer post(Browser who, String action, String seeds) {
        return who.post("/seeds/" + lot + "/" + action, Map.of("seeds", seeds));
    }
}
