package warmshelf.label;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.SHORT_CODE;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class CodeStoreContract extends StoreContract {
    private GrowRoom room;
    private CodeStore codes;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        codes = new CodeStore(database(), audit());
    }

    @Test
    void racks_mats_and_lit_shelves_come_in_walking_order_each_with_a_code_of_its_own() {
        List<CodeStore.Subject> standing = codes.standing();

        assertThat(standing)
                .extracting(CodeStore.Subject::title)
                .containsExactly("Rack North rack", "Mat M1", "Mat M2", "Shelf 2");
        List<ShortCode> made = codes.codesOf(standing, room.tom());
        assertThat(made).doesNotHaveDuplicates();
        assertThat(codes.codesOf(standing, room.priya())).isEqualTo(made);
        assertThat(codes.address(made.get(1))).contains("/mats/" + room.m1());
        assertThat(codes.address(made.get(3))).isEqualTo(codes.address(made.get(0)));
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("make code")))
                .isEqualTo(4);
    }

    @Test
    void two_who_label_the_same_at_once_get_the_same_code() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 20; round++) {
                CodeStore.Subject subject =
                        new CodeStore.Subject(CodeStore.Kind.SOWING, UUID.randomUUID(), "Pepper", "Tom");
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<ShortCode> label = () -> {
                    together.await();
                    return codes.codesOf(List.of(subject), room.tom()).get(0);
                };
                Set<ShortCode> made = new HashSet<>();
                for (Future<ShortCode> each : both.invokeAll(List.of(label, label))) {
                    made.add(each.get());
                }
                assertThat(made).hasSize(1);
            }
        } finally {
            both.shutdownNow();
        }
        assertThat(database().sql().fetchCount(SHORT_CODE)).isEqualTo(20);
    }

    @Test
    void a_code_that_was_never_made_opens_nothing() {
        assertThat(codes.address(ShortCode.completed("22222"))).isEmpty();
    }
}
