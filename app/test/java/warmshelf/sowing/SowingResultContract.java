package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SOWING_RESULT;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;

/** What sowings taught, kept beside their entries. */
abstract class SowingResultContract extends StoreContract {
    private GrowRoom room;
    private SeenSowings sowings;
    private SowingResultStore results;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        sowings = new SeenSowings(database(), audit(), room);
        results = new SowingResultStore(database(), new EntryStore(audit()), audit());
    }

    @Test
    void what_was_kept_entry_by_entry_is_what_all_of_them_give() {
        sowings.upOnDay(9, sowings.lot());
        UUID out = sowings.upOnDay(11, sowings.lot());
        sowings.enter(out, 90, EntryStep.PLANTED_OUT, null);
        sowings.look(sowings.onMat(room.peppersOf(sowings.lot())), 8, 3);

        assertThat(results.rebuild()).isEqualTo(new SowingResultStore.Found(2, 0, 0));
    }

    @Test
    void what_has_ended_is_told_with_its_days_and_its_plants() {
        UUID out = ended(SowingStage.PLANTED_OUT, EntryStep.PLANTED_OUT);
        UUID givenUp = ended(SowingStage.GIVEN_UP, EntryStep.GAVE_UP);
        sowings.upOnDay(9, sowings.lot());

        Map<UUID, EndedSowing> told = new EndedSowingStore(database(), room.sowings())
                .all().stream().collect(Collectors.toMap(each -> each.sowing().id(), Function.identity()));

        assertThat(told).containsOnlyKeys(out, givenUp);
        EndedSowing planted = Objects.requireNonNull(told.get(out));
        assertThat(planted.plantedOutOn()).isEqualTo(planted.sownOn().plusDays(90));
        assertThat(planted).extracting(EndedSowing::up, EndedSowing::lived).containsExactly(10, 10);
        assertThat(planted.meanC()).isEqualTo(26.0);
        EndedSowing lost = Objects.requireNonNull(told.get(givenUp));
        assertThat(lost.isGivenUp()).isTrue();
        assertThat(lost.plantedOutOn()).isNull();
        assertThat(lost).extracting(EndedSowing::up, EndedSowing::lived).containsExactly(10, 0);
    }

    private UUID ended(SowingStage stage, EntryStep step) {
        UUID sowing = sowings.upOnDay(11, sowings.lot());
        sowings.enter(sowing, 90, step, null);
        room.sowings().moveTo(database().sql(), sowing, stage);
        return sowing;
    }

    @Test
    void what_is_missing_wrong_or_too_much_is_found_and_put_right() {
        UUID missing = sowings.upOnDay(9, sowings.lot());
        UUID wrong = sowings.upOnDay(11, sowings.lot());
        UUID tooMuch = room.peppersOf(sowings.lot());
        database()
                .sql()
                .update(SOWING_RESULT)
                .set(SOWING_RESULT.SOWING_ID, tooMuch)
                .where(SOWING_RESULT.SOWING_ID.eq(missing))
                .execute();
        database()
                .sql()
                .update(SOWING_RESULT)
                .set(SOWING_RESULT.CAME_UP, 1)
                .where(SOWING_RESULT.SOWING_ID.eq(wrong))
                .execute();

        assertThat(results.rebuild()).isEqualTo(new SowingResultStore.Found(0, 1, 2));
        assertThat(results.rebuild()).isEqualTo(new SowingResultStore.Found(2, 0, 0));
    }

    @Test
    void what_an_earlier_program_left_is_filled_in_once() {
        UUID sowing = sowings.upOnDay(9, sowings.lot());
        room.sowings().moveTo(database().sql(), sowing, SowingStage.UNDER_LIGHT);
        database().sql().deleteFrom(SOWING_RESULT).execute();

        results.fill();

        assertThat(database().sql().fetchValues(SOWING_RESULT.SOWING_ID)).containsExactly(sowing);
    }

    @Test
    void warmth_is_asked_of_the_mats_until_no_day_on_one_lies_ahead() {
        // Seen under the light on day 13, while its days on the mat are kept for 21.
        UUID sowing = sowings.upOnDay(9, sowings.lot());
        EmergenceStore emergence = new EmergenceStore(database(), CropCatalogue.bundled());

        assertThat(leftOpen()).containsExactly(true);
        assertThat(emergence.seen().get("pepper"))
                .extracting(each -> each.celsius())
                .containsExactly(26.0);

        sowings.enter(sowing, 30, EntryStep.HARDENING_OFF, null);

        assertThat(leftOpen()).containsExactly(false);
        assertThat(emergence.seen().get("pepper"))
                .extracting(each -> each.celsius())
                .containsExactly(26.0);
    }

    private List<Boolean> leftOpen() {
        return database().sql().fetchValues(SOWING_RESULT.WARMTH_OPEN);
    }
}
