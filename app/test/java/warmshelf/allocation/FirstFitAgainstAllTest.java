package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.UUID;
import java.util.function.DoubleToIntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import warmshelf.shelf.LightAbove;
import warmshelf.shelf.Thermostat;
import warmshelf.shelf.WholeDegree;

/** First fit beside a plain search through every mat, set-point, place, slot and start, on small random boards. */
class FirstFitAgainstAllTest {
    private static final List<LightAbove> LIGHTS = List.of(LightAbove.values());

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final int DAYS = 14;

    @Test
    void an_offer_is_found_exactly_when_there_is_one_and_none_lies_nearer_to_the_ideal_day() {
        Random random = new Random(20270301);
        int found = 0;
        for (int run = 0; run < 3_000; run++) {
            SpaceCalendar board = board(random);
            SpaceWish wish = wish(random);

            OptionalInt least = leastShift(board, wish);
            List<SpaceOffer> offers = new FirstFit(board, TODAY).offers(wish, 1);

            assertThat(offers.stream()
                            .mapToInt(offer -> Math.abs(offer.shiftDays()))
                            .boxed())
                    .as("run %d: %s", run, wish)
                    .containsExactlyElementsOf(least.stream().boxed().toList());
            offers.forEach(offer -> assertHolds(board, wish, offer));
            found += offers.size();
        }
        assertThat(found).as("both answers must occur often").isBetween(600, 2_700);
    }

    private static void assertHolds(SpaceCalendar board, SpaceWish wish, SpaceOffer offer) {
        assertThat(board.isFree(offer.placeId(), offer.slot(), offer.from(), offer.to()))
                .isTrue();
        double done = 0;
        for (LocalDate day = offer.from(); day.isBefore(offer.to()); day = day.plusDays(1)) {
            assertThat(done).as("it is not done before its last day").isLessThan(1 - 1e-9);
            double celsius = offer.warm().on(day);
            assertThat(celsius).isEqualTo(board.setPoint(offer.mat().id(), day).orElse(offer.asked()));
            assertThat(wish.band().contains(celsius)).isTrue();
            assertThat(offer.mat().thermostat().contains(celsius)).isTrue();
            done += 1.0 / wish.daysAt().applyAsInt(celsius);
        }
        assertThat(done).as("it is done on its last day").isGreaterThan(1 - 1e-9);
        assertThat(wish.needsLight() && offer.mat().light() == LightAbove.NONE)
                .as("no seed that needs light lies in the dark")
                .isFalse();
        assertThat(offer.slot().quarters()).isEqualTo(wish.quarters());
        assertThat(offer.from()).isBetween(wish.earliest(), wish.latest()).isAfterOrEqualTo(TODAY);
    }

    private static OptionalInt leastShift(SpaceCalendar board, SpaceWish wish) {
        return board.mats().stream()
                .filter(mat -> !wish.needsLight() || mat.light() != LightAbove.NONE)
                .flatMapToInt(mat -> IntStream.rangeClosed(0, 40)
                        .filter(celsius -> wish.band().contains(celsius)
                                && mat.thermostat().contains(celsius))
                        .flatMap(celsius -> shifts(board, wish, mat, celsius)))
                .min();
    }

    private static IntStream shifts(SpaceCalendar board, SpaceWish wish, MatSpace mat, int asked) {
        return wish.earliest()
                .datesUntil(wish.latest().plusDays(1))
                .filter(start -> !start.isBefore(TODAY))
                .filter(start -> suits(board, wish, mat, asked, start))
                .mapToInt(start ->
                        (int) Math.abs(start.toEpochDay() - wish.ideal().toEpochDay()));
    }

    /** Day by day by hand: as the mat stands, else as is asked, until the shares of the days make a whole. */
    private static boolean suits(SpaceCalendar board, SpaceWish wish, MatSpace mat, int asked, LocalDate start) {
        LocalDate end = start;
        for (double done = 0; done < 1 - 1e-9; end = end.plusDays(1)) {
            double celsius = board.setPoint(mat.id(), end).orElse(asked);
            if (!wish.band().contains(celsius)) {
                return false;
            }
            done += 1.0 / wish.daysAt().applyAsInt(celsius);
        }
        LocalDate afterLast = end;
        return mat.places().stream()
                .anyMatch(place -> Slot.of(wish.quarters()).stream()
                        .anyMatch(slot -> board.isFree(place, slot, start, afterLast)));
    }

    private static SpaceCalendar board(Random random) {
        List<MatSpace> mats = new ArrayList<>();
        for (int number = 0; number < 1 + random.nextInt(2); number++) {
            int low = 18 + random.nextInt(6);
            int high = low + 2 + random.nextInt(8);
            List<UUID> places = new ArrayList<>();
            for (int place = 0; place < 1 + random.nextInt(2); place++) {
                places.add(new UUID(number, place));
            }
            double usual = low + random.nextInt(10 * (high - low) + 1) / 10.0;
            mats.add(new MatSpace(
                    new UUID(9, number),
                    "M" + number,
                    "Hall cellar",
                    new Thermostat(low, high),
                    usual,
                    random.nextInt(4) == 0 ? LightAbove.NONE : LIGHTS.get(random.nextInt(LIGHTS.size())),
                    places));
        }
        SpaceCalendar board = new SpaceCalendar(TODAY, TODAY.plusDays(DAYS), mats);
        mats.forEach(mat -> fill(board, mat, random));
        return board;
    }

    private static void fill(SpaceCalendar board, MatSpace mat, Random random) {
        double usual = degree(mat, random);
        for (UUID place : mat.places()) {
            for (int stay = 0; stay < random.nextInt(5); stay++) {
                List<Slot> slots = Slot.of(1 << random.nextInt(3));
                LocalDate from = TODAY.plusDays(random.nextInt(DAYS));
                LocalDate to = from.plusDays(1 + random.nextInt(8));
                board.take(place, slots.get(random.nextInt(slots.size())), from, to);
                // A mat may be turned from one day to the next.
                double celsius = random.nextInt(3) == 0 ? degree(mat, random) : usual;
                board.setPoint(mat.id(), from, to, celsius);
            }
        }
    }

    /** To a tenth: people set whole degrees of either unit. */
    private static double degree(MatSpace mat, Random random) {
        return mat.thermostat().lowC()
                + random.nextInt((int) (10
                                        * (mat.thermostat().highC()
                                                - mat.thermostat().lowC()))
                                + 1)
                        / 10.0;
    }

    private static SpaceWish wish(Random random) {
        LocalDate ideal = TODAY.plusDays(random.nextInt(DAYS) - 2);
        int low = 18 + random.nextInt(8);
        int daysWhenCool = 3 + random.nextInt(4);
        DoubleToIntFunction daysAt = celsius -> Math.max(1, daysWhenCool - (WholeDegree.of(celsius) - low) / 2);
        return new SpaceWish(
                new UUID(7, 7),
                1 << random.nextInt(3),
                ideal.minusDays(random.nextInt(4)),
                ideal,
                ideal.plusDays(random.nextInt(4)),
                new Band(low, low + random.nextInt(7)),
                random.nextInt(3) == 0,
                daysAt);
    }
}
