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
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class PhotoStoreContract extends StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
    private static final Picture PICTURE = new Picture(Pictures.jpeg(40, 30), 40, 30);

    private GrowRoom room;
    private PhotoStore photos;
    private UUID sowing;
    private UUID entry;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        photos = new PhotoStore(database(), audit());
        sowing = room.tomsPeppers();
        entry = entry(sowing, null);
    }

    @Test
    void a_photo_is_kept_with_its_entry_who_and_when() {
        UUID id = UUID.randomUUID();

        assertThat(add(id, entry)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.ADDED));

        assertThat(photos.ofSowing(sowing).get(entry))
                .containsExactly(new Photo(id, entry, 40, 30, room.priya(), "Priya"));
        assertThat(photos.jpeg(PhotoSubject.ENTRY, id).orElseThrow()).isEqualTo(PICTURE.jpeg());
        assertThat(photos.entry(entry).orElseThrow().grower()).isEqualTo(room.tom());
        assertThat(lines("add photo")).isEqualTo(1);
    }

    @Test
    void one_sent_twice_is_kept_once() {
        UUID id = UUID.randomUUID();

        add(id, entry);

        assertThat(add(id, entry)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.THERE_BEFORE));
        assertThat(database().sql().fetchCount(PHOTO)).isEqualTo(1);
    }

    @Test
    void one_id_cannot_serve_two_entries() {
        UUID id = UUID.randomUUID();
        add(id, entry);

        assertThat(add(id, entry(sowing, null))).isEqualTo(new Decision.Refused<>(new PhotoRefusal.IdInUse()));
    }

    @Test
    void neither_what_does_not_exist_nor_a_mats_reading_takes_one() {
        assertThat(add(UUID.randomUUID(), UUID.randomUUID())).isInstanceOf(Decision.Missing.class);
        assertThat(add(UUID.randomUUID(), entry(null, room.m1()))).isInstanceOf(Decision.Missing.class);
    }

    @Test
    void of_six_sent_to_one_entry_at_once_three_are_kept() throws Exception {
        ExecutorService phones = Executors.newFixedThreadPool(6);
        try {
            Callable<Decision<PhotoStore.Keeping>> send = () -> add(UUID.randomUUID(), entry);
            for (Future<Decision<PhotoStore.Keeping>> sent :
                    phones.invokeAll(List.of(send, send, send, send, send, send))) {
                assertThat(sent.get())
                        .isIn(
                                new Decision.Done<>(PhotoStore.Keeping.ADDED),
                                new Decision.Refused<>(new PhotoRefusal.Enough(PhotoSubject.ENTRY)));
            }
        } finally {
            phones.shutdownNow();
        }
        assertThat(photos.ofSowing(sowing).get(entry)).hasSize(3);
    }

    @Test
    void the_database_itself_keeps_nothing_larger() {
        Picture large = new Picture(new byte[Shrink.MOST_BYTES + 1], 40, 30);

        assertThatThrownBy(() -> photos.add(UUID.randomUUID(), PhotoSubject.ENTRY, entry, large, room.tom()))
                .isInstanceOf(DataAccessException.class);
        assertThat(database().sql().fetchCount(PHOTO)).isZero();
    }

    @Test
    void one_taken_out_is_gone_and_the_line_that_says_who_did_stays() {
        UUID id = UUID.randomUUID();
        add(id, entry);

        photos.remove(PhotoSubject.ENTRY, photos.find(PhotoSubject.ENTRY, id).orElseThrow(), room.tom());

        assertThat(photos.jpeg(PhotoSubject.ENTRY, id)).isEmpty();
        assertThat(photos.ofSowing(sowing)).isEmpty();
        assertThat(lines("take photo out")).isEqualTo(1);
    }

    @Test
    void one_taken_out_does_not_come_back_when_a_phone_sends_it_again_and_makes_room_for_another() {
        UUID id = UUID.randomUUID();
        add(id, entry);
        add(UUID.randomUUID(), entry);
        add(UUID.randomUUID(), entry);
        photos.remove(PhotoSubject.ENTRY, photos.find(PhotoSubject.ENTRY, id).orElseThrow(), room.tom());

        assertThat(add(id, entry)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.THERE_BEFORE));
        assertThat(photos.find(PhotoSubject.ENTRY, id)).isEmpty();
        assertThat(add(UUID.randomUUID(), entry)).isEqualTo(new Decision.Done<>(PhotoStore.Keeping.ADDED));
    }

    private Decision<PhotoStore.Keeping> add(UUID id, UUID to) {
        return photos.add(id, PhotoSubject.ENTRY, to, PICTURE, room.priya());
    }

    private int lines(String action) {
        return database().sql().fetchCount(AUDIT_LINE, AUDIT_LINE.ACTION.eq(action));
    }

    private UUID entry(@Nullable UUID ofSowing, @Nullable UUID ofMat) {
        UUID id = UUID.randomUUID();
        database()
                .sql()
                .insertInto(ENTRY)
                .set(ENTRY.ID, id)
                .set(ENTRY.SOWING_ID, ofSowing)
                .set(ENTRY.MAT_ID, ofMat)
                .set(ENTRY.STEP, ofMat == null ? "look" : "reading")
                .set(ENTRY.SEEN_ON, DAY)
                .set(ENTRY.SEEN_AT, audit().now())
                .set(ENTRY.CELSIUS, ofMat == null ? null : new java.math.BigDecimal("25.0"))
                .set(ENTRY.FINISHED, false)
                .set(ENTRY.NOTE, "")
                .set(ENTRY.MADE_BY, room.tom())
                .set(ENTRY.MADE_AT, audit().now())
                .execute();
        return id;
    }
}
