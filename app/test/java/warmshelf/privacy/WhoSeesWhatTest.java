package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.PageWalk;

/** Where somebody lives and how they are reached is for themself and, where it settles frost dates, for coordinators. */
class WhoSeesWhatTest {
    private static final int EACH_KIND = 3;

    @Test
    void no_page_and_no_file_tells_a_member_where_another_lives_or_how_they_are_reached() {
        try (Cellar cellar = Cellar.open()) {
            KnownPerson.in(cellar);
            List<String> words = List.of(
                    cellar.group().member().postcode(), KnownPerson.EMAIL, KnownPerson.PHONE, "46.8123", "-92.1,");
            List<String> starts = new ArrayList<>(PageWalk.EVERYWHERE);
            starts.addAll(List.of("/sowings", "/racks", "/settings/known", "/how-to"));

            PageWalk walk =
                    PageWalk.inSearchOf(cellar.group().signedIn(cellar.group().onDuty()), EACH_KIND, starts, words);

            assertThat(walk.seen()).isGreaterThan(60);
            assertThat(walk.said()).isEmpty();
            // the words do stand where they may, so that the search can find them
            assertThat(PageWalk.inSearchOf(cellar.member(), 1, List.of("/settings/known"), words)
                            .said()
                            .get("/settings/known"))
                    .contains(cellar.group().member().postcode(), KnownPerson.EMAIL, KnownPerson.PHONE);
        }
    }
}
