package warmshelf.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;

import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.seed.PacketPictures.PacketPicture;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class PacketPhotoStoreContract extends StoreContract {
    private static final Picture PICTURE = new Picture(Pictures.jpeg(40, 30), 40, 30);

    private PacketPhotoStore photos;
    private UUID tom;
    private UUID lot;
    private UUID other;

    @BeforeEach
    void moveIn() {
        photos = new PacketPhotoStore(database(), audit());
        tom = new GrowRoom(database(), audit()).tom();
        LotStore lots = new LotStore(database(), audit());
        lot = lots.add(new NewLot("pepper", "Harbour Light", 2025, 40, tom, false, ""), tom);
        other = lots.add(new NewLot("tomato", "Brick Alley", 2026, 40, tom, false, ""), tom);
    }

    @Test
    void a_photo_is_kept_with_its_lot_who_and_when() {
        UUID id = UUID.randomUUID();

        assertThat(photos.add(id, lot, PICTURE, tom)).isTrue();

        assertThat(photos.of(lot)).containsExactly(new PacketPicture(id, lot, 40, 30, tom, "Tom Okafor"));
        assertThat(photos.of(other)).isEmpty();
        assertThat(photos.jpeg(id).orElseThrow()).isEqualTo(PICTURE.jpeg());
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("add photo")))
                .isEqualTo(1);
    }

    @Test
    void one_sent_twice_is_kept_once_and_its_id_belongs_to_one_lot() {
        UUID id = UUID.randomUUID();
        photos.add(id, lot, PICTURE, tom);

        assertThat(photos.add(id, lot, PICTURE, tom)).isTrue();
        assertThat(photos.add(id, other, PICTURE, tom)).isFalse();
        assertThat(photos.of(lot)).hasSize(1);
        assertThat(photos.of(other)).isEmpty();
    }

    @Test
    void a_packet_has_two_sides_also_when_many_are_sent_at_once() throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Boolean>> sending = IntStream.range(0, 6)
                    .<Callable<Boolean>>mapToObj(each -> () -> photos.add(UUID.randomUUID(), lot, PICTURE, tom))
                    .toList();
            int kept = 0;
            for (Future<Boolean> answer : many.invokeAll(sending)) {
                kept += answer.get() ? 1 : 0;
            }
            assertThat(kept).isEqualTo(2);
        } finally {
            many.shutdown();
        }
        assertThat(photos.of(lot)).hasSize(2);
    }

    @Test
    void one_that_was_taken_out_is_gone_and_makes_room() {
        UUID id = UUID.randomUUID();
        photos.add(id, lot, PICTURE, tom);
        photos.add(UUID.randomUUID(), lot, PICTURE, tom);

        photos.remove(photos.find(id).orElseThrow(), tom);

        assertThat(photos.jpeg(id)).isEmpty();
        assertThat(photos.find(id)).isEmpty();
        assertThat(photos.add(UUID.randomUUID(), lot, PICTURE, tom)).isTrue();
    }
}
