package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.LETTER;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.reminder.push.MessageLife;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class LetterStoreContract extends StoreContract {
    private GrowRoom room;
    private LetterStore letters;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        letters = new LetterStore(database(), audit());
    }

    @Test
    void nobody_is_told_one_thing_twice() {
        write("morning 2027-03-01");
        write("morning 2027-03-01");
        write("evening 2027-03-02");

        assertThat(letters.take()).hasSize(2);
        assertThat(letters.knows(room.tom(), "morning 2027-03-01")).isTrue();
        assertThat(letters.knows(room.priya(), "morning 2027-03-01")).isFalse();
    }

    @Test
    void a_letter_that_went_out_is_forgotten_after_ninety_days_and_one_that_waits_is_not() {
        write("morning 2027-03-01");
        write("evening 2027-03-02");
        letters.sent(letters.take().get(0).id());

        clock.set(clock.instant().plus(MessageLife.KEPT).plusSeconds(1));
        write("morning 2027-06-01");

        assertThat(database().sql().fetchCount(LETTER)).isEqualTo(2);
    }

    @Test
    void two_nodes_that_think_of_one_thing_at_once_lay_one_letter() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 20; round++) {
                String about = "alarm " + round;
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<Void> think = () -> {
                    together.await();
                    write(about);
                    return null;
                };
                for (Future<Void> done : both.invokeAll(List.of(think, think))) {
                    done.get();
                }
            }
        } finally {
            both.shutdownNow();
        }
        assertThat(database().sql().fetchCount(LETTER)).isEqualTo(20);
    }

    @Test
    void of_two_nodes_that_send_at_once_each_letter_is_taken_by_one() throws Exception {
        for (int i = 0; i < 15; i++) {
            write("alarm " + i);
        }
        ExecutorService both = Executors.newFixedThreadPool(2);
        List<Object> taken = new ArrayList<>();
        try {
            CyclicBarrier together = new CyclicBarrier(2);
            Callable<List<LetterStore.Letter>> take = () -> {
                together.await();
                return letters.take();
            };
            for (Future<List<LetterStore.Letter>> each : both.invokeAll(List.of(take, take))) {
                each.get().forEach(letter -> taken.add(letter.id()));
            }
        } finally {
            both.shutdownNow();
        }
        assertThat(taken).hasSize(15).doesNotHaveDuplicates();
    }

    @Test
    void a_letter_whose_node_died_is_taken_again_after_some_minutes() {
        write("alarm 1");
        assertThat(letters.take()).hasSize(1);
        assertThat(letters.take()).isEmpty();

        clock.advance(Duration.ofMinutes(11));

        assertThat(letters.take())
                .singleElement()
                .satisfies(letter -> assertThat(letter.tries()).isEqualTo(2));
    }

    @Test
    void what_was_sent_is_not_taken_again() {
        write("alarm 1");
        letters.sent(letters.take().get(0).id());

        clock.advance(Duration.ofDays(1));

        assertThat(letters.take()).isEmpty();
    }

    @Test
    void a_letter_that_is_not_taken_is_tried_later_each_time_and_given_up_at_last() {
        write("alarm 1");
        long minutes = 0;
        for (int tries = 1; tries <= LetterStore.MOST_TRIES; tries++) {
            LetterStore.Letter letter = letters.take().get(0);
            assertThat(letter.tries()).isEqualTo(tries);
            letters.failed(letter);
            clock.advance(Duration.ofMinutes((1L << tries) - 1));
            assertThat(letters.take())
                    .as("try " + tries + " is not repeated at once")
                    .isEmpty();
            clock.advance(Duration.ofMinutes(1));
            minutes += 1L << tries;
        }
        clock.advance(Duration.ofDays(2));
        assertThat(letters.take()).isEmpty();
        assertThat(minutes).isBetween(8L * 60, 10L * 60);
    }

    private void write(String about) {
        letters.write(room.tom(), about, "tom@example.org", "Mat M1 is too hot", "Hello Tom");
    }
}
