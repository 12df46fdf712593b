package warmshelf.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class ReachTest {
    private static final UUID CELLAR = UUID.randomUUID();
    private static final UUID BENCH = UUID.randomUUID();
    private static final Reach OF_THE_CELLAR = Reach.at(List.of(CELLAR));

    @Test
    void a_member_decides_nowhere_not_even_on_what_has_no_site() {
        assertThat(Reach.NOWHERE.coordinates()).isFalse();
        assertThat(Reach.NOWHERE.covers(CELLAR)).isFalse();
        assertThat(Reach.NOWHERE.coversAll(List.of())).isFalse();
    }

    @Test
    void a_coordinator_of_the_whole_group_decides_everywhere() {
        assertThat(Reach.WHOLE_GROUP.coordinates()).isTrue();
        assertThat(Reach.WHOLE_GROUP.coversAll(List.of(CELLAR, BENCH))).isTrue();
    }

    @Test
    void a_coordinator_of_one_site_decides_there_and_on_what_has_no_site_yet() {
        assertThat(OF_THE_CELLAR.coordinates()).isTrue();
        assertThat(OF_THE_CELLAR.wholeGroup()).isFalse();
        assertThat(OF_THE_CELLAR.covers(CELLAR)).isTrue();
        assertThat(OF_THE_CELLAR.covers(BENCH)).isFalse();
        assertThat(OF_THE_CELLAR.coversAll(List.of())).isTrue();
    }

    @Test
    void what_touches_two_sites_needs_both() {
        assertThat(OF_THE_CELLAR.coversAll(List.of(CELLAR, BENCH))).isFalse();
        assertThat(Reach.at(List.of(CELLAR, BENCH)).coversAll(List.of(CELLAR, BENCH)))
                .isTrue();
    }

    @Test
    void whose_last_site_is_gone_is_a_member_again() {
        assertThat(Reach.at(List.of())).isEqualTo(Reach.NOWHERE);
    }
}
