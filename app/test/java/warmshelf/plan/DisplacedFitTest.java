package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
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
import warmshelf.shelf.Outage;

class DisplacedFitTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Band WARM = new Band(24, 30);
    private static final MatSpace BROKEN = mat(1, 4);
    private static final MatSpace SMALL = mat(2, 1);
    private static final MatSpace FAR = mat(3, 1);

    private final SpaceCalendar board = new SpaceCalendar(TODAY, TODAY.plusDays(60), List.of(BROKEN, FAR, SMALL));
    private final List<DisplacedFit.Displaced> displaced = new ArrayList<>();

    @Test
    void each_gets_a_place_beside_the_others_and_none_on_the_mat_that_is_out() {
        board.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(10), "broken"));
        lying(1, 2, 0, 8);
        lying(2, 2, 0, 8);
        lying(3, 4, 0, 8);

        Map<UUID, SpaceOffer> found = places();

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
        board.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(10), "broken"));
        lying(1, 1, 0, 8);

        assertThat(places().values()).extracting(SpaceOffer::mat).containsExactly(SMALL);
    }

    @Test
    void the_order_that_places_most_is_kept() {
        board.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(30), "broken"));
        board.take(FAR.places().get(0), new Slot(1, 4), TODAY, TODAY.plusDays(60));
        // The bag begins first; where it lies first, it takes the room of the tray that needs a whole place.
        board.take(SMALL.places().get(0), new Slot(1, 4), TODAY.plusDays(9), TODAY.plusDays(60));
        lying(1, 1, 1, 5);
        lying(2, 4, 0, 9);
        lying(3, 1, 0, 9);

        assertThat(places()).as("two bags, or one tray").hasSize(2);
    }

    @Test
    void what_is_due_after_the_mat_is_back_may_stay_on_it_on_later_days() {
        board.takeOut(new Outage(new UUID(5, 5), BROKEN.id(), TODAY, TODAY.plusDays(4), "broken"));
        for (MatSpace full : List.of(SMALL, FAR)) {
            board.take(full.places().get(0), new Slot(1, 4), TODAY, TODAY.plusDays(60));
        }
        lying(1, 4, 2, 10);

        assertThat(places().values()).singleElement().satisfies(offer -> {
            assertThat(offer.mat()).isEqualTo(BROKEN);
            assertThat(offer.from()).isEqualTo(TODAY.plusDays(4));
        });
    }

    private Map<UUID, SpaceOffer> places() {
        return new DisplacedFit(TODAY).places(displaced);
    }

    private void lying(int number, int quarters, int from, int to) {
        LocalDate first = TODAY.plusDays(from);
        LocalDate last = TODAY.plusDays(to);
        Stay stay = new Stay(
                new UUID(7, number),
                new UUID(8, number),
                BROKEN.places().get(number % 4),
                "mat",
                "",
                Slot.of(quarters).get(0),
                first,
                last,
                1);
        LyingStay lying =
                new LyingStay(stay, "Pepper", "Tom", false, BROKEN.id(), WarmDays.throughout(first, last, 26), WARM);
        SpaceWish wish = new SpaceWish(
                stay.sowingId(), quarters, first, first, first.plusDays(3), WARM, celsius -> lying.days());
        displaced.add(new DisplacedFit.Displaced(lying, wish, board, mat -> !mat.equals(FAR)));
    }

    private static MatSpace mat(int number, int places) {
        List<UUID> ids = new ArrayList<>();
        for (int place = 1; place <= places; place++) {
            ids.add(new UUID(number, place));
        }
        return new MatSpace(new UUID(0, number), "M" + number, "Hall cellar", new Band(20, 32), 26, ids);
    }
}
