package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.check.Cases.SOWN;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.allocation.RackHolds;
import warmshelf.shelf.Lamp;
import warmshelf.sowing.EntryStep;
import warmshelf.words.Units;

class RoundTest {
    private static final LocalDate TODAY = SOWN.plusDays(8);
    private static final UUID SITE = new UUID(1, 1);
    private static final UUID M1 = new UUID(2, 1);
    private static final UUID M2 = new UUID(2, 2);
    private static final UUID M2_PLACE = new UUID(6, 9);
    private static final UUID FIRST_M1_PLACE = new UUID(6, 8);

    /** In walking order: mat M2 on the upper shelf, then mat M1 (two places), then the light below. */
    private static final Map<UUID, PlaceAddress> ADDRESSES = addresses();

    @Test
    void stops_come_in_walking_order_and_items_by_place_within_them() {
        Round round = round(
                Cases.cells()
                        .id(new UUID(3, 1))
                        .underLight(SOWN, TODAY.plusDays(9))
                        .sown(),
                Cases.cells().id(new UUID(3, 2)).onMat(SOWN, TODAY.plusDays(9)).sown());

        assertThat(round.stops())
                .extracting(Round.Stop::surface)
                .containsExactly("mat M2", "mat M1", "under the light");
        assertThat(round.stops()).extracting(stop -> stop.items().size()).containsExactly(0, 1, 1);
        assertThat(round.stops().get(1).title()).isEqualTo("North rack · shelf 2 · mat M1");
    }

    @Test
    void a_mat_on_which_nothing_is_due_is_still_a_stop_for_its_thermometer() {
        Round round = round();

        assertThat(round.stops()).extracting(Round.Stop::surface).containsExactly("mat M2", "mat M1");
        assertThat(round.stops()).allSatisfy(stop -> assertThat(stop.mat()).isNotNull());
    }

    @Test
    void a_cold_mat_on_which_nothing_is_due_is_no_stop() {
        assertThat(Round.of(List.of(), ADDRESSES, Map.of()).stops()).isEmpty();
    }

    @Test
    void what_lies_at_no_place_of_the_groups_comes_apart() {
        Round round = round(Cases.cells().sown());

        assertThat(round.elsewhere()).hasSize(1);
        assertThat(round.stops()).allSatisfy(stop -> assertThat(stop.items()).isEmpty());
    }

    @Test
    void seed_whose_days_on_the_mat_have_run_out_is_still_looked_for_there() {
        Round round = round(Cases.cells().onMat(SOWN, TODAY.minusDays(1)).sown());

        assertThat(round.elsewhere()).isEmpty();
        assertThat(round.stops().get(1).items()).hasSize(1);
    }

    @Test
    void a_look_made_today_is_done_and_the_counts_say_so() {
        Round round = round(
                Cases.cells()
                        .id(new UUID(3, 1))
                        .onMat(SOWN, TODAY.plusDays(9))
                        .sown()
                        .looked(TODAY, 0),
                Cases.cells()
                        .id(new UUID(3, 2))
                        .onMat(SOWN, TODAY.plusDays(9))
                        .sown()
                        .looked(TODAY.minusDays(1), 0),
                Cases.cells().id(new UUID(3, 3)).sown());

        // the thermometers of the two mats are to do as well
        assertThat(round.done()).isEqualTo(1);
        assertThat(round.open()).isEqualTo(4);
        assertThat(round.walk()).hasSize(5);
    }

    @Test
    void a_look_that_found_seedlings_leaves_the_next_step_to_do() {
        Round round = round(Cases.cells().onMat(SOWN, TODAY.plusDays(9)).sown().looked(TODAY, 4));

        assertThat(round.done()).isZero();
        assertThat(kinds(round.stops().get(1).items().get(0))).containsExactly(CheckKind.TAKE_HOME);
    }

    @Test
    void a_look_into_a_bag_does_not_come_back_that_day_when_roots_want_to_be_moved() {
        Cases bag = Cases.bag().onMat(SOWN, TODAY.plusDays(9)).sown().looked(TODAY, 4);

        assertThat(kinds(item(bag, TODAY))).containsExactly(CheckKind.MOVE_TO_CELLS);
        assertThat(kinds(item(bag, TODAY.plusDays(1)))).containsExactly(CheckKind.MOVE_TO_CELLS, CheckKind.BAG_LOOK);

        bag.entered(TODAY, EntryStep.MOVED_TO_CELLS, null, 4, false);
        assertThat(item(bag, TODAY)).satisfies(item -> {
            assertThat(item.isDone()).isTrue();
            assertThat(item.howTos(Units.METRIC)).isEmpty();
        });
        bag.looked(TODAY, 6);
        assertThat(kinds(item(bag, TODAY))).containsExactly(CheckKind.MOVE_TO_CELLS);
    }

    @Test
    void what_was_done_today_stays_in_the_round_as_done() {
        Round round = round(Cases.cells().onMat(TODAY, TODAY.plusDays(9)).entered(TODAY, EntryStep.SOWN));

        assertThat(round.done()).isEqualTo(1);
        assertThat(round.stops().get(1).items().get(0).isDone()).isTrue();
    }

    private static List<CheckKind> kinds(Round.@Nullable Item item) {
        return item == null ? List.of() : item.open().stream().map(Check::kind).toList();
    }

    @Test
    void sowing_today_is_not_a_look() {
        Cases sownYesterday = Cases.cells().onMat(SOWN, TODAY.plusDays(9)).sown();

        Round.Item item = item(sownYesterday, SOWN.plusDays(1));

        assertThat(item).isNotNull();
        assertThat(item.isDone()).isFalse();
    }

    @Test
    void what_needs_nothing_today_is_no_item() {
        assertThat(item(Cases.bag().onMat(SOWN, TODAY.plusDays(9)).sown(), SOWN.plusDays(1)))
                .isNull();
    }

    @Test
    void only_what_does_not_lie_under_a_light_yet_asks_where_it_goes() {
        Cases onMat = Cases.cells().onMat(SOWN, TODAY.plusDays(9)).sown().looked(TODAY, 4);
        Cases partlyMoved = Cases.bag()
                .onMat(SOWN, TODAY.plusDays(9))
                .underLight(TODAY, TODAY.plusDays(30))
                .sown()
                .looked(TODAY, 6)
                .entered(TODAY, EntryStep.MOVED_TO_CELLS, null, 4, false);

        assertThat(onM1(onMat).asksForLight()).isTrue();
        assertThat(onM1(partlyMoved).has("MOVE_TO_CELLS")).isTrue();
        assertThat(onM1(partlyMoved).asksForLight()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"26.0,false", "28.0,false", "28.1,true", "24.0,false", "23.9,true"})
    void a_mat_is_off_when_it_is_more_than_two_degrees_from_its_set_point(double readC, boolean off) {
        assertThat(new Round.MatReading(M1, "M1", 26, readC, "Tom").isOff()).isEqualTo(off);
    }

    @Test
    void a_mat_nobody_read_is_not_off() {
        assertThat(new Round.MatReading(M1, "M1", 26, null, "").isOff()).isFalse();
    }

    private static Round.Item onM1(Cases cases) {
        return round(cases).stops().get(1).items().get(0);
    }

    private static Round round(Cases... cases) {
        List<Round.Item> items = new ArrayList<>();
        for (Cases each : cases) {
            Round.Item item = item(each, TODAY);
            if (item != null) {
                items.add(item);
            }
        }
        Map<UUID, Round.MatReading> mats = Map.of(
                M1, new Round.MatReading(M1, "M1", 26, null, ""), M2, new Round.MatReading(M2, "M2", 20, null, ""));
        return Round.of(items, ADDRESSES, mats);
    }

    private static Round.@Nullable Item item(Cases cases, LocalDate today) {
        return Round.item(
                cases.history(), cases.on(today), List.of(), today, ADDRESSES, Map.of(), RackHolds.NONE, false);
    }

    private static Map<UUID, PlaceAddress> addresses() {
        Map<UUID, PlaceAddress> inOrder = new LinkedHashMap<>();
        add(inOrder, M2_PLACE, 1, M2, "mat M2", 1);
        add(inOrder, FIRST_M1_PLACE, 2, M1, "mat M1", 1);
        add(inOrder, Cases.PLACE, 2, M1, "mat M1", 2);
        add(inOrder, Cases.LIT, 3, null, "under the light", 1);
        return inOrder;
    }

    private static void add(
            Map<UUID, PlaceAddress> inOrder, UUID place, int shelf, @Nullable UUID mat, String surface, int number) {
        inOrder.put(
                place,
                new PlaceAddress(
                        place,
                        SITE,
                        "Hall cellar",
                        "North rack",
                        shelf,
                        mat,
                        surface,
                        number,
                        Lamp.NOT_KNOWN,
                        inOrder.size()));
    }
}
