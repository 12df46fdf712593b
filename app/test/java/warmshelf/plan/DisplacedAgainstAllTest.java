package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
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
import warmshelf.shelf.WholeDegree;

/** The proposals beside a plain try of everything, which shares none of their code, on small random boards. */
class DisplacedAgainstAllTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final int DAYS = 20;
    private static final double PATIENCE_SECONDS = 900;

    private int better;
    private int left;
    private int proven;

    @Test
    void as_many_are_placed_as_can_be_where_warmth_does_not_change_how_long_they_lie() {
        Random random = new Random(20270301);
        for (int run = 0; run < 120; run++) {
            DisplacedBoard room = room(random, 40, false);
            int most = most(room);

            DisplacedPlan.Proposed proposed = proposed(room);

            assertThat(proposed.places()).as("run %d", run).hasSize(most);
            check(room, proposed, most);
        }
        assertThat(better).as("first fit must fall short now and then").isGreaterThan(3);
        assertThat(left).as("something must find no place now and then").isGreaterThan(20);
        assertThat(proven).as("most of that must be proven").isGreaterThan(left / 2);
    }

    @Test
    void no_fewer_are_placed_than_first_fit_places_and_than_can_be_at_one_length_where_warmth_changes_it() {
        Random random = new Random(20270302);
        for (int run = 0; run < 50; run++) {
            DisplacedBoard room = room(random, 40, true);
            int most = most(room);

            DisplacedPlan.Proposed proposed = proposed(room);

            assertThat(proposed.places().size()).as("run %d", run).isGreaterThanOrEqualTo(most);
            check(room, proposed, most);
        }
    }

    @Test
    void on_a_mat_that_is_back_soon_no_fewer_are_placed_than_first_fit_places_and_each_fits_after_those_before_it() {
        Random random = new Random(20270303);
        for (int run = 0; run < 50; run++) {
            DisplacedBoard room = room(random, 1 + random.nextInt(5), random.nextBoolean());

            check(room, proposed(room), 0);
        }
    }

    private void check(DisplacedBoard room, DisplacedPlan.Proposed proposed, int most) {
        int byFirstFit = DisplacedFit.places(room).size();
        assertThat(proposed.places().size()).isGreaterThanOrEqualTo(byFirstFit);
        if (proposed.mostProven()) {
            assertThat(proposed.places().size()).isGreaterThanOrEqualTo(most);
        }
        Map<UUID, SpaceOffer> taken = new HashMap<>();
        proposed.places().forEach((id, offer) -> {
            Displaced one = room.displaced().stream()
                    .filter(each -> each.id().equals(id))
                    .findFirst()
                    .orElseThrow();
            assertThat(room.fits(one, offer, taken)).isTrue();
            assertThat(offer.from()).isBetween(one.wish().earliest(), one.wish().latest());
            taken.put(id, offer);
        });
        better += proposed.places().size() > byFirstFit ? 1 : 0;
        boolean some = proposed.places().size() < room.displaced().size();
        left += some ? 1 : 0;
        proven += some && proposed.mostProven() ? 1 : 0;
    }

    private static int most(DisplacedBoard room) {
        return DisplacedTried.most(
                room.others(), room.displaced().stream().map(Displaced::wish).toList());
    }

    private static DisplacedPlan.Proposed proposed(DisplacedBoard room) {
        return new DisplacedPlan(
                        room,
                        question -> Planner.quickly(question, PATIENCE_SECONDS).plan())
                .propose();
    }

    private static DisplacedBoard room(Random random, int outDays, boolean byWarmth) {
        MatSpace broken = mat(0, 2, new Band(20, 32));
        List<MatSpace> mats = new ArrayList<>(List.of(broken));
        int coolest = 20 + random.nextInt(3);
        mats.add(mat(1, 1 + random.nextInt(2), new Band(coolest, 32)));
        mats.add(mat(2, 1 + random.nextInt(2), new Band(coolest, coolest + 3 + random.nextInt(4))));
        SpaceCalendar board = new SpaceCalendar(TODAY, TODAY.plusDays(DAYS), mats);
        board.takeOut(new Outage(new UUID(5, 5), broken.id(), TODAY, TODAY.plusDays(outDays), "broken"));
        mats.stream().skip(1).forEach(mat -> fill(board, mat, random));
        List<Displaced> displaced = new ArrayList<>();
        for (int number = 0; number < 4; number++) {
            displaced.add(displaced(number, broken, random, byWarmth));
        }
        return new DisplacedBoard(board, displaced);
    }

    private static void fill(SpaceCalendar board, MatSpace mat, Random random) {
        Thermostat held = mat.thermostat();
        int celsius = held.lowest() + random.nextInt(held.highest() - held.lowest() + 1);
        for (UUID place : mat.places()) {
            if (random.nextInt(3) > 0) {
                List<Slot> slots = Slot.of(1 << random.nextInt(3));
                LocalDate from = TODAY.plusDays(random.nextInt(DAYS / 2));
                LocalDate to = from.plusDays(1 + random.nextInt(6));
                board.take(place, slots.get(random.nextInt(slots.size())), from, to);
                board.setPoint(mat.id(), from, to, celsius);
            }
        }
    }

    /** Two on each place of the broken mat, one after the other. */
    private static Displaced displaced(int number, MatSpace broken, Random random, boolean byWarmth) {
        int low = 20 + random.nextInt(7);
        Band band = new Band(low, low + random.nextInt(5));
        int quarters = List.of(4, 4, 2, 1).get(random.nextInt(4));
        boolean first = number % 2 == 0;
        LocalDate from = first ? TODAY : TODAY.plusDays(5 + random.nextInt(2));
        LocalDate to = first ? TODAY.plusDays(2 + random.nextInt(4)) : from.plusDays(3 + random.nextInt(4));
        Stay stay = new Stay(
                new UUID(7, number),
                new UUID(8, number),
                broken.places().get(number / 2),
                "mat",
                "",
                Slot.of(quarters).get(0),
                from,
                to,
                1);
        LyingStay lying = new LyingStay(
                stay, "Pepper", "Tom", first, broken.id(), WarmDays.throughout(from, to, low), band, false);
        DoubleToIntFunction days = celsius ->
                first || !byWarmth ? lying.days() : Math.max(1, lying.days() - (WholeDegree.of(celsius) - low) / 2);
        int slack = first ? 0 : random.nextInt(3);
        SpaceWish wish = new SpaceWish(stay.sowingId(), quarters, from, from, from.plusDays(slack), band, days);
        return new Displaced(lying, wish, Set.of(broken.id()));
    }

    private static MatSpace mat(int number, int places, Band thermostat) {
        List<UUID> ids = new ArrayList<>();
        for (int place = 1; place <= places; place++) {
            ids.add(new UUID(number + 1L, place));
        }
        return new MatSpace(
                new UUID(0, number + 1L),
                "M" + number,
                "Hall cellar",
                new Thermostat(thermostat.lowC(), thermostat.highC()),
                thermostat.lowC(),
                ids);
    }
}
