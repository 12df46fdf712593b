package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.placing.LyingStore;
import warmshelf.placing.MoveStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** What becomes of a place under a light that is booked for the end of a stay, when a coordinator moves or frees that stay. */
abstract class LightFollowsContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;
    private static final Slot LEFT = new Slot(1, 2);

    private GrowRoom room;
    private StayStore stays;
    private MoveStore moves;
    private LyingStore lying;
    private UUID sowing;
    private UUID onMat;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        moves = new MoveStore(database(), audit(), stays, new RequestStore(database(), audit()));
        lying = new LyingStore(database(), CropCatalogue.bundled(), new SpaceStore(database()));
        sowing = room.tomsPeppers();
        onMat = database().sql().transactionResult(tx -> {
            stays.layUnderLight(
                    tx.dsl(), sowing, new PlaceAndDays(room.lit1(), LEFT, march(20), march(30)), room.tom());
            PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), LEFT, march(10), march(20));
            return stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.tom());
        });
    }

    @Test
    void a_stay_moved_to_end_earlier_takes_its_light_along_and_an_undo_brings_both_back() {
        move(8, 18);
        assertThat(light()).containsExactly("2027-03-18 to 2027-03-30");

        done(moves.takeBack(lying.find(onMat).orElseThrow(), TODAY, room.priya()));

        assertThat(light()).containsExactly("2027-03-20 to 2027-03-30");
    }

    @Test
    void a_stay_moved_to_end_later_leaves_the_first_days_under_the_light_to_others() {
        move(13, 23);

        assertThat(light()).containsExactly("2027-03-23 to 2027-03-30");
        layLight(room.priyasTomatoes(), march(20), march(23));
    }

    @Test
    void where_somebody_lies_under_the_light_until_then_the_booking_stands() {
        layLight(room.priyasTomatoes(), march(15), march(20));

        move(8, 18);

        assertThat(light()).containsExactly("2027-03-20 to 2027-03-30");
    }

    @Test
    void a_stay_that_outlasts_its_light_leaves_the_booking_as_it_is() {
        move(25, 35);

        assertThat(light()).containsExactly("2027-03-20 to 2027-03-30");
    }

    @Test
    void a_freed_place_frees_its_light_too() {
        done(moves.free(lying.find(onMat).orElseThrow(), "The mat is broken.", TODAY, room.priya()));

        assertThat(StayBookStore.ofSowing(database().sql(), sowing)).isEmpty();
    }

    private void move(int from, int to) {
        PlaceAndDays spot = new PlaceAndDays(room.m1Place2(), LEFT, march(from), march(to));
        done(moves.move(
                lying.find(onMat).orElseThrow(),
                spot,
                WarmDays.throughout(spot.from(), spot.to(), 26),
                TODAY,
                room.priya()));
    }

    private void layLight(UUID other, LocalDate from, LocalDate to) {
        database()
                .sql()
                .transaction(tx -> stays.layUnderLight(
                        tx.dsl(), other, new PlaceAndDays(room.lit1(), LEFT, from, to), room.priya()));
    }

    private List<String> light() {
        return StayBookStore.ofSowing(database().sql(), sowing).stream()
                .filter(stay -> !stay.isOnMat())
                .map(stay -> stay.from() + " to " + stay.to())
                .toList();
    }

    private static LocalDate march(int day) {
        return TODAY.plusDays(day - 1L);
    }
}
