package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Neighbour;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.Stay;
import warmshelf.allocation.Surroundings;
import warmshelf.allocation.WarmDays;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.Outage;
import warmshelf.shelf.Thermostat;
import warmshelf.words.Units;

class MoveJudgeTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final UUID PLACE_1 = new UUID(0, 1);
    private static final UUID PLACE_2 = new UUID(0, 2);
    private static final UUID LIT = new UUID(0, 3);
    private static final MatSpace MAT =
            new MatSpace(new UUID(0, 9), "M1", "Cellar", new Thermostat(20, 28), 26, List.of(PLACE_1, PLACE_2));
    private static final CandidatePlace ONE = new CandidatePlace(PLACE_1, 1, "Cellar", MAT);
    private static final CandidatePlace TWO = new CandidatePlace(PLACE_2, 2, "Cellar", MAT);
    private static final CandidatePlace LIGHT = new CandidatePlace(LIT, 1, "Cellar", null);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);
    private static final Band WARM = new Band(24, 30);

    private final SpaceCalendar board = new SpaceCalendar(
            TODAY,
            TODAY.plusDays(90),
            List.of(MAT, new MatSpace(new UUID(0, 8), "light", "", new Thermostat(0, 0), 0, List.of(LIT))));
    private final List<Neighbour> neighbours = new ArrayList<>();

    @Test
    void a_free_place_on_a_fitting_mat_fits() {
        MoveOutlook outlook = judge(unsown(10, 20), TWO, RIGHT, march(12), null);

        assertThat(outlook.fits()).isTrue();
        assertThat(outlook.same()).isFalse();
        assertThat(outlook.spot()).isEqualTo(new PlaceAndDays(PLACE_2, RIGHT, march(12), march(22)));
        assertThat(warm(outlook)).isEqualTo("26x10");
    }

    @Test
    void a_cooler_mat_means_a_longer_stay() {
        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), 24.0).spot().to())
                .isEqualTo(march(22));
        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), 28.0).spot().to())
                .isEqualTo(march(18));
    }

    @Test
    void whoever_is_in_the_way_is_named_and_whoever_leaves_that_morning_is_not() {
        neighbour(PLACE_2, LEFT, 1, 12, "Ann's Early");
        neighbour(PLACE_2, LEFT, 15, 17, "Bob's Middle");
        neighbour(PLACE_2, new Slot(2, 1), 21, 30, "Cy's Bag");
        neighbour(PLACE_2, LEFT, 22, 30, "Di's Late");
        neighbour(PLACE_2, RIGHT, 10, 30, "Eve's Other half");

        assertThat(judge(unsown(10, 20), TWO, LEFT, march(12), null).clashes(Units.METRIC))
                .containsExactly(
                        "Place 2 on mat M1 is taken by Bob's Middle, Mon 15 Mar to Tue 16 Mar.",
                        "Place 2 on mat M1 is taken by Cy's Bag, Sun 21 Mar to Mon 29 Mar.");
    }

    @Test
    void the_mat_keeps_the_temperature_of_what_lies_there_and_the_stay_follows_where_it_can() {
        board.setPoint(MAT.id(), march(12), march(15), 25);

        MoveOutlook follows = judge(unsown(10, 20), TWO, LEFT, march(10), null);
        assertThat(warm(follows)).isEqualTo("26x2,25x3,26x6");
        assertThat(follows.fits()).isTrue();

        MoveOutlook asked = judge(unsown(10, 20), TWO, LEFT, march(10), 28.0);
        assertThat(warm(asked)).as("a wish counts where nothing is set").isEqualTo("28x2,25x3,28x4");
        assertThat(asked.fits()).isTrue();
    }

    @Test
    void a_mat_that_is_turned_during_the_stay_is_no_clash_while_each_day_suits() {
        board.setPoint(MAT.id(), march(1), march(12), 25);
        board.setPoint(MAT.id(), march(12), march(40), 27);

        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), null).clashes(Units.METRIC))
                .isEmpty();
        assertThat(warm(judge(sown(-5, 20), TWO, LEFT, TODAY, null))).isEqualTo("25x11,27x8");

        board.setPoint(MAT.id(), march(14), march(15), 23);
        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), null).clashes(Units.METRIC))
                .containsExactly("Mat M1 stands at 23 °C on 14 Mar for what already lies there;"
                        + " this crop's seed likes 24–30 °C.");
    }

    @Test
    void a_mat_out_of_service_is_a_clash_also_when_it_goes_out_later() {
        board.takeOut(new Outage(new UUID(5, 5), MAT.id(), march(19), march(25), "the cord is frayed"));

        assertThat(judge(unsown(10, 20), TWO, LEFT, march(9), null).clashes(Units.METRIC))
                .isEmpty();
        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), null).clashes(Units.METRIC))
                .containsExactly("Mat M1 is out of service Fri 19 Mar to Wed 24 Mar: the cord is frayed.");
        assertThat(judge(sown(-5, 20), TWO, LEFT, TODAY, null).fits()).isFalse();
    }

    @Test
    void a_wish_outside_band_or_thermostat_is_told() {
        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), 22.0).clashes(Units.METRIC))
                .containsExactly("22 °C is outside what this crop's seed likes: 24–30 °C.");
        assertThat(judge(unsown(10, 20), TWO, LEFT, march(10), 29.0).clashes(Units.METRIC))
                .containsExactly("Mat M1 can hold 20–28 °C, not 29 °C.");
    }

    @Test
    void where_it_is_already_nothing_changes() {
        assertThat(judge(unsown(10, 20), ONE, LEFT, march(10), null).same()).isTrue();
        assertThat(judge(unsown(10, 20), ONE, LEFT, march(11), null).same()).isFalse();
        assertThat(judge(unsown(10, 20), ONE, LEFT, march(10), 25.0).same()).isFalse();
        assertThat(judge(sown(-5, 8), ONE, LEFT, TODAY, null).same()).isTrue();
    }

    @Test
    void what_lies_there_is_carried_today_and_keeps_its_last_day() {
        MoveOutlook outlook = judge(sown(-5, 8), TWO, LEFT, march(-5), 24.0);

        assertThat(outlook.spot()).isEqualTo(new PlaceAndDays(PLACE_2, LEFT, TODAY, march(8)));
        assertThat(outlook.fits()).isTrue();
    }

    @Test
    void what_lies_there_cannot_begin_on_another_day() {
        assertThat(judge(sown(-5, 8), TWO, LEFT, march(4), null).clashes(Units.METRIC))
                .containsExactly(
                        "It lies there since Tue 23 Feb, so its days stay; only its place can change, from today on.");
    }

    @Test
    void a_tray_that_is_late_has_not_begun_and_may_move_to_another_day() {
        LyingStay late = lying(march(-2), march(8), false);

        MoveOutlook outlook = judge(late, TWO, LEFT, march(4), null);

        assertThat(outlook.fits()).isTrue();
        assertThat(outlook.spot().from()).isEqualTo(march(4));
    }

    @Test
    void seed_that_needs_light_may_be_moved_about_its_own_dark_mat_but_to_no_other() {
        MatSpace dark = new MatSpace(
                MAT.id(), "M1", "Cellar", new Thermostat(20, 28), 26, LightAbove.NONE, List.of(PLACE_1, PLACE_2));
        CandidatePlace place = new CandidatePlace(PLACE_2, 2, "Cellar", dark);
        Stay stay = unsown(10, 20).stay();
        WarmDays warm = WarmDays.throughout(march(10), march(20), 26);
        LyingStay here = new LyingStay(stay, "Lettuce", "Tom", false, MAT.id(), warm, WARM, true);
        LyingStay fromElsewhere = new LyingStay(stay, "Lettuce", "Tom", false, new UUID(0, 7), warm, WARM, true);

        assertThat(judge(here, place, LEFT, march(10), null).clashes(Units.METRIC))
                .isEmpty();
        assertThat(judge(fromElsewhere, place, LEFT, march(10), null).clashes(Units.METRIC))
                .contains(
                        "No light reaches mat M1, and this seed needs light to come up. Whoever sees to its light says so at its request.");
    }

    @Test
    void mats_and_lights_are_not_each_others_places() {
        LyingStay underLight = new LyingStay(
                new Stay(new UUID(1, 1), new UUID(2, 2), LIT, "lit", "", LEFT, march(-3), march(9), 1),
                "Pepper",
                "Tom",
                true,
                null,
                null,
                null,
                false);

        assertThat(judge(unsown(10, 20), LIGHT, LEFT, march(10), null).clashes(Units.METRIC))
                .singleElement()
                .asString()
                .startsWith("There is no bottom heat under the light");
        assertThat(judge(underLight, ONE, LEFT, TODAY, null).clashes(Units.METRIC))
                .singleElement()
                .asString()
                .startsWith("It lies under a light");
        assertThat(judge(underLight, LIGHT, RIGHT, TODAY, null).fits()).isTrue();
    }

    private static String warm(MoveOutlook outlook) {
        WarmDays warm = outlook.warm();
        return warm == null ? "" : warm.key();
    }

    private MoveOutlook judge(
            LyingStay stay, CandidatePlace place, Slot slot, LocalDate from, @Nullable Double celsius) {
        StayMove move = new StayMove(stay.stay().id(), 1, place.id(), slot, from, celsius);
        // Ten days at 26, one more for each degree less.
        return new MoveJudge(new Surroundings(board, neighbours), TODAY)
                .judge(stay, move, place, degrees -> 10 + 26 - (int) degrees);
    }

    private void neighbour(UUID place, Slot slot, int from, int to, String words) {
        neighbours.add(new Neighbour(place, slot, march(from), march(to), words));
        board.take(place, slot, march(from), march(to));
    }

    private static LyingStay unsown(int from, int to) {
        return lying(march(from), march(to), false);
    }

    private static LyingStay sown(int from, int to) {
        return lying(march(from), march(to), true);
    }

    private static LyingStay lying(LocalDate from, LocalDate to, boolean sown) {
        Stay stay = new Stay(new UUID(1, 1), new UUID(2, 2), PLACE_1, "mat", "", LEFT, from, to, 1);
        return new LyingStay(stay, "Pepper", "Tom", sown, MAT.id(), WarmDays.throughout(from, to, 26), WARM, false);
    }

    /** Day 0 is the last of February. */
    private static LocalDate march(int day) {
        return TODAY.plusDays(day - 1L);
    }
}
