package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ENTRY;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.sowing.EntryStep;
import warmshelf.words.Units;

/** What a phone sends at once. */
abstract class BatchStoreContract extends TickContract {
    private static final OffsetDateTime NOW = TODAY.atTime(15, 0).atOffset(ZoneOffset.UTC);

    private BatchStore batches;

    @BeforeEach
    void openBatches() {
        batches = new BatchStore(database(), ticks, new ReadingStore(database(), audit()));
    }

    @Test
    void one_that_is_refused_leaves_those_beside_it_kept() {
        UUID peppers = sown(room.tomsPeppers());
        UUID tomatoes = sown(room.priyasTomatoes());
        Draft clashing = seen(step(EntryStep.UNDER_LIGHT).to(room.m1Place1(), LEFT));
        UUID reading = UUID.randomUUID();

        List<SentAnswer> answers = batches.keep(
                List.of(
                        numbered(tomatoes, clashing),
                        numbered(peppers, seen(look(4))),
                        new BatchStore.Numbered("unfit", new Sent.Unfit("No.")),
                        new BatchStore.Numbered(
                                reading.toString(), new Sent.AtMat(new Reading(reading, room.m1(), TODAY, NOW, 25.5))),
                        numbered(tomatoes, seen(look(2)))),
                room.priya(),
                Units.METRIC);

        assertThat(answers)
                .extracting(SentAnswer::answer)
                .containsExactly("refused", "kept", "refused", "kept", "kept");
        assertThat(answers.get(0).again()).isTrue();
        assertThat(answers.get(2)).isEqualTo(SentAnswer.refused("unfit", "No.", false));
        assertThat(entries.ofSowing(database().sql(), peppers)).hasSize(2);
        assertThat(entries.ofSowing(database().sql(), tomatoes)).hasSize(2);
        assertThat(database().sql().fetchCount(ENTRY, ENTRY.MAT_ID.eq(room.m1())))
                .isEqualTo(1);
    }

    @Test
    void sent_twice_all_is_kept_once() {
        UUID peppers = sown(room.tomsPeppers());
        UUID reading = UUID.randomUUID();
        List<BatchStore.Numbered> sent = List.of(
                numbered(peppers, seen(look(4))),
                new BatchStore.Numbered(
                        reading.toString(), new Sent.AtMat(new Reading(reading, room.m1(), TODAY, NOW, 25.5))));

        batches.keep(sent, room.priya(), Units.METRIC);

        assertThat(batches.keep(sent, room.priya(), Units.METRIC))
                .extracting(SentAnswer::answer)
                .containsExactly("kept-before", "kept-before");
        assertThat(database().sql().fetchCount(ENTRY)).isEqualTo(3);
    }

    @Test
    void a_look_sent_before_the_sowing_it_followed_is_kept() {
        UUID peppers = room.tomsPeppers();

        List<SentAnswer> answers = batches.keep(
                List.of(
                        numbered(peppers, look(0).seen(NOW.minusHours(1), NOW.minusDays(2))),
                        numbered(peppers, step(EntryStep.SOWN).seen(NOW.minusDays(1), NOW.minusDays(2)))),
                room.priya(),
                Units.METRIC);

        assertThat(answers).extracting(SentAnswer::answer).containsExactly("kept", "kept");
    }

    @Test
    void an_id_of_a_tick_serves_no_reading() {
        UUID peppers = sown(room.tomsPeppers());
        Draft look = seen(look(4));
        keep(peppers, look);

        SentAnswer answer = batches.keep(
                        List.of(new BatchStore.Numbered(
                                "r", new Sent.AtMat(new Reading(look.id(), room.m1(), TODAY, NOW, 25)))),
                        room.priya(),
                        Units.METRIC)
                .get(0);

        assertThat(answer)
                .isEqualTo(SentAnswer.refused(
                        "r",
                        "This reading's id was used for something else already. Load the page again and enter it once more.",
                        false));
    }

    private static Draft seen(Draft draft) {
        return draft.seen(NOW, NOW.minusHours(1));
    }

    private static BatchStore.Numbered numbered(UUID sowing, Draft draft) {
        return new BatchStore.Numbered(draft.id().toString(), new Sent.AtSowing(sowing, draft.tick(), LIGHT_UNTIL));
    }
}
