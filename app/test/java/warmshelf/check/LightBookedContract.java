package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** What becomes of a place under a light that was booked ahead, when the tray comes off the heat early, in time or late. */
abstract class LightBookedContract extends StoreContract {
    private static final LocalDate TODAY = TestGroup.TODAY;
    private static final LocalDate BOOKED_FROM = LocalDate.of(2027, 3, 6);
    private static final LocalDate BOOKED_TO = LocalDate.of(2027, 4, 20);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);

    private GrowRoom room;
    private StayStore stays;
    private TickStore ticks;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        ticks = new TickStore(database(), audit(), room.sowings(), new EntryStore(audit()), stays, room.lots());
    }

    @Test
    void up_before_its_time_it_goes_to_its_booked_place_at_once() {
        UUID sowing = upWithLightBooked();

        offHeat(sowing, TODAY, null, false);

        assertThat(lying(sowing)).containsExactly("mat until 2027-03-01", "lit 2027-03-01 to 2027-04-20");
    }

    @Test
    void the_rounds_one_press_under_the_light_takes_the_booked_place_and_its_correction_leaves_it_there() {
        UUID sowing = upWithLightBooked();
        Tick press = new Tick(
                UUID.randomUUID(), EntryStep.UNDER_LIGHT, TODAY, null, null, null, false, null, "", null, null);
        tick(sowing, press);
        assertThat(lying(sowing)).containsExactly("mat until 2027-03-01", "lit 2027-03-01 to 2027-04-20");

        tick(
                sowing,
                new Tick(
                        UUID.randomUUID(),
                        EntryStep.UNDER_LIGHT,
                        TODAY,
                        null,
                        null,
                        1,
                        false,
                        null,
                        "one is bent",
                        null,
                        press.id(),
                        true,
                        null,
                        ""));

        assertThat(lying(sowing)).containsExactly("mat until 2027-03-01", "lit 2027-03-01 to 2027-04-20");
    }

    @Test
    void while_somebody_else_still_lies_there_the_booking_stands_as_it_is() {
        UUID sowing = upWithLightBooked();
        lay(room.priyasTomatoes(), room.lit1(), LEFT, TODAY, BOOKED_FROM);

        offHeat(sowing, TODAY, null, false);

        assertThat(lying(sowing)).containsExactly("mat until 2027-03-01", "lit 2027-03-06 to 2027-04-20");
    }

    @Test
    void off_the_heat_later_than_planned_it_finds_its_place_kept() {
        UUID sowing = upWithLightBooked();

        offHeat(sowing, BOOKED_FROM.plusDays(2), null, false);

        assertThat(lying(sowing)).contains("lit 2027-03-06 to 2027-04-20");
    }

    @Test
    void taken_home_it_leaves_its_booked_place_to_others() {
        UUID sowing = upWithLightBooked();

        offHeat(sowing, TODAY, null, true);

        assertThat(lying(sowing)).containsExactly("mat until 2027-03-01");
        lay(room.priyasTomatoes(), room.lit1(), LEFT, BOOKED_FROM, BOOKED_TO);
    }

    @Test
    void put_under_another_light_it_leaves_its_booked_place_to_others() {
        UUID sowing = upWithLightBooked();

        offHeat(sowing, TODAY, new Tick.LightPlace(room.lit1(), RIGHT), false);

        assertThat(lying(sowing)).containsExactly("mat until 2027-03-01", "lit 2027-03-01 to 2027-05-01");
        lay(room.priyasTomatoes(), room.lit1(), LEFT, BOOKED_FROM, BOOKED_TO);
    }

    @Test
    void the_first_seed_moved_out_of_a_bag_takes_the_booked_place_and_the_next_goes_with_it() {
        UUID bag = room.tomsBag();
        tick(
                bag,
                new Tick(
                        UUID.randomUUID(),
                        EntryStep.SOWN,
                        TODAY.minusDays(9),
                        null,
                        null,
                        null,
                        false,
                        null,
                        "",
                        null,
                        null));
        onMat(bag, new Slot(1, 1));
        lay(bag, room.lit1(), LEFT, BOOKED_FROM, BOOKED_TO);

        tick(bag, moved(TODAY, 2));
        tick(bag, moved(TODAY.plusDays(1), 5));

        assertThat(lying(bag)).containsExactly("mat until 2027-03-06", "lit 2027-03-01 to 2027-04-20");
    }

    private static Tick moved(LocalDate day, int soFar) {
        return new Tick(
                UUID.randomUUID(), EntryStep.MOVED_TO_CELLS, day, soFar, soFar, null, false, null, "", null, null);
    }

    /** Peppers that are up on M1 until the fifth of March, with the left half of a lit place booked from the sixth. */
    private UUID upWithLightBooked() {
        UUID sowing = room.tomsPeppers();
        tick(
                sowing,
                new Tick(
                        UUID.randomUUID(),
                        EntryStep.SOWN,
                        TODAY.minusDays(9),
                        null,
                        null,
                        null,
                        false,
                        null,
                        "",
                        null,
                        null));
        onMat(sowing, LEFT);
        lay(sowing, room.lit1(), LEFT, BOOKED_FROM, BOOKED_TO);
        tick(sowing, new Tick(UUID.randomUUID(), EntryStep.LOOK, TODAY, 9, null, null, false, null, "", null, null));
        return sowing;
    }

    private void onMat(UUID sowing, Slot slot) {
        PlaceAndDays spot = new PlaceAndDays(room.m1Place1(), slot, TODAY.minusDays(9), BOOKED_FROM);
        database().sql().transaction(tx -> stays.layOnMat(tx.dsl(), sowing, spot, 26, new Band(24, 30), room.priya()));
    }

    private void lay(UUID sowing, UUID place, Slot slot, LocalDate from, LocalDate to) {
        database()
                .sql()
                .transaction(tx ->
                        stays.layUnderLight(tx.dsl(), sowing, new PlaceAndDays(place, slot, from, to), room.priya()));
    }

    private void offHeat(UUID sowing, LocalDate day, Tick.@Nullable LightPlace light, boolean home) {
        tick(
                sowing,
                new Tick(
                        UUID.randomUUID(),
                        EntryStep.OFF_HEAT,
                        day,
                        null,
                        null,
                        null,
                        false,
                        null,
                        "",
                        light,
                        null,
                        home,
                        null,
                        ""));
    }

    private void tick(UUID sowing, Tick tick) {
        Decision<TickOutcome> decision = ticks.keep(sowing, tick, LocalDate.of(2027, 5, 1), room.tom());
        assertThat(decision).isInstanceOf(Decision.Done.class);
    }

    private List<String> lying(UUID sowing) {
        return StayBookStore.ofSowing(database().sql(), sowing).stream()
                .map(LightBookedContract::words)
                .toList();
    }

    private static String words(Stay stay) {
        return stay.isOnMat() ? "mat until " + stay.to() : "lit %s to %s".formatted(stay.from(), stay.to());
    }
}
