package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.UUID;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** First fit beside a plain search through every mat, set-point, place, slot and start, on small random boards. */
class FirstFitAgainstAllTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final int DAYS = 14;

    @Test
    void an_offer_is_found_exactly_when_there_is_one_and_none_lies_nearer_to_the_ideal_day() {
        Random random = new Random(20270301);
        int found = 0;
        for (int run = 0; run < 3_000; run++) {
            Board board = board(random);
            Wish wish = wish(random);

            OptionalInt least = leastShift(board, wish);
            List<Offer> offers = new FirstFit(board, TODAY).offers(wish, 1);

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

    private static void assertHolds(Board board, Wish wish, Offer offer) {
        assertThat(board.isFree(offer.placeId(), offer.slot(), offer.from(), offer.to()))
                .isTrue();
        assertThat(board.canHold(offer.mat().id(), offer.celsius(), offer.from(), offer.to()))
                .isTrue();
        assertThat(offer.slot().quarters()).isEqualTo(wish.quarters());
        assertThat(wish.band().contains(offer.celsius())).isTrue();
        assertThat(offer.mat().thermostat().contains(offer.celsius())).isTrue();
        assertThat(offer.to()).isEqualTo(offer.from().plusDays(wish.daysAt().applyAsInt(offer.celsius())));
        assertThat(offer.from()).isBetween(wish.earliest(), wish.latest()).isAfterOrEqualTo(TODAY);
    }

    private static OptionalInt leastShift(Board board, Wish wish) {
        return board.mats().stream()
                .flatMapToInt(mat -> IntStream.rangeClosed(0, 40)
                        .filter(celsius -> wish.band().contains(celsius)
                                && mat.thermostat().contains(celsius))
                        .flatMap(celsius -> shifts(board, wish, mat, celsius)))
                .min();
    }

    private static IntStream shifts(Board board, Wish wish, MatSpace mat, int celsius) {
        int days = wish.daysAt().applyAsInt(celsius);
        return wish.earliest()
                .datesUntil(wish.latest().plusDays(1))
                .filter(start -> !start.isBefore(TODAY))
                .filter(start -> board.canHold(mat.id(), celsius, start, start.plusDays(days)))
                .filter(start -> mat.places().stream()
                        .anyMatch(place -> Slot.of(wish.quarters()).stream()
                                .anyMatch(slot -> board.isFree(place, slot, start, start.plusDays(days)))))
                .mapToInt(start ->
                        (int) Math.abs(start.toEpochDay() - wish.ideal().toEpochDay()));
    }

    private static Board board(Random random) {
        List<MatSpace> mats = new ArrayList<>();
        for (int number = 0; number < 1 + random.nextInt(2); number++) {
            int low = 18 + random.nextInt(6);
            int high = low + 2 + random.nextInt(8);
            List<UUID> places = new ArrayList<>();
            for (int place = 0; place < 1 + random.nextInt(2); place++) {
                places.add(new UUID(number, place));
            }
            int usual = low + random.nextInt(high - low + 1);
            mats.add(
                    new MatSpace(new UUID(9, number), "M" + number, "Hall cellar", new Band(low, high), usual, places));
        }
        Board board = new Board(TODAY, TODAY.plusDays(DAYS), mats);
        mats.forEach(mat -> fill(board, mat, random));
        return board;
    }

    private static void fill(Board board, MatSpace mat, Random random) {
        int celsius = mat.thermostat().lowC()
                + random.nextInt(mat.thermostat().highC() - mat.thermostat().lowC() + 1);
        for (UUID place : mat.places()) {
            for (int stay = 0; stay < random.nextInt(5); stay++) {
                List<Slot> slots = Slot.of(1 << random.nextInt(3));
                LocalDate from = TODAY.plusDays(random.nextInt(DAYS));
                LocalDate to = from.plusDays(1 + random.nextInt(8));
                board.take(place, slots.get(random.nextInt(slots.size())), from, to);
                board.setPoint(mat.id(), from, to, celsius);
            }
        }
    }

    private static Wish wish(Random random) {
        LocalDate ideal = TODAY.plusDays(random.nextInt(DAYS) - 2);
        int low = 18 + random.nextInt(8);
        int daysWhenCool = 3 + random.nextInt(4);
        IntUnaryOperator daysAt = celsius -> Math.max(1, daysWhenCool - (celsius - low) / 2);
        return new Wish(
                new UUID(7, 7),
                1 << random.nextInt(3),
                ideal.minusDays(random.nextInt(4)),
                ideal,
                ideal.plusDays(random.nextInt(4)),
                new Band(low, low + random.nextInt(7)),
                daysAt);
    }
}
