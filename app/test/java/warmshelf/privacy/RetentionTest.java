package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.TestGroup;

class RetentionTest {
    private TestGroup group;

    @BeforeEach
    void open() {
        group = TestGroup.open();
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void strangers_and_members_read_how_long_things_are_kept() {
        String stranger = group.stranger().get("/privacy").text();

        assertThat(stranger)
                .contains("30 days after the last visit")
                .contains("one to join opens for 14 days, one to sign in for 1 day.")
                .contains("Letters and notices : 90 days");
        assertThat(group.stranger().get("/sign-in").body()).contains("href=\"/privacy\"");
        assertThat(group.signedIn(group.member()).get("/privacy").body()).contains("href=\"/settings/erasure\"");
    }

    @Test
    void a_sign_in_ends_when_the_page_says() {
        var tom = group.signedIn(group.member());
        group.clock().set(TestGroup.MORNING.plus(Duration.ofDays(30)).minusSeconds(60));
        assertThat(tom.get("/settings").status()).isEqualTo(200);

        group.clock().set(TestGroup.MORNING.plus(Duration.ofDays(61)));
        assertThat(tom.get("/settings").status()).isEqualTo(303);
    }
}
