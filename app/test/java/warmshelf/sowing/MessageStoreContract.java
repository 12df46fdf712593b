package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static warmshelf.db.generated.Tables.MEMBER;

import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;

/** What Priya writes to Tom about his peppers, and to whom anybody may write, on every database. */
abstract class MessageStoreContract extends StoreContract {
    private GrowRoom room;
    private Sowing peppers;
    private MessageStore messages;

    @BeforeEach
    void raise() {
        room = new GrowRoom(database(), audit());
        SeenSowings seen = new SeenSowings(database(), audit(), room);
        UUID id = seen.upOnDay(9, seen.lot());
        SowingStores stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        peppers = stores.sowings().find(id).orElseThrow();
        messages = new MessageStore(database(), audit());
    }

    @Test
    void the_newest_comes_first_and_says_who_wrote_to_whom() {
        messages.write(peppers.id(), room.tom(), "Shall I water it?", room.priya());
        clock.advance(Duration.ofMinutes(5));
        messages.write(peppers.id(), room.priya(), "Yes, please.", room.tom());

        assertThat(messages.ofSowing(peppers.id()))
                .extracting(MessageStore.Message::by, MessageStore.Message::to, MessageStore.Message::words)
                .containsExactly(tuple("Tom", "Priya", "Yes, please."), tuple("Priya", "Tom", "Shall I water it?"));
    }

    @Test
    void the_grower_can_be_written_to_and_coordinators_but_not_oneself_nor_who_has_left() {
        assertThat(messages.readers(peppers, room.priya())).singleElement().satisfies(reader -> {
            assertThat(reader.id()).isEqualTo(room.tom());
            assertThat(reader.grower()).isTrue();
        });
        assertThat(messages.readers(peppers, room.tom())).isEmpty();

        database()
                .sql()
                .update(MEMBER)
                .set(MEMBER.ROLE, "coordinator")
                .where(MEMBER.ID.eq(room.priya()))
                .execute();
        assertThat(messages.readers(peppers, room.tom()))
                .extracting(MessageStore.Reader::id)
                .containsExactly(room.priya());

        database()
                .sql()
                .update(MEMBER)
                .set(MEMBER.LEFT_AT, audit().now())
                .where(MEMBER.ID.eq(room.priya()))
                .execute();
        assertThat(messages.readers(peppers, room.tom())).isEmpty();
    }
}
