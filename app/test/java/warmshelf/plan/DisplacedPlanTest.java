package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceWish;
import warmshelf.allocation.Stay;
import warmshelf.allocation.WarmDays;
import warmshelf.placing.LyingStay;
import warmshelf.plan.engine.search.Planner;
import warmshelf.shelf.Outage;
import warmshelf.shelf.Thermostat;
import warmshelf.words.Units;

class DisplacedPlanTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Band WARM = new Band(24, 30);
    private static final MatSpace BROKEN = mat(1, 4);
    private static final MatSpace SMALL = mat(2, 1);
    private static final MatSpace FAR = mat(3, 1);
    /** Ends what hangs; no slow machine comes near it. */
    private static final double PATIENCE_SECONDS = 900;

    private final SpaceCalendar board = new SpaceCalendar(TODAY, TODAY.plusDays(60), List.of(BROKEN, FAR, SMALL));
    private final List<Displaced> displaced = new ArrayList<>();

    @Test
    void each_gets_a_place_beside_the_others_and_none_on_the_mat_that_is_out() {
        out(10);
        lying(1, 2, 0, 8);
        lying(2, 2, 0, 8);
        lying(3, 4, 0, 8);

        Map<UUID, SpaceOffer> found = proposed().places();

        assertThat(found).hasSize(3);
        assertThat(found.values()).extracting(SpaceOffer::mat).doesNotContain(BROKEN);
        for (SpaceOffer one : found.values()) {
            SpaceCalendar rest = board.copy();
            found.values().stream().filter(other -> !other.equals(one)).forEach(rest::accept);
            assertThat(rest.isFree(one.placeId(), one.slot(), one.from(), one.to()))
                    .isTrue();
        }
    }

    @Test
    void a_mat_of_its_own_site_is_taken_before_one_elsewhere() {
        out(10);
        lying(1, 1, 0, 8);

        assertThat(proposed().places().values()).extracting(SpaceOffer::mat).containsExactly(SMALL);
    }

    @Test
    void what_is_due_after_the_mat_is_back_may_stay_on_it_on_later_days() {
        out(4);
        full(FAR);
        full(SMALL);
        lying(1, 4, 2, 10);

        assertThat(proposed().places().values()).singleElement().satisfies(offer -> {
            assertThat(offer.mat()).isEqualTo(BROKEN);
            assertThat(offer.from()).isEqualTo(TODAY.plusDays(4));
        });
    }

    /**
     * Two places on one mat. Place 1 is free throughout, place 2 is taken from day 8 on. The tray that lies there already needs days 0
     * to 5, the later one nine days from day 3, 4 or 5 on, so until day 11 at the earliest: it fits on place 1 only, and there only if
     * the other is not there on day 5. First fit takes the one that begins first first, whichever way it sorts, since both are trays,
     * and gives it the first of two equally empty places, place 1.
     */
    @Test
    void trays_are_laid_as_first_fit_in_none_of_its_orders_lays_them() {
        MatSpace two = mat(4, 2);
        SpaceCalendar free = new SpaceCalendar(TODAY, TODAY.plusDays(60), List.of(BROKEN, two));
        free.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(30), "broken"));
        free.take(two.places().get(1), new Slot(1, 4), TODAY.plusDays(8), TODAY.plusDays(60));
        free.setPoint(two.id(), TODAY.plusDays(8), TODAY.plusDays(60), 26);
        DisplacedBoard room =
                new DisplacedBoard(free, List.of(displaced(1, 4, 0, 6, 0, WARM), displaced(2, 4, 3, 12, 2, WARM)));

        assertThat(DisplacedFit.places(room)).hasSize(1);
        DisplacedPlan.Proposed proposed = proposed(room);

        assertThat(proposed.places()).hasSize(2);
        assertThat(proposed.mostProven()).isTrue();
        assertThat(proposed.places().values()).extracting(SpaceOffer::shiftDays).containsOnly(0);
    }

    /** The cool mat holds 20 to 26 °C, the warm one 20 to 32: the first tray bears both, the second one needs 28 to 30. */
    @Test
    void what_bears_less_warmth_leaves_the_warm_mat_to_what_needs_it() {
        MatSpace cool =
                new MatSpace(new UUID(0, 6), "M6", "Attic", new Thermostat(20, 26), 24, List.of(new UUID(6, 1)));
        SpaceCalendar free = new SpaceCalendar(TODAY, TODAY.plusDays(60), List.of(BROKEN, SMALL, cool));
        free.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(30), "broken"));
        DisplacedBoard room = new DisplacedBoard(
                free, List.of(displaced(1, 4, 0, 6, 0, new Band(24, 30)), displaced(2, 4, 0, 6, 0, new Band(28, 30))));

        assertThat(DisplacedFit.places(room)).hasSize(1);

        assertThat(proposed(room).places().values()).extracting(SpaceOffer::mat).containsExactlyInAnyOrder(SMALL, cool);
    }

    /** Two trays of eight days each and one place for eight: two times 4 x 8 quarter-days into 4 x 8. */
    @Test
    void that_no_more_can_be_placed_is_proven_and_what_is_lacking_is_told() {
        out(30);
        full(FAR);
        SMALL.places().forEach(place -> board.take(place, new Slot(1, 4), TODAY.plusDays(8), TODAY.plusDays(60)));
        board.setPoint(SMALL.id(), TODAY.plusDays(8), TODAY.plusDays(60), 26);
        lying(1, 4, 0, 8);
        lying(2, 4, 0, 8);

        DisplacedPlan.Proposed proposed = proposed();

        assertThat(proposed.places()).hasSize(1);
        assertThat(proposed.mostProven()).isTrue();
        assertThat(lack(proposed).words(Units.METRIC))
                .isEqualTo(
                        "On mats warm enough for it, no whole place is free for all its days, Mon 1 Mar to Mon 8 Mar.");
        assertThat(lack(proposed).help(Units.METRIC))
                .isEqualTo("It fits once a place is freed, one of the mats is back, or another is set up.");
    }

    @Test
    void what_could_begin_later_is_told_where_and_how_much_later() {
        out(60);
        full(FAR);
        SMALL.places().forEach(place -> board.take(place, new Slot(1, 4), TODAY, TODAY.plusDays(9)));
        board.setPoint(SMALL.id(), TODAY, TODAY.plusDays(9), 26);
        lying(1, 4, 3, 10);

        DisplacedPlan.Proposed proposed = proposed();

        assertThat(proposed.places()).isEmpty();
        assertThat(lack(proposed).words(Units.METRIC))
                .isEqualTo("On mats warm enough for it, no whole place is free for 7 days from any day on which it may"
                        + " begin, Thu 4 Mar to Sun 7 Mar.");
        assertThat(lack(proposed).help(Units.METRIC))
                .isEqualTo("Begun on Wed 10 Mar, 3 days after its last day, it could lie on mat M2, place 1.");
    }

    @Test
    void what_lies_there_is_told_when_a_place_is_free_for_the_rest_of_its_days() {
        out(60);
        full(FAR);
        SMALL.places().forEach(place -> board.take(place, new Slot(1, 4), TODAY, TODAY.plusDays(2)));
        board.setPoint(SMALL.id(), TODAY, TODAY.plusDays(2), 26);
        lying(1, 4, 0, 10);

        assertThat(lack(proposed()).help(Units.METRIC))
                .isEqualTo("Place 1 on mat M2 is free for the rest of its days from Wed 3 Mar.");
    }

    @Test
    void a_free_place_at_the_wrong_warmth_is_told_in_the_readers_units() {
        out(60);
        full(FAR);
        board.take(SMALL.places().get(0), new Slot(1, 1), TODAY, TODAY.plusDays(60));
        board.setPoint(SMALL.id(), TODAY, TODAY.plusDays(60), 22);
        lying(1, 1, 0, 10);

        NoOtherPlace lack = lack(proposed());

        assertThat(lack.words(Units.METRIC))
                .isEqualTo("Place 1 on mat M2 is free, but not at a warmth that suits it. Mat M2 stands at 22 °C on"
                        + " 1 Mar for what already lies there; this crop's seed likes 24–30 °C.");
        assertThat(lack.words(Units.AMERICAN)).contains("72 °F", "75–86 °F").doesNotContain("°C");
        assertThat(lack.help(Units.METRIC)).isEqualTo("It fits once what lies there has gone to another mat.");
    }

    @Test
    void mats_that_are_all_out_or_all_too_cool_are_told_as_that() {
        for (MatSpace mat : List.of(BROKEN, SMALL, FAR)) {
            board.takeOut(new Outage(new UUID(5, 5), mat.id(), TODAY, TODAY.plusDays(60), "no power"));
        }
        lying(1, 1, 0, 10);
        assertThat(lack(proposed())).isEqualTo(new NoOtherPlace.AllOut());

        displaced.clear();
        displaced.add(displaced(1, 1, 0, 10, 0, new Band(34, 36)));
        assertThat(lack(proposed()).words(Units.METRIC)).isEqualTo("No mat can hold 34–36 °C, which is what it needs.");
    }

    /**
     * The mat is back on day 4. On its places 1, 3 and 4 something else begins on day 8, so the six days that are due there from day 3
     * or 4 on fit on place 2 only, from day 4 to 9. There the other lies until day 4; it fits on the small mat, which is free so long.
     */
    @Test
    void what_needs_the_place_of_another_comes_after_it() {
        out(4);
        full(FAR);
        SMALL.places().forEach(place -> board.take(place, new Slot(1, 4), TODAY.plusDays(5), TODAY.plusDays(60)));
        board.setPoint(SMALL.id(), TODAY.plusDays(5), TODAY.plusDays(60), 26);
        for (int place : List.of(0, 2, 3)) {
            board.take(BROKEN.places().get(place), new Slot(1, 4), TODAY.plusDays(8), TODAY.plusDays(60));
        }
        board.setPoint(BROKEN.id(), TODAY.plusDays(8), TODAY.plusDays(60), 26);
        displaced.add(displaced(1, 4, 0, 5, 0, WARM));
        displaced.add(displaced(4, 4, 3, 9, 1, WARM));

        DisplacedPlan.Proposed proposed = proposed();

        assertThat(proposed.places().keySet()).containsExactly(new UUID(7, 1), new UUID(7, 4));
        DisplacedBoard room = new DisplacedBoard(board, displaced);
        SpaceOffer second = Objects.requireNonNull(proposed.places().get(new UUID(7, 4)));
        assertThat(second.placeId()).isEqualTo(BROKEN.places().get(1));
        assertThat(room.fits(displaced.get(1), second, Map.of())).isFalse();
        assertThat(room.fits(
                        displaced.get(1),
                        second,
                        Map.of(new UUID(7, 1), proposed.places().get(new UUID(7, 1)))))
                .isTrue();
    }

    private NoOtherPlace lack(DisplacedPlan.Proposed proposed) {
        DisplacedBoard room = new DisplacedBoard(board, displaced);
        Displaced left = displaced.stream()
                .filter(each -> !proposed.places().containsKey(each.id()))
                .findFirst()
                .orElseThrow();
        return new DisplacedLack(room, proposed.places()).of(left);
    }

    private DisplacedPlan.Proposed proposed() {
        return proposed(new DisplacedBoard(board, displaced));
    }

    private static DisplacedPlan.Proposed proposed(DisplacedBoard room) {
        return new DisplacedPlan(
                        room,
                        question -> Planner.quickly(question, PATIENCE_SECONDS).plan())
                .propose();
    }

    private void out(int days) {
        board.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(days), "broken"));
    }

    private void full(MatSpace mat) {
        mat.places().forEach(place -> board.take(place, new Slot(1, 4), TODAY, TODAY.plusDays(60)));
        board.setPoint(mat.id(), TODAY, TODAY.plusDays(60), 26);
    }

    private void lying(int number, int quarters, int from, int to) {
        displaced.add(displaced(number, quarters, from, to, 3, WARM));
    }

    private static Displaced displaced(int number, int quarters, int from, int to, int slack, Band band) {
        LocalDate first = TODAY.plusDays(from);
        LocalDate last = TODAY.plusDays(to);
        UUID place = BROKEN.places().get(number % 4);
        Stay stay = new Stay(
                new UUID(7, number),
                new UUID(8, number),
                place,
                "mat",
                "",
                Slot.of(quarters).get(0),
                first,
                last,
                1);
        LyingStay lying = new LyingStay(
                stay,
                "Pepper",
                "Tom",
                from == 0,
                BROKEN.id(),
                WarmDays.throughout(first, last, band.lowC()),
                band,
                false);
        DoubleToIntFunction days = celsius -> lying.days();
        SpaceWish wish = new SpaceWish(
                stay.sowingId(), quarters, first, first, first.plusDays(from == 0 ? 0 : slack), band, days);
        return new Displaced(lying, wish, Set.of(BROKEN.id(), SMALL.id()));
    }

    private static MatSpace mat(int number, int places) {
        List<UUID> ids = new ArrayList<>();
        for (int place = 1; place <= places; place++) {
            ids.add(new UUID(number, place));
        }
        return new MatSpace(new UUID(0, number), "M" + number, "Hall cellar", new Thermostat(20, 32), 26, ids);
    }
}
