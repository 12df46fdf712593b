package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.sowing.CompostStore;
import warmshelf.sowing.EntryStep;

/** The compost that somebody notes with a tick, on every database. */
abstract class CompostContract extends TickContract {
    private CompostStore composts;

    @BeforeEach
    void openComposts() {
        composts = new CompostStore(database().sql(), audit());
    }

    @Test
    void it_is_kept_with_the_tick_and_offered_the_next_time() {
        UUID sowing = room.tomsPeppers();

        keep(sowing, step(EntryStep.SOWN).in("Fine peat-free"));

        assertThat(composts.of(sowing)).contains("Fine peat-free");
        assertThat(composts.known()).containsExactly("Fine peat-free");
    }

    @Test
    void written_otherwise_it_is_the_same_compost() {
        keep(room.tomsPeppers(), step(EntryStep.SOWN).in("Fine peat-free"));
        UUID second = room.priyasTomatoes();

        keep(second, step(EntryStep.SOWN).in("fine PEAT-free"));

        assertThat(composts.of(second)).contains("Fine peat-free");
    }

    @Test
    void a_tick_that_says_nothing_of_it_leaves_it_as_it_was() {
        UUID sowing = room.tomsPeppers();
        keep(sowing, step(EntryStep.SOWN).in("Fine peat-free"));

        keep(sowing, look(3));

        assertThat(composts.of(sowing)).contains("Fine peat-free");
    }

    @Test
    void with_a_tick_that_is_refused_it_is_not_kept() {
        UUID sowing = room.tomsPeppers();

        Decision<TickOutcome> no = ticks.keep(
                sowing, step(EntryStep.PLANTED_OUT).in("Fine peat-free").tick(), LIGHT_UNTIL, room.priya());

        assertThat(no).isNotInstanceOf(Decision.Done.class);
        assertThat(composts.of(sowing)).isEmpty();
        assertThat(composts.known()).isEmpty();
    }
}
