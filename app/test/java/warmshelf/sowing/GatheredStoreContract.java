package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** What Tom gathers on Ask, on every database. */
abstract class GatheredStoreContract extends StoreContract {
    private UUID tom;
    private UUID priya;
    private GatheredStore gathered;

    @BeforeEach
    void raise() {
        GrowRoom room = new GrowRoom(database(), audit());
        tom = room.tom();
        priya = room.priya();
        gathered = new GatheredStore(database(), audit());
    }

    @Test
    void answers_come_back_as_they_were_typed_in_the_order_of_gathering() {
        Map<String, String> answers = Map.of("note", "50 % & more = fine, señor ✓", "plants", "6");
        UUID first = add("Pepper", answers);
        clock.advance(Duration.ofSeconds(1));
        add("Tomato", Map.of("plants", "3"));

        assertThat(gathered.of(tom)).extracting(GatheredStore.Gathered::title).containsExactly("Pepper", "Tomato");
        assertThat(gathered.of(tom).get(0)).isEqualTo(new GatheredStore.Gathered(first, "Pepper", answers));
        assertThat(gathered.of(priya)).isEmpty();
    }

    @Test
    void only_whoever_gathered_it_changes_it_or_takes_it_out() {
        UUID id = add("Pepper", Map.of("plants", "6"));

        assertThat(gathered.change(id, priya, "Basil", Map.of("plants", "1"))).isInstanceOf(Decision.Overtaken.class);
        assertThat(gathered.takeOut(id, priya, true)).isFalse();
        assertThat(gathered.takeOut(id, tom, true)).isTrue();
        assertThat(gathered.takeOut(id, tom, true)).isFalse();
        assertThat(gathered.change(id, tom, "Basil", Map.of("plants", "1"))).isInstanceOf(Decision.Overtaken.class);
        assertThat(gathered.of(tom)).isEmpty();
        assertThat(gathered.takeOut(id, tom, false)).isTrue();
        assertThat(gathered.of(tom)).hasSize(1);
    }

    @Test
    void sent_at_one_moment_by_two_it_is_sent_by_one() throws Exception {
        UUID id = add("Pepper", Map.of("plants", "6"));
        CountDownLatch both = new CountDownLatch(2);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Future<Decision<UUID>>> sent =
                    List.of(two.submit(() -> send(id, both)), two.submit(() -> send(id, both)));

            assertThat(List.of(sent.get(0).get(), sent.get(1).get()))
                    .hasAtLeastOneElementOfType(Decision.Done.class)
                    .hasAtLeastOneElementOfType(Decision.Overtaken.class);
        } finally {
            two.shutdownNow();
        }
        assertThat(gathered.of(tom)).isEmpty();
    }

    private Decision<UUID> send(UUID id, CountDownLatch both) {
        return Decision.of(() -> database().sql().transactionResult(inside -> {
            both.countDown();
            both.await();
            GatheredStore.sent(inside.dsl(), id, tom);
            return id;
        }));
    }

    private UUID add(String title, Map<String, String> answers) {
        return ((Decision.Done<UUID>) gathered.add(tom, title, answers)).value();
    }
}
