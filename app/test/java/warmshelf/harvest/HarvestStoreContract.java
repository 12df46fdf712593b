package warmshelf.harvest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;

/** What growers say after the season, on every database. */
abstract class HarvestStoreContract extends StoreContract {
    private GrowRoom room;
    private SeenSowings seen;
    private HarvestStore harvests;

    @BeforeEach
    void fill() {
        room = new GrowRoom(database(), audit());
        seen = new SeenSowings(database(), audit(), room);
        harvests = new HarvestStore(database(), audit());
    }

    @Test
    void only_what_went_out_is_asked_about() {
        UUID lot = seen.lot();
        UUID out = plantedOut(lot);
        seen.upOnDay(9, lot);

        assertThat(harvests.plantedOut(room.tom(), 2027))
                .containsExactly(new HarvestStore.PlantedOut(
                        out, 2027, "pepper", "Lantern Row", SeenSowings.FIRST.plusDays(70)));
        assertThat(harvests.plantedOut(room.tom(), 2028)).hasSize(1);
        assertThat(harvests.plantedOut(room.tom(), 2029)).isEmpty();
        assertThat(harvests.plantedOut(room.priya(), 2027)).isEmpty();
    }

    @Test
    void a_variety_from_several_sowings_is_asked_about_once_by_the_one_that_was_answered() {
        UUID lot = seen.lot();
        UUID first = plantedOut(lot);
        UUID second = plantedOut(lot);
        assertThat(harvests.plantedOut(room.tom(), 2027)).hasSize(1);

        for (UUID answered : List.of(first, second)) {
            harvests.keep(List.of(note(answered, HarvestAnswer.Again.AGAIN)), room.tom());

            assertThat(harvests.plantedOut(room.tom(), 2027))
                    .extracting(HarvestStore.PlantedOut::sowingId)
                    .containsExactly(answered);
            harvests.keep(List.of(new HarvestNote(answered, null, null, null, null, null, null, "")), room.tom());
        }
    }

    private UUID plantedOut(UUID lot) {
        UUID sowing = seen.upOnDay(9, lot);
        seen.enter(sowing, 70, EntryStep.PLANTED_OUT, null);
        room.sowings().moveTo(database().sql(), sowing, SowingStage.PLANTED_OUT);
        return sowing;
    }

    @Test
    void what_is_said_again_stands_in_place_of_what_was_said_before() {
        UUID sowing = plantedOut(seen.lot());
        harvests.keep(List.of(note(sowing, HarvestAnswer.Again.NOT_AGAIN)), room.tom());
        HarvestNote whole = new HarvestNote(
                sowing,
                HarvestAnswer.Again.AGAIN,
                HarvestAnswer.Amount.PLENTY,
                3.5,
                HarvestAnswer.Taste.VERY_GOOD,
                LocalDate.of(2026, 7, 20),
                LocalDate.of(2026, 9, 30),
                "slugs");
        harvests.keep(List.of(whole), room.tom());

        assertThat(harvests.notes(room.tom(), List.of(sowing)))
                .containsOnlyKeys(sowing)
                .containsValue(whole);
        assertThat(harvests.words("pepper", "Lantern Row"))
                .isEqualTo(
                        "Again: 1 of 1 who grew it. Enough or plenty: 1 of 1. Good or very good: 1 of 1. Weighed: 3.5 kg."
                                + " Trouble: “slugs”.");
    }

    private static HarvestNote note(UUID sowing, HarvestAnswer.Again again) {
        return new HarvestNote(sowing, again, null, null, null, null, null, "");
    }

    @Test
    void saying_nothing_takes_it_out() {
        UUID sowing = plantedOut(seen.lot());
        harvests.keep(List.of(note(sowing, HarvestAnswer.Again.AGAIN)), room.tom());
        harvests.keep(List.of(new HarvestNote(sowing, null, null, null, null, null, null, "")), room.tom());

        assertThat(harvests.notes(room.tom(), List.of(sowing))).isEmpty();
    }

    @Test
    void a_list_that_breaks_off_leaves_nothing_of_it_and_all_of_the_one_before() {
        UUID lot = seen.lot();
        UUID first = plantedOut(lot);
        UUID second = plantedOut(lot);
        harvests.keep(List.of(note(first, HarvestAnswer.Again.AGAIN)), room.tom());
        List<HarvestNote> broken = List.of(
                note(first, HarvestAnswer.Again.NOT_AGAIN),
                note(second, HarvestAnswer.Again.AGAIN),
                note(UUID.randomUUID(), HarvestAnswer.Again.AGAIN));

        assertThatThrownBy(() -> harvests.keep(broken, room.tom())).isInstanceOf(DataAccessException.class);

        assertThat(harvests.notes(room.tom(), List.of(first, second)))
                .containsOnlyKeys(first)
                .containsValue(note(first, HarvestAnswer.Again.AGAIN));
    }

    @Test
    void a_variety_is_told_over_growers_whatever_its_capitals() {
        UUID lot = seen.lot();
        harvests.keep(
                List.of(
                        note(plantedOut(lot), HarvestAnswer.Again.AGAIN),
                        note(plantedOut(lot), HarvestAnswer.Again.OTHER_VARIETY)),
                room.tom());

        assertThat(harvests.words("pepper", "lantern ROW")).isEqualTo("Again: 1 of 2 who grew it.");
        assertThat(harvests.words("pepper", "Other")).isEmpty();
        assertThat(harvests.words("pepper", "")).isEmpty();
        assertThat(harvests.ofSeason(2027)).hasSize(2);
    }
}
