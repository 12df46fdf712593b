package warmshelf.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.PHOTO;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.seed.PacketPictures.PacketPicture;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

/** Pictures of packets, kept with their lots by the store that keeps those of entries. */
abstract class PhotoOfPacketContract extends StoreContract {
    private static final Picture PICTURE = new Picture(Pictures.jpeg(40, 30), 40, 30);

    private PhotoStore photos;
    private GrowRoom room;
    private UUID tom;
    private UUID lot;
    private UUID other;

    @BeforeEach
    void moveIn() {
        photos = new PhotoStore(database(), audit());
        room = new GrowRoom(database(), audit());
        tom = room.tom();
        LotStore lots = new LotStore(database(), audit());
        lot = lots.add(new NewLot("pepper", "Harbour Light", 2025, 40, tom, false, ""), tom);
        other = lots.add(new NewLot("tomato", "Brick Alley", 2026, 40, tom, false, ""), tom);
    }

    @Test
    void a_photo_is_kept_with_its_lot_who_and_when() {
        UUID id = UUID.randomUUID();

        assertThat(add(id, lot)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.ADDED));

        assertThat(photos.of(lot)).containsExactly(new PacketPicture(id, 40, 30, tom, "Tom"));
        assertThat(photos.of(other)).isEmpty();
        assertThat(photos.jpeg(PhotoSubject.LOT, id).orElseThrow()).isEqualTo(PICTURE.jpeg());
        assertThat(database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq("add photo")))
                .isEqualTo(1);
    }

    @Test
    void one_sent_twice_is_kept_once_and_its_id_belongs_to_one_lot() {
        UUID id = UUID.randomUUID();
        add(id, lot);

        assertThat(add(id, lot)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.THERE_BEFORE));
        assertThat(add(id, other)).isEqualTo(new Decision.Refused<>(new PhotoRefusal.IdInUse()));
        assertThat(photos.of(lot)).hasSize(1);
        assertThat(photos.of(other)).isEmpty();
    }

    @Test
    void a_packet_has_two_sides_also_when_many_are_sent_at_once() throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Decision<PhotoStore.Keeping>>> sending = IntStream.range(0, 6)
                    .<Callable<Decision<PhotoStore.Keeping>>>mapToObj(each -> () -> add(UUID.randomUUID(), lot))
                    .toList();
            int kept = 0;
            for (Future<Decision<PhotoStore.Keeping>> answer : many.invokeAll(sending)) {
                kept += answer.get() instanceof Decision.Done ? 1 : 0;
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
        add(id, lot);
        add(UUID.randomUUID(), lot);

        photos.remove(PhotoSubject.LOT, photos.find(PhotoSubject.LOT, id).orElseThrow(), tom);

        assertThat(photos.jpeg(PhotoSubject.LOT, id)).isEmpty();
        assertThat(photos.find(PhotoSubject.LOT, id)).isEmpty();
        assertThat(add(UUID.randomUUID(), lot)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.ADDED));
    }

    @Test
    void what_does_not_exist_takes_none() {
        assertThat(add(UUID.randomUUID(), UUID.randomUUID())).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void a_photo_of_a_packet_is_none_of_an_entry() {
        UUID id = UUID.randomUUID();
        add(id, lot);

        assertThat(photos.find(PhotoSubject.ENTRY, id)).isEmpty();
        assertThat(photos.jpeg(PhotoSubject.ENTRY, id)).isEmpty();
    }

    @Test
    void the_database_itself_keeps_no_photo_of_nothing_nor_of_two_things() {
        UUID id = UUID.randomUUID();
        UUID entry = entry();
        add(id, lot);

        assertThatThrownBy(() -> database()
                        .sql()
                        .update(PHOTO)
                        .setNull(PHOTO.LOT_ID)
                        .where(PHOTO.ID.eq(id))
                        .execute())
                .isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> database()
                        .sql()
                        .update(PHOTO)
                        .set(PHOTO.ENTRY_ID, entry)
                        .where(PHOTO.ID.eq(id))
                        .execute())
                .isInstanceOf(DataAccessException.class);
    }

    private Decision<PhotoStore.Keeping> add(UUID id, UUID to) {
        return photos.add(id, PhotoSubject.LOT, to, PICTURE, tom);
    }

    private UUID entry() {
        UUID id = UUID.randomUUID();
        database()
                .sql()
                .insertInto(ENTRY)
                .set(ENTRY.ID, id)
                .set(ENTRY.SOWING_ID, room.tomsPeppers())
                .set(ENTRY.STEP, "look")
                .set(ENTRY.SEEN_ON, LocalDate.of(2027, 3, 1))
                .set(ENTRY.SEEN_AT, audit().now())
                .set(ENTRY.FINISHED, false)
                .set(ENTRY.NOTE, "")
                .set(ENTRY.MADE_BY, tom)
                .set(ENTRY.MADE_AT, audit().now())
                .execute();
        return id;
    }
}
